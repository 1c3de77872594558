package zonewright.units;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The units of both systems, each by definition.
 *
 * <p>Sources: inch, foot, pound and gallon as defined in NIST Handbook 44, appendix C (inch 25.4 mm
 * exactly, gallon 231 cubic inches exactly, avoirdupois pound 0.45359237 kg exactly); standard
 * gravity 9.80665 m/s² (third CGPM, 1901).
 */
public final class Units {
  public static final Unit ONE = new Unit("", Dimension.NONE, Scale.ONE);
  public static final Unit PERCENT = ONE.multiple("0.01", "%");

  public static final Unit METRE = new Unit("m", Dimension.LENGTH, Scale.ONE);
  public static final Unit MILLIMETRE = METRE.multiple("0.001", "mm");
  public static final Unit CENTIMETRE = METRE.multiple("0.01", "cm");
  public static final Unit INCH = MILLIMETRE.multiple("25.4", "in");
  public static final Unit FOOT = INCH.multiple("12", "ft");
  public static final Unit YARD = FOOT.multiple("3", "yd");

  public static final Unit SECOND = new Unit("s", Dimension.TIME, Scale.ONE);
  public static final Unit MINUTE = SECOND.multiple("60", "min");
  public static final Unit HOUR = MINUTE.multiple("60", "h");
  public static final Unit DAY = HOUR.multiple("24", "days");

  /** Days on clock and calendar, whose text needs no symbol. */
  public static final Unit CLOCK = DAY.multiple("1", "");

  public static final Unit SQUARE_METRE = METRE.times(METRE, "m²");
  public static final Unit HECTARE = SQUARE_METRE.multiple("10000", "ha");
  public static final Unit SQUARE_INCH = INCH.times(INCH, "in²");
  public static final Unit SQUARE_FOOT = FOOT.times(FOOT, "ft²");
  public static final Unit SQUARE_YARD = YARD.times(YARD, "yd²");
  public static final Unit ACRE = SQUARE_FOOT.multiple("43560", "acre");

  public static final Unit CUBIC_METRE = SQUARE_METRE.times(METRE, "m³");
  public static final Unit LITRE = CUBIC_METRE.multiple("0.001", "L");
  public static final Unit MILLILITRE = LITRE.multiple("0.001", "mL");
  public static final Unit SQUARE_CENTIMETRE = CENTIMETRE.times(CENTIMETRE, "cm²");
  public static final Unit GALLON = SQUARE_INCH.times(INCH, "in³").multiple("231", "gal");
  public static final Unit FLUID_OUNCE = GALLON.multiple("0.0078125", "fl oz");
  public static final Unit CUBIC_FOOT = SQUARE_FOOT.times(FOOT, "ft³");
  public static final Unit HUNDRED_CUBIC_FEET = CUBIC_FOOT.multiple("100", "ccf");
  public static final Unit CUBIC_YARD = SQUARE_YARD.times(YARD, "yd³");
  public static final Unit ACRE_FOOT = ACRE.times(FOOT, "acre-ft");

  public static final Unit CUBIC_FOOT_PER_SECOND = CUBIC_FOOT.per(SECOND, "ft³/s");
  public static final Unit GALLON_PER_MINUTE = GALLON.per(MINUTE, "gpm");
  public static final Unit GALLON_PER_HOUR = GALLON.per(HOUR, "gph");
  public static final Unit LITRE_PER_MINUTE = LITRE.per(MINUTE, "L/min");
  public static final Unit LITRE_PER_HOUR = LITRE.per(HOUR, "L/h");
  public static final Unit LITRE_PER_SECOND = LITRE.per(SECOND, "L/s");
  public static final Unit CUBIC_METRE_PER_HOUR = CUBIC_METRE.per(HOUR, "m³/h");

  public static final Unit INCH_PER_HOUR = INCH.per(HOUR, "in/h");
  public static final Unit MILLIMETRE_PER_HOUR = MILLIMETRE.per(HOUR, "mm/h");
  public static final Unit INCH_PER_DAY = INCH.per(DAY, "in/day");
  public static final Unit MILLIMETRE_PER_DAY = MILLIMETRE.per(DAY, "mm/day");
  public static final Unit INCH_PER_WEEK = INCH.per(DAY.multiple("7", ""), "in/week");
  public static final Unit MILLIMETRE_PER_WEEK = MILLIMETRE.per(DAY.multiple("7", ""), "mm/week");

  public static final Unit INCH_PER_FOOT = INCH.per(FOOT, "in/ft");
  public static final Unit INCH_PER_INCH = INCH.per(INCH, "in/in");
  public static final Unit MILLIMETRE_PER_METRE = MILLIMETRE.per(METRE, "mm/m");

