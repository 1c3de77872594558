package zonewright.timetable;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Names zones that cannot be served as asked, whatever the arrangement. */
final class ImpossibleZones {
  private ImpossibleZones() {}

  static List<TimetableFinding> find(
      List<WateredZone> zones, NightRules rules, Calendar calendar, List<Set<DayOfWeek>> days) {
    List<TimetableFinding> findings = new ArrayList<>();
    Map<List<Object>, Integer> spans = new HashMap<>();
    for (int i = 0; i < zones.size(); i++) {
      WateredZone zone = zones.get(i);
      tooLong(zone, i, rules, calendar, days, spans, findings);
      closedDates(zone, i, rules, calendar, days, findings);
    }
    return findings;
  }

  private static void tooLong(
      WateredZone zone,
      int number,
      NightRules rules,
      Calendar calendar,
      List<Set<DayOfWeek>> days,
      Map<List<Object>, Integer> spans,
      List<TimetableFinding> findings) {
    Set<DayOfWeek> seen = new HashSet<>();
    for (int day = 0; day < calendar.nights().size(); day++) {
      DayOfWeek weekday = calendar.nights().get(day).weekday();
      List<WateringWindow> windows = rules.windowsOn(weekday);
      if (windows.isEmpty() || !calendar.due(number, day, days) || !seen.add(weekday)) {
        continue;
      }
      int opens = windows.get(0).startMinute();
      int span = windows.get(windows.size() - 1).endMinute() - opens;
      int longest = longestStretch(windows);
      int needed =
          spans.computeIfAbsent(
              alone(zone, windows), any -> NightPlacer.bound(List.of(zone), rules, windows));
      if (zone.minutesPerCycle() > longest) {
        findings.add(new TimetableFinding.CycleOverWindow(zone, weekday, longest));
        return;
      }
      if (needed > span) {
        findings.add(new TimetableFinding.SpanOverWindow(zone, weekday, needed, span));
        return;
      }
    }
  }

  /** What the time of a zone depends on that has the night for itself. */
  private static List<Object> alone(WateredZone zone, List<WateringWindow> windows) {
    return List.of(
        zone.cycles(),
        zone.minutesPerCycle(),
        zone.lastShorter(),
        zone.soakMinutes(),
        zone.notBefore(),
        windows);
  }

  /** The longest time without a pause, windows that touch taken together. */
  static int longestStretch(List<WateringWindow> windows) {
    int longest = 0;
    int start = windows.get(0).startMinute();
    int end = start;
    for (WateringWindow window : windows) {
      if (window.startMinute() > end) {
        start = window.startMinute();
      }
      end = window.endMinute();
      longest = Math.max(longest, end - start);
    }
    return longest;
  }

  /** Dates without water in the plan of a zone that waters by dates. */
  private static void closedDates(
      WateredZone zone,
      int number,
      NightRules rules,
      Calendar calendar,
      List<Set<DayOfWeek>> days,
      List<TimetableFinding> findings) {
    if (calendar.weekly() || !days.get(number).isEmpty()) {
      return;
    }
    int due = 0;
    int lost = 0;
    for (int day = 0; day < calendar.nights().size(); day++) {
      if (calendar.due(number, day, days)) {
        due++;
        lost += rules.windowsOn(calendar.nights().get(day).weekday()).isEmpty() ? 1 : 0;
      }
    }
    if (lost > 0 && !byWeekday(zone)) {
      findings.add(new TimetableFinding.LostDates(zone, lost, due));
    }
  }

  private static boolean byWeekday(WateredZone zone) {
    return zone.days() instanceof WateringDays.OnWeekdays
        || zone.days() instanceof WateringDays.ChooseWeekdays;
  }
}
