package zonewright.timetable;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds out how little the windows of overfull nights would have to grow. */
final class WindowWidening {
  private final NightRules rules;
  private final Overruns overruns;

  WindowWidening(NightRules rules, Overruns overruns) {
    this.rules = rules;
    this.overruns = overruns;
  }

  Optional<Cure> widerWindow() {
    Map<DayOfWeek, List<WateringWindow>> windows = new EnumMap<>(DayOfWeek.class);
    windows.putAll(rules.windows());
    List<Cure.Shift> shifts = new ArrayList<>();
    for (DayOfWeek day : DayOfWeek.values()) {
      int needed =
          overruns.overfull().stream()
              .filter(plan -> plan.night().weekday() == day)
              .mapToInt(NightPlan::overrunMinutes)
              .max()
              .orElse(0);
      if (needed > 0) {
        widen(day, needed, windows, shifts);
      }
    }
    if (shifts.isEmpty()) {
      return Optional.empty();
    }
    NightRules wider = rules.withWindows(windows);
    int left = overruns.withRules(wider);
    return left >= overruns.now()
        ? Optional.empty()
        : Optional.of(new Cure.WiderWindows(shifts, wider, left));
  }

  /**
   * Closes the day's last window later, as far as the next day's first lets it, then opens the
   * first earlier.
   */
  private void widen(
      DayOfWeek day,
      int needed,
      Map<DayOfWeek, List<WateringWindow>> windows,
      List<Cure.Shift> shifts) {
    List<WateringWindow> today = new ArrayList<>(windows.get(day));
    WateringWindow first = today.get(0);
    WateringWindow last = today.get(today.size() - 1);
    List<WateringWindow> next =
        rules.windowsOn(day.plus(1)).isEmpty() ? List.of() : windows.get(day.plus(1));
    List<WateringWindow> before = windows.getOrDefault(day.minus(1), List.of());
    int latest = last.startMinute() + WateringWindow.DAY;
    latest = Math.min(latest, first.startMinute() + WateringWindow.DAY);
    if (!next.isEmpty()) {
      latest = Math.min(latest, next.get(0).startMinute() + WateringWindow.DAY);
    }
    int later = Math.max(0, Math.min(needed, latest - last.endMinute()));
    int earliest =
        before.isEmpty()
            ? 0
            : Math.max(0, before.get(before.size() - 1).endMinute() - WateringWindow.DAY);
    earliest = Math.max(earliest, last.endMinute() + later - WateringWindow.DAY);
    int earlier = Math.max(0, Math.min(needed - later, first.startMinute() - earliest));
    if (later > 0) {
      int closes = last.endMinute() + later;
      today.set(today.size() - 1, new WateringWindow(last.startMinute(), closes));
      shifts.add(new Cure.Shift(day, true, later, closes));
    }
    if (earlier > 0) {
      int opens = first.startMinute() - earlier;
      today.set(0, new WateringWindow(opens, today.get(0).endMinute()));
      shifts.add(new Cure.Shift(day, false, earlier, opens));
    }
    windows.put(day, today);
  }
}
