package zonewright.timetable;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What holds for the whole site.
 *
 * @param windows windows of each weekday; a weekday not listed has none
 * @param mostValvesAtOnce most valves open at the same minute, at least 1; of a controller that
 *     starts programs the most programs that run at the same minute, of which two at most are used
 * @param availableFlow flow the supply can give, above zero; infinity when it never limits
 * @param gapMinutes minutes a valve position stays empty after a valve on it closes: at every
 *     minute, valves open or closed fewer than this many minutes ago number at most {@code
 *     mostValvesAtOnce}
 * @param mostStarts most starts a program may have in a night, at least 1
 * @param mostPrograms most programs a controller that starts programs has, at least 1
 * @param longestRun most minutes a station runs at one start, at least 1
 * @param minuteStep minutes are keyed in as multiples of it, at least 1
 */
public record NightRules(
    Map<DayOfWeek, List<WateringWindow>> windows,
    int mostValvesAtOnce,
    double availableFlow,
    int gapMinutes,
    int mostStarts,
    int mostPrograms,
    int longestRun,
    int minuteStep) {

  /** The most valves a site may open at once. */
  public static final int MOST_VALVES = 1000;

  /** Checks every part, sorts each day's windows and keeps copies. */
  public NightRules {
    Require.between(mostValvesAtOnce, 1, MOST_VALVES, "The most valves at once");
    Require.that(
        availableFlow > 0, "The available flow must be above zero; it is " + availableFlow + ".");
    Require.between(gapMinutes, 0, 240, "The gap between valves in minutes");
    Require.between(mostStarts, 1, 1000, "The most starts of a program");
    Require.between(mostPrograms, 1, 1000, "The most programs");
    Require.between(longestRun, 1, WateringWindow.DAY, "The longest run of a station");
    Require.between(minuteStep, 1, 60, "The step of minutes");
    clash(windows).ifPresent(found -> Require.that(false, "The windows clash: " + found + "."));
    EnumMap<DayOfWeek, List<WateringWindow>> all = new EnumMap<>(DayOfWeek.class);
    windows.forEach((day, list) -> all.put(day, List.copyOf(sorted(list))));
    windows = Collections.unmodifiableMap(all);
  }

  /** Rules of a controller that lets a station run as long as need be. */
  public NightRules(
      Map<DayOfWeek, List<WateringWindow>> windows,
      int mostValvesAtOnce,
      double availableFlow,
      int gapMinutes,
      int mostStarts,
      int mostPrograms) {
    this(
        windows,
        mostValvesAtOnce,
        availableFlow,
        gapMinutes,
        mostStarts,
        mostPrograms,
        WateringWindow.DAY,
        1);
  }

  /**
   * The windows in which cycles of this weekday's night may run, in order; empty when it must not
   * water.
   */
  public List<WateringWindow> windowsOn(DayOfWeek day) {
    return windows.getOrDefault(day, List.of());
  }

  /** The weekdays that have a window. */
  public Set<DayOfWeek> openDays() {
    EnumSet<DayOfWeek> open = EnumSet.noneOf(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      if (!windowsOn(day).isEmpty()) {
        open.add(day);
      }
    }
    return open;
  }

  /** Returns the same with another number of valves that may be open at once, at least 1. */
  public NightRules withMostValves(int count) {
    return new NightRules(
        windows,
        count,
        availableFlow,
        gapMinutes,
        mostStarts,
        mostPrograms,
        longestRun,
        minuteStep);
  }

  NightRules withWindows(Map<DayOfWeek, List<WateringWindow>> others) {
    return new NightRules(
        others,
        mostValvesAtOnce,
        availableFlow,
        gapMinutes,
        mostStarts,
        mostPrograms,
        longestRun,
        minuteStep);
  }

  /** Windows that cannot stand as they are. */
  public sealed interface Clash {
    /** The day to whose windows it happens first. */
    DayOfWeek day();

    /** Two windows of the day overlap. */
    record Overlap(DayOfWeek day) implements Clash {}

    /** The day's last window is still open when the next day's first begins. */
    record IntoNextDay(DayOfWeek day) implements Clash {}
  }

  /** Windows that overlap within a day or with the next one; empty where they may stand. */
  public static Optional<Clash> clash(Map<DayOfWeek, List<WateringWindow>> windows) {
    for (DayOfWeek day : DayOfWeek.values()) {
      List<WateringWindow> today = sorted(windows.getOrDefault(day, List.of()));
      List<WateringWindow> next = sorted(windows.getOrDefault(day.plus(1), List.of()));
      for (int i = 1; i < today.size(); i++) {
        if (today.get(i).startMinute() < today.get(i - 1).endMinute()) {
          return Optional.of(new Clash.Overlap(day));
        }
      }
      boolean runsOn =
          !today.isEmpty()
              && !next.isEmpty()
              && today.get(today.size() - 1).endMinute() - WateringWindow.DAY
                  > next.get(0).startMinute();
      if (runsOn) {
        return Optional.of(new Clash.IntoNextDay(day));
      }
    }
    return Optional.empty();
  }

  private static List<WateringWindow> sorted(List<WateringWindow> windows) {
    List<WateringWindow> copy = new ArrayList<>(windows);
    copy.sort(Comparator.comparingInt(WateringWindow::startMinute));
    return copy;
  }
}
