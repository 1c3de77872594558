package zonewright.units;

import java.util.Optional;

/**
 * Arithmetic typed in place of a number: {@code =35*40}. Figures, the signs {@code + - * / ^},
 * percent and parentheses, as spreadsheets calculate them: signs before powers, powers before
 * products, products before sums, and each from the left.
 */
public final class Arithmetic {
  private final String text;
  private int at;

  private Arithmetic(String text) {
    this.text = text;
  }

  /** Says whether a text begins as arithmetic does, with the sign for it. */
  public static boolean begins(String typed) {
    return typed.strip().startsWith("=");
  }

  /**
   * Returns arithmetic as workbooks keep it: no blanks, a point before decimals, the signs of the
   * keyboard, and the equals sign in front.
   */
  public static String plain(String typed) {
    return typed
        .strip()
        .replaceAll("\\s+", "")
        .replace('×', '*')
        .replace('·', '*')
        .replace('÷', '/')
        .replace('−', '-')
        .replaceAll("(\\d),(\\d)", "$1.$2");
  }

  /**
   * Returns what arithmetic in its {@link #plain} form comes to; empty where it comes to nothing.
   */
  public static Optional<Double> value(String plain) {
    if (!begins(plain)) {
      return Optional.empty();
    }
    Arithmetic reading = new Arithmetic(plain.substring(1));
    try {
      double value = reading.sum();
      boolean whole = reading.at == reading.text.length();
      return whole && Math.abs(value) <= 1e300 ? Optional.of(value) : Optional.empty();
    } catch (NumberFormatException none) {
      return Optional.empty();
    }
  }

  private boolean took(char sign) {
    boolean there = at < text.length() && text.charAt(at) == sign;
    at += there ? 1 : 0;
    return there;
  }

  private double sum() {
    double value = product();
    while (true) {
      if (took('+')) {
        value += product();
      } else if (took('-')) {
        value -= product();
      } else {
        return value;
      }
    }
  }

  private double product() {
    double value = power();
    while (true) {
      if (took('*')) {
        value *= power();
      } else if (took('/')) {
        value /= power();
      } else {
        return value;
      }
    }
  }

  private double power() {
    double value = signed();
    while (took('^')) {
      value = Math.pow(value, signed());
    }
    return value;
  }

  private double signed() {
    if (took('-')) {
      return -signed();
    }
    if (took('+')) {
      return signed();
    }
    double value = part();
    while (took('%')) {
      value /= 100;
    }
    return value;
  }

  private double part() {
    if (took('(')) {
      double value = sum();
      if (!took(')')) {
        throw new NumberFormatException("a parenthesis is open");
      }
      return value;
    }
    int from = at;
    while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
      at++;
    }
    return Double.parseDouble(text.substring(from, at));
  }
}
