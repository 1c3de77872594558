package zonewright.timetable;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Tries changes that may make overfull nights fit, each by placing the nights anew. */
final class CureSearch {
  private static final int MOST_ZONES_TRIED = 6;

  /** Zones of trials together: of large sites fewer zones are tried alone. */
  private static final int MOST_ZONES_OF_TRIALS = 1_000;

  private final List<WateredZone> zones;
  private final NightRules rules;
  private final List<Set<DayOfWeek>> days;
  private final List<NightPlan> plans;
  private final Overruns overruns;

  CureSearch(
      List<WateredZone> zones,
      NightRules rules,
      Calendar calendar,
      List<Set<DayOfWeek>> days,
      List<NightPlan> plans) {
    this.zones = zones;
    this.rules = rules;
    this.days = days;
    this.plans = plans;
    this.overruns = new Overruns(zones, rules, calendar, days, plans);
  }

  /** The cures that help, the smallest change first. */
  List<Cure> find() {
    DayMoves moves = new DayMoves(zones, rules, days, plans, overruns);
    List<Cure> cures = new ArrayList<>();
    moves.anotherNight().ifPresent(cures::add);
    oneMoreValve().ifPresent(cures::add);
    new WindowWidening(rules, overruns).widerWindow().ifPresent(cures::add);
    moves.splitDays().ifPresent(cures::add);
    noSoak().ifPresent(cures::add);
    cures.sort(Cure.SMALLEST_CHANGE_FIRST);
    return cures;
  }

  private Optional<Cure> oneMoreValve() {
    int count = rules.mostValvesAtOnce() + 1;
    if (count > NightRules.MOST_VALVES) {
      return Optional.empty();
    }
    NightRules looser = rules.withMostValves(count);
    int left = overruns.withRules(looser);
    if (left >= overruns.now()) {
      return Optional.empty();
    }
    return Optional.of(new Cure.OneMoreValve(looser, left));
  }

  private Optional<Cure> noSoak() {
    Set<Integer> soaking = new LinkedHashSet<>();
    for (NightPlan plan : overruns.overfull()) {
      Set<WateredZone> here =
          plan.arrangement().stream().map(ValveRun::zone).collect(Collectors.toSet());
      for (int i = 0; i < zones.size(); i++) {
        WateredZone zone = zones.get(i);
        if (here.contains(zone) && zone.cycles() > 1 && zone.soakMinutes() > 0) {
          soaking.add(i);
        }
      }
    }
    List<Integer> candidates = new ArrayList<>(soaking);
    candidates.sort(Comparator.comparingInt(i -> -zones.get(i).shortestSpan()));
    List<List<Integer>> trials = new ArrayList<>();
    int alone = Math.min(MOST_ZONES_TRIED, MOST_ZONES_OF_TRIALS / zones.size());
    candidates.stream().limit(alone).forEach(i -> trials.add(List.of(i)));
    if (candidates.size() > 1) {
      trials.add(candidates);
    }
    Optional<Cure> best = Optional.empty();
    for (List<Integer> trial : trials) {
      List<WateredZone> changed = new ArrayList<>(zones);
      trial.forEach(i -> changed.set(i, zones.get(i).withoutSoak()));
      int left = overruns.withZones(changed);
      if (left < best.map(Cure::minutesStillMissing).orElse(overruns.now())) {
        best = Optional.of(new Cure.NoSoak(trial.stream().map(zones::get).toList(), left));
      }
    }
    return best;
  }
}
