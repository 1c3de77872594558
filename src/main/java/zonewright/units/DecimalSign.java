package zonewright.units;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What stands before the decimals of a number, as other people's lists write them. */
public enum DecimalSign {
  POINT(".", ","),
  COMMA(",", ".");

  private static final Pattern LEADING =
      Pattern.compile("[+\\-−]?\\s*([\\d.,]*\\d[\\d.,]*)(?![eE][+-]?\\d)(?:[^\\d.,].*)?");
  private static final Pattern TWO_WAYS = Pattern.compile("[1-9]\\d{0,2}[.,]\\d{3}");

  private final Pattern certain;
  private final Pattern possible;
  private final String group;

  DecimalSign(String decimal, String group) {
    String sign = "\\" + decimal;
    String groups = "[1-9]\\d{0,2}(?:\\" + group + "\\d{3})";
    this.group = group;
    this.certain =
        Pattern.compile(
            "%2$s+%1$s\\d*|%2$s{2,}|\\d*%1$s(?:\\d{1,2}|\\d{4,})|(?:\\d{4,}|0+)?%1$s\\d{3}"
                .formatted(sign, groups));
    this.possible = Pattern.compile("(?:%2$s+|\\d*)(?:%1$s\\d*)?".formatted(sign, groups));
  }

  /** Returns the digits a cell begins with, points and commas included; empty where it does not. */
  private static String digits(String cell) {
    Matcher leading = LEADING.matcher(DecimalText.together(cell.strip()));
    return leading.matches() ? leading.group(1) : "";
  }

  /** Returns which signs some cells show beyond doubt: none, one, or both. */
  public static Set<DecimalSign> shownIn(List<String> cells) {
    EnumSet<DecimalSign> shown = EnumSet.noneOf(DecimalSign.class);
    for (String cell : cells) {
      String digits = digits(cell);
      for (DecimalSign sign : values()) {
        if (sign.certain.matcher(digits).matches()) {
          shown.add(sign);
        }
      }
    }
    return shown;
  }

  /** Says whether the number in a cell can be read with either sign, as 1,250 and 1.250 can. */
  public static boolean twoWays(String cell) {
    return TWO_WAYS.matcher(digits(cell)).matches();
  }

  /** Returns one sentence on a cell that can be read two ways: which they are. */
  public static String twoWaysIn(String cell) {
    String digits = digits(cell);
    return "“%s” can be read two ways; write %s or %s"
        .formatted(cell.strip(), digits.replaceAll("[.,]", ""), digits.replace(',', '.'));
  }

  /** Returns a cell with a point before its decimals and nothing between thousands. */
  public String plain(String cell) {
    String together = DecimalText.together(cell.strip());
    String digits = digits(together);
    return digits.isEmpty() || !possible.matcher(digits).matches()
        ? cell
        : together.replace(digits, digits.replace(group, "").replace(',', '.'));
  }

  /** Returns a number in digits that nobody takes for another: 1.125e0, not 1.125. */
  public static String unmistakable(double value) {
    String text = QuantityText.exact(value);
    return twoWays(text) ? text + "e0" : text;
  }

  /** Returns the sign a person means by a word. */
  public static Optional<DecimalSign> named(String word) {
    return switch (word.strip()) {
      case "comma", "," -> Optional.of(COMMA);
      case "point", "." -> Optional.of(POINT);
      default -> Optional.empty();
    };
  }
}
