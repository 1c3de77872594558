package zonewright.units;

/**
 * The kinds of number a column can hold, each with its unit and its usual decimals in both systems.
 */
public enum QuantityKind {
  /** A position in a list of words. */
  CHOICE("choice", Units.ONE, 0, Units.ONE, 0, "one of the list"),
  COUNT("count", Units.ONE, 0, Units.ONE, 0, "12"),
  FACTOR("factor", Units.ONE, 2, Units.ONE, 2, "0.8"),
  /** A part of one, shown in percent; 70 and 70 % mean seventy percent, 0.7 seven tenths of one. */
  SHARE("share", Units.ONE, 0, Units.ONE, 0, "70 %"),
  /** Rise over run, shown in percent; 0.5 means half a percent. */
  SLOPE("slope", Units.ONE, 0, Units.ONE, 0, "6 %"),
  LENGTH("length", Units.FOOT, 1, Units.METRE, 2, "15 ft or 4.5 m"),
  DEPTH("depth", Units.INCH, 2, Units.MILLIMETRE, 1, "0.25 in or 6 mm"),
  /** Water held by a thickness of soil. */
  STORAGE("available water", Units.INCH_PER_FOOT, 2, Units.MILLIMETRE_PER_METRE, 0, "2.2 in/ft"),
  AREA("area", Units.SQUARE_FOOT, 0, Units.SQUARE_METRE, 1, "900 ft² or 85 m²"),
  FLOW("flow", Units.GALLON_PER_MINUTE, 2, Units.LITRE_PER_MINUTE, 2, "12 gpm or 45 L/min"),
  RATE("rate", Units.INCH_PER_HOUR, 2, Units.MILLIMETRE_PER_HOUR, 1, "1.5 in/h or 38 mm/h"),
  DAILY_DEPTH("depth a day", Units.INCH_PER_DAY, 3, Units.MILLIMETRE_PER_DAY, 2, "0.25 in/day"),
  MINUTES("time", Units.MINUTE, 0, Units.MINUTE, 0, "12 min"),
  DAYS("number of days", Units.DAY, 0, Units.DAY, 0, "3 days"),
  /** A time on the clock, kept as the part of the day that has passed. */
  TIME_OF_DAY("time of day", Units.CLOCK, 0, Units.CLOCK, 0, "10 pm or 22:00"),
  /** A day of the calendar, kept as the days since 30 December 1899. */
  DATE("date", Units.CLOCK, 0, Units.CLOCK, 0, "2026-06-01"),
  VOLUME("volume", Units.GALLON, 0, Units.LITRE, 0, "500 gal or 1900 L"),
  PRESSURE("pressure", Units.POUND_PER_SQUARE_INCH, 1, Units.KILOPASCAL, 0, "60 psi or 410 kPa"),
  /** How much pressure is lost for each square of a flow. */
  LOSS_RISE(
      "loss for each square of a flow",
      Units.PSI_PER_SQUARE_GPM,
      5,
      Units.KPA_PER_SQUARE_LPM,
      5,
      "0.002 psi/gpm²"),
  SPEED("speed", Units.FOOT_PER_SECOND, 2, Units.METRE_PER_SECOND, 2, "5 ft/s or 1.5 m/s"),
  CURRENT("electric current", Units.AMPERE, 2, Units.AMPERE, 2, "0.35 A"),
  VOLTAGE("voltage", Units.VOLT, 1, Units.VOLT, 1, "24 V"),
  /** Resistance of a length of wire. */
  RESISTANCE(
      "resistance of a length",
      Units.OHM_PER_THOUSAND_FEET,
      2,
      Units.OHM_PER_KILOMETRE,
      2,
      "4.89 ohm/1000 ft or 16.0 ohm/km"),
  /** Salt dissolved in water, by how well it conducts at 25 °C. */
  SALINITY(
      "salinity",
      Units.DECISIEMENS_PER_METRE,
      2,
      Units.DECISIEMENS_PER_METRE,
      2,
      "1.2 dS/m or 1200 µS/cm"),
  TEMPERATURE("temperature", Units.FAHRENHEIT, 1, Units.CELSIUS, 1, "86 °F or 30 °C"),
  WIND("wind speed", Units.MILE_PER_HOUR, 1, Units.METRE_PER_SECOND, 2, "4.5 mph or 2 m/s"),
  HOURS("number of hours", Units.HOUR, 1, Units.HOUR, 1, "8.5 h"),
  ANGLE("angle", Units.DEGREE, 2, Units.DEGREE, 2, "38.5° or 38°30'"),
  /** Pressure of water vapour, in the unit its equations prescribe. */
  VAPOUR_PRESSURE("vapour pressure", Units.KILOPASCAL, 3, Units.KILOPASCAL, 3, "1.7 kPa"),
  /** Energy on a surface, in the unit its equations prescribe. */
  RADIATION(
      "radiation",
      Units.MEGAJOULE_PER_SQUARE_METRE_A_DAY,
      2,
      Units.MEGAJOULE_PER_SQUARE_METRE_A_DAY,
      2,
      "22.6 MJ/m²/day"),
  PIPE_LENGTH("length of pipe", Units.FOOT, 0, Units.METRE, 1, "120 ft or 36 m"),
  DIAMETER("diameter", Units.INCH, 3, Units.MILLIMETRE, 1, "1.049 in or 26.6 mm"),
  PRESSURE_GRADIENT(
      "pressure loss along a pipe",
      Units.POUND_PER_SQUARE_INCH_A_HUNDRED_FEET,
      2,
      Units.KILOPASCAL_PER_METRE,
      3,
      "1.5 psi/100 ft or 0.34 kPa/m"),
  /** What a catch device holds: read in millilitres in both systems. */
  CATCH("volume of a catch", Units.MILLILITRE, 0, Units.MILLILITRE, 0, "25 mL or 0.85 fl oz"),
  /** The opening of a catch device. */
  OPENING("area of an opening", Units.SQUARE_INCH, 2, Units.SQUARE_CENTIMETRE, 1, "16.5 in²"),
  ENERGY("energy", Units.KILOWATT_HOUR, 1, Units.KILOWATT_HOUR, 1, "120 kWh"),
  /** In the currency of the design, whatever it is. */
  MONEY("amount of money", Units.MONEY, 2, Units.MONEY, 2, "12.50"),
  PRICE_PER_LENGTH(
      "price by length", Units.MONEY_PER_FOOT, 2, Units.MONEY_PER_METRE, 2, "1.20 per ft"),
  PRICE_PER_AREA(
      "price by area",
      Units.MONEY_PER_SQUARE_FOOT,
      2,
      Units.MONEY_PER_SQUARE_METRE,
      2,
      "2.00 per ft²"),
  PRICE_PER_VOLUME(
      "price of water",
      Units.MONEY_PER_THOUSAND_GALLONS,
      2,
      Units.MONEY_PER_CUBIC_METRE,
      2,
      "6.40 per 1000 gal or 1.70 per m³"),
  PRICE_PER_HOUR("price of an hour", Units.MONEY_PER_HOUR, 2, Units.MONEY_PER_HOUR, 2, "65 per h"),
  PRICE_PER_ENERGY(
      "price of energy",
      Units.MONEY_PER_KILOWATT_HOUR,
      3,
      Units.MONEY_PER_KILOWATT_HOUR,
      3,
      "0.18 per kWh");

