package zonewright.timetable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Plans a night for a controller that can only start a program at a given time and then runs its
 * stations one after another. One program runs at a time and one valve is open at a time.
 *
 * <p>Within a program the stations with most cycles come first, then the order wished for, then the
 * order given. A station then starts equally long after every start of its program, so two starts
 * must be apart by the longest cycle and soak of the stations that run again; any other order needs
 * at least as much. A program is thus a chain of blocks with shortest pauses, and placing the
 * blocks is the same problem as placing cycles with one valve at a time.
 */
public final class PlainControllerPlanner {
  private final Night night;
  private final NightRules rules;
  private final StartRuns startRuns;
  private final List<Finding> findings = new ArrayList<>();

  private PlainControllerPlanner(Night night, NightRules rules, StartRuns startRuns) {
    this.night = night;
    this.rules = rules;
    this.startRuns = startRuns;
  }

  /**
   * Chooses station order and start times so that the night ends as early as possible.
   *
   * @param night the night; its weekday must have a window
   * @param zones the zones that water in it, each in the program it names
   * @param rules the site's rules; the most valves at once is taken as one
   * @param startRuns what a start does
   */
  public static ProgramPlan plan(
      Night night, List<WateredZone> zones, NightRules rules, StartRuns startRuns) {
    return new PlainControllerPlanner(night, rules, startRuns).run(zones);
  }

  /** The finish that no start times beat, in minutes from midnight of the night's weekday. */
  static int bound(Night night, List<WateredZone> zones, NightRules rules, StartRuns startRuns) {
    PlainControllerPlanner planner = new PlainControllerPlanner(night, rules, startRuns);
    List<WateringWindow> windows = rules.windowsOn(night.weekday());
    return windows.get(0).startMinute()
        + LowerBound.of(planner.problem(planner.programs(zones), windows));
  }

  private PlacementProblem problem(List<List<WateredZone>> programs, List<WateringWindow> windows) {
    Chain[] chains =
        programs.stream()
            .map(stations -> chain(stations, windows, rules.gapMinutes()))
            .toArray(Chain[]::new);
    return new PlacementProblem(
        chains, 1, Long.MAX_VALUE / 8, rules.gapMinutes(), NightPlacer.breaks(windows));
  }

  private ProgramPlan run(List<WateredZone> zones) {
    List<WateringWindow> windows = rules.windowsOn(night.weekday());
    Require.that(!windows.isEmpty(), "There is no window on " + night.label() + ".");
    List<List<WateredZone>> programs = programs(zones);
    PlacementProblem problem = problem(programs, windows);
    Chain[] chains = problem.chains;
    PlacementSearch.Outcome outcome = PlacementSearch.search(problem, List.of());
    int opens = windows.get(0).startMinute();
    List<ProgramCard> cards = new ArrayList<>();
    List<ValveRun> runs = new ArrayList<>();
    for (int p = 0; p < chains.length; p++) {
      List<Integer> starts = new ArrayList<>();
      for (int pass = 0; pass < chains[p].cycles(); pass++) {
        int start = opens + outcome.start(problem.firstItem[p] + pass);
        starts.add(start);
        addRuns(programs.get(p), pass, start, rules.gapMinutes(), runs);
      }
      cards.add(card(programs.get(p), starts));
    }
    cards.sort(Comparator.comparing(card -> card.startMinutes().get(0)));
    runs.sort(Comparator.comparingInt(ValveRun::startMinute));
    NightPlan plan =
        new NightPlan(night, windows, runs, opens + outcome.finish(), opens + outcome.bound());
    judge(cards, plan, chains, windows);
    return new ProgramPlan(plan, cards, findings);
  }

