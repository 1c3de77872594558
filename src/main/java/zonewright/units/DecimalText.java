package zonewright.units;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/** Decides what the points and commas of a typed number mean. */
final class DecimalText {
  private static final Pattern GROUPED_WITH_COMMAS =
      Pattern.compile("[1-9]\\d{0,2}(,\\d{3})+(\\.\\d*)?");
  private static final Pattern GROUPED_WITH_POINTS =
      Pattern.compile("[1-9]\\d{0,2}(\\.\\d{3})+,\\d*|[1-9]\\d{0,2}(\\.\\d{3}){2,}");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("\\d*,\\d+");
  private static final Pattern SET_APART = Pattern.compile("(?<=\\d)['’\\u00a0\\u202f ](?=\\d{3})");
  private static final Pattern PLAIN = Pattern.compile("\\d+\\.?\\d*|\\.\\d+");

  private DecimalText() {}

  /** Returns a number without what sets its thousands apart but is no point and no comma. */
  static String together(String typed) {
    return SET_APART.matcher(typed).replaceAll("");
  }

  /**
   * Reads digits with their points, commas and exponent.
   *
   * @param whole all that was typed, for messages
   * @param shift how many places the decimal point moves to the right before anything is rounded
   */
  static QuantityText.Reading read(
      String digits, String whole, UnitSystem system, double sign, int shift) {
    int exponent = Math.max(digits.indexOf('e'), digits.indexOf('E'));
    String tail = exponent < 0 ? "" : digits.substring(exponent);
    String mantissa = exponent < 0 ? digits : digits.substring(0, exponent);
    String typed = mantissa.strip();
    String plain = PLAIN.matcher(typed).matches() ? typed : together(typed);
    if (GROUPED_WITH_COMMAS.matcher(plain).matches()) {
      boolean twoWays = plain.indexOf(',') == plain.lastIndexOf(',') && plain.indexOf('.') < 0;
      if (twoWays && system == UnitSystem.SI) {
        return new QuantityText.Unreadable(DecimalSign.twoWaysIn(whole));
      }
      plain = plain.replace(",", "");
    } else if (GROUPED_WITH_POINTS.matcher(plain).matches()) {
      plain = plain.replace(".", "").replace(',', '.');
    } else if (DECIMAL_COMMA.matcher(plain).matches()) {
      plain = plain.replace(',', '.');
    }
    if (!PLAIN.matcher(plain).matches()) {
      return new QuantityText.Unreadable("“%s” is not a number".formatted(whole));
    }
    double value = new BigDecimal(plain + tail).movePointRight(shift).doubleValue();
    if (Double.isInfinite(value)) {
      return new QuantityText.Unreadable("“%s” is too large a number".formatted(whole));
    }
    return new QuantityText.Read(sign * value);
  }
}
