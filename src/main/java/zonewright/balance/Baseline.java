package zonewright.balance;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The runs of a zone as they are keyed in at 100 percent: minutes of each cycle, and the days on
 * which they run.
 */
public final class Baseline {
  private static final int[] NONE = {};
  private static final int WEEK = 7;

  /** A half goes up, also one that lacks the last bits. */
  private static final double HALF = 0.500000001;

  private final int[][] byWeekday;
  private final Dates dates;
  private final int every;
  private final int from;
  private final double step;
  private final double longestCycle;
  private final boolean evening;

  /** Which dates count besides weekdays. */
  private enum Dates {
    ALL,
    ODD,
    EVEN,
    INTERVAL
  }

  private Baseline(
      int[][] byWeekday,
      Dates dates,
      int every,
      int from,
      double step,
      double longestCycle,
      boolean evening) {
    this.byWeekday = byWeekday;
    this.dates = dates;
    this.every = every;
    this.from = from;
    this.step = step;
    this.longestCycle = longestCycle;
    this.evening = evening;
  }

  /**
   * Returns a week that repeats.
   *
   * @param minutes minutes of each cycle of the seven days, Monday first; none on days without
   *     water
   * @param step the controller's step of minutes, to which scaled runs are rounded
   */
  public static Baseline weekly(List<int[]> minutes, double step) {
    if (minutes.size() != WEEK) {
      throw new IllegalArgumentException("a week has seven days");
    }
    int[][] copy = minutes.stream().map(int[]::clone).toArray(int[][]::new);
    return new Baseline(copy, Dates.ALL, 1, 0, step, 0, false);
  }

  /** Returns the same on odd dates only. */
  public Baseline onOddDates() {
    return new Baseline(byWeekday, Dates.ODD, 1, 0, step, longestCycle, evening);
  }

  /** Returns the same on even dates only. */
  public Baseline onEvenDates() {
    return new Baseline(byWeekday, Dates.EVEN, 1, 0, step, longestCycle, evening);
  }

  /**
   * Returns the same on every so many days only.
   *
   * @param from one of its days, by its number since the beginning of 1970
   */
  public Baseline everyFewDays(int days, int from) {
    return new Baseline(byWeekday, Dates.INTERVAL, days, from, step, longestCycle, evening);
  }

  /**
   * Returns the same for a controller that divides a day's minutes into cycles by itself.
   *
   * @param longest minutes of the longest cycle
   */
  public Baseline divided(double longest) {
    return new Baseline(byWeekday, dates, every, from, step, longest, evening);
  }

  /** Returns the same for nights that begin in the evening: their water is there the next day. */
  public Baseline fromTheEvening() {
    return new Baseline(byWeekday, dates, every, from, step, longestCycle, true);
  }

  /** Returns the minutes of a week spread alike over all seven days, in one cycle more or less. */
  public Baseline daily() {
    int minutes = 0;
    int days = 0;
    int longest = 1;
    for (int[] day : byWeekday) {
      days += day.length == 0 ? 0 : 1;
      for (int cycle : day) {
        minutes += cycle;
        longest = Math.max(longest, cycle);
      }
    }
    double share =
        switch (dates) {
          case ALL -> 1;
          case ODD, EVEN -> 0.5;
          case INTERVAL -> 1.0 / every;
        };
    int aDay = (int) Math.round(minutes * share / WEEK);
    int cycles = days == 0 ? 0 : Math.max(1, (aDay + longest - 1) / longest);
    int[] each = new int[cycles];
    for (int cycle = 0; cycle < cycles; cycle++) {
      each[cycle] = aDay / cycles + (cycle < aDay % cycles ? 1 : 0);
    }
    int[][] week = {each, each, each, each, each, each, each};
    return new Baseline(week, Dates.ALL, 1, 0, step, longestCycle, evening);
  }

  /** Returns how many days of a week have water, on average. */
  public double daysAWeek() {
    int days = 0;
    for (int[] day : byWeekday) {
      days += day.length == 0 ? 0 : 1;
    }
    return switch (dates) {
      case ALL -> days;
      case ODD, EVEN -> days * 0.5;
      case INTERVAL -> (double) days / every;
    };
  }

  /** Returns the minutes of each cycle of a weekday as keyed in, Monday 0. */
  public List<Integer> weekday(int day) {
    return Arrays.stream(byWeekday[day]).boxed().toList();
  }

  /** Says whether it runs in nights that begin in the evening. */
  public boolean evening() {
    return evening;
  }

  /** Returns the controller's step of minutes. */
  public double step() {
    return step;
  }

  /** Returns the longest cycle of a controller that divides a day's minutes; 0 for others. */
  public double longestCycle() {
    return longestCycle;
  }

  /** Returns whether it runs on odd dates only, on even dates only, or on neither of these. */
  public Optional<Boolean> oddDates() {
    return switch (dates) {
      case ODD -> Optional.of(true);
      case EVEN -> Optional.of(false);
      default -> Optional.empty();
    };
  }

  /** Returns from one of its days to the next, where it runs every few days; else 0. */
  public int every() {
    return dates == Dates.INTERVAL ? every : 0;
  }

  /** Returns one of its days where it runs every few days, since the beginning of 1970. */
  public int from() {
    return from;
  }

  private int[] keyed(DaysOfWeather days, int morning) {
    int day = evening ? morning - 1 : morning;
    boolean due =
        switch (dates) {
          case ALL -> true;
          case ODD -> days.dayOfMonth(day) % 2 == 1;
          case EVEN -> days.dayOfMonth(day) % 2 == 0;
          case INTERVAL -> Math.floorMod(days.dayNumber(day) - from, every) == 0;
        };
    return due ? byWeekday[days.weekday(day)] : NONE;
  }

  /**
   * Returns the minutes of each cycle on a day, scaled and rounded to the controller's step; none
   * where it does not run.
   *
   * @param percent 1 for what is keyed in; not negative
   */
  double[] cycles(DaysOfWeather days, int day, double percent) {
    int[] keyed = keyed(days, day);
    if (longestCycle <= 0) {
      double[] scaled = new double[keyed.length];
      for (int cycle = 0; cycle < scaled.length; cycle++) {
        scaled[cycle] = rounded(keyed[cycle] * percent);
      }
      return scaled;
    }
    double minutes = 0;
    for (int cycle : keyed) {
      minutes += cycle;
    }
    minutes = rounded(minutes * percent);
    double[] cycles = new double[(int) Math.ceil(minutes / longestCycle - 1e-9)];
    for (int cycle = 0; cycle < cycles.length; cycle++) {
      cycles[cycle] = Math.min(longestCycle, minutes - cycle * longestCycle);
    }
    return cycles;
  }

  private double rounded(double minutes) {
    return step * Math.floor(minutes / step + HALF);
  }
}
