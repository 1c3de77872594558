package zonewright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Angles in degrees, minutes and seconds, north or south, and slopes as ratios: {@code 45°43′ N},
 * {@code 4:1}, {@code 3H:1V}.
 */
final class AngleText {
  private static final String NUMBER = "(\\d+(?:[.,]\\d+)?)\\s*";
  private static final Pattern PARTS =
      Pattern.compile(
          "([+\\-−]?)\\s*(\\d+)\\s*(?:[°º]|deg|degrees)\\s*"
              + NUMBER
              + "(?:['’′]|min|minutes)\\s*(?:"
              + NUMBER
              + "(?:[\"”″]|''|s|sec|seconds))?");
  private static final Pattern SIDE_FIRST = Pattern.compile("([ns])\\s*(\\d.*)");
  private static final Pattern SIDE_LAST = Pattern.compile("(?<![a-z])(?:n|s|north|south)$");
  private static final Pattern RATIO =
      Pattern.compile(NUMBER + "([hv]?)\\s*(?::|to)\\s*" + NUMBER + "([hv]?)");
  private static final Pattern ONE_IN = Pattern.compile("1\\s+in\\s+" + NUMBER);
  private static final int DIGITS = 12;

  private AngleText() {}

  /** Reads an angle that has minutes or says north or south; nothing where it has neither. */
  static Optional<QuantityText.Reading> angle(String typed, UnitSystem system) {
    String plain = typed.toLowerCase(Locale.ROOT);
    Matcher last = SIDE_LAST.matcher(plain);
    if (last.find() && last.start() > 0 && !PARTS.matcher(plain).matches()) {
      return sided(typed, plain.substring(0, last.start()).strip(), last.group(), system);
    }
    Matcher first = SIDE_FIRST.matcher(plain);
    return first.matches()
        ? sided(typed, first.group(2).strip(), first.group(1), system)
        : parts(typed, plain);
  }

  private static Optional<QuantityText.Reading> sided(
      String typed, String angle, String side, UnitSystem system) {
    QuantityText.Reading reading = QuantityText.read(angle, QuantityKind.ANGLE, system);
    if (!(reading instanceof QuantityText.Read read) || angle.matches("[+\\-−].*")) {
      return unreadable(
          "“%s” is no latitude; write for example 38°30' N, or -33.9° for one in the south"
              .formatted(typed));
    }
    return read(side.charAt(0) == 's' ? -read.value() : read.value());
  }

  private static Optional<QuantityText.Reading> parts(String typed, String plain) {
    Matcher parts = PARTS.matcher(plain);
    if (!parts.matches()) {
      return Optional.empty();
    }
    double minutes = number(parts.group(3));
    double seconds = parts.group(4) == null ? 0 : number(parts.group(4));
    boolean broken = parts.group(4) != null && minutes != Math.rint(minutes);
    if (minutes >= 60 || seconds >= 60 || broken) {
      return unreadable(
          "“%s” is no angle; minutes and seconds stay below 60, as in 38°30'".formatted(typed));
    }
    double degrees = rounded(number(parts.group(2)) + minutes / 60 + seconds / 3600);
    return read(parts.group(1).isEmpty() || parts.group(1).equals("+") ? degrees : -degrees);
  }

  /** Reads a slope that is a ratio or has minutes; nothing where it is neither. */
  static Optional<QuantityText.Reading> slope(String typed) {
    String plain = typed.toLowerCase(Locale.ROOT);
    Matcher ratio = RATIO.matcher(plain);
    if (ratio.matches()) {
      return Optional.of(
          ratio(
              typed,
              number(ratio.group(1)),
              ratio.group(2),
              number(ratio.group(3)),
              ratio.group(4)));
    }
    Matcher oneIn = ONE_IN.matcher(plain);
    if (oneIn.matches()) {
      return Optional.of(rise(typed, 1, number(oneIn.group(1))));
    }
    return parts(typed, plain)
        .map(
            reading ->
                reading instanceof QuantityText.Read read
                    ? ofDegrees(typed, read.value())
                    : reading);
  }

  /** The 1 of a ratio is the rise, whichever side it stands on; letters say it otherwise. */
  private static QuantityText.Reading ratio(
      String typed, double left, String leftIs, double right, String rightIs) {
    String sides = leftIs + rightIs;
    if (sides.equals("hv") || sides.equals("vh")) {
      return sides.equals("vh") ? rise(typed, left, right) : rise(typed, right, left);
    }
    if (sides.isEmpty() && (left == 1 || right == 1)) {
      return right == 1 ? rise(typed, 1, left) : rise(typed, 1, right);
    }
    return new QuantityText.Unreadable(
        "“%s” can be read two ways; write for example 3H:1V, 1V:3H or a percent".formatted(typed));
  }

  private static QuantityText.Reading rise(String typed, double rise, double run) {
    return run == 0
        ? new QuantityText.Unreadable("“%s” divides by zero".formatted(typed))
        : new QuantityText.Read(rise / run);
  }

  /** Returns the slope of an angle: its tangent, so that 45° is 100 %. */
  static QuantityText.Reading ofDegrees(String typed, double degrees) {
    return Math.abs(degrees) < 90
        ? new QuantityText.Read(rounded(Math.tan(Math.toRadians(degrees))))
        : new QuantityText.Unreadable(
            "“%s” is no slope; write an angle below 90°, a percent or a ratio such as 4:1"
                .formatted(typed));
  }

  private static double number(String digits) {
    return Double.parseDouble(digits.replace(',', '.'));
  }

  /** Without the last bits that come from dividing by 60 and from the tangent. */
  private static double rounded(double value) {
    return new BigDecimal(value).round(new MathContext(DIGITS)).doubleValue();
  }

  private static Optional<QuantityText.Reading> read(double value) {
    return Optional.of(new QuantityText.Read(value));
  }

  private static Optional<QuantityText.Reading> unreadable(String sentence) {
    return Optional.of(new QuantityText.Unreadable(sentence));
  }
}
