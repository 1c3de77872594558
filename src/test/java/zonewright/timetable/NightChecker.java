package zonewright.timetable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Goes through a placed night minute by minute and names every rule it breaks. Shares nothing with
 * the search.
 */
final class NightChecker {
  private NightChecker() {}

  /**
   * The rules broken; empty when the night keeps them all: what runs keeps windows, soaks, valves
   * and flow, and what runs and what is left undone are together all that was asked for.
   */
  static List<String> broken(NightPlan plan, List<WateredZone> zones, NightRules rules) {
    List<String> broken = new ArrayList<>();
    for (WateredZone zone : zones) {
      List<ValveRun> own =
          plan.runs().stream()
              .filter(run -> run.zone().equals(zone))
              .sorted(Comparator.comparingInt(ValveRun::startMinute))
              .toList();
      List<Undone> undone =
          plan.undone().stream().filter(each -> each.zone().equals(zone)).toList();
      checkZone(zone, own, undone, broken);
    }
    int expected = zones.stream().mapToInt(WateredZone::cycles).sum();
    int found = plan.runs().size() + plan.undone().size();
    if (found != expected) {
      broken.add("there are " + found + " cycles instead of " + expected);
    }
    for (ValveRun run : plan.runs()) {
      if (!insideOneWindow(run, rules.windowsOn(plan.night().weekday()))) {
        broken.add(run + " is outside the windows");
      }
      if (run.startMinute() < plan.opensMinute()) {
        broken.add(run + " starts before the first window opens");
      }
    }
    for (int minute = plan.opensMinute(); minute < plan.finishMinute(); minute++) {
      checkMinute(minute, plan, rules, broken);
    }
    int last = plan.runs().stream().mapToInt(ValveRun::endMinute).max().orElse(plan.opensMinute());
    if (plan.undone().isEmpty() ? last != plan.finishMinute() : last > plan.finishMinute()) {
      broken.add("the night ends at " + last + ", not at " + plan.finishMinute());
    }
    return broken;
  }

  private static void checkZone(
      WateredZone zone, List<ValveRun> own, List<Undone> undone, List<String> broken) {
    int minutes = 0;
    for (int i = 0; i < own.size(); i++) {
      ValveRun run = own.get(i);
      int length = run.endMinute() - run.startMinute();
      minutes += length;
      if (length != zone.minutesPerCycle() || run.cycle() != i + 1) {
        broken.add(run + " is not cycle " + (i + 1) + " of " + zone.minutesPerCycle() + " min");
      }
      if (i > 0 && run.startMinute() - own.get(i - 1).endMinute() < zone.soakMinutes()) {
        broken.add(run + " starts before its soak is over");
      }
    }
    int lost = undone.stream().mapToInt(Undone::minutes).sum();
    if (minutes + lost != zone.cycles() * zone.minutesPerCycle()) {
      broken.add("zone " + zone.number() + " gets " + minutes + " min and lacks " + lost);
    }
  }

  private static boolean insideOneWindow(ValveRun run, List<WateringWindow> windows) {
    // Windows that touch are one stretch of time.
    int start = windows.get(0).startMinute();
    int end = start;
    for (WateringWindow window : windows) {
      start = window.startMinute() == end ? start : window.startMinute();
      end = window.endMinute();
      if (run.startMinute() >= start && run.endMinute() <= end) {
        return true;
      }
    }
    return false;
  }

  private static void checkMinute(
      int minute, NightPlan plan, NightRules rules, List<String> broken) {
    int positions = 0;
    double flow = 0;
    for (ValveRun run : plan.runs()) {
      if (run.startMinute() <= minute && minute < run.endMinute()) {
        flow += run.zone().flow();
      }
      if (run.startMinute() <= minute && minute < run.endMinute() + rules.gapMinutes()) {
        positions++;
      }
    }
    if (positions > rules.mostValvesAtOnce()) {
      broken.add(positions + " valves open or just closed at minute " + minute);
    }
    if (flow > rules.availableFlow() * (1 + 1e-6)) {
      broken.add("flow " + flow + " at minute " + minute);
    }
  }
}
