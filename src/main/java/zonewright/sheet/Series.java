package zonewright.sheet;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What follows from the first entries of a column when it is carried on.
 *
 * @param given how many entries stand already
 */
record Series(Entry first, Entry second, int given) {
  private static final Pattern ENDS_IN_NUMBER = Pattern.compile("^(.*?)(\\d+)(\\D*)$");

  /** Returns the series that two entries begin; where the second is blank, the first begins it. */
  static Series of(Entry first, Entry second) {
    return new Series(first, second, alike(first, second) ? 2 : 1);
  }

  private static boolean alike(Entry first, Entry second) {
    if (first instanceof Entry.Figure && second instanceof Entry.Figure) {
      return true;
    }
    if (first instanceof Entry.Words one && second instanceof Entry.Words other) {
      Matcher start = ENDS_IN_NUMBER.matcher(one.text());
      Matcher next = ENDS_IN_NUMBER.matcher(other.text());
      return start.matches()
          && next.matches()
          && start.group(1).equals(next.group(1))
          && start.group(3).equals(next.group(3));
    }
    return false;
  }

  /** Returns the entry at a place, counted from 0. */
  Entry at(int place) {
    if (first instanceof Entry.Figure one) {
      BigDecimal start = BigDecimal.valueOf(one.value());
      BigDecimal step =
          given == 2
              ? BigDecimal.valueOf(((Entry.Figure) second).value()).subtract(start)
              : BigDecimal.ONE;
      return new Entry.Figure(step.multiply(BigDecimal.valueOf(place)).add(start).doubleValue());
    }
    if (first instanceof Entry.Words words) {
      Matcher start = ENDS_IN_NUMBER.matcher(words.text());
      return start.matches() ? counted(start, place) : first;
    }
    return first;
  }

  private Entry counted(Matcher start, int place) {
    BigInteger step = BigInteger.ONE;
    if (given == 2) {
      Matcher next = ENDS_IN_NUMBER.matcher(((Entry.Words) second).text());
      step =
          next.matches()
              ? new BigInteger(next.group(2)).subtract(new BigInteger(start.group(2)))
              : BigInteger.ONE;
    }
    BigInteger number =
        new BigInteger(start.group(2)).add(step.multiply(BigInteger.valueOf(place)));
    String digits = number.max(BigInteger.ZERO).toString();
    String zeros = "0".repeat(Math.max(0, start.group(2).length() - digits.length()));
    boolean padded = start.group(2).startsWith("0");
    return new Entry.Words(start.group(1) + (padded ? zeros : "") + digits + start.group(3));
  }
}
