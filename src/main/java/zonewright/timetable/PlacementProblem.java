package zonewright.timetable;

import java.util.Arrays;

/**
 * One night as the search sees it. Minute 0 is the opening of the night's first window; the last
 * window has no end here, so that what does not fit can be measured.
 *
 * <p>The gap between valves: a valve position stays empty for that many minutes after a valve on it
 * has closed. Therefore, at every minute, the valves that are open or closed fewer than {@code gap}
 * minutes ago number at most {@code valves}. The gap after the last cycle of the night costs
 * nothing.
 */
final class PlacementProblem {
  private static final long FLOW_UNITS = 1_000_000_000L;

  /** Half a unit for each of a thousand valves, the most a site may open at once. */
  private static final long ROUNDING_UNITS = 500;

  final Chain[] chains;
  final int valves;
  final long flowLimit;
  final int gap;

  /** Closed stretches between windows, as [from, to) pairs in rising order. */
  final int[][] breaks;

  /** First item of each chain; items are numbered chain by chain, cycle by cycle. */
  final int[] firstItem;

  final int items;

  /** The chain of each item. */
  final int[] owner;

  PlacementProblem(Chain[] chains, int valves, long flowLimit, int gap, int[][] breaks) {
    this.chains = chains;
    this.valves = valves;
    this.flowLimit = flowLimit;
    this.gap = gap;
    this.breaks = breaks;
    this.firstItem = new int[chains.length + 1];
    for (int i = 0; i < chains.length; i++) {
      firstItem[i + 1] = firstItem[i] + chains[i].cycles();
    }
    this.items = firstItem[chains.length];
    this.owner = new int[items];
    for (int c = 0; c < chains.length; c++) {
      Arrays.fill(owner, firstItem[c], firstItem[c + 1], c);
    }
  }

  /** The same night with another number of valves allowed at once. */
  PlacementProblem withValves(int count) {
    return new PlacementProblem(chains, count, flowLimit, gap, breaks);
  }

  /**
   * A zone's flow in whole units, a thousand-millionth of the largest zone's, so that sums compare
   * exactly.
   */
  static long flowUnits(double flow, double largestFlow) {
    return largestFlow <= 0 ? 0 : Math.round(flow / largestFlow * FLOW_UNITS);
  }

  /**
   * The available flow in the same units, with room for the rounding of the flows that sum up to
   * it.
   */
  static long flowLimitUnits(double available, double largestFlow) {
    if (largestFlow <= 0 || available / largestFlow > 1e8) {
      return Long.MAX_VALUE / 8;
    }
    return Math.round(available / largestFlow * FLOW_UNITS) + ROUNDING_UNITS;
  }
}
