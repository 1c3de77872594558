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
    StringBuilder sentence = new StringBuilder();
    int changes = 0;
    for (DayOfWeek day : DayOfWeek.values()) {
      int needed =
          overruns.overfull().stream()
              .filter(plan -> plan.night().weekday() == day)
              .mapToInt(NightPlan::overrunMinutes)
              .max()
              .orElse(0);
      if (needed > 0) {
        changes += widen(day, needed, windows, sentence);
      }
    }
    if (changes == 0) {
      return Optional.empty();
    }
    NightRules wider = rules.withWindows(windows);
    int left = overruns.withRules(wider);
    if (left >= overruns.now()) {
      return Optional.empty();
    }
    String text = sentence.append(Overruns.result(left)).toString().strip();
    return Optional.of(
        new Cure(
            Cure.Kind.WIDER_WINDOW, text, List.of(), changes, new Cure.Change.Rules(wider), left));
  }

  /**
   * Closes the day's last window later, as far as the next day's first lets it, then opens the
   * first earlier.
   */
  private int widen(
      DayOfWeek day,
      int needed,
      Map<DayOfWeek, List<WateringWindow>> windows,
      StringBuilder sentence) {
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
      sentence.append(change(day, "close", later, "later", closes));
    }
    if (earlier > 0) {
      int opens = first.startMinute() - earlier;
      today.set(0, new WateringWindow(opens, today.get(0).endMinute()));
      sentence.append(change(day, "open", earlier, "earlier", opens));
    }
    windows.put(day, today);
    return later + earlier > 0 ? 1 : 0;
  }

  private static String change(DayOfWeek day, String verb, int minutes, String way, int at) {
    return " Let the window of "
        + Clock.name(day)
        + " "
        + verb
        + " "
        + minutes
        + " min "
        + way
        + ", at "
        + Clock.time(at)
        + ".";
  }
}
