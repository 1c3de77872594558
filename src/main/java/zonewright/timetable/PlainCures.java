package zonewright.timetable;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Tries changes that may make the nights of a plain controller fit, each by planning anew. */
final class PlainCures {
  private final List<WateredZone> zones;
  private final NightRules rules;
  private final LocalDate firstDay;
  private final StartRuns startRuns;
  private final int now;
  private final int most;

  PlainCures(
      List<WateredZone> zones,
      NightRules rules,
      LocalDate firstDay,
      StartRuns startRuns,
      Timetable made) {
    this.zones = zones;
    this.rules = rules;
    this.firstDay = firstDay;
    this.startRuns = startRuns;
    this.now = made.overrunMinutes();
    this.most = made.nights().stream().mapToInt(NightPlan::overrunMinutes).max().orElse(0);
  }

  /** The cures that help, the smallest change first. */
  List<Cure> find() {
    List<Cure> cures = new ArrayList<>();
    widerWindows().ifPresent(cures::add);
    anotherController().ifPresent(cures::add);
    cures.sort(Cure.SMALLEST_CHANGE_FIRST);
    return cures;
  }

  /** All nights close later alike, for a program starts at the same times on all of them. */
  private Optional<Cure> widerWindows() {
    Map<DayOfWeek, List<WateringWindow>> windows = new EnumMap<>(DayOfWeek.class);
    windows.putAll(rules.windows());
    int changes = 0;
    for (DayOfWeek day : rules.openDays()) {
      List<WateringWindow> today = new ArrayList<>(windows.get(day));
      WateringWindow last = today.get(today.size() - 1);
      int latest = today.get(0).startMinute() + WateringWindow.DAY;
      List<WateringWindow> next = rules.windowsOn(day.plus(1));
      if (!next.isEmpty()) {
        latest = Math.min(latest, next.get(0).startMinute() + WateringWindow.DAY);
      }
      int closes = Math.min(last.endMinute() + most, latest);
      closes = Math.min(closes, last.startMinute() + WateringWindow.DAY);
      if (closes > last.endMinute()) {
        today.set(today.size() - 1, new WateringWindow(last.startMinute(), closes));
        windows.put(day, today);
        changes++;
      }
    }
    if (changes == 0) {
      return Optional.empty();
    }
    NightRules wider = rules.withWindows(windows);
    int left = PlainWeekPlanner.withoutCures(zones, wider, firstDay, startRuns).overrunMinutes();
    return left >= now
        ? Optional.empty()
        : Optional.of(new Cure.LaterClose(most, wider, changes, left));
  }

  private Optional<Cure> anotherController() {
    int left = TimetablePlanner.withoutCures(zones, rules, firstDay).overrunMinutes();
    return left >= now ? Optional.empty() : Optional.of(new Cure.OtherController(left));
  }
}
