package zonewright.weather;

import java.util.Locale;

/** Numbers as the sentences of this package write them. */
final class Sentence {
  private Sentence() {}

  /** Returns a whole number with a comma for each thousand. */
  static String number(long number) {
    return String.format(Locale.ROOT, "%,d", number);
  }

  /** Returns a number with some decimals. */
  static String decimal(double number, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", number);
  }

  /** Returns a number of things in words: 1 value, 12 values. */
  static String count(long number, String one) {
    return number(number) + " " + (number == 1 ? one : one + "s");
  }
}
