package zonewright.timetable;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Stations of a program that ask for other days or cycles than each other need several programs of
 * the controller. Where it has too few, some are given the days and cycles of others: no fewer
 * days, no longer cycles and no less water than they ask for.
 */
final class FewerPrograms {
  private static final int DAY_OVER_MINUTES = 10_000;
  private static final int MOST_SPARED = 2;
  private static final int MOST_ZONES_TRIED = 200;

  private final StartRuns startRuns;
  private final NightRules rules;
  private final Aim aim;

  /** What joining costs, by the two groups; a group stays the same list until it is joined. */
  private final IdentityHashMap<List<WateredZone>, IdentityHashMap<List<WateredZone>, Integer>>
      known = new IdentityHashMap<>();

  /** The zones as they came: what was rounded up once is never rounded up again. */
  private final Map<Long, WateredZone> asked = new HashMap<>();

  private final List<TimetableFinding> findings = new ArrayList<>();

  /**
   * How far zones are changed.
   *
   * @param programs until so few programs suffice
   * @param minutesOfADay how many minutes that rounding adds weigh as much as a day more
   */
  record Aim(int programs, int minutesOfADay) {}

  /**
   * What to try, one after another: as many programs as there are, then fewer, for starts on the
   * other side of midnight or beyond those of a program may need some. Other cycles are a smaller
   * change for plants than other days, whatever rounding adds; so they are tried first.
   */
  static List<Aim> aims(NightRules rules, int zones) {
    List<Aim> aims = new ArrayList<>();
    int most = rules.mostPrograms();
    int least = zones > MOST_ZONES_TRIED ? most : Math.max(1, most - MOST_SPARED);
    for (int programs = most; programs >= least; programs--) {
      aims.add(new Aim(programs, DAY_OVER_MINUTES));
      aims.add(new Aim(programs, 0));
    }
    return aims;
  }

  private FewerPrograms(NightRules rules, StartRuns startRuns, Aim aim) {
    this.rules = rules;
    this.startRuns = startRuns;
    this.aim = aim;
  }

  /** What all stations of a program must have in common. */
  static Object rhythm(WateredZone zone, StartRuns startRuns) {
    Object days =
        zone.days() instanceof WateringDays.ChooseWeekdays free ? free.daysNeeded() : zone.days();
    return startRuns == StartRuns.EVERY_STATION ? List.of(days, zone.cycles()) : days;
  }

  /**
   * Returns the zones in their order, changed where the controller would else lack programs.
   *
   * @param findings are told which zones were changed
   */
  static List<WateredZone> of(
      List<WateredZone> zones,
      NightRules rules,
      StartRuns startRuns,
      Aim aim,
      List<TimetableFinding> findings) {
    FewerPrograms fewer = new FewerPrograms(rules, startRuns, aim);
    List<WateredZone> changed = fewer.run(zones);
    findings.addAll(fewer.findings);
    return changed;
  }

  private List<WateredZone> run(List<WateredZone> zones) {
    Map<List<Object>, List<WateredZone>> groups = new LinkedHashMap<>();
    for (WateredZone zone : zones) {
      asked.put(zone.number(), zone);
      groups
          .computeIfAbsent(
              List.of(zone.program(), rhythm(zone, startRuns)), any -> new ArrayList<>())
          .add(zone);
    }
    List<List<WateredZone>> left = new ArrayList<>(groups.values());
    while (left.size() > aim.programs() && joined(left)) {
      Interruption.heed();
    }
    Map<Long, WateredZone> then = new LinkedHashMap<>();
    left.forEach(group -> group.forEach(zone -> then.put(zone.number(), zone)));
    List<WateredZone> all = zones.stream().map(zone -> then.get(zone.number())).toList();
    Map<Long, List<WateredZone>> changed = new LinkedHashMap<>();
    for (int i = 0; i < all.size(); i++) {
      if (!all.get(i).equals(zones.get(i))) {
        changed.computeIfAbsent(all.get(i).program(), any -> new ArrayList<>()).add(all.get(i));
      }
    }
    changed.forEach(
        (program, some) -> findings.add(new TimetableFinding.KeyedTogether(program, some)));
    return all;
  }

