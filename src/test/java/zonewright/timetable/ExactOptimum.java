package zonewright.timetable;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.search.strategy.selectors.values.IntDomainMin;
import org.chocosolver.solver.search.strategy.selectors.variables.Smallest;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.solver.variables.Task;

/** The least length of a night by constraint programming (Choco), written from the rules alone. */
final class ExactOptimum {
  private static final long MOST_NODES = 40_000;

  private ExactOptimum() {}

  /**
   * The least length in minutes; empty when the solver does not prove it within its limit of nodes.
   *
   * @param known a length that is possible; the solver looks for shorter ones until it proves that
   *     there is none
   */
  static OptionalInt length(List<WateredZone> zones, NightRules rules, int known) {
    int horizon = known - 1;
    int least = physicalLeast(zones, rules);
    if (least > horizon) {
      return OptionalInt.of(known);
    }
    Model model = new Model();
    IntVar finish = model.intVar("finish", least, horizon);
    List<IntVar> starts = new ArrayList<>();
    List<Task> positions = new ArrayList<>();
    List<Task> running = new ArrayList<>();
    List<IntVar> ones = new ArrayList<>();
    List<IntVar> flows = new ArrayList<>();
    for (WateredZone zone : zones) {
      IntVar before = null;
      int minutes = zone.minutesPerCycle();
      for (int cycle = 0; cycle < zone.cycles(); cycle++) {
        IntVar start =
            model.intVar("zone " + zone.number() + "," + cycle, starts(rules, minutes, horizon));
        starts.add(start);
        positions.add(task(model, start, minutes + rules.gapMinutes(), horizon + 240));
        running.add(task(model, start, minutes, horizon));
        ones.add(model.intVar(1));
        flows.add(model.intVar((int) zone.flow()));
        model.arithm(finish, "-", start, ">=", minutes).post();
        if (before != null) {
          model.arithm(start, "-", before, ">=", minutes + zone.soakMinutes()).post();
        }
        before = start;
      }
    }
    IntVar valves = model.intVar(rules.mostValvesAtOnce());
    IntVar supply = model.intVar((int) rules.availableFlow());
    model.cumulative(array(positions), vars(ones), valves).post();
    model.cumulative(array(running), vars(flows), supply).post();
    model.setObjective(Model.MINIMIZE, finish);
    Solver solver = model.getSolver();
    solver.setSearch(
        Search.intVarSearch(new Smallest(), new IntDomainMin(), vars(starts)),
        Search.inputOrderLBSearch(finish));
    solver.limitNode(MOST_NODES);
    int best = known;
    while (solver.solve()) {
      best = finish.getValue();
    }
    return solver.isStopCriterionMet() ? OptionalInt.empty() : OptionalInt.of(best);
  }

  /** Minutes at which a cycle may start: inside one window, or after the last has opened. */
  private static int[] starts(NightRules rules, int minutes, int horizon) {
    List<WateringWindow> windows = rules.windowsOn(Sites.MONDAY.weekday());
    int opens = windows.get(0).startMinute();
    int lastOpens = windows.get(windows.size() - 1).startMinute();
    return IntStream.rangeClosed(opens, opens + horizon - minutes)
        .filter(
            minute ->
                minute >= lastOpens
                    || windows.stream()
                        .anyMatch(
                            window ->
                                window.startMinute() <= minute
                                    && minute + minutes <= window.endMinute()))
        .map(minute -> minute - opens)
        .toArray();
  }

  private static Task task(Model model, IntVar start, int minutes, int latest) {
    return new Task(start, model.intVar(minutes), model.intVar(minutes, latest));
  }

  private static Task[] array(List<Task> tasks) {
    return tasks.toArray(new Task[0]);
  }

  private static IntVar[] vars(List<IntVar> list) {
    return list.toArray(new IntVar[0]);
  }

  /**
   * No night is shorter than its valve minutes, its volume or its longest zone: spares the solver
   * what is plain.
   */
  private static int physicalLeast(List<WateredZone> zones, NightRules rules) {
    int positions = 0;
    int volume = 0;
    int longest = 0;
    for (WateredZone zone : zones) {
      positions += zone.cycles() * (zone.minutesPerCycle() + rules.gapMinutes());
      volume += zone.cycles() * zone.minutesPerCycle() * (int) zone.flow();
      longest = Math.max(longest, zone.shortestSpan());
    }
    int valves = rules.mostValvesAtOnce();
    int byValves = (positions + valves - 1) / valves - rules.gapMinutes();
    int byVolume = (volume + (int) rules.availableFlow() - 1) / (int) rules.availableFlow();
    return Math.max(longest, Math.max(byValves, byVolume));
  }
}
