package zonewright.timetable;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Chooses weekdays for the zones that leave the choice open, so that the nights hold as nearly the
 * same minutes of watering as they can while no zone waits longer than its longest gap, over the
 * week's end too. Evenness is the sum of the squares of the nights' minutes; large zones choose
 * first, then each zone, and pairs of zones on small sites, change days while that helps.
 */
final class WeekdayChoice {
  private static final int WEEK = 7;
  private static final int MOST_ZONES_FOR_PAIRS = 60;
  private static final int MOST_ROUNDS = 20;

  private final List<Waterings> zones;
  private final NightRules rules;
  private final List<TimetableFinding> findings = new ArrayList<>();
  private final List<int[]> choices = new ArrayList<>();
  private final int[] chosen;
  private final long[] load = new long[WEEK];

  /**
   * The days of each zone, and what stood in the way.
   *
   * @param days for each zone, in the order given, its weekdays; empty for a zone that waters by
   *     dates or finds no day
   * @param findings days that are closed, too few days, gaps that cannot be kept
   */
  record Result(List<Set<DayOfWeek>> days, List<TimetableFinding> findings) {
    /** Keeps copies. */
    Result {
      days = List.copyOf(days);
      findings = List.copyOf(findings);
    }
  }

  private WeekdayChoice(List<Waterings> zones, NightRules rules) {
    this.zones = zones;
    this.rules = rules;
    this.chosen = new int[zones.size()];
  }

  /** Chooses for every zone; the same zones and rules give the same days. */
  static Result choose(List<Waterings> zones, NightRules rules) {
    return new WeekdayChoice(zones, rules).run();
  }

  /**
   * Most days from one watering to the next for weekdays repeated every week; 7 for a single day, 0
   * for none.
   */
  static int longestGap(Set<DayOfWeek> days) {
    return longestGap(mask(days));
  }

  private Result run() {
    int open = mask(rules.openDays());
    for (Waterings zone : zones) {
      if (zone.days() instanceof WateringDays.OnWeekdays fixed) {
        choices.add(new int[] {fixed(zone, mask(fixed.weekdays()), open)});
      } else if (zone.days() instanceof WateringDays.ChooseWeekdays free) {
        choices.add(candidates(zone, free, open));
      } else {
        choices.add(new int[] {0});
      }
    }
    spread();
    List<Set<DayOfWeek>> days = new ArrayList<>();
    for (int mask : chosen) {
      days.add(days(mask));
    }
    return new Result(days, findings);
  }

  private int fixed(Waterings zone, int wanted, int open) {
    int kept = wanted & open;
    if (kept == 0) {
      findings.add(new TimetableFinding.NoOpenDay(zone.subject(), days(wanted)));
    } else if (kept != wanted) {
      findings.add(
          new TimetableFinding.ClosedDays(zone.subject(), days(wanted & ~open), days(kept)));
    }
    return kept;
  }

  private int[] candidates(Waterings zone, WateringDays.ChooseWeekdays free, int open) {
    int allowed = mask(free.allowed()) & open;
    int count = Math.min(free.daysNeeded(), Integer.bitCount(allowed));
    if (count == 0) {
      findings.add(new TimetableFinding.NoOpenDay(zone.subject(), free.allowed()));
      return new int[] {0};
    }
    if (count < free.daysNeeded()) {
      findings.add(new TimetableFinding.TooFewDays(zone.subject(), free.daysNeeded(), count));
    }
    List<Integer> sets = new ArrayList<>();
    int least = WEEK + 1;
    for (int mask = 1; mask < 1 << WEEK; mask++) {
      if ((mask & ~allowed) == 0 && Integer.bitCount(mask) == count) {
        least = Math.min(least, longestGap(mask));
        sets.add(mask);
      }
    }
    int limit = Math.max(least, free.longestGap());
    if (least > free.longestGap()) {
      findings.add(
          new TimetableFinding.GapTooLong(
              zone.subject(), free.longestGap(), count, least, enough(allowed, free.longestGap())));
    }
    return sets.stream().filter(mask -> longestGap(mask) <= limit).mapToInt(mask -> mask).toArray();
  }

