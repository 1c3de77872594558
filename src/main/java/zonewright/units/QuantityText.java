package zonewright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers to text and back, the same in every country's settings. */
public final class QuantityText {
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile(
          "(\\d+(?:\\.\\d+)?)\\s*(?:ft|feet|foot|'|′)\\s*(.+?)\\s*(?:in|inch|inches|\"|″)");
  private static final String DIGITS = "[0-9][0-9.,'’\\u00a0\\u202f ]*|[.,][0-9]+";
  private static final Pattern NUMBER_THEN_UNIT =
      Pattern.compile("([+\\-−]?)\\s*((?:" + DIGITS + ")(?:[eE][+-]?[0-9]{1,3})?)\\s*([^0-9].*)?");
  private static final Pattern FRACTION_THEN_UNIT =
      Pattern.compile("([+\\-−]?)\\s*(?:(\\d+)[\\s-]+)?(\\d+)\\s*/\\s*(\\d+)\\s*([^0-9].*)?");

  /** Greater numbers would leave the range of numbers in another unit. */
  private static final double GREATEST = 1e300;

  /** Smaller numbers are read more easily as powers of ten. */
  private static final double VERY_SMALL = 1e-5;

  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

  /** The most decimals shown of a number that was typed. */
  public static final int MOST_DECIMALS = 6;

  private QuantityText() {}

  /**
   * What became of a text: a number in the kind's own unit, or a sentence that says what is wrong.
   */
  public sealed interface Reading permits Read, Unreadable {}

  /** A number, in the unit of the kind and system asked for. */
  public record Read(double value) implements Reading {}

  /** No number; {@code sentence} says what is wrong and what would be right. */
  public record Unreadable(String sentence) implements Reading {}

  /** Returns {@code value} with the decimals given, halves rounded up, no grouping. */
  public static String fixed(double value, int decimals) {
    String text = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    boolean zero =
        text.charAt(0) == '-'
            && text.chars().allMatch(sign -> sign == '-' || sign == '0' || sign == '.');
    return zero ? text.substring(1) : text;
  }

  /** Returns {@code value} with the decimals given and thousands set apart, as {@code 12,345.6}. */
  public static String grouped(double value, int decimals) {
    String text = fixed(value, decimals);
    int end = text.indexOf('.') < 0 ? text.length() : text.indexOf('.');
    int start = text.startsWith("-") ? 1 : 0;
    StringBuilder grouped = new StringBuilder(text);
    for (int at = end - 3; at > start; at -= 3) {
      grouped.insert(at, ',');
    }
    return grouped.toString();
  }

  /** Returns the shortest text that reads back as exactly {@code value}, without an exponent. */
  public static String exact(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }

  /**
   * Returns {@code value} with at least three significant digits and at least {@code decimals}
   * decimals, for a worked sum; a very small one in powers of ten, as {@code 4.9 × 10⁻⁹}.
   */
  public static String readable(double value, int decimals) {
    int significant = 3 - exponent(value);
    return written(value, Math.max(decimals, significant - 1), 3);
  }

  /** Returns {@code value} with {@code digits} significant digits, as {@link #readable} does. */
  public static String significant(double value, int digits) {
    return written(value, Math.max(0, digits - 1 - exponent(value)), digits);
  }

  private static int exponent(double value) {
    return value == 0 || Double.isNaN(value) || Double.isInfinite(value)
        ? 0
        : (int) Math.floor(Math.log10(Math.abs(value)));
  }

