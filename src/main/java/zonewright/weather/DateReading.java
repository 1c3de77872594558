package zonewright.weather;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads days and hours as files write them; which of day and month comes first is found out. */
final class DateReading {
  /** Nothing that can be read. */
  static final long NONE = Long.MIN_VALUE;

  static final int MINUTES_A_DAY = 24 * 60;
  private static final int FIRST_YEAR = 1700;
  private static final int LAST_YEAR = 2200;

  private static final Pattern TIMED =
      Pattern.compile(
          "(.*?\\d)(?:T| +|, )(\\d{1,2}):(\\d{2})(?::\\d{2}(?:\\.\\d+)?)?(?: ?([AaPp])[Mm])?(?:Z|[+-]\\d{2}:?\\d{2})?");
  private static final Pattern PARTED =
      Pattern.compile("(\\d{1,4})[-/. ](\\d{1,2}|\\p{L}{3})[-/. ](\\d{1,4})");
  private static final Pattern TOGETHER = Pattern.compile("(\\d{4})(\\d{2})(\\d{2})(\\d{2})?");
  private static final List<String> MONTHS =
      List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

  private boolean dayFirst;

  /** Says that the day stands before the month, else the month before the day. */
  void dayFirst(boolean first) {
    dayFirst = first;
  }

  /** Says whether a text names a time of the day beside the day. */
  static boolean hasTime(String text) {
    Matcher together = TOGETHER.matcher(text);
    return TIMED.matcher(text).matches() || (together.matches() && together.group(4) != null);
  }

  /** Says whether a date could be read with the day or the month first. */
  static boolean twoWays(String text) {
    Matcher timed = TIMED.matcher(text);
    Matcher parted = PARTED.matcher(timed.matches() ? timed.group(1) : text);
    return parted.matches()
        && parted.group(1).length() <= 2
        && Character.isDigit(parted.group(2).charAt(0));
  }

  /** Returns the minutes since the beginning of 1970, or {@link #NONE}. */
  long minutes(String text) {
    if (text.length() > 40) {
      return NONE;
    }
    if (text.length() == 10 && text.charAt(4) == '-' && text.charAt(7) == '-') {
      return day(digits(text, 0, 4), digits(text, 5, 7), digits(text, 8, 10));
    }
    Matcher together = TOGETHER.matcher(text);
    if (together.matches()) {
      long day = day(digits(text, 0, 4), digits(text, 4, 6), digits(text, 6, 8));
      int hour = together.group(4) == null ? 0 : digits(text, 8, 10);
      return day == NONE || hour > 24 ? NONE : day + 60L * hour;
    }
    Matcher timed = TIMED.matcher(text);
    boolean time = timed.matches();
    long day = parted(time ? timed.group(1) : text);
    if (day == NONE || !time) {
      return day;
    }
    int hour = Integer.parseInt(timed.group(2));
    int minute = Integer.parseInt(timed.group(3));
    if (timed.group(4) != null) {
      boolean afternoon = timed.group(4).equalsIgnoreCase("p");
      hour = hour % 12 + (afternoon ? 12 : 0);
    }
    return hour > 24 || minute > 59 ? NONE : day + 60L * hour + minute;
  }

  private long parted(String text) {
    Matcher parted = PARTED.matcher(text.strip());
    if (!parted.matches()) {
      return NONE;
    }
    String middle = parted.group(2).toLowerCase(Locale.ROOT);
    int first = Integer.parseInt(parted.group(1));
    int last = Integer.parseInt(parted.group(3));
    if (!Character.isDigit(middle.charAt(0))) {
      int month = MONTHS.indexOf(middle) + 1;
      return first > 31 ? day(first, month, last) : day(last, month, first);
    }
    int second = Integer.parseInt(middle);
    if (parted.group(1).length() == 4) {
      return day(first, second, last);
    }
    return dayFirst ? day(last, second, first) : day(last, first, second);
  }

  private static int digits(String text, int from, int to) {
    int number = 0;
    for (int i = from; i < to; i++) {
      int digit = text.charAt(i) - '0';
      if (digit < 0 || digit > 9) {
        return -1;
      }
      number = 10 * number + digit;
    }
    return number;
  }

  /** Returns the minutes at which a day begins, or {@link #NONE} where there is no such day. */
  static long day(int year, int month, int day) {
    if (year < FIRST_YEAR || year > LAST_YEAR) {
      return NONE;
    }
    try {
      return LocalDate.of(year, month, day).toEpochDay() * MINUTES_A_DAY;
    } catch (DateTimeException none) {
      return NONE;
    }
  }

  /** Returns the minutes at which a day of a year begins, or {@link #NONE}. */
  static long dayOfYear(int year, int day) {
    if (year < FIRST_YEAR || year > LAST_YEAR) {
      return NONE;
    }
    try {
      return LocalDate.ofYearDay(year, day).toEpochDay() * MINUTES_A_DAY;
    } catch (DateTimeException none) {
      return NONE;
    }
  }
}
