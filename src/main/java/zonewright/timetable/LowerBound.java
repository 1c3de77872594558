package zonewright.timetable;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A finish that no arrangement can beat. The largest of:
 *
 * <ul>
 *   <li>each zone alone: its cycles and soaks, around closed stretches;
 *   <li>all minutes of valve positions, gaps included, over the number of positions;
 *   <li>all volume over the available flow;
 *   <li>the same two for zones too big to share: weights that can never sum to more than the
 *       capacity at one minute (dual feasible functions, as used for packing bounds);
 *   <li>each of these for every set of cycles that cannot start early and leave much to follow:
 *       least head + work + least tail.
 * </ul>
 */
final class LowerBound {
  private static final int MOST_ITEMS_FOR_SETS = 400;

  private static final int MOST_THRESHOLDS = 40;

  private final PlacementProblem problem;
  private final int[] head;
  private final int[] tail;
  private final int[] minutes;
  private final int[] owner;

  private LowerBound(PlacementProblem problem) {
    this.problem = problem;
    this.owner = problem.owner;
    this.head = new int[problem.items];
    this.tail = new int[problem.items];
    this.minutes = new int[problem.items];
    for (int c = 0; c < problem.chains.length; c++) {
      Chain chain = problem.chains[c];
      int start = chain.release();
      for (int cycle = 0; cycle < chain.cycles(); cycle++) {
        int item = problem.firstItem[c] + cycle;
        minutes[item] = chain.minutes(cycle);
        head[item] = start;
        tail[item] = chain.tailFrom(cycle) - minutes[item];
        start += minutes[item] + (cycle + 1 < chain.cycles() ? pause(chain, cycle) : 0);
      }
    }
  }

  private int pause(Chain chain, int cycle) {
    return problem.valves == 1 ? Math.max(problem.gap, chain.pause(cycle)) : chain.pause(cycle);
  }

  /** The least finish proven for this night, in minutes after its first window opens. */
  static int of(PlacementProblem problem) {
    if (problem.items == 0) {
      return 0;
    }
    return new LowerBound(problem).calculate();
  }

  private int calculate() {
    int best = eachAlone();
    boolean closed = problem.breaks.length > 0;
    for (double[] share : shares()) {
      best = Math.max(best, closed ? aroundBreaks(share, 0) : overSets(share, 0));
    }
    double[] positions = new double[problem.items];
    int gap = problem.gap;
    for (int i = 0; i < problem.items; i++) {
      positions[i] = (double) (minutes[i] + gap) / problem.valves;
    }
    return Math.max(best, closed ? aroundBreaks(positions, gap) : overSets(positions, gap));
  }

  private int eachAlone() {
    int best = 0;
    for (Chain chain : problem.chains) {
      int minute = chain.release();
      for (int cycle = 0; cycle < chain.cycles(); cycle++) {
        int length = chain.minutes(cycle);
        for (int[] closed : problem.breaks) {
          if (minute < closed[1] && minute + length > closed[0]) {
            minute = closed[1];
          }
        }
        minute += length;
        if (cycle + 1 < chain.cycles()) {
          minute += pause(chain, cycle);
        }
      }
      best = Math.max(best, minute);
    }
    return best;
  }

  /** For each way to weigh flows, the share of the night's capacity each item takes, in minutes. */
  private List<double[]> shares() {
    List<double[]> all = new ArrayList<>();
    double limit = problem.flowLimit;
    all.add(share(flow -> flow / limit));
    for (int together = 1; together < problem.valves; together++) {
      int count = together;
      // Zones that need more than a (count + 1)th of the flow each: no more than count of them at
      // once.
      all.add(share(flow -> flow * (count + 1) > limit ? 1.0 / count : 0));
      all.add(
          share(
              flow -> {
                double times = (count + 1) * flow / limit;
                return times == Math.rint(times) ? flow / limit : Math.floor(times) / count;
              }));
    }
    if (problem.valves > 1) {
      for (long small : thresholds()) {
        // Beside a zone above (limit - small) nothing of at least that small flow can run.
        double together = Math.min(problem.valves, Math.floor(limit / small));
        all.add(share(flow -> flow > limit - small ? 1 : flow >= small ? flow / limit : 0));
        all.add(share(flow -> flow > limit - small ? 1 : flow >= small ? 1 / together : 0));
      }
    }
    return all;
  }

  /** Up to some tens of the flows that are at most half the limit, spread over all of them. */
  private long[] thresholds() {
    long[] flows =
        Arrays.stream(problem.chains)
            .mapToLong(Chain::flow)
            .filter(flow -> flow > 0 && flow * 2 <= problem.flowLimit)
            .distinct()
            .sorted()
            .toArray();
    int count = Math.min(flows.length, MOST_THRESHOLDS);
    long[] spread = new long[count];
    for (int i = 0; i < count; i++) {
      spread[i] = flows[(int) ((long) i * flows.length / count)];
    }
    return spread;
  }

  private double[] share(java.util.function.DoubleUnaryOperator weight) {
    double[] share = new double[problem.items];
    for (int i = 0; i < problem.items; i++) {
      share[i] = minutes[i] * weight.applyAsDouble((double) problem.chains[owner[i]].flow());
    }
    return share;
  }

  private int overSets(double[] share, int gap) {
    if (problem.items > MOST_ITEMS_FOR_SETS) {
      return overTails(share, gap);
    }
    Integer[] byTail = new Integer[problem.items];
    Arrays.setAll(byTail, i -> i);
    Arrays.sort(byTail, (a, b) -> Integer.compare(tail[b], tail[a]));
    int[] heads = Arrays.stream(head).distinct().toArray();
    int best = 0;
    for (int earliest : heads) {
      double sum = 0;
      for (int item : byTail) {
        if (head[item] >= earliest && share[item] > 0) {
          sum += share[item];
          best = Math.max(best, earliest + roundUp(sum) - gap + tail[item]);
        }
      }
    }
    return best;
  }

  private int overTails(double[] share, int gap) {
    int earliest = Arrays.stream(head).min().orElse(0);
    double sum = 0;
    for (double each : share) {
      sum += each;
    }
    return earliest + roundUp(sum) - gap;
  }

  /**
   * Open minutes counted around the closed stretches; each stretch may hide one gap on every
   * position.
   */
  private int aroundBreaks(double[] share, int gap) {
    double sum = 0;
    for (double each : share) {
      sum += each;
    }
    int needed = Math.max(0, roundUp(sum) - gap * (problem.breaks.length + 1));
    int minute = 0;
    for (int[] closed : problem.breaks) {
      int open = closed[0] - minute;
      if (needed <= open) {
        return minute + needed;
      }
      needed -= open;
      minute = closed[1];
    }
    return minute + needed;
  }

  private static int roundUp(double value) {
    return (int) Math.ceil(value - 1e-6);
  }
}
