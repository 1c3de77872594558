package zonewright.weather;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import zonewright.units.Unit;
import zonewright.units.Units;

/**
 * What a column of a weather file may hold: when, where, or something measured. Values are kept in
 * °C, percent, kPa, m/s, MJ/m² a day, hours and millimetres.
 *
 * <p>Limits are far enough out that no place on earth is refused: records of the World
 * Meteorological Organization lie within them (from memory).
 */
public enum WeatherElement {
  DATE("date"),
  YEAR("year"),
  MONTH("month"),
  DAY("day of the month"),
  DAY_OF_YEAR("day of the year"),
  HOUR("hour"),
  STATION("station"),
  LATITUDE("latitude", Kind.ANGLE, -90, 90),
  LONGITUDE("longitude", Kind.ANGLE, -180, 180),
  ELEVATION("elevation", Kind.LENGTH, -430, 9000),
  HIGHEST("highest temperature", Kind.TEMPERATURE, -90, 60),
  LOWEST("lowest temperature", Kind.TEMPERATURE, -90, 60),
  TEMPERATURE("temperature", Kind.TEMPERATURE, -90, 60),
  DEW_POINT("dew point", Kind.TEMPERATURE, -100, 40),
  HIGHEST_HUMIDITY("highest humidity", Kind.HUMIDITY, 0, 110),
  LOWEST_HUMIDITY("lowest humidity", Kind.HUMIDITY, 0, 110),
  HUMIDITY("humidity", Kind.HUMIDITY, 0, 110),
  VAPOUR("vapour pressure", Kind.PRESSURE, 0, 8),
  WIND("wind", Kind.SPEED, 0, 60),
  RADIATION("solar radiation", Kind.RADIATION, 0, 120),
  SUNSHINE("sunshine", Kind.HOURS, 0, 24),
  RAIN("rain", Kind.DEPTH, 0, 2000),
  EVAPOTRANSPIRATION("reference evapotranspiration", Kind.DEPTH, -2, 30);

  /** What kind of quantity an element is, and the unit its values are kept in. */
  enum Kind {
    NONE(Units.ONE),
    ANGLE(Units.DEGREE),
    LENGTH(Units.METRE),
    TEMPERATURE(Units.CELSIUS),
    HUMIDITY(Units.PERCENT),
    PRESSURE(Units.KILOPASCAL),
    SPEED(Units.METRE_PER_SECOND),
    RADIATION(Units.MEGAJOULE_PER_SQUARE_METRE_A_DAY),
    HOURS(Units.HOUR),
    DEPTH(Units.MILLIMETRE);

    private final Unit kept;

    Kind(Unit kept) {
      this.kept = kept;
    }
  }

  /** By which names the units of each kind go; energy has two lists of its own. */
  private static final Map<Kind, Map<String, Unit>> UNITS =
      Map.ofEntries(
          Map.entry(Kind.NONE, Map.of()),
          Map.entry(Kind.ANGLE, Map.of("", Units.DEGREE, "°", Units.DEGREE, "deg", Units.DEGREE)),
          Map.entry(Kind.LENGTH, Map.of("m", Units.METRE, "ft", Units.FOOT, "feet", Units.FOOT)),
          Map.entry(
              Kind.TEMPERATURE,
              Map.of(
                  "°c",
                  Units.CELSIUS,
                  "c",
                  Units.CELSIUS,
                  "degc",
                  Units.CELSIUS,
                  "deg c",
                  Units.CELSIUS,
                  "°f",
                  Units.FAHRENHEIT,
                  "f",
                  Units.FAHRENHEIT,
                  "degf",
                  Units.FAHRENHEIT,
                  "deg f",
                  Units.FAHRENHEIT,
                  "k",
                  Units.KELVIN,
                  "kelvin",
                  Units.KELVIN)),
          Map.entry(
              Kind.HUMIDITY,
              Map.of("", Units.PERCENT, "%", Units.PERCENT, "percent", Units.PERCENT)),
          Map.entry(
              Kind.PRESSURE,
              Map.of(
                  "kpa",
                  Units.KILOPASCAL,
                  "hpa",
                  Units.HECTOPASCAL,
                  "mbar",
                  Units.HECTOPASCAL,
                  "mbars",
                  Units.HECTOPASCAL,
                  "mb",
                  Units.HECTOPASCAL)),
          Map.entry(
              Kind.SPEED,
              Map.of(
                  "m/s",
                  Units.METRE_PER_SECOND,
                  "ms-1",
                  Units.METRE_PER_SECOND,
                  "km/h",
                  Units.KILOMETRE_PER_HOUR,
                  "kmh",
                  Units.KILOMETRE_PER_HOUR,
                  "km/day",
                  Units.KILOMETRE_PER_DAY,
                  "mph",
                  Units.MILE_PER_HOUR,
                  "knots",
                  Units.KNOT,
                  "kt",
                  Units.KNOT,
                  "kn",
                  Units.KNOT)),
          Map.entry(Kind.RADIATION, Map.of()),
          Map.entry(
              Kind.HOURS,
              Map.of(
                  "h",
                  Units.HOUR,
                  "hours",
                  Units.HOUR,
                  "hr",
                  Units.HOUR,
                  "min",
                  Units.MINUTE,
                  "minutes",
                  Units.MINUTE,
                  "s",
                  Units.SECOND)),
          Map.entry(
              Kind.DEPTH,
              Map.of(
                  "mm",
                  Units.MILLIMETRE,
                  "cm",
                  Units.CENTIMETRE,
                  "in",
                  Units.INCH,
                  "inch",
                  Units.INCH,
                  "inches",
                  Units.INCH,
                  "mm/day",
                  Units.MILLIMETRE,
                  "in/day",
                  Units.INCH,
                  "mm/d",
                  Units.MILLIMETRE)));

