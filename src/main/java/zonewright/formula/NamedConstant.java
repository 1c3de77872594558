package zonewright.formula;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Numbers of many digits in formulas, which stand in a cell of their own under a name: what units
 * make of each other, and what equations of the trade come to in them.
 */
public enum NamedConstant {
  SQUARE_METRES_A_SQUARE_FOOT(0.09290304, "0.3048² m² in a square foot"),
  MILLILITRES_A_CUBIC_INCH(16.387064, "2.54³ mL in a cubic inch"),
  LITRES_A_GALLON(3.785411784, "231 cubic inches of 2.54³ mL"),
  CUBIC_METRES_A_GALLON(0.003785411784, "231 cubic inches of 0.0254³ m³"),
  LITRES_A_CUBIC_FOOT(28.316846592, "3.048³ L in a cubic foot"),
  GALLONS_A_CUBIC_FOOT(7.48051948051948, "12³ ÷ 231 gallons"),
  GALLONS_AN_INCH_DEEP(0.6233766233766234, "144 ÷ 231: an inch of water on a square foot"),
  SQUARE_FEET_AN_INCH_DEEP(1.6041666666666667, "231 ÷ 144: a gallon spread an inch deep"),
  GPM_AT_1_FT_S(3.116883116883117, "12 × 60 ÷ 231: a foot a second through a square inch"),
  PSI_A_FOOT_OF_WATER(0.43352750400100426, "water of 1000 kg/m³"),
  FEET_OF_WATER_A_PSI(2.30665872585026, "water of 1000 kg/m³"),
  HAZEN_WILLIAMS_IN_PSI(0.09030377908340918, "0.2083 ft of head for 100 ft of pipe, as pressure"),
  HAZEN_WILLIAMS_IN_KPA(2.042725195, "0.2083 for 100 of pipe, in kPa, L/min and mm"),
  OUTLETS_FIRST_TERM(0.3506311360448807, "1 ÷ (1.852 + 1), after Christiansen"),
  OUTLETS_THIRD_TERM(0.15383974345619103, "√(1.852 − 1) ÷ 6, after Christiansen"),
  PEAK_SHARE_IN_GALLONS(0.43636363636363634, "0.7 × 144 ÷ 231: the peak-month share of ET"),
  HARGREAVES_IN_INCHES(0.0000905511811023622, "0.0023 ÷ 25.4"),
  LEAST_WIND(1.1184681460272012, "0.5 m/s in mph"),
  USUAL_WIND(4.473872584108805, "2 m/s in mph"),
  WATERINGS_ON_ODD_DAYS(3.5671232876712327, "7 × 186 ÷ 365 days a week"),
  WATERINGS_ON_EVEN_DAYS(3.4328767123287673, "7 × 179 ÷ 365 days a week"),
  PUMPING_ONE_KWH(137933.70064406, "gallons × psi that 1 kWh lifts without loss"),
  GPM_FROM_SQUARES(14.329342374446062, "gallons a minute squared, in L/min"),
  OHM_A_KM_OF_18_AWG(25.492125984251967, "7.77 ohm for 1000 ft"),
  OHM_A_KM_OF_16_AWG(16.043307086614174, "4.89 ohm for 1000 ft"),
  OHM_A_KM_OF_14_AWG(10.072178477690288, "3.07 ohm for 1000 ft"),
  OHM_A_KM_OF_12_AWG(6.332020997375328, "1.93 ohm for 1000 ft"),
  OHM_A_KM_OF_10_AWG(3.9698162729658795, "1.21 ohm for 1000 ft"),
  ROUND_OPENING(0.007853981633974483, "π ÷ 4 ÷ 100: cm² of a diameter in mm");

  private static final Map<Double, NamedConstant> BY_VALUE =
      Arrays.stream(values()).collect(Collectors.toMap(NamedConstant::value, Function.identity()));

  private final double value;
  private final String words;

  NamedConstant(double value, String words) {
    this.value = value;
    this.words = words;
  }

  /** Returns the constant of a value; none where it has no name. */
  public static Optional<NamedConstant> of(double value) {
    return Optional.ofNullable(BY_VALUE.get(value));
  }

  /** Returns what formulas call it. */
  public String title() {
    String name = name().toLowerCase(Locale.ROOT);
    return Character.toUpperCase(name.charAt(0)) + name.substring(1);
  }

  /** Returns the number. */
  public double value() {
    return value;
  }

  /** Returns what it is, for the line beside it. */
  public String words() {
    return words;
  }
}