  private static String written(double value, int decimals, int digits) {
    if (value == 0 || Double.isNaN(value) || Double.isInfinite(value)) {
      return value == 0 ? "0" : Double.toString(value);
    }
    if (Math.abs(value) >= VERY_SMALL) {
      return withoutZeros(grouped(value, Math.min(15, decimals)));
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits));
    int power = rounded.precision() - rounded.scale() - 1;
    BigDecimal mantissa = rounded.movePointLeft(power).stripTrailingZeros();
    return mantissa.toPlainString() + " × 10" + raised(power);
  }

  private static String withoutZeros(String text) {
    int end = text.length();
    while (text.indexOf('.') >= 0 && text.charAt(end - 1) == '0') {
      end--;
    }
    return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
  }

  private static String raised(int power) {
    StringBuilder text = new StringBuilder();
    String digits = Integer.toString(power);
    for (int i = 0; i < digits.length(); i++) {
      char sign = digits.charAt(i);
      text.append(sign == '-' ? '⁻' : RAISED.charAt(sign - '0'));
    }
    return text.toString();
  }

  /**
   * Returns {@code value} of {@code kind} as shown in a cell: {@code 70 %}, {@code 1.28}. No unit
   * but the percent sign.
   */
  public static String shown(double value, QuantityKind kind, int decimals) {
    if (kind.onCalendar()) {
      return CalendarText.shown(value, kind);
    }
    return kind.percent() ? fixed(value * 100, decimals) + " %" : grouped(value, decimals);
  }

  /**
   * Returns how many decimals {@code value} of {@code kind} has, as a percent where it is one, at
   * least {@code usual}; just these where it has more than {@link #MOST_DECIMALS}, as a third does.
   */
  public static int decimals(double value, QuantityKind kind, int usual) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      return usual;
    }
    BigDecimal exact = new BigDecimal(Double.toString(value)).stripTrailingZeros();
    int decimals = exact.scale() - (kind.percent() ? 2 : 0);
    return decimals > MOST_DECIMALS ? usual : Math.max(usual, decimals);
  }

  /** Returns {@code value} as a person would type it again into a cell of {@code kind}, exactly. */
  public static String typed(double value, QuantityKind kind) {
    if (kind.percent()) {
      BigDecimal hundredfold = new BigDecimal(Double.toString(value)).movePointRight(2);
      return hundredfold.stripTrailingZeros().toPlainString() + " %";
    }
    return kind.onCalendar() ? CalendarText.typed(value, kind) : exact(value);
  }

  /**
   * Reads what a person typed into a cell of {@code kind}.
   *
   * <p>Takes plain numbers, units of either system, fractions ({@code 3/4 in}, {@code 1 1/2}), feet
   * with inches, percent, decimal commas and grouped thousands. Where a number is shown in percent
   * one without a unit is percent, however small: 0.7 is 0.7 %. A fraction alone is the rise over
   * the run where a slope is asked for: {@code 1/50} is 2 %; so are ratios ({@code 4:1}, {@code
   * 3H:1V}) and angles. Refuses a unit of another kind, words, and what could be read two ways.
   */
  public static Reading read(String text, QuantityKind kind, UnitSystem system) {
    String plain = text.strip();
    if (kind.onCalendar()) {
      return CalendarText.read(plain, kind, system);
    }
    Reading reading = readable(plain, kind, system);
    return reading instanceof Read read && !(Math.abs(read.value()) <= GREATEST)
        ? new Unreadable("“%s” is too large a number".formatted(plain))
        : reading;
  }

  private static Reading readable(String plain, QuantityKind kind, UnitSystem system) {
    Matcher feet = FEET_AND_INCHES.matcher(plain);
    if (kind.dimension().equals(Dimension.LENGTH) && feet.matches()) {
      Reading inches = read(feet.group(2), QuantityKind.DEPTH, UnitSystem.US);
      if (inches instanceof Read read) {
        double total = Double.parseDouble(feet.group(1)) * Units.FOOT.in(Units.INCH) + read.value();
        return new Read(Units.INCH.convert(total, kind.unit(system)));
      }
    }
    Optional<Reading> angle =
        kind == QuantityKind.SLOPE
            ? AngleText.slope(plain)
            : kind == QuantityKind.ANGLE ? AngleText.angle(plain, system) : Optional.empty();
    if (angle.isPresent()) {
      return angle.get();
    }
    Matcher fraction = FRACTION_THEN_UNIT.matcher(plain);
    if (plain.indexOf('/') >= 0 && fraction.matches()) {
      return fraction(fraction, plain, kind, system);
    }
    Matcher number = NUMBER_THEN_UNIT.matcher(plain);
    if (!number.matches()) {
      return new Unreadable(
          "“%s” is not a number; write %s such as %s"
              .formatted(plain, kind.wordsWithArticle(), kind.example()));
    }
    double sign = sign(number.group(1));
    Reading bare = DecimalText.read(number.group(2), plain, system, sign, 0);
    if (!(bare instanceof Read read)) {
      return bare;
    }
    String words = words(number.group(3));
    return inPercent(words, kind)
        ? DecimalText.read(number.group(2), plain, system, sign, -2)
        : withUnit(read.value(), words, plain, kind, system);
  }

  private static Reading fraction(
      Matcher fraction, String plain, QuantityKind kind, UnitSystem system) {
    double below = Double.parseDouble(fraction.group(4));
    if (below == 0) {
      return new Unreadable("“%s” divides by zero".formatted(plain));
    }
    double whole = fraction.group(2) == null ? 0 : Double.parseDouble(fraction.group(2));
    double value =
        sign(fraction.group(1)) * (whole + Double.parseDouble(fraction.group(3)) / below);
    String words = words(fraction.group(5));
    boolean alone = words.isEmpty() && fraction.group(2) == null;
    if (kind == QuantityKind.SLOPE && alone) {
      return new Read(value);
    }
    if (kind == QuantityKind.SHARE && alone) {
      return new Unreadable(
          "“%s” can be read two ways; write %s %% or %s %%"
              .formatted(plain, readable(value * 100, 2), readable(value, 4)));
    }
    return inPercent(words, kind)
        ? new Read(Units.PERCENT.convert(value, Units.ONE))
        : withUnit(value, words, plain, kind, system);
  }

  private static double sign(String sign) {
    return sign.isEmpty() || sign.equals("+") ? 1 : -1;
  }

  private static String words(String group) {
    return group == null ? "" : group.strip();
  }

  /** Says whether a number counts hundredths: its size says nothing about it. */
  private static boolean inPercent(String words, QuantityKind kind) {
    return kind.percent()
        && (words.isEmpty() || Units.named(words).filter(Units.PERCENT::equals).isPresent());
  }

  private static Reading withUnit(
      double value, String words, String plain, QuantityKind kind, UnitSystem system) {
    if (words.isEmpty()) {
      return new Read(value);
    }
    Unit own = kind.unit(system);
    Unit unit = Units.named(words).orElse(null);
    if (unit == null) {
      return new Unreadable(
          "“%s”: the unit “%s” is not known here; write %s such as %s"
              .formatted(plain, words, kind.wordsWithArticle(), kind.example()));
    }
    if (kind == QuantityKind.SLOPE && unit.equals(Units.DEGREE)) {
      return AngleText.ofDegrees(plain, value);
    }
    if (!kind.takes(unit)) {
      return new Unreadable(
          "“%s”: the unit “%s” is none of %s; write for example %s"
              .formatted(plain, words, kind.wordsWithArticle(), kind.example()));
    }
    return new Read(unit.convert(value, own));
  }
}
