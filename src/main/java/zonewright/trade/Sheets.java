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
  public static final String NIGHT_RULES = "Nights";
  public static final String WINDOWS = "Windows";

  private Sheets() {}
}