  public static final Unit FOOT_PER_SECOND = FOOT.per(SECOND, "ft/s");
  public static final Unit METRE_PER_SECOND = METRE.per(SECOND, "m/s");

  public static final Unit KILOGRAM = new Unit("kg", Dimension.MASS, Scale.ONE);
  public static final Unit NEWTON =
      KILOGRAM.times(METRE, "kg·m").per(SECOND.times(SECOND, "s²"), "N");
  public static final Unit POUND_FORCE =
      NEWTON.multiple("0.45359237", "").multiple("9.80665", "lbf");
  public static final Unit POUND_PER_SQUARE_INCH = POUND_FORCE.per(SQUARE_INCH, "psi");
  public static final Unit KILOPASCAL = NEWTON.per(SQUARE_METRE, "Pa").multiple("1000", "kPa");

  /** How a loss grows with the square of the flow. */
  public static final Unit PSI_PER_SQUARE_GPM =
      POUND_PER_SQUARE_INCH.per(GALLON_PER_MINUTE, "psi/gpm").per(GALLON_PER_MINUTE, "psi/gpm²");

  public static final Unit KPA_PER_SQUARE_LPM =
      KILOPASCAL.per(LITRE_PER_MINUTE, "kPa·min/L").per(LITRE_PER_MINUTE, "kPa·min²/L²");

  public static final Unit HECTOPASCAL = KILOPASCAL.multiple("0.1", "hPa");
  public static final Unit BAR = KILOPASCAL.multiple("100", "bar");

  /** Pressure under a column of water of 1000 kg/m³, the conventional one. */
  public static final Unit METRE_OF_WATER = KILOPASCAL.multiple("9.80665", "m head");

  public static final Unit FOOT_OF_WATER = METRE_OF_WATER.multiple("0.3048", "ft head");
  public static final Unit POUND_PER_SQUARE_INCH_A_HUNDRED_FEET =
      POUND_PER_SQUARE_INCH.per(FOOT.multiple("100", ""), "psi/100 ft");
  public static final Unit KILOPASCAL_PER_METRE = KILOPASCAL.per(METRE, "kPa/m");

  public static final Unit MILE_PER_HOUR = FOOT.multiple("5280", "mi").per(HOUR, "mph");
  public static final Unit KILOMETRE_PER_HOUR = METRE.multiple("1000", "km").per(HOUR, "km/h");
  public static final Unit KILOMETRE_PER_DAY = METRE.multiple("1000", "km").per(DAY, "km/day");

  public static final Unit KNOT = METRE.multiple("1852", "nmi").per(HOUR, "knots");

  public static final Unit KELVIN = new Unit("K", Dimension.TEMPERATURE, Scale.ONE);
  public static final Unit CELSIUS = KELVIN.from("273.15", "°C");
  public static final Unit FAHRENHEIT =
      KELVIN.per(ONE.multiple("1.8", ""), "").from("459.67", "°F");

  public static final Unit MEGAJOULE_PER_SQUARE_METRE_A_DAY =
      NEWTON
          .times(METRE, "J")
          .multiple("1000000", "MJ")
          .per(SQUARE_METRE, "")
          .per(DAY, "MJ/m²/day");

  /** Mean power on a surface over whatever time; 1 W/m² is 0.0864 MJ/m² in a day. */
  public static final Unit WATT_PER_SQUARE_METRE =
      NEWTON.times(METRE, "J").per(SECOND, "W").per(SQUARE_METRE, "W/m²");

  public static final Unit KILOWATT_HOUR_PER_SQUARE_METRE_A_DAY =
      MEGAJOULE_PER_SQUARE_METRE_A_DAY.multiple("3.6", "kWh/m²/day");

  /** One langley is a thermochemical calorie on a square centimetre: 41,840 J/m². */
  public static final Unit LANGLEY_PER_DAY =
      MEGAJOULE_PER_SQUARE_METRE_A_DAY.multiple("0.04184", "ly/day");

  public static final Unit AMPERE = new Unit("A", Dimension.CURRENT, Scale.ONE);
  public static final Unit VOLT = NEWTON.times(METRE, "J").per(AMPERE.times(SECOND, "C"), "V");
  public static final Unit OHM = VOLT.per(AMPERE, "ohm");
  public static final Unit OHM_PER_THOUSAND_FEET =
      OHM.per(FOOT.multiple("1000", ""), "ohm/1000 ft");
  public static final Unit OHM_PER_KILOMETRE = OHM.per(METRE.multiple("1000", ""), "ohm/km");