  private final String words;
  private final Unit us;
  private final int usDecimals;
  private final Unit si;
  private final int siDecimals;
  private final String example;

  QuantityKind(String words, Unit us, int usDecimals, Unit si, int siDecimals, String example) {
    this.words = words;
    this.us = us;
    this.usDecimals = usDecimals;
    this.si = si;
    this.siDecimals = siDecimals;
    this.example = example;
  }

  /** Returns what a person calls it, without an article. */
  public String words() {
    return words;
  }

  /** Returns what a person calls one of it: {@code an area}, {@code a flow}. */
  public String wordsWithArticle() {
    return ("aeiou".indexOf(words.charAt(0)) >= 0 ? "an " : "a ") + words;
  }

  /** Returns the unit its numbers are kept and shown in. */
  public Unit unit(UnitSystem system) {
    return system == UnitSystem.US ? us : si;
  }

  /** Returns what its numbers are made of. */
  public Dimension dimension() {
    return us.dimension();
  }

  /** Returns how many decimals its numbers usually show; of a percent, of the percent. */
  public int decimals(UnitSystem system) {
    return system == UnitSystem.US ? usDecimals : siDecimals;
  }

  /** Says whether its numbers are shown in percent. */
  public boolean percent() {
    return this == SHARE || this == SLOPE;
  }

  /** Says whether its numbers are read and written as on a clock or a calendar. */
  public boolean onCalendar() {
    return this == TIME_OF_DAY || this == DATE;
  }

  /** Says whether it is money, or a price of something. */
  public boolean isMoney() {
    return unit(UnitSystem.US).symbol().startsWith("per ") || this == MONEY;
  }

  /** Says whether a number of this kind can make sense below zero, as a difference does. */
  public boolean mayBeNegative() {
    return this == PRESSURE || this == MONEY;
  }

  /**
   * Says whether a unit measures what this is: an angle no share, a percent only what it counts.
   */
  public boolean takes(Unit unit) {
    if (!unit.dimension().equals(dimension())) {
      return false;
    }
    if (!dimension().equals(Dimension.NONE)) {
      return true;
    }
    return unit.equals(Units.DEGREE)
        ? this == ANGLE
        : !unit.equals(Units.PERCENT) && (this == STORAGE || percent());
  }

  /**
   * Returns how it is typed, in a sentence for whoever types: what a number without a unit means,
   * and what else is read. Empty where the unit of the heading says it all.
   */
  public String howTyped() {
    return switch (this) {
      case SHARE -> "A number without a unit is percent: 0.5 is half a percent.";
      case SLOPE ->
          "A number without a unit is percent: 0.5 is half a percent. A ratio is read, its 1 being the rise (4:1, 1:4, 3H:1V),"
              + " and an angle (14°).";
      case ANGLE ->
          "Degrees, or degrees and minutes: 38.5, 38°30'. South of the equator below 0 or with S: -33.9, 33°54' S.";
      default -> "";
    };
  }

  /** Returns something a person could type. */
  public String example() {
    return example;
  }
}
