package zonewright.timetable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A program of a controller that starts programs and runs their stations one after another, as
 * blocks with shortest pauses, one block a start.
 *
 * <p>The stations with most cycles come first, then the order wished for, then the order given. A
 * station then starts equally long after every start of its program, so two starts must be apart by
 * the longest cycle and soak of the stations that run again; any other order needs at least as
 * much. Placing the blocks is then the same problem as placing cycles with one valve at a time.
 */
final class ProgramChain {
  private ProgramChain() {}

  /** Most cycles first, then the order wished for, then the order given. */
  static List<WateredZone> inOrder(List<WateredZone> stations) {
    List<WateredZone> sorted = new ArrayList<>(stations);
    sorted.sort(
        Comparator.comparingInt((WateredZone zone) -> -zone.cycles())
            .thenComparingInt(zone -> zone.orderWish().orElse(Integer.MAX_VALUE)));
    return sorted;
  }

  /** The blocks of stations in order, with the shortest pauses that keep every station's soak. */
  static Chain of(List<WateredZone> stations, List<WateringWindow> windows, int gap) {
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

  /** The one start of stations whose cycles and soaks the controller knows, as a block. */
  static Chain ofOneStart(
      List<WateredZone> stations, List<WateringWindow> windows, int gap, int longestRun) {
    Chain turns = of(stations, windows, gap);
    int minutes = new Interleaving(FittingSoaks.all(stations, longestRun), gap).minutes();
    return new Chain(new int[] {minutes}, new int[0], 1, turns.release(), turns.wish());
  }

  /** The finish that no start times of the programs beat, in minutes from midnight. */
  static int bound(List<Chain> programs, List<WateringWindow> windows, NightRules rules) {
    Chain[] chains = programs.toArray(Chain[]::new);
    return windows.get(0).startMinute()
        + LowerBound.of(
            new PlacementProblem(
                chains,
                Math.min(2, rules.mostValvesAtOnce()),
                Long.MAX_VALUE / 8,
                rules.gapMinutes(),
                NightPlacer.breaks(windows)));
  }
}