  /** How many of the allowed days would keep the gap; none where no choice of them does. */
  private static OptionalInt enough(int allowed, int gap) {
    int fewest = WEEK + 1;
    for (int mask = 1; mask < 1 << WEEK; mask++) {
      if ((mask & ~allowed) == 0 && longestGap(mask) <= gap) {
        fewest = Math.min(fewest, Integer.bitCount(mask));
      }
    }
    return fewest > WEEK ? OptionalInt.empty() : OptionalInt.of(fewest);
  }

  private void spread() {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < zones.size(); i++) {
      if (choices.get(i).length == 1) {
        put(i, choices.get(i)[0]);
      } else {
        order.add(i);
      }
    }
    order.sort(Comparator.comparingInt(i -> -zones.get(i).minutes()));
    for (int i : order) {
      put(i, bestFor(i));
    }
    boolean better = true;
    for (int round = 0; better && round < MOST_ROUNDS; round++) {
      better = false;
      for (int i : order) {
        better |= changeOne(i);
      }
      if (!better && order.size() <= MOST_ZONES_FOR_PAIRS) {
        better = changePairs(order);
      }
    }
  }

  private boolean changeOne(int zone) {
    int before = chosen[zone];
    long was = uneven();
    take(zone);
    put(zone, bestFor(zone));
    if (uneven() < was) {
      return true;
    }
    take(zone);
    put(zone, before);
    return false;
  }

  private boolean changePairs(List<Integer> order) {
    boolean better = false;
    for (int i = 0; i < order.size(); i++) {
      for (int j = i + 1; j < order.size(); j++) {
        better |= changePair(order.get(i), order.get(j));
      }
    }
    return better;
  }

  private boolean changePair(int one, int other) {
    int oneBefore = chosen[one];
    int otherBefore = chosen[other];
    long was = uneven();
    take(one);
    take(other);
    for (int mask : choices.get(one)) {
      put(one, mask);
      put(other, bestFor(other));
      if (uneven() < was) {
        return true;
      }
      take(one);
      take(other);
    }
    put(one, oneBefore);
    put(other, otherBefore);
    return false;
  }

  private int bestFor(int zone) {
    int best = choices.get(zone)[0];
    long least = Long.MAX_VALUE;
    for (int mask : choices.get(zone)) {
      put(zone, mask);
      long now = uneven();
      take(zone);
      if (now < least) {
        least = now;
        best = mask;
      }
    }
    return best;
  }

  private void put(int zone, int mask) {
    chosen[zone] = mask;
    add(mask, zones.get(zone).minutes());
  }

  private void take(int zone) {
    add(chosen[zone], -zones.get(zone).minutes());
  }

  private void add(int mask, int minutes) {
    for (int day = 0; day < WEEK; day++) {
      if ((mask >> day & 1) != 0) {
        load[day] += minutes;
      }
    }
  }

  private long uneven() {
    long sum = 0;
    for (long each : load) {
      sum += each * each;
    }
    return sum;
  }

  private static int longestGap(int mask) {
    int longest = 0;
    for (int day = 0; day < WEEK; day++) {
      if ((mask >> day & 1) != 0) {
        int gap = 1;
        while ((mask >> (day + gap) % WEEK & 1) == 0) {
          gap++;
        }
        longest = Math.max(longest, gap);
      }
    }
    return longest;
  }

  private static int mask(Set<DayOfWeek> days) {
    int mask = 0;
    for (DayOfWeek day : days) {
      mask |= 1 << (day.getValue() - 1);
    }
    return mask;
  }

  private static Set<DayOfWeek> days(int mask) {
    EnumSet<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      if ((mask >> (day.getValue() - 1) & 1) != 0) {
        days.add(day);
      }
    }
    return days;
  }
}
