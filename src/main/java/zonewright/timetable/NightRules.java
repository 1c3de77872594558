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
 * @param mostValvesAtOnce most valves open at the same minute, at least 1
 * @param availableFlow flow the supply can give, above zero; infinity when it never limits
 * @param gapMinutes minutes a valve position stays empty after a valve on it closes: at every
 *     minute, valves open or closed fewer than this many minutes ago number at most {@code
 *     mostValvesAtOnce}
 * @param mostStarts most starts a program may have in a night, at least 1
 * @param noWaterDays weekdays on which nothing may start, whatever their windows
 */
public record NightRules(
    Map<DayOfWeek, List<WateringWindow>> windows,
    int mostValvesAtOnce,
    double availableFlow,
    int gapMinutes,
    int mostStarts,
    Set<DayOfWeek> noWaterDays) {

  /** The most valves a site may open at once. */
  public static final int MOST_VALVES = 1000;

  /** Checks every part, sorts each day's windows and keeps copies. */
  public NightRules {
    Require.between(mostValvesAtOnce, 1, MOST_VALVES, "The most valves at once");
    Require.that(
        availableFlow > 0, "The available flow must be above zero; it is " + availableFlow + ".");
    Require.between(gapMinutes, 0, 240, "The gap between valves in minutes");
    Require.between(mostStarts, 1, 1000, "The most starts of a program");
    EnumSet<DayOfWeek> closed = EnumSet.noneOf(DayOfWeek.class);
    closed.addAll(noWaterDays);
    noWaterDays = Collections.unmodifiableSet(closed);
    windows = sorted(windows, closed);
  }

  /**
   * The windows in which cycles of this weekday's night may run, in order; empty when it must not
   * water.
   */
  public List<WateringWindow> windowsOn(DayOfWeek day) {
    return noWaterDays.contains(day) ? List.of() : windows.getOrDefault(day, List.of());
  }

  /** The weekdays that have a window and are not barred. */
  public Set<DayOfWeek> openDays() {
    EnumSet<DayOfWeek> open = EnumSet.noneOf(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      if (!windowsOn(day).isEmpty()) {
        open.add(day);
      }
    }
    return open;
  }

  NightRules withMostValves(int count) {
    return new NightRules(windows, count, availableFlow, gapMinutes, mostStarts, noWaterDays);
  }

  NightRules withWindows(Map<DayOfWeek, List<WateringWindow>> others) {
    return new NightRules(
        others, mostValvesAtOnce, availableFlow, gapMinutes, mostStarts, noWaterDays);
  }

  /**
   * A day whose windows cannot stand as they are.
   *
   * @param day the day
   * @param sentence what is wrong
   */
  public record Clash(DayOfWeek day, String sentence) {}

  /** Windows that overlap within a day or with the next one; empty where they may stand. */
  public static Optional<Clash> clash(Map<DayOfWeek, List<WateringWindow>> windows) {
    for (DayOfWeek day : DayOfWeek.values()) {
      List<WateringWindow> today = sorted(windows.getOrDefault(day, List.of()));
      List<WateringWindow> next = sorted(windows.getOrDefault(day.plus(1), List.of()));
      for (int i = 1; i < today.size(); i++) {
        if (today.get(i).startMinute() < today.get(i - 1).endMinute()) {
          return Optional.of(new Clash(day, "Two windows of " + Clock.name(day) + " overlap."));
        }
      }
      boolean runsOn =
          !today.isEmpty()
              && !next.isEmpty()
              && today.get(today.size() - 1).endMinute() - WateringWindow.DAY
                  > next.get(0).startMinute();
      if (runsOn) {
        return Optional.of(
            new Clash(
                day,
                "The window of "
                    + Clock.name(day)
                    + " is still open when that of "
                    + Clock.name(day.plus(1))
                    + " begins."));
      }
    }
    return Optional.empty();
  }

  private static List<WateringWindow> sorted(List<WateringWindow> windows) {
    List<WateringWindow> copy = new ArrayList<>(windows);
    copy.sort(Comparator.comparingInt(WateringWindow::startMinute));
    return copy;
  }

  /** The windows by day, each day's in order; those of closed days are not looked at. */
  private static Map<DayOfWeek, List<WateringWindow>> sorted(
      Map<DayOfWeek, List<WateringWindow>> given, Set<DayOfWeek> closed) {
    EnumMap<DayOfWeek, List<WateringWindow>> open = new EnumMap<>(DayOfWeek.class);
    EnumMap<DayOfWeek, List<WateringWindow>> all = new EnumMap<>(DayOfWeek.class);
    given.forEach(
        (day, list) -> {
          all.put(day, List.copyOf(sorted(list)));
          if (!closed.contains(day)) {
            open.put(day, list);
          }
        });
    clash(open).ifPresent(found -> Require.that(false, found.sentence()));
    return Collections.unmodifiableMap(all);
  }
}
