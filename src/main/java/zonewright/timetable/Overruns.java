package zonewright.timetable;

import java.time.DayOfWeek;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Minutes by which nights run over their windows, now and after a change, by placing the nights
 * anew.
 */
final class Overruns {
  private final List<WateredZone> zones;
  private final NightRules rules;
  private final Calendar calendar;
  private final List<Set<DayOfWeek>> days;
  private final List<NightPlan> plans;
  private final int now;

  /** Minutes over, by zones and windows of a night, under the rules as they are. */
  private final Map<List<Object>, Integer> over = new HashMap<>();

  Overruns(
      List<WateredZone> zones,
      NightRules rules,
      Calendar calendar,
      List<Set<DayOfWeek>> days,
      List<NightPlan> plans) {
    this.zones = zones;
    this.rules = rules;
    this.calendar = calendar;
    this.days = days;
    this.plans = plans;
    this.now = missing(zones, rules, days, over);
  }

  /** As things stand. */
  int now() {
    return now;
  }

  /** With the zones on other weekdays. */
  int withDays(List<Set<DayOfWeek>> others) {
    return missing(zones, rules, others, over);
  }

  /** With rules that only loosen. */
  int withRules(NightRules looser) {
    return missing(zones, looser, days, new HashMap<>());
  }

  /** With zones that ask for no more time than now. */
  int withZones(List<WateredZone> easier) {
    return missing(easier, rules, days, new HashMap<>());
  }

  /** The nights that run over. */
  List<NightPlan> overfull() {
    return plans.stream().filter(plan -> plan.overrunMinutes() > 0).toList();
  }

  /** Minutes over of all different nights together. */
  private int missing(
      List<WateredZone> these,
      NightRules under,
      List<Set<DayOfWeek>> when,
      Map<List<Object>, Integer> memory) {
    int sum = 0;
    Set<List<Object>> counted = new HashSet<>();
    for (int day = 0; day < calendar.nights().size(); day++) {
      Night night = calendar.nights().get(day);
      List<Integer> numbers = calendar.zonesOn(day, when);
      if (numbers.isEmpty()) {
        continue;
      }
      List<Object> key = List.of(numbers, under.windowsOn(night.weekday()));
      // A change tried here only loosens: a night that fitted before fits still.
      boolean fitted =
          over.getOrDefault(List.of(numbers, rules.windowsOn(night.weekday())), 1) == 0;
      Integer known = fitted ? Integer.valueOf(0) : memory.get(key);
      if (known == null) {
        known = overrun(night, numbers.stream().map(these::get).toList(), under);
        memory.put(key, known);
      }
      if (calendar.weekly() || counted.add(key)) {
        sum += known;
      }
    }
    return sum;
  }

  private int overrun(Night night, List<WateredZone> here, NightRules under) {
    List<NightPlan> known = plans.stream().filter(plan -> plan.night().equals(night)).toList();
    return NightPlacer.overrun(night, here, under, known);
  }
}
