package zonewright.timetable;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Chooses what runs in a night that has no room for all of it: cycles are placed in several orders,
 * each where it can still run, and the order that leaves the fewest minutes undone is kept.
 */
final class FittingNight {
  /** The start of a cycle that does not run. */
  static final int UNDONE = -1;

  private final PlacementProblem problem;
  private final int closes;
  private final int mostStarts;

  /**
   * A night to choose from.
   *
   * @param closes the minute by which every cycle must be over, from the opening of the night
   * @param mostStarts so many cycles of a zone can be started
   */
  FittingNight(PlacementProblem problem, int closes, int mostStarts) {
    this.problem = problem;
    this.closes = closes;
    this.mostStarts = mostStarts;
  }

  /**
   * Returns the start of every cycle, or {@link #UNDONE}.
   *
   * @param all where all cycles would lie, the last of them too late
   */
  int[] starts(int[] all) {
    int[] best = cut(all);
    if (Arrays.equals(best, cutAfterStarts(all))) {
      return best;
    }
    List<int[]> orders = new ArrayList<>(PriorityOrders.of(problem));
    orders.add(PriorityOrders.byMinute(problem, all));
    for (int[] order : orders) {
      Interruption.heed();
      int[] trial = place(order);
      if (minutes(trial) > minutes(best)) {
        best = trial;
      }
    }
    return best;
  }

  private int[] cutAfterStarts(int[] all) {
    int[] starts = all.clone();
    for (int c = 0; c < problem.chains.length; c++) {
      for (int cycle = mostStarts; cycle < problem.chains[c].cycles(); cycle++) {
        starts[problem.firstItem[c] + cycle] = UNDONE;
      }
    }
    return starts;
  }

  /** The places as they are, without what ends too late. */
  private int[] cut(int[] all) {
    int[] starts = cutAfterStarts(all);
    for (int item = 0; item < starts.length; item++) {
      int cycle = item - problem.firstItem[problem.owner[item]];
      if (starts[item] + problem.chains[problem.owner[item]].minutes(cycle) > closes) {
        starts[item] = UNDONE;
      }
    }
    return starts;
  }

  private int[] place(int[] order) {
    MinuteProfile profile = new MinuteProfile(problem);
    int[] starts = new int[problem.items];
    Arrays.fill(starts, UNDONE);
    int[] done = new int[problem.chains.length];
    int[] ready = new int[problem.chains.length];
    Arrays.setAll(ready, c -> problem.chains[c].release());
    for (int number : order) {
      Chain chain = problem.chains[number];
      int cycle = done[number];
      if (cycle >= Math.min(mostStarts, chain.cycles())) {
        continue;
      }
      int minutes = chain.minutes(cycle);
      int start = profile.firstStart(ready[number], minutes, chain.flow());
      if (start + minutes <= closes) {
        profile.add(start, minutes, chain.flow());
        starts[problem.firstItem[number] + cycle] = start;
        ready[number] = start + minutes + chain.pause(cycle);
        done[number]++;
      }
    }
    return starts;
  }

  private long minutes(int[] starts) {
    long sum = 0;
    for (int item = 0; item < starts.length; item++) {
      int cycle = item - problem.firstItem[problem.owner[item]];
      sum += starts[item] == UNDONE ? 0 : problem.chains[problem.owner[item]].minutes(cycle);
    }
    return sum;
  }
}