  private static final Map<String, Unit> RADIATION_RATES =
      Map.of(
          "w/m2", Units.WATT_PER_SQUARE_METRE,
          "wm-2", Units.WATT_PER_SQUARE_METRE,
          "mj/m2/day", Units.MEGAJOULE_PER_SQUARE_METRE_A_DAY,
          "mj/m2/d", Units.MEGAJOULE_PER_SQUARE_METRE_A_DAY,
          "ly/day", Units.LANGLEY_PER_DAY,
          "ly/d", Units.LANGLEY_PER_DAY,
          "langleys/day", Units.LANGLEY_PER_DAY,
          "kwh/m2/day", Units.KILOWATT_HOUR_PER_SQUARE_METRE_A_DAY);

  private static final Map<String, Unit> RADIATION_AMOUNTS =
      Map.of(
          "mj/m2", Units.MEGAJOULE_PER_SQUARE_METRE_A_DAY,
          "ly", Units.LANGLEY_PER_DAY,
          "langleys", Units.LANGLEY_PER_DAY,
          "kwh/m2", Units.KILOWATT_HOUR_PER_SQUARE_METRE_A_DAY);

  private final String words;
  private final Kind kind;
  private final double least;
  private final double greatest;

  WeatherElement(String words) {
    this(words, Kind.NONE, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  WeatherElement(String words, Kind kind, double least, double greatest) {
    this.words = words;
    this.kind = kind;
    this.least = least;
    this.greatest = greatest;
  }

  /** Returns what a person calls it. */
  public String words() {
    return words;
  }

  /** Says whether it is something measured, not when or where. */
  public boolean measured() {
    return kind != Kind.NONE && kind != Kind.ANGLE && kind != Kind.LENGTH;
  }

  /** Says whether a plain number of it is clear without a unit. */
  public boolean clearWithoutUnit() {
    return kind == Kind.NONE || UNITS.get(kind).containsKey("");
  }

  /** Says whether a value can be true anywhere on earth. */
  boolean possible(double value) {
    return value >= least && value <= greatest;
  }

  /** Returns the limits in words: from -90 to 60 °C. */
  String limits() {
    return "%s to %s %s"
        .formatted(Sentence.decimal(least, 0), Sentence.decimal(greatest, 0), kind.kept.symbol())
        .strip();
  }

  /** Returns the names of units a person may choose among. */
  public List<String> unitChoices() {
    return switch (kind) {
      case TEMPERATURE -> List.of("°C", "°F", "K");
      case HUMIDITY -> List.of("%");
      case PRESSURE -> List.of("kPa", "hPa");
      case SPEED -> List.of("m/s", "km/h", "mph", "knots", "km/day");
      case RADIATION -> List.of("MJ/m²", "W/m²", "Wh/m²", "kWh/m²", "ly");
      case HOURS -> List.of("h", "min");
      case DEPTH -> List.of("mm", "in", "cm");
      case LENGTH -> List.of("m", "ft");
      default -> List.of();
    };
  }

  /**
   * Returns the unit that a heading names for this element. Energy without a time is that of the
   * line's own step, as rain is.
   *
   * @param name as somebody wrote it; capitals, spaces and raised figures do not matter
   */
  Optional<Measure> unit(String name, WeatherStep step) {
    String plain =
        name.toLowerCase(Locale.ROOT)
            .strip()
            .replace("²", "2")
            .replace("^2", "2")
            .replace('·', '/')
            .replaceAll("\\s*/\\s*", "/");
    double steps = step == WeatherStep.HOUR ? 24 : 1;
    if (kind == Kind.RADIATION) {
      String tight = plain.replace(" ", "").replace("per", "/");
      if (tight.equals("wh/m2")) {
        return Optional.of(new Measure(Units.KILOWATT_HOUR_PER_SQUARE_METRE_A_DAY, steps / 1000));
      }
      if (tight.equals("mj/m2/h") || tight.equals("mj/m2/hour")) {
        return Optional.of(new Measure(Units.MEGAJOULE_PER_SQUARE_METRE_A_DAY, 24));
      }
      Unit rate = RADIATION_RATES.get(tight);
      Unit amount = RADIATION_AMOUNTS.get(tight);
      return rate != null
          ? Optional.of(new Measure(rate, 1))
          : Optional.ofNullable(amount).map(unit -> new Measure(unit, steps));
    }
    return Optional.ofNullable(UNITS.get(kind).get(plain)).map(unit -> new Measure(unit, 1));
  }

  /** Returns a value of a unit as it is kept. */
  double kept(double value, Measure measure) {
    return measure.unit().convert(value * measure.times(), kind.kept);
  }

  /**
   * What the numbers of a column count.
   *
   * @param times what a number is multiplied by before it counts units
   */
  record Measure(Unit unit, double times) {}
}
