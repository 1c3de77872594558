package zonewright.units;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Times of the day and dates as text and back.
 *
 * <p>Both are kept as spreadsheets keep them, so that a cell of a workbook shows the same: a time
 * as the part of the day that has passed, a date as the days since 30 December 1899.
 *
 * <p>Times are shown as in ISO 8601, 00:00 to 23:59, which sorts and leaves no morning or evening
 * in doubt; dates likewise, as 2026-06-01.
 */
public final class CalendarText {
  private static final int DAY_MINUTES = 24 * 60;
  private static final LocalDate FIRST_DATE = LocalDate.of(1899, 12, 30);
  private static final double LAST_DATE = 2_958_465;

  private static final Pattern TIME =
      Pattern.compile(
          "(\\d{1,2})(?:\\s*[:.h]\\s*(\\d{2})(?::00)?)?\\s*(am|pm|a\\.m\\.|p\\.m\\.|h|o['’]clock)?");
  private static final Pattern DIGITS_ONLY = Pattern.compile("(\\d{1,2})(\\d{2})\\s*(am|pm|h)?");
  private static final Pattern ISO_DATE = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})");
  private static final Pattern DAY_MONTH_YEAR =
      Pattern.compile("(\\d{1,2})\\.?\\s+([a-z]{3,9})\\.?,?\\s+(\\d{4})");
  private static final Pattern MONTH_DAY_YEAR =
      Pattern.compile("([a-z]{3,9})\\.?\\s+(\\d{1,2}),?\\s+(\\d{4})");
  private static final Pattern IN_FIGURES =
      Pattern.compile("(\\d{1,2})([/.-])(\\d{1,2})\\2(\\d{2}|\\d{4})");
  private static final Pattern DAYS = Pattern.compile("(-?\\d+(?:\\.\\d+)?) days");

  private static final List<String> MONTHS =
      List.of(
          "january",
          "february",
          "march",
          "april",
          "may",
          "june",
          "july",
          "august",
          "september",
          "october",
          "november",
          "december");

  private CalendarText() {}

  /** Returns the whole minutes of the day that have passed, 0 to 1439. */
  public static int minuteOfDay(double time) {
    return (int) Math.floorMod(Math.round(time * DAY_MINUTES), (long) DAY_MINUTES);
  }

  /** Returns a time of the day from its minutes, of any day before or after. */
  public static double timeOfDay(int minutes) {
    return Math.floorMod(minutes, DAY_MINUTES) / (double) DAY_MINUTES;
  }

  /** Returns a time as {@code 22:05}; the end of the day is {@code 24:00}. */
  public static String time(double time) {
    if (time == 1) {
      return "24:00";
    }
    int minute = minuteOfDay(time);
    return String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60);
  }

  /** Says whether a number of days means a date, one from 1 to 2958465: the last day of 9999. */
  public static boolean isDate(double days) {
    return days >= 1 && days < LAST_DATE + 1;
  }

  /** Returns the date that a number of days means, from 1 to 2958465; fractions are left out. */
  public static LocalDate date(double days) {
    return FIRST_DATE.plusDays((long) Math.floor(days));
  }

  /** Returns the number of days that stands for a date. */
  public static double days(LocalDate date) {
    return date.toEpochDay() - FIRST_DATE.toEpochDay();
  }

  /** Returns a number as a person would type it again, exactly. */
  static String typed(double value, QuantityKind kind) {
    boolean whole =
        kind == QuantityKind.TIME_OF_DAY
            ? value == 1 || value == timeOfDay(minuteOfDay(value))
            : value == Math.rint(value) && value >= 1 && value <= LAST_DATE;
    if (!whole) {
      return QuantityText.exact(value) + " days";
    }
    return kind == QuantityKind.TIME_OF_DAY ? time(value) : date(value).toString();
  }

  /** Returns a number as a cell shows it; one that is no time or date in days. */
  static String shown(double value, QuantityKind kind) {
    boolean fine =
        kind == QuantityKind.TIME_OF_DAY
            ? value >= 0 && value <= 1
            : value >= 1 && value <= LAST_DATE;
    if (!fine) {
      return typed(value, kind);
    }
    return kind == QuantityKind.TIME_OF_DAY ? time(value) : date(value).toString();
  }

  /**
   * Reads a time or a date. Of dates in figures alone the month comes first where the units are of
   * the United States, and else the day, unless only one of them can be a month.
   */
  static QuantityText.Reading read(String text, QuantityKind kind, UnitSystem system) {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    Matcher days = DAYS.matcher(plain);
    if (days.matches()) {
      return new QuantityText.Read(Double.parseDouble(days.group(1)));
    }
    Optional<Double> value =
        kind == QuantityKind.TIME_OF_DAY ? readTime(plain) : readDate(plain, system);
    return value
        .<QuantityText.Reading>map(QuantityText.Read::new)
        .orElseGet(
            () ->
                new QuantityText.Unreadable(
                    "“%s” is not %s; write for example %s"
                        .formatted(text.strip(), kind.wordsWithArticle(), kind.example())));
  }

  private static Optional<Double> readTime(String plain) {
    if (plain.equals("noon") || plain.equals("midday")) {
      return Optional.of(timeOfDay(DAY_MINUTES / 2));
    }
    if (plain.equals("midnight")) {
      return Optional.of(0.0);
    }
    Matcher time = TIME.matcher(plain);
    if (!time.matches()) {
      time = DIGITS_ONLY.matcher(plain);
      if (!time.matches()) {
        return Optional.empty();
      }
    }
    int hour = Integer.parseInt(time.group(1));
    int minute = time.group(2) == null ? 0 : Integer.parseInt(time.group(2));
    String half = time.group(3) == null ? "" : time.group(3).substring(0, 1);
    if (half.equals("a") || half.equals("p")) {
      if (hour < 1 || hour > 12) {
        return Optional.empty();
      }
      hour = hour % 12 + (half.equals("p") ? 12 : 0);
    }
    boolean fine = minute < 60 && (hour < 24 || (hour == 24 && minute == 0));
    return fine ? Optional.of((hour * 60 + minute) / (double) DAY_MINUTES) : Optional.empty();
  }

  private static Optional<Double> readDate(String typed, UnitSystem system) {
    String plain = typed.replaceFirst("^[a-z]{3,9}day,?\\s+", "");
    if (plain.equals("today")) {
      return Optional.of(days(LocalDate.now(ZoneId.systemDefault())));
    }
    Matcher iso = ISO_DATE.matcher(plain);
    if (iso.matches()) {
      return date(iso.group(1), Integer.parseInt(iso.group(2)), iso.group(3));
    }
    Matcher figures = IN_FIGURES.matcher(plain);
    if (figures.matches()) {
      int one = Integer.parseInt(figures.group(1));
      int other = Integer.parseInt(figures.group(3));
      boolean points = figures.group(2).equals(".");
      boolean monthFirst =
          other > MONTHS.size() || (system == UnitSystem.US && !points && one <= MONTHS.size());
      String year = figures.group(4);
      return date(
          year.length() == 2 ? "20" + year : year,
          monthFirst ? one : other,
          Integer.toString(monthFirst ? other : one));
    }
    if (plain.matches(
        "[a-z]{3,9}\\.? \\d{1,2}(st|nd|rd|th)?|\\d{1,2}(st|nd|rd|th)?\\.? [a-z]{3,9}")) {
      String year = Integer.toString(LocalDate.now(ZoneId.systemDefault()).getYear());
      return readDate(plain.replaceAll("(?<=\\d)(st|nd|rd|th)", "") + " " + year, system);
    }
    Matcher first = DAY_MONTH_YEAR.matcher(plain);
    if (first.matches()) {
      return date(first.group(3), month(first.group(2)), first.group(1));
    }
    Matcher second = MONTH_DAY_YEAR.matcher(plain);
    if (second.matches()) {
      return date(second.group(3), month(second.group(1)), second.group(2));
    }
    return Optional.empty();
  }

  /** Returns the month a name or its first three letters or more mean; 0 where they mean none. */
  private static int month(String name) {
    for (int month = 0; month < MONTHS.size(); month++) {
      if (MONTHS.get(month).startsWith(name)) {
        return month + 1;
      }
    }
    return 0;
  }

  private static Optional<Double> date(String year, int month, String day) {
    try {
      LocalDate date = LocalDate.of(Integer.parseInt(year), month, Integer.parseInt(day));
      double days = days(date);
      return days >= 1 ? Optional.of(days) : Optional.empty();
    } catch (DateTimeException none) {
      return Optional.empty();
    }
  }
}
