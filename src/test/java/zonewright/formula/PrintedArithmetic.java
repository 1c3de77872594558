package zonewright.formula;

import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import zonewright.units.CalendarText;

/**
 * Reads a worked step back as anybody would: brackets first, then powers, products and quotients,
 * then sums and differences, each from left to right. Knows nothing of how steps are written.
 *
 * <p>A printed number may be rounded by half of its last digit, so every result is a range. A
 * number in braces is exact.
 */
public final class PrintedArithmetic {
  /** Where a value lies. */
  public record Range(double low, double high) {
    static Range of(double one, double other) {
      boolean none = Double.isNaN(one) || Double.isNaN(other);
      return none ? EVERYTHING : new Range(Math.min(one, other), Math.max(one, other));
    }

    /** Says whether both can be the same number, but for the last bits of a calculation. */
    public boolean meets(Range other) {
      double slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high)) + 1e-12;
      return low - slack <= other.high && other.low <= high + slack;
    }

    /** Says whether the range is narrow enough to tell a right result from a wrong one. */
    public boolean tells() {
      return high - low <= 0.1 * Math.max(Math.abs(low), Math.abs(high));
    }
  }

  private static final Range EVERYTHING =
      new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  private static final Pattern NUMBER =
      Pattern.compile("(-?)([0-9][0-9,]*(?:\\.[0-9]+)?)(?: × 10([⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+))?");
  private static final Pattern CLOCK = Pattern.compile("(\\d{2}):(\\d{2})");
  private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
  private static final Pattern EXACT = Pattern.compile("(-?)\\{([^}]+)\\}");
  private static final List<String> ENDS =
      List.of(" + ", " − ", " × ", " ÷ ", " ^ ", ")", " and ", " = ", ", rounded");
  private static final int DIGITS_OF_A_ROUNDED_CONSTANT = 7;

  private final String text;
  private final boolean rounded;
  private int at;

  private PrintedArithmetic(String text, boolean rounded) {
    this.text = text;
    this.rounded = rounded;
  }

  /**
   * Returns what a step comes to.
   *
   * @param rounded whether its numbers may be rounded; if not, only those of many digits are
   */
  public static Range read(String text, boolean rounded) {
    PrintedArithmetic reader = new PrintedArithmetic(text, rounded);
    Range range = reader.whole();
    if (reader.at < text.length()) {
      throw new IllegalArgumentException("left over: " + text.substring(reader.at));
    }
    return range;
  }

  private boolean take(String words) {
    if (text.startsWith(words, at)) {
      at += words.length();
      return true;
    }
    return false;
  }

  private Range whole() {
    for (boolean larger : new boolean[] {true, false}) {
      if (take(larger ? "the larger of " : "the smaller of ")) {
        Range one = sum();
        if (!take(" and ")) {
          throw new IllegalArgumentException("no second to choose from: " + text);
        }
        Range other = sum();
        return larger
            ? new Range(Math.max(one.low, other.low), Math.max(one.high, other.high))
            : new Range(Math.min(one.low, other.low), Math.min(one.high, other.high));
      }
    }
    Range sum = sum();
    if (take(" = ")) {
      Range said = number(true);
      if (!said.meets(sum)) {
        throw new IllegalArgumentException(sum + " is not " + said + ": " + text);
      }
      double middle = (said.low + said.high) / 2;
      sum = new Range(middle, middle);
    }
    if (take(", rounded up")) {
      return new Range(Numbers.roundUp(sum.low), Numbers.roundUp(sum.high));
    }
    if (take(", rounded down")) {
      return new Range(Numbers.roundDown(sum.low), Numbers.roundDown(sum.high));
    }
    return take(", rounded")
        ? new Range(Numbers.roundNearest(sum.low), Numbers.roundNearest(sum.high))
        : sum;
  }

  private Range sum() {
    Range value = product();
    while (true) {
      if (take(" + ")) {
        Range next = product();
        value = Range.of(value.low + next.low, value.high + next.high);
      } else if (take(" − ")) {
        Range next = product();
        value = Range.of(value.low - next.high, value.high - next.low);
      } else {
        return value;
      }
    }
  }

  private Range product() {
    Range value = power();
    while (true) {
      if (take(" × ")) {
        value = times(value, power());
      } else if (take(" ÷ ")) {
        Range next = power();
        value =
            next.low <= 0 && next.high >= 0
                ? EVERYTHING
                : times(value, Range.of(1 / next.low, 1 / next.high));
      } else {
        return value;
      }
    }
  }

  private static Range times(Range one, Range other) {
    double[] ends = {
      one.low * other.low, one.low * other.high, one.high * other.low, one.high * other.high
    };
    Range low = Range.of(ends[0], ends[1]);
    Range high = Range.of(ends[2], ends[3]);
    return Range.of(Math.min(low.low, high.low), Math.max(low.high, high.high));
  }

  private Range power() {
    Range base = atom();
    if (!take(" ^ ")) {
      return base;
    }
    Range exponent = atom();
    double low = Math.max(0, base.low);
    double[] ends = {
      Math.pow(low, exponent.low),
      Math.pow(low, exponent.high),
      Math.pow(base.high, exponent.low),
      Math.pow(base.high, exponent.high)
    };
    return Range.of(
        Math.min(Math.min(ends[0], ends[1]), Math.min(ends[2], ends[3])),
        Math.max(Math.max(ends[0], ends[1]), Math.max(ends[2], ends[3])));
  }

  private Range atom() {
    for (FunctionKind kind : FunctionKind.values()) {
      if (take(kind.words() + "(")) {
        return function(kind, bracket());
      }
    }
    return take("(") ? bracket() : number(rounded);
  }

  private Range bracket() {
    Range inner = whole();
    if (!take(")")) {
      throw new IllegalArgumentException("a bracket is not closed: " + text);
    }
    return inner;
  }

  private static Range function(FunctionKind kind, Range of) {
    switch (kind) {
      case SQUARE_ROOT -> {
        return Range.of(Math.sqrt(Math.max(0, of.low)), Math.sqrt(of.high));
      }
      case ABSOLUTE -> {
        double most = Math.max(Math.abs(of.low), Math.abs(of.high));
        boolean both = of.low < 0 && of.high > 0;
        return Range.of(both ? 0 : Math.min(Math.abs(of.low), Math.abs(of.high)), most);
      }
      case SINE, COSINE -> {
        double middle = (of.low + of.high) / 2;
        double reach = (of.high - of.low) / 2;
        return Range.of(kind.of(middle) - reach, kind.of(middle) + reach);
      }
      default -> {
        return Range.of(kind.of(of.low), kind.of(of.high));
      }
    }
  }

  /** A number with whatever unit stands behind it; words for a limit that is none are no limit. */
  private Range number(boolean rounded) {
    if (take("π")) {
      return new Range(Math.PI, Math.PI);
    }
    int end = text.length();
    Matcher number = NUMBER.matcher(text).region(at, text.length());
    Matcher exact = EXACT.matcher(text).region(at, text.length());
    Matcher clock = CLOCK.matcher(text).region(at, text.length());
    Matcher date = DATE.matcher(text).region(at, text.length());
    int from = at;
    if (exact.lookingAt()) {
      from = exact.end();
    } else if (number.lookingAt()) {
      from = number.end();
    }
    for (String each : ENDS) {
      int found = text.indexOf(each, from);
      end = found >= 0 ? Math.min(end, found) : end;
    }
    at = end;
    if (date.lookingAt()) {
      double days = CalendarText.days(LocalDate.parse(date.group()));
      return new Range(days, days);
    }
    if (clock.lookingAt()) {
      double day =
          (Integer.parseInt(clock.group(1)) * 60 + Integer.parseInt(clock.group(2))) / 1440.0;
      return new Range(day - 0.5 / 1440, day + 0.5 / 1440);
    }
    if (exact.lookingAt()) {
      double value = Double.parseDouble(exact.group(1) + exact.group(2));
      return new Range(value, value);
    }
    if (!number.lookingAt()) {
      throw new IllegalArgumentException("no number: " + text.substring(from, end) + " in " + text);
    }
    return printed(number, rounded, text.substring(from, end).strip().equals("%"));
  }

  private static Range printed(Matcher number, boolean rounded, boolean percent) {
    String digits = number.group(2).replace(",", "");
    int decimals = digits.indexOf('.') < 0 ? 0 : digits.length() - digits.indexOf('.') - 1;
    boolean many = digits.replace(".", "").length() >= DIGITS_OF_A_ROUNDED_CONSTANT;
    double half = rounded || many ? 0.5 * Math.pow(10, -decimals) : 0;
    double scale = number.group(3) == null ? 1 : Math.pow(10, lowered(number.group(3)));
    scale *= percent ? 0.01 : 1;
    double value = Double.parseDouble(number.group(1) + digits);
    return Range.of((value - half) * scale, (value + half) * scale);
  }

  private static int lowered(String raised) {
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < raised.length(); i++) {
      char sign = raised.charAt(i);
      plain.append(sign == '⁻' ? "-" : Integer.toString("⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(sign)));
    }
    return Integer.parseInt(plain.toString());
  }
}