  /** Joins the two groups of a program whose joining changes least; false where none can be. */
  private boolean joined(List<List<WateredZone>> groups) {
    int least = Integer.MAX_VALUE;
    int one = 0;
    int other = 0;
    for (int i = 0; i < groups.size(); i++) {
      IdentityHashMap<List<WateredZone>, Integer> costs =
          known.computeIfAbsent(groups.get(i), any -> new IdentityHashMap<>());
      for (int j = i + 1; j < groups.size(); j++) {
        List<WateredZone> some = groups.get(i);
        int cost = costs.computeIfAbsent(groups.get(j), others -> cost(some, others));
        if (cost < least) {
          least = cost;
          one = i;
          other = j;
        }
      }
    }
    if (least == Integer.MAX_VALUE) {
      return false;
    }
    groups.set(one, together(groups.get(one), groups.get(other)));
    groups.remove(other);
    return true;
  }

  /** What joining two groups changes; the greatest number where they cannot be. */
  private int cost(List<WateredZone> some, List<WateredZone> others) {
    if (some.get(0).program() != others.get(0).program()
        || !choosesDays(some)
        || !choosesDays(others)) {
      return Integer.MAX_VALUE;
    }
    List<WateredZone> both = together(some, others);
    int moreDays = days(both) - days(some) - days(others);
    return aim.minutesOfADay() * moreDays + week(both) - week(some) - week(others);
  }

  private static int days(List<WateredZone> zones) {
    return zones.stream()
        .mapToInt(zone -> ((WateringDays.ChooseWeekdays) zone.days()).daysNeeded())
        .sum();
  }

  private static boolean choosesDays(List<WateredZone> group) {
    return group.get(0).days() instanceof WateringDays.ChooseWeekdays;
  }

  private static int week(List<WateredZone> zones) {
    return zones.stream().mapToInt(FewerPrograms::week).sum();
  }

  private static int week(WateredZone zone) {
    return zone.minutesPerNight() * ((WateringDays.ChooseWeekdays) zone.days()).daysNeeded();
  }

  private List<WateredZone> together(List<WateredZone> some, List<WateredZone> others) {
    List<WateredZone> all = new ArrayList<>(some);
    all.addAll(others);
    int days = 0;
    int gap = 7;
    Set<DayOfWeek> allowed = null;
    for (WateredZone zone : all) {
      WateringDays.ChooseWeekdays free = (WateringDays.ChooseWeekdays) zone.days();
      days = Math.max(days, free.daysNeeded());
      gap = Math.min(gap, free.longestGap());
      if (allowed == null) {
        allowed = new LinkedHashSet<>(free.allowed());
      }
      allowed.retainAll(free.allowed());
    }
    WateringDays both =
        new WateringDays.ChooseWeekdays(
            days,
            gap,
            allowed.isEmpty()
                ? ((WateringDays.ChooseWeekdays) some.get(0).days()).allowed()
                : allowed);
    int common = leastExcess(all, days);
    List<WateredZone> then = new ArrayList<>();
    for (WateredZone changed : all) {
      WateredZone zone = asked.get(changed.number());
      int cycles = startRuns == StartRuns.EVERY_STATION ? common : cycles(zone, days);
      int minutes = inSteps(night(zone, days), cycles);
      // What stands after a shorter cycle goes in sooner by as much.
      int soak = -Math.floorDiv(-zone.soakMinutes() * minutes, zone.minutesPerCycle());
      int shorter =
          startRuns == StartRuns.CYCLES_AND_SOAKS ? cycles * minutes - night(zone, days) : 0;
      then.add(zone.with(both, cycles, minutes, soak, shorter));
    }
    return then;
  }

  /**
   * In how many cycles each of some zones waters, so that no cycle is longer than before: as few as
   * can be, or one more where rounding then adds less and a program has a start for it. Still more
   * cycles would be short ones, which mostly fill pipes.
   */
  private int leastExcess(List<WateredZone> zones, int days) {
    int fewest =
        zones.stream().mapToInt(zone -> cycles(asked.get(zone.number()), days)).max().orElse(1);
    boolean better =
        fewest < rules.mostStarts() && given(zones, days, fewest + 1) < given(zones, days, fewest);
    return better ? fewest + 1 : fewest;
  }

  /** Minutes a night that zones get in so many cycles each. */
  private int given(List<WateredZone> zones, int days, int cycles) {
    return zones.stream()
        .mapToInt(zone -> cycles * inSteps(night(asked.get(zone.number()), days), cycles))
        .sum();
  }

  /** Minutes of a night, when the zone waters on so many days a week. */
  private int night(WateredZone zone, int days) {
    return inSteps(week(zone), days);
  }

  /** The minutes to key in for one of so many parts. */
  private int inSteps(int minutes, int parts) {
    int step = rules.minuteStep();
    return -Math.floorDiv(-minutes, parts * step) * step;
  }

  private int cycles(WateredZone zone, int days) {
    return -Math.floorDiv(-night(zone, days), zone.minutesPerCycle());
  }
}
