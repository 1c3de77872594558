package zonewright.timetable;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Places the cycles of one night freely, each with a start of its own, for controllers that can do
 * that.
 *
 * <p>What always holds in the answer: no zone runs twice at once; between two of its cycles is at
 * least its soak; no more valves and no more flow than allowed at any minute; the gap between
 * valves; every cycle inside a window, or after the last one when the night is too short.
 */
public final class NightPlacer {
  private NightPlacer() {}

  /**
   * Places every cycle of the zones so that the last valve closes as early as the search can
   * manage, and never later than in a night known already: where a known night holds the same zones
   * and cycles and would keep today's rules, the answer finishes no later than it does. With more
   * valves allowed the answer is likewise never later than with fewer. So a change that only
   * loosens a rule never makes a night longer.
   *
   * @param night the night; its weekday must have a window
   * @param zones the zones that water in it; one that alone draws more than the available flow is
   *     refused
   * @param known nights placed before; may be empty
   * @return the night, with the finish and a bound no arrangement beats
   */
  public static NightPlan place(
      Night night, List<WateredZone> zones, NightRules rules, List<NightPlan> known) {
    return place(night, zones, rules, new int[zones.size()], known);
  }

  /**
   * As above; the first cycle of each zone starts no earlier than its rest, counted from midnight.
   */
  static NightPlan place(
      Night night, List<WateredZone> zones, NightRules rules, int[] rest, List<NightPlan> known) {
    List<WateringWindow> windows = rules.windowsOn(night.weekday());
    Require.that(!windows.isEmpty(), "There is no window on " + night + ".");
    Interruption.heed();
    PlacementProblem problem = problem(zones, rules, windows, rest);
    PlacementSearch.Outcome outcome = search(problem, zones, known);
    int opens = windows.get(0).startMinute();
    int closes = windows.get(windows.size() - 1).endMinute();
    int[] all = outcome.starts();
    int[] some = new FittingNight(problem, closes - opens, rules.mostStarts()).starts(all);
    List<ValveRun> arrangement = new ArrayList<>();
    List<ValveRun> runs = new ArrayList<>();
    List<Undone> undone = new ArrayList<>();
    for (int c = 0; c < zones.size(); c++) {
      for (int cycle = 1; cycle <= zones.get(c).cycles(); cycle++) {
        int item = problem.firstItem[c] + cycle - 1;
        ValveRun whole = run(zones.get(c), cycle, opens + all[item]);
        arrangement.add(whole);
        if (some[item] == FittingNight.UNDONE) {
          Undone.Why why =
              cycle > rules.mostStarts() ? Undone.Why.OVER_STARTS : Undone.Why.AFTER_CLOSE;
          undone.add(new Undone(whole.zone(), cycle, why, OptionalInt.of(whole.startMinute())));
        } else {
          runs.add(run(zones.get(c), cycle, opens + some[item]));
        }
      }
    }
    arrangement.sort(Comparator.comparingInt(ValveRun::startMinute));
    runs.sort(Comparator.comparingInt(ValveRun::startMinute));
    return new NightPlan(
        night,
        windows,
        runs,
        undone,
        arrangement,
        opens + outcome.finish(),
        opens + outcome.bound());
  }

  private static ValveRun run(WateredZone zone, int cycle, int start) {
    return new ValveRun(zone, cycle, start, start + zone.minutesPerCycle());
  }

  private static PlacementSearch.Outcome search(
      PlacementProblem problem, List<WateredZone> zones, List<NightPlan> known) {
    List<int[]> orders = new ArrayList<>();
    known.forEach(plan -> order(plan, zones).ifPresent(orders::add));
    return PlacementSearch.search(problem, orders);
  }

  /** Minutes by which a night that holds all cycles of the zones runs over. */
  static int overrun(
      Night night, List<WateredZone> zones, NightRules rules, List<NightPlan> known) {
    Interruption.heed();
    List<WateringWindow> windows = rules.windowsOn(night.weekday());
    PlacementProblem problem = problem(zones, rules, windows, new int[zones.size()]);
    int finish = windows.get(0).startMinute() + search(problem, zones, known).finish();
    return Math.max(0, finish - windows.get(windows.size() - 1).endMinute());
  }

  /**
   * The finish no arrangement of these zones beats, in minutes from the opening of the first
   * window.
   */
  static int bound(List<WateredZone> zones, NightRules rules, List<WateringWindow> windows) {
    return LowerBound.of(problem(zones, rules, windows, new int[zones.size()]));
  }

  private static PlacementProblem problem(
      List<WateredZone> zones, NightRules rules, List<WateringWindow> windows, int[] rest) {
    double largest = zones.stream().mapToDouble(WateredZone::flow).max().orElse(0);
    int opens = windows.get(0).startMinute();
    Chain[] chains = new Chain[zones.size()];
    for (int c = 0; c < chains.length; c++) {
      WateredZone zone = zones.get(c);
      Require.that(
          zone.flow() <= rules.availableFlow(),
          "Zone " + zone.number() + " alone draws more than the available flow.");
      int[] minutes = new int[zone.cycles()];
      int[] pauses = new int[zone.cycles() - 1];
      Arrays.fill(minutes, zone.minutesPerCycle());
      Arrays.fill(pauses, zone.soakMinutes());
      chains[c] =
          new Chain(
              minutes,
              pauses,
              PlacementProblem.flowUnits(zone.flow(), largest),
              Math.max(zone.wait(windows), rest[c] - opens),
              zone.orderWish().orElse(Integer.MAX_VALUE));
    }
    int valves = rules.mostValvesAtOnce();
    return new PlacementProblem(
        chains,
        valves,
        PlacementProblem.flowLimitUnits(rules.availableFlow(), largest),
        rules.gapMinutes(),
        breaks(windows));
  }

  /** The stretches between windows, counted from the opening of the first. */
  static int[][] breaks(List<WateringWindow> windows) {
    List<int[]> closed = new ArrayList<>();
    int opens = windows.get(0).startMinute();
    for (int i = 1; i < windows.size(); i++) {
      int from = windows.get(i - 1).endMinute() - opens;
      int to = windows.get(i).startMinute() - opens;
      if (to > from) {
        closed.add(new int[] {from, to});
      }
    }
    return closed.toArray(new int[0][]);
  }

  /** The order of a known night, when it holds the same zones with as many cycles each. */
  private static Optional<int[]> order(NightPlan plan, List<WateredZone> zones) {
    Map<Long, ArrayDeque<Integer>> places = new HashMap<>();
    int items = 0;
    for (int c = 0; c < zones.size(); c++) {
      WateredZone zone = zones.get(c);
      items += zone.cycles();
      places.computeIfAbsent(zone.number(), any -> new ArrayDeque<>());
      for (int cycle = 0; cycle < zone.cycles(); cycle++) {
        places.get(zone.number()).add(c);
      }
    }
    List<ValveRun> runs = plan.arrangement();
    if (items != runs.size()) {
      return Optional.empty();
    }
    int[] order = new int[items];
    for (int i = 0; i < items; i++) {
      ArrayDeque<Integer> left = places.get(runs.get(i).zone().number());
      if (left == null || left.isEmpty()) {
        return Optional.empty();
      }
      order[i] = left.remove();
    }
    return Optional.of(order);
  }
}
