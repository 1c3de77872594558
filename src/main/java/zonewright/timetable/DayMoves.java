package zonewright.timetable;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Tries other weekdays: a few zones moved out of an overfull night, or all zones shared out anew.
 */
final class DayMoves {
  private static final int MOST_MOVES = 3;
  private static final int MOST_ZONES_TRIED = 6;
  private static final int MOST_NIGHTS_TRIED = 2;

  /** Zones of trials together: of large sites not every move is tried. */
  private static final int MOST_ZONES_OF_TRIALS = 10_000;

  private final List<WateredZone> zones;
  private final NightRules rules;
  private final List<Set<DayOfWeek>> days;
  private final List<NightPlan> plans;
  private final Overruns overruns;

  DayMoves(
      List<WateredZone> zones,
      NightRules rules,
      List<Set<DayOfWeek>> days,
      List<NightPlan> plans,
      Overruns overruns) {
    this.zones = zones;
    this.rules = rules;
    this.days = days;
    this.plans = plans;
    this.overruns = overruns;
  }

  Optional<Cure> anotherNight() {
    List<Set<DayOfWeek>> now = new ArrayList<>(days);
    int left = overruns.now();
    List<Cure.Move> moves = new ArrayList<>();
    int trials = MOST_ZONES_OF_TRIALS / zones.size();
    for (int move = 0; move < MOST_MOVES && left > 0; move++) {
      int bestZone = -1;
      Set<DayOfWeek> bestDays = Set.of();
      Optional<Cure.Move> best = Optional.empty();
      for (NightPlan plan : overruns.overfull()) {
        DayOfWeek from = plan.night().weekday();
        for (int zone : movable(plan, now)) {
          for (DayOfWeek to : trials > 0 ? targets(zone, from, now) : List.<DayOfWeek>of()) {
            trials--;
            Set<DayOfWeek> changed = moved(now.get(zone), from, to);
            List<Set<DayOfWeek>> trial = new ArrayList<>(now);
            trial.set(zone, changed);
            int then = overruns.withDays(trial);
            if (then < left) {
              left = then;
              bestZone = zone;
              bestDays = changed;
              best = Optional.of(new Cure.Move(zones.get(zone), from, to));
            }
          }
        }
      }
      if (best.isEmpty()) {
        break;
      }
      now.set(bestZone, bestDays);
      moves.add(best.get());
    }
    return moves.isEmpty()
        ? Optional.empty()
        : Optional.of(new Cure.OtherNights(moves, changed(now), left));
  }

  /**
   * Zones of the night that water by weekdays: first the smallest that would free enough, then the
   * largest.
   */
  private List<Integer> movable(NightPlan plan, List<Set<DayOfWeek>> now) {
    int needed = plan.overrunMinutes();
    List<Integer> result = new ArrayList<>();
    for (int i = 0; i < zones.size(); i++) {
      if (now.get(i).contains(plan.night().weekday())) {
        result.add(i);
      }
    }
    Comparator<Integer> enoughFirst =
        Comparator.comparing(i -> zones.get(i).minutesPerNight() < needed);
    result.sort(
        enoughFirst.thenComparing(
            i -> {
              int minutes = zones.get(i).minutesPerNight();
              return minutes < needed ? -minutes : minutes;
            }));
    return result.subList(0, Math.min(MOST_ZONES_TRIED, result.size()));
  }

  private List<DayOfWeek> targets(int zone, DayOfWeek from, List<Set<DayOfWeek>> now) {
    Set<DayOfWeek> has = now.get(zone);
    WateringDays rule = zones.get(zone).days();
    int gap = WeekdayChoice.longestGap(has);
    Set<DayOfWeek> allowed = EnumSet.copyOf(rules.openDays());
    if (rule instanceof WateringDays.ChooseWeekdays free) {
      gap = Math.max(gap, free.longestGap());
      allowed.retainAll(free.allowed());
    }
    List<DayOfWeek> result = new ArrayList<>();
    for (DayOfWeek day : allowed) {
      if (!has.contains(day) && WeekdayChoice.longestGap(moved(has, from, day)) <= gap) {
        result.add(day);
      }
    }
    result.sort(Comparator.comparingInt(this::room).reversed());
    return result.subList(0, Math.min(MOST_NIGHTS_TRIED, result.size()));
  }

  /** Minutes left between the finish and the close of the fullest night of this weekday. */
  private int room(DayOfWeek day) {
    return plans.stream()
        .filter(plan -> plan.night().weekday() == day)
        .mapToInt(plan -> plan.closesMinute() - plan.finishMinute())
        .min()
        .orElse(0);
  }

  private static Set<DayOfWeek> moved(Set<DayOfWeek> days, DayOfWeek from, DayOfWeek to) {
    EnumSet<DayOfWeek> changed = EnumSet.copyOf(days);
    changed.remove(from);
    changed.add(to);
    return changed;
  }

  Optional<Cure> splitDays() {
    List<WateredZone> free = new ArrayList<>();
    for (int i = 0; i < zones.size(); i++) {
      Set<DayOfWeek> has = days.get(i);
      boolean fixed = zones.get(i).days() instanceof WateringDays.OnWeekdays && !has.isEmpty();
      free.add(
          fixed
              ? zones
                  .get(i)
                  .withDays(
                      new WateringDays.ChooseWeekdays(
                          has.size(), WeekdayChoice.longestGap(has), rules.openDays()))
              : zones.get(i));
    }
    List<Set<DayOfWeek>> spread = WeekdayChoice.choose(Waterings.of(free), rules).days();
    Map<Long, Set<DayOfWeek>> changed = changed(spread);
    int left = changed.isEmpty() ? overruns.now() : overruns.withDays(spread);
    return left >= overruns.now()
        ? Optional.empty()
        : Optional.of(new Cure.SharedOut(changed, left));
  }

  /** The weekdays of the zones that change, by their numbers. */
  private Map<Long, Set<DayOfWeek>> changed(List<Set<DayOfWeek>> then) {
    Map<Long, Set<DayOfWeek>> changed = new LinkedHashMap<>();
    for (int i = 0; i < zones.size(); i++) {
      if (!then.get(i).equals(days.get(i))) {
        changed.put(zones.get(i).number(), then.get(i));
      }
    }
    return changed;
  }
}
