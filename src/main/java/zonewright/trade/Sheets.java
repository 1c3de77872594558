package zonewright.trade;

/** Identifiers of the design's sheets, and the groups their columns stand in. */
public final class Sheets {
  public static final String SITE = "site";
  public static final String MONTHS = "months";
  public static final String WEATHER = "weather";
  public static final String PROGRAMS = "programs";
  public static final String ZONES = "zones";
  public static final String TESTS = "tests";
  public static final String CANS = "cans";
  public static final String INSPECTION = "inspection";
  public static final String CONTROLLER = "controller";
  public static final String VERDICTS = "verdicts";
  public static final String MONTHLY = "monthly";
  public static final String ZONE_NIGHTS = "zone-nights";
  public static final String SUPPLY = "supply";
  public static final String VALVES = "valves";
  public static final String MATERIALS = "materials";
  public static final String PIPES = "pipes";
  public static final String NIGHTS = "nights";

  public static final String PROJECT = "Project";
  public static final String CLIMATE = "Climate";
  public static final String RAIN = "Rain";
  public static final String MEASURED = "Measured";
  public static final String SUN = "Sun and radiation";
  public static final String AIR = "Air";
  public static final String EVAPOTRANSPIRATION = "Reference ET";
  public static final String RULES = "Rules and supply";
  public static final String ZONE = "Zone";
  public static final String PLANTS = "Plants";
  public static final String APPLICATION = "Application";
  public static final String SOIL = "Soil";
  public static final String SCHEDULE = "Schedule";
  public static final String WATER = "Water";
  public static final String ALLOWANCES = "Allowances";
  public static final String FIELD_TEST = "Field test";
  public static final String UNIFORMITY = "Uniformity";
  public static final String SPREAD = "Spread";
  public static final String SEEN = "Seen";
  public static final String READINGS = "Readings";
  public static final String TUNING = "Tuning";
  public static final String CONNECTION = "Connection";
  public static final String METER = "Meter";
  public static final String SERVICE_LINE = "Service line";
  public static final String FLOW_TEST = "Flow test";
  public static final String FLOW = "Flow";
  public static final String VALVE = "Valve";
  public static final String MAIN_LINE = "Main line";
  public static final String LATERAL = "Lateral";
  public static final String PRESSURE = "Pressure";
  public static final String WIRE = "Wire";
  public static final String PIPE = "Pipe";
  public static final String ALL_ZONES = "All zones";
  public static final String LIMITS = "Limits for pipes and wires";
  public static final String NIGHT_RULES = "Nights";
  public static final String WINDOWS = "Windows";

  private Sheets() {}
}