  public static final Unit DECISIEMENS_PER_METRE =
      AMPERE.per(VOLT, "S").per(METRE, "S/m").multiple("0.1", "dS/m");
  public static final Unit MICROSIEMENS_PER_CENTIMETRE =
      DECISIEMENS_PER_METRE.multiple("0.001", "µS/cm");

  public static final Unit KILOWATT_HOUR = NEWTON.times(METRE, "J").multiple("3600000", "kWh");

  /** Money of the currency the design names. */
  public static final Unit MONEY = new Unit("", Dimension.MONEY, Scale.ONE);

  /** The smallest amount of most currencies; see {@link #smallestAmount}. */
  public static final Unit CENT = MONEY.multiple("0.01", "hundredths");

  public static final Unit MONEY_PER_FOOT = MONEY.per(FOOT, "per ft");
  public static final Unit MONEY_PER_METRE = MONEY.per(METRE, "per m");
  public static final Unit MONEY_PER_SQUARE_FOOT = MONEY.per(SQUARE_FOOT, "per ft²");
  public static final Unit MONEY_PER_SQUARE_METRE = MONEY.per(SQUARE_METRE, "per m²");
  public static final Unit MONEY_PER_THOUSAND_GALLONS =
      MONEY.per(GALLON.multiple("1000", ""), "per 1000 gal");
  public static final Unit MONEY_PER_CUBIC_METRE = MONEY.per(CUBIC_METRE, "per m³");
  public static final Unit MONEY_PER_HOUR = MONEY.per(HOUR, "per h");
  public static final Unit MONEY_PER_KILOWATT_HOUR = MONEY.per(KILOWATT_HOUR, "per kWh");

  /** A turn has 360; pure numbers in formulas are radians. */
  public static final Unit DEGREE = ONE.multiple("0.017453292519943295769236907684886127", "°");

  private static final Map<String, Unit> BY_NAME = new LinkedHashMap<>();

