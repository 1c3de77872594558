package zonewright.timetable;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Places the nights of a calendar one after another, carrying each zone's soak, and the gap, over
 * to the next night.
 */
final class NightSchedule {
  private static final int MOST_WEEKS = 5;

  private final List<WateredZone> zones;
  private final NightRules rules;
  private final Calendar calendar;
  private final List<Set<DayOfWeek>> days;

  /**
   * Nights with the same zones, windows and rests are alike: placed once, and alike for the person
   * who reads them.
   */
  private final Map<List<Object>, NightPlan> placed = new HashMap<>();

  NightSchedule(
      List<WateredZone> zones, NightRules rules, Calendar calendar, List<Set<DayOfWeek>> days) {
    this.zones = zones;
    this.rules = rules;
    this.calendar = calendar;
    this.days = days;
  }

  List<NightPlan> place(List<NightPlan> known, List<TimetableFinding> findings) {
    int[] rest = new int[zones.size()];
    Arrays.fill(rest, -WateringWindow.DAY * 8);
    List<NightPlan> plans = pass(rest, known);
    if (calendar.weekly()) {
      // The week repeats: what Sunday night leaves to rest holds for Monday. Go round until nothing
      // changes.
      for (int week = 0; week < MOST_WEEKS; week++) {
        int[] before = rest.clone();
        List<NightPlan> again = pass(rest, known);
        boolean settled = again.equals(plans);
        plans = again;
        if (settled) {
          return plans;
        }
        if (week == MOST_WEEKS - 1 && !Arrays.equals(before, rest)) {
          findings.add(new TimetableFinding.RestOverWeeksEnd());
        }
      }
    }
    return plans;
  }

  /**
   * Places every night once; {@code rest} holds the minute, counted from the first day, before
   * which each zone must not start.
   */
  private List<NightPlan> pass(int[] rest, List<NightPlan> known) {
    List<NightPlan> plans = new ArrayList<>();
    int span = calendar.nights().size() * WateringWindow.DAY;
    for (int day = 0; day < calendar.nights().size(); day++) {
      Night night = calendar.nights().get(day);
      List<WateringWindow> windows = rules.windowsOn(night.weekday());
      if (windows.isEmpty()) {
        continue;
      }
      int midnight = day * WateringWindow.DAY;
      NightPlan plan = placeOne(night, calendar.zonesOn(day, days), windows, rest, midnight, known);
      plans.add(plan);
      carry(plan, midnight, rest);
    }
    for (int zone = 0; zone < rest.length; zone++) {
      rest[zone] -= span;
    }
    return plans;
  }

  private NightPlan placeOne(
      Night night,
      List<Integer> numbers,
      List<WateringWindow> windows,
      int[] rest,
      int midnight,
      List<NightPlan> known) {
    List<WateredZone> here = new ArrayList<>();
    int[] ready = new int[numbers.size()];
    int opens = windows.get(0).startMinute();
    for (int i = 0; i < ready.length; i++) {
      here.add(zones.get(numbers.get(i)));
      ready[i] = Math.max(opens, rest[numbers.get(i)] - midnight);
    }
    List<NightPlan> same = known.stream().filter(plan -> plan.night().equals(night)).toList();
    List<Object> key =
        List.of(numbers, windows, Arrays.stream(ready).boxed().toList(), orders(same));
    NightPlan plan =
        placed.computeIfAbsent(key, any -> NightPlacer.place(night, here, rules, ready, same));
    return new NightPlan(
        night,
        windows,
        plan.runs(),
        plan.undone(),
        plan.arrangement(),
        plan.finishMinute(),
        plan.boundMinute());
  }

  private static List<Object> orders(List<NightPlan> known) {
    return known.stream().map(plan -> (Object) plan.arrangement()).toList();
  }

  /** What runs, and where all would lie: the next night keeps clear of either. */
  private static List<ValveRun> both(NightPlan plan) {
    if (plan.undone().isEmpty()) {
      return plan.runs();
    }
    List<ValveRun> both = new ArrayList<>(plan.arrangement());
    both.addAll(plan.runs());
    return both;
  }

  private void carry(NightPlan plan, int midnight, int[] rest) {
    if (plan.isEmpty()) {
      return;
    }
    Map<WateredZone, Integer> ends = new HashMap<>();
    for (ValveRun run : both(plan)) {
      // What does not fit is not carried on: it would push every later night.
      int end = Math.min(run.endMinute(), plan.closesMinute());
      ends.merge(run.zone(), end + run.zone().soakMinutes(), Math::max);
    }
    int last = Math.min(plan.finishMinute(), plan.closesMinute()) + rules.gapMinutes();
    for (int zone = 0; zone < rest.length; zone++) {
      int own = ends.getOrDefault(zones.get(zone), last);
      rest[zone] = Math.max(rest[zone], midnight + Math.max(last, own));
    }
  }
}