  private List<List<WateredZone>> programs(List<WateredZone> zones) {
    Map<String, List<WateredZone>> byName = new LinkedHashMap<>();
    for (WateredZone zone : zones) {
      if (zone.flow() > rules.availableFlow()) {
        findings.add(
            Finding.of(
                Finding.Kind.OVER_AVAILABLE_FLOW,
                zone,
                zone.name() + " alone draws more than the available flow and is left out."));
      } else {
        byName.computeIfAbsent(zone.program(), name -> new ArrayList<>()).add(zone);
      }
    }
    List<List<WateredZone>> result = new ArrayList<>();
    for (Map.Entry<String, List<WateredZone>> program : byName.entrySet()) {
      List<WateredZone> stations = inOrder(program.getValue());
      Map<Integer, List<WateredZone>> byCycles = new TreeMap<>(Comparator.reverseOrder());
      stations.forEach(
          zone -> byCycles.computeIfAbsent(zone.cycles(), any -> new ArrayList<>()).add(zone));
      if (startRuns == StartRuns.STATIONS_STILL_DUE || byCycles.size() == 1) {
        result.add(stations);
      } else {
        result.addAll(byCycles.values());
        findings.add(
            Finding.ofSite(
                Finding.Kind.PROGRAM_SPLIT,
                "Stations of program "
                    + program.getKey()
                    + " need "
                    + String.join(", ", byCycles.keySet().stream().map(String::valueOf).toList())
                    + " cycles, and every start runs all of them: key it in as "
                    + byCycles.size()
                    + " programs."));
      }
    }
    return result;
  }

  /** Most cycles first, then the order wished for, then the order given. */
  static List<WateredZone> inOrder(List<WateredZone> stations) {
    List<WateredZone> sorted = new ArrayList<>(stations);
    sorted.sort(
        Comparator.comparingInt((WateredZone zone) -> -zone.cycles())
            .thenComparingInt(zone -> zone.orderWish().orElse(Integer.MAX_VALUE)));
    return sorted;
  }

  /**
   * The program as blocks, one a start, with the shortest pauses that keep every station's soak.
   */
  static Chain chain(List<WateredZone> stations, List<WateringWindow> windows, int gap) {
    int passes = stations.get(0).cycles();
    int[] minutes = new int[passes];
    int[] pauses = new int[passes - 1];
    for (int pass = 0; pass < passes; pass++) {
      int apart = 0;
      int running = 0;
      for (WateredZone zone : stations) {
        if (zone.cycles() > pass) {
          minutes[pass] += zone.minutesPerCycle();
          running++;
          apart = Math.max(apart, zone.minutesPerCycle() + zone.soakMinutes());
        }
      }
      minutes[pass] += gap * (running - 1);
      if (pass > 0) {
        pauses[pass - 1] = Math.max(0, apart - minutes[pass - 1]);
      }
    }
    int wish =
        stations.stream()
            .mapToInt(zone -> zone.orderWish().orElse(Integer.MAX_VALUE))
            .min()
            .orElse(0);
    int release = stations.stream().mapToInt(zone -> zone.wait(windows)).max().orElse(0);
    return new Chain(minutes, pauses, 1, release, wish);
  }

  static void addRuns(
      List<WateredZone> stations, int pass, int start, int gap, List<ValveRun> runs) {
    int minute = start;
    for (WateredZone zone : stations) {
      if (zone.cycles() > pass) {
        int end = minute + zone.minutesPerCycle();
        runs.add(new ValveRun(zone, pass + 1, minute, end));
        minute = end + gap;
      }
    }
  }

  static ProgramCard card(List<WateredZone> stations, List<Integer> starts) {
    List<ProgramCard.Station> lines =
        stations.stream()
            .map(zone -> new ProgramCard.Station(zone, zone.minutesPerCycle(), zone.cycles()))
            .toList();
    return new ProgramCard(stations.get(0).program(), starts, lines);
  }

  private void judge(
      List<ProgramCard> cards, NightPlan plan, Chain[] chains, List<WateringWindow> windows) {
    for (ProgramCard card : cards) {
      if (card.startMinutes().size() > rules.mostStarts()) {
        findings.add(
            Finding.ofSite(
                Finding.Kind.TOO_MANY_STARTS,
                "Program "
                    + card.program()
                    + " needs "
                    + card.startMinutes().size()
                    + " starts, and may have "
                    + rules.mostStarts()
                    + ". Water its stations on more days or in fewer cycles."));
      }
    }
    int longest = ImpossibleZones.longestStretch(windows);
    for (Chain chain : chains) {
      if (chain.minutes(0) > longest) {
        findings.add(
            Finding.ofSite(
                Finding.Kind.CYCLE_OVER_WINDOW,
                "One start of a program takes "
                    + chain.minutes(0)
                    + " min, longer than any window of "
                    + night.label()
                    + ". Share its stations over more programs."));
      }
    }
    if (plan.overrunMinutes() > 0) {
      findings.add(
          Finding.ofSite(
              Finding.Kind.NIGHT_TOO_SHORT,
              night.label()
                  + " needs "
                  + plan.overrunMinutes()
                  + " min more than its windows give."));
    }
  }
}
