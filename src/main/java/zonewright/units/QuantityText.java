package zonewright.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers to text and back, the same in every country's settings. */
public final class QuantityText {
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile(
          "(\\d+(?:\\.\\d+)?)\\s*(?:ft|feet|foot|'|′)\\s*(.+?)\\s*(?:in|inch|inches|\"|″)");
  private static final String DIGITS = "[0-9][0-9.,'’\\u00a0\\u202f ]*|[.,][0-9]+";
  private static final Pattern NUMBER_THEN_UNIT =
      Pattern.compile(
          "([+\\-−]?)\\s*(?:(\\d+)[\\s-]+)??(?:(\\d+)\\s*/\\s*(\\d+)|((?:"
              + DIGITS
              + ")(?:[eE][+-]?[0-9]{1,3})?))\\s*([^0-9].*)?");

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
    return text.matches("-0(\\.0+)?") ? text.substring(1) : text;
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
    String text = new BigDecimal(Double.toString(value)).toPlainString();
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  /**
   * Returns {@code value} with at least three significant digits and at least {@code decimals}
   * decimals, for a worked sum.
   */
  public static String readable(double value, int decimals) {
    if (value == 0 || Double.isNaN(value) || Double.isInfinite(value)) {
      return value == 0 ? "0" : Double.toString(value);
    }
    int significant = 3 - 1 - (int) Math.floor(Math.log10(Math.abs(value)));
    String text = grouped(value, Math.min(15, Math.max(decimals, significant)));
    return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
  }

  /**
   * Returns {@code value} of {@code kind} as shown in a cell: {@code 70 %}, {@code 1.28}. No unit
   * but the percent sign.
   */
  public static String shown(double value, QuantityKind kind, int decimals) {
    return kind.percent() ? fixed(value * 100, decimals) + " %" : grouped(value, decimals);
  }

  /** Returns {@code value} as a person would type it again into a cell of {@code kind}, exactly. */
  public static String typed(double value, QuantityKind kind) {
    if (kind.percent()) {
      double hundredfold = Units.ONE.convert(value, Units.PERCENT);
      return exact(hundredfold) + " %";
    }
    return exact(value);
  }

  /**
   * Reads what a person typed into a cell of {@code kind}.
   *
   * <p>Takes plain numbers, units of either system, fractions ({@code 3/4 in}, {@code 1 1/2}), feet
   * with inches, percent, decimal commas and grouped thousands. Refuses a unit of another kind,
   * words, and a comma that could be read both ways.
   */
  public static Reading read(String text, QuantityKind kind, UnitSystem system) {
    String plain = text.strip();
    Unit own = kind.unit(system);
    Matcher feet = FEET_AND_INCHES.matcher(plain);
    if (kind.dimension().equals(Dimension.LENGTH) && feet.matches()) {
      Reading inches = read(feet.group(2), QuantityKind.DEPTH, UnitSystem.US);
      if (inches instanceof Read read) {
        double total = Double.parseDouble(feet.group(1)) * Units.FOOT.in(Units.INCH) + read.value();
        return new Read(Units.INCH.convert(total, own));
      }
    }
    Matcher matcher = NUMBER_THEN_UNIT.matcher(plain);
    if (!matcher.matches()) {
      return new Unreadable(
          "“%s” is not a number; write a %s such as %s"
              .formatted(plain, kind.words(), kind.example()));
    }
    Reading number = number(matcher, plain, system);
    if (!(number instanceof Read read)) {
      return number;
    }
    String words = matcher.group(6) == null ? "" : matcher.group(6).strip();
    return words.isEmpty()
        ? new Read(bare(read.value(), kind))
        : withUnit(read.value(), words, plain, kind, own);
  }

  private static double bare(double value, QuantityKind kind) {
    boolean ratio = kind == QuantityKind.SHARE && Math.abs(value) <= 1;
    return kind.percent() && !ratio ? Units.PERCENT.convert(value, Units.ONE) : value;
  }

  private static Reading withUnit(
      double value, String words, String plain, QuantityKind kind, Unit own) {
    Unit unit = Units.named(words).orElse(null);
    if (unit == null) {
      return new Unreadable(
          "“%s”: the unit “%s” is not known here; write a %s such as %s"
              .formatted(plain, words, kind.words(), kind.example()));
    }
    if (!unit.dimension().equals(own.dimension())
        || (unit.equals(Units.PERCENT) && !kind.percent())) {
      return new Unreadable(
          "“%s” is in %s, which is no unit of %s; write for example %s"
              .formatted(plain, unit.symbol(), kind.words(), kind.example()));
    }
    return new Read(unit.convert(value, own));
  }

  private static Reading number(Matcher matcher, String plain, UnitSystem system) {
    double sign = matcher.group(1).isEmpty() || matcher.group(1).equals("+") ? 1 : -1;
    if (matcher.group(3) != null) {
      double below = Double.parseDouble(matcher.group(4));
      if (below == 0) {
        return new Unreadable("“%s” divides by zero".formatted(plain));
      }
      double whole = matcher.group(2) == null ? 0 : Double.parseDouble(matcher.group(2));
      return new Read(sign * (whole + Double.parseDouble(matcher.group(3)) / below));
    }
    if (matcher.group(2) != null) {
      return new Unreadable("“%s” holds two numbers; write one".formatted(plain));
    }
    return DecimalText.read(matcher.group(5), plain, system, sign);
  }
}