  static {
    name(PERCENT, "%", "percent", "pct");
    name(METRE, "m", "metre", "meter", "metres", "meters");
    name(MILLIMETRE, "mm");
    name(CENTIMETRE, "cm");
    name(INCH, "in", "inch", "inches", "\"", "″");
    name(FOOT, "ft", "foot", "feet", "'", "′");
    name(YARD, "yd", "yard", "yards");
    name(SECOND, "s", "sec", "second", "seconds");
    name(MINUTE, "min", "minute", "minutes", "mins");
    name(HOUR, "h", "hr", "hrs", "hour", "hours");
    name(DAY, "d", "day", "days");
    name(SQUARE_METRE, "m2", "m²", "sqm", "sq m", "square metres", "square meters");
    name(HECTARE, "ha", "hectare", "hectares");
    name(SQUARE_INCH, "in2", "in²", "sq in");
    name(SQUARE_CENTIMETRE, "cm2", "cm²", "sq cm");
    name(SQUARE_YARD, "yd2", "yd²", "sq yd", "square yards");
    name(SQUARE_FOOT, "ft2", "ft²", "sqft", "sq ft", "sf", "square feet");
    name(ACRE, "acre", "acres", "ac");
    name(CUBIC_METRE, "m3", "m³");
    name(LITRE, "l", "litre", "liter", "litres", "liters");
    name(MILLILITRE, "ml");
    name(GALLON, "gal", "gallon", "gallons");
    name(FLUID_OUNCE, "fl oz", "floz");
    name(CUBIC_FOOT, "ft3", "ft³", "cu ft", "cf", "cubic feet");
    name(HUNDRED_CUBIC_FEET, "ccf", "hcf");
    name(CUBIC_YARD, "yd3", "yd³", "cu yd", "cubic yards");
    name(ACRE_FOOT, "acre-ft", "acre ft", "acre-feet", "acre feet", "ac-ft", "ac ft", "acre-foot");
    name(GALLON_PER_MINUTE, "gpm", "gal/min");
    name(CUBIC_FOOT_PER_SECOND, "ft3/s", "ft³/s", "cfs", "cu ft/s");
    name(GALLON_PER_HOUR, "gph", "gal/h", "gal/hr");
    name(LITRE_PER_MINUTE, "l/min", "lpm");
    name(LITRE_PER_HOUR, "l/h", "lph", "l/hr");
    name(LITRE_PER_SECOND, "l/s", "lps");
    name(CUBIC_METRE_PER_HOUR, "m3/h", "m³/h", "m3/hr");
    name(INCH_PER_HOUR, "in/h", "in/hr", "iph", "inch/hour", "inches per hour");
    name(MILLIMETRE_PER_HOUR, "mm/h", "mm/hr");
    name(INCH_PER_DAY, "in/day", "in/d");
    name(MILLIMETRE_PER_DAY, "mm/day", "mm/d");
    name(INCH_PER_WEEK, "in/week", "in/wk");
    name(MILLIMETRE_PER_WEEK, "mm/week", "mm/wk");
    name(INCH_PER_FOOT, "in/ft");
    name(INCH_PER_INCH, "in/in");
    name(MILLIMETRE_PER_METRE, "mm/m");
    name(FOOT_PER_SECOND, "ft/s", "fps");
    name(METRE_PER_SECOND, "m/s");
    name(POUND_PER_SQUARE_INCH, "psi");
    name(KILOPASCAL, "kpa");
    name(BAR, "bar");
    name(METRE_OF_WATER, "m head", "mh2o", "m h2o", "m of water");
    name(FOOT_OF_WATER, "ft head", "fth2o", "ft h2o", "ft of water");
    name(POUND_PER_SQUARE_INCH_A_HUNDRED_FEET, "psi/100 ft", "psi/100ft");
    name(KILOPASCAL_PER_METRE, "kpa/m");
    name(KILOWATT_HOUR, "kwh");
    name(MONEY_PER_FOOT, "per ft", "/ft");
    name(MONEY_PER_METRE, "per m", "/m");
    name(MONEY_PER_SQUARE_FOOT, "per ft²", "per ft2", "/ft2", "/ft²");
    name(MONEY_PER_SQUARE_METRE, "per m²", "per m2", "/m2", "/m²");
    name(MONEY_PER_THOUSAND_GALLONS, "per 1000 gal", "/1000 gal");
    name(MONEY_PER_CUBIC_METRE, "per m³", "per m3", "/m3", "/m³");
    name(MONEY_PER_HOUR, "per h", "/h");
    name(MONEY_PER_KILOWATT_HOUR, "per kwh", "/kwh");
    name(MILE_PER_HOUR, "mph", "mi/h");
    name(KILOMETRE_PER_HOUR, "km/h", "kph");
    name(KILOMETRE_PER_DAY, "km/day", "km/d");
    name(CELSIUS, "°c", "c", "degc");
    name(FAHRENHEIT, "°f", "f", "degf");
    name(MEGAJOULE_PER_SQUARE_METRE_A_DAY, "mj/m2/day", "mj/m²/day", "mj/m2/d");
    name(WATT_PER_SQUARE_METRE, "w/m2", "w/m²");
    name(KILOWATT_HOUR_PER_SQUARE_METRE_A_DAY, "kwh/m2/day", "kwh/m²/day");
    name(LANGLEY_PER_DAY, "ly/day", "langleys/day");
    name(HECTOPASCAL, "hpa", "mbar");
    name(KNOT, "knot", "knots", "kn");
    name(AMPERE, "a", "amp", "amps", "ampere");
    name(VOLT, "v", "volt", "volts");
    name(OHM, "ohm", "ohms");
    name(OHM_PER_THOUSAND_FEET, "ohm/1000 ft", "ohm/kft");
    name(OHM_PER_KILOMETRE, "ohm/km");
    name(DECISIEMENS_PER_METRE, "ds/m", "ms/cm", "mmho/cm", "mmhos/cm");
    name(MICROSIEMENS_PER_CENTIMETRE, "µs/cm", "μs/cm", "us/cm", "µmho/cm", "umho/cm");
    name(DEGREE, "°", "deg", "degrees");
  }

  private Units() {}

  /**
   * Returns the unit a person means by {@code words}; capitals and the space around do not matter.
   *
   * <p>None where the words name no unit known here.
   */
  public static Optional<Unit> named(String words) {
    String plain = words.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    return Optional.ofNullable(BY_NAME.get(plain));
  }

  /**
   * Returns what amounts of a currency of some decimals are whole numbers of: {@link #CENT} for 2.
   *
   * @param decimals 0 to 9
   */
  public static Unit smallestAmount(int decimals) {
    return switch (decimals) {
      case 0 -> MONEY;
      case 2 -> CENT;
      default -> MONEY.multiple("1e-" + decimals, decimals == 3 ? "thousandths" : "parts");
    };
  }

  /** Returns every unit that can be written, each once. */
  public static List<Unit> all() {
    return BY_NAME.values().stream().distinct().toList();
  }

  /** Returns how a unit can be written. */
  public static List<String> namesOf(Unit unit) {
    return BY_NAME.entrySet().stream()
        .filter(each -> each.getValue().equals(unit))
        .map(Map.Entry::getKey)
        .toList();
  }

  private static void name(Unit unit, String... names) {
    for (String name : names) {
      if (BY_NAME.put(name, unit) != null) {
        throw new IllegalStateException("two units are called " + name);
      }
    }
  }
}
