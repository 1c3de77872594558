package zonewright.timetable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.TreeSet;

/**
 * Orders for nights that both flow and the number of valves hold up. Time goes forward; whenever a
 * position is free, it takes the cycle with the largest flow that still leaves a share for each
 * position left, so that small flows do not gather at the night's end where they would leave flow
 * unused.
 */
final class FlowFill {
  private static final double[] SHARES = {0.4, 0.6, 0.75, 0.85, 0.95, 1.05};

  /** Stands for "flow of at most {@link #most}" when the waiting cycles are searched. */
  private static final int PROBE = -1;

  private final PlacementProblem problem;
  private long most;
  private double volume;
  private double minutes;
  private final int[] done;
  private final TreeSet<Integer> waiting;
  private final PriorityQueue<int[]> soaking =
      new PriorityQueue<>(Comparator.comparingInt((int[] e) -> e[0]).thenComparingInt(e -> e[1]));

  /**
   * Ends of running cycles as (minute, flow unit of the chain, 0 for the flow or 1 for the
   * position).
   */
  private final PriorityQueue<int[]> ending =
      new PriorityQueue<>(
          Comparator.comparingInt((int[] e) -> e[0])
              .thenComparingInt(e -> e[1])
              .thenComparingInt(e -> e[2]));

  private FlowFill(PlacementProblem problem) {
    this.problem = problem;
    this.done = new int[problem.chains.length];
    Comparator<Integer> byFlow = Comparator.comparingLong(c -> c == PROBE ? most : flow(c));
    this.waiting =
        new TreeSet<>(
            byFlow
                .thenComparingInt(
                    c -> c == PROBE ? Integer.MAX_VALUE : problem.chains[c].tailFrom(done[c]))
                .thenComparingInt(c -> -c));
    for (Chain chain : problem.chains) {
      volume += (double) chain.flow() * chain.work();
      minutes += chain.work();
    }
  }

  /** The orders to try; none when flow or number alone decides. */
  static List<int[]> of(PlacementProblem problem) {
    List<int[]> orders = new ArrayList<>();
    long largest = 0;
    for (Chain chain : problem.chains) {
      largest = Math.max(largest, chain.flow());
    }
    if (problem.valves > 1 && largest > problem.flowLimit / problem.valves) {
      for (double share : SHARES) {
        orders.add(new FlowFill(problem).order(share));
      }
    }
    return orders;
  }

  private int[] order(double share) {
    int[] order = new int[problem.items];
    for (int c = 0; c < problem.chains.length; c++) {
      soaking.add(new int[] {problem.chains[c].release(), c});
    }
    long room = problem.flowLimit;
    int positions = problem.valves;
    int placed = 0;
    int now = 0;
    while (placed < order.length) {
      while (!ending.isEmpty() && ending.peek()[0] <= now) {
        int[] end = ending.remove();
        if (end[2] == 0) {
          room += problem.chains[end[1]].flow();
        } else {
          positions++;
        }
      }
      while (!soaking.isEmpty() && soaking.peek()[0] <= now) {
        waiting.add(soaking.remove()[1]);
      }
      int pick = positions == 0 ? -1 : pick(room, positions, share);
      if (pick >= 0) {
        waiting.remove(pick);
        order[placed++] = pick;
        start(pick, now);
        room -= problem.chains[pick].flow();
        positions--;
      } else {
        now = Math.min(next(ending), next(soaking));
      }
    }
    return order;
  }

  private void start(int c, int now) {
    Chain chain = problem.chains[c];
    int cycle = done[c]++;
    int end = now + chain.minutes(cycle);
    volume -= (double) chain.flow() * chain.minutes(cycle);
    minutes -= chain.minutes(cycle);
    ending.add(new int[] {end, c, 0});
    ending.add(new int[] {end + problem.gap, c, 1});
    if (done[c] < chain.cycles()) {
      soaking.add(new int[] {end + chain.pause(cycle), c});
    }
  }

  private static int next(PriorityQueue<int[]> events) {
    return events.isEmpty() ? Integer.MAX_VALUE : events.peek()[0];
  }

  /**
   * The largest flow that leaves the share to the other positions; else the smallest that fits at
   * all; -1 for none.
   */
  private int pick(long room, int positions, double share) {
    if (waiting.isEmpty() || problem.chains[waiting.first()].flow() > room) {
      return -1;
    }
    most = (long) (room - (positions - 1) * share * (volume / minutes));
    Integer best = waiting.floor(PROBE);
    return best == null ? waiting.first() : best;
  }

  private long flow(int c) {
    return problem.chains[c].flow();
  }
}
