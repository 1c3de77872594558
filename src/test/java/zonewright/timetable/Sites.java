package zonewright.timetable;

import java.time.DayOfWeek;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/** Invented sites for tests. */
final class Sites {
  static final Night MONDAY = Night.weekly(DayOfWeek.MONDAY);
  static final Set<DayOfWeek> ALL_DAYS = EnumSet.allOf(DayOfWeek.class);

  private Sites() {}

  /** A zone of program 1 that waters on Mondays. */
  static WateredZone zone(long number, int cycles, int minutes, int soak, double flow) {
    return zone(number, cycles, minutes, soak, flow, on(DayOfWeek.MONDAY));
  }

  static WateredZone zone(
      long number, int cycles, int minutes, int soak, double flow, WateringDays days) {
    return zone(number, 1, cycles, minutes, soak, flow, days);
  }

  static WateredZone zone(
      long number,
      long program,
      int cycles,
      int minutes,
      int soak,
      double flow,
      WateringDays days) {
    return new WateredZone(
        number,
        program,
        OptionalInt.empty(),
        cycles,
        minutes,
        soak,
        flow,
        days,
        OptionalInt.empty());
  }

  static WateringDays on(DayOfWeek first, DayOfWeek... others) {
    return new WateringDays.OnWeekdays(EnumSet.of(first, others));
  }

  /** The same windows on every day. */
  static NightRules rules(int valves, double flow, int gap, WateringWindow... windows) {
    Map<DayOfWeek, List<WateringWindow>> all = new EnumMap<>(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      all.put(day, List.of(windows));
    }
    return new NightRules(all, valves, flow, gap, 16, 99);
  }

  static WateringWindow window(int start, int end) {
    return new WateringWindow(start, end);
  }
}
