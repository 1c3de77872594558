package zonewright.timetable;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Branch and bound for small nights. Cycles are chosen in the order they start, each as early as it
 * then can; among all such orders is a best night. Branches that cannot beat the best known finish
 * are cut, and so are states met before at the same time or sooner. Stops after a number of steps;
 * when it ends by itself, the best finish is proven least.
 */
final class ExactSearch {
  private static final int MOST_REMEMBERED = 60_000;

  private final PlacementProblem problem;
  private final long budget;
  private final int[] done;
  private final int[] ready;
  private final int[] current;
  private final int[] tails;
  private final Map<State, Integer> seen = new HashMap<>();
  private final int target;
  private long steps;
  private int best;
  private int[] bestStarts;
  private double workLeft;
  private double volumeLeft;

  /**
   * A state of the search, told from its time: what is done, how long each zone still soaks, and
   * what is open.
   */
  private static final class State {
    private final int[] values;

    State(int[] values) {
      this.values = values;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof State state && Arrays.equals(values, state.values);
    }

    @Override
    public int hashCode() {
      return Arrays.hashCode(values);
    }
  }

  /**
   * Cycles open, or closed so lately that their position is not free: when each ends, and what it
   * draws.
   */
  private static final class Active {
    private final int[] ends;
    private final long[] flows;

    Active(int[] ends, long[] flows) {
      this.ends = ends;
      this.flows = flows;
    }
  }

  ExactSearch(PlacementProblem problem, int[] known, int finish, int bound, long budget) {
    this.problem = problem;
    this.budget = budget;
    this.done = new int[problem.chains.length];
    this.ready = new int[problem.chains.length];
    this.current = new int[problem.items];
    this.tails = new int[problem.items];
    this.bestStarts = known;
    this.best = finish;
    this.target = bound;
    for (int c = 0; c < problem.chains.length; c++) {
      Chain chain = problem.chains[c];
      ready[c] = chain.release();
      for (int cycle = 0; cycle < chain.cycles(); cycle++) {
        tails[problem.firstItem[c] + cycle] = chain.tailFrom(cycle);
        workLeft += chain.minutes(cycle) + problem.gap;
        volumeLeft += (double) chain.minutes(cycle) * chain.flow();
      }
    }
  }

  /**
   * Searches; true when every possibility was weighed, so that {@link #finish} is the least there
   * is.
   */
  boolean run() {
    branch(0, 0, new Active(new int[0], new long[0]), 0);
    return steps < budget;
  }

  int finish() {
    return best;
  }

  int[] starts() {
    return bestStarts;
  }

  private void branch(int depth, int now, Active active, int finishSoFar) {
    if (depth == problem.items) {
      if (finishSoFar < best) {
        best = finishSoFar;
        bestStarts = current.clone();
      }
      return;
    }
    int chains = problem.chains.length;
    int[] start = new int[chains];
    int firstFree = Integer.MAX_VALUE;
    int earliest = Integer.MAX_VALUE;
    for (int c = 0; c < chains; c++) {
      Chain chain = problem.chains[c];
      if (done[c] == chain.cycles()) {
        start[c] = Integer.MAX_VALUE;
        continue;
      }
      int minutes = chain.minutes(done[c]);
      start[c] = firstStart(Math.max(now, ready[c]), minutes, chain.flow(), active);
      steps += 4 + 2 * active.ends.length;
      if (start[c] + tails[problem.firstItem[c] + done[c]] >= best) {
        return;
      }
      earliest = Math.min(earliest, start[c]);
      firstFree = Math.min(firstFree, start[c] + minutes + problem.gap);
    }
    if (cannotWin(earliest, active) || metBefore(now, active)) {
      return;
    }
    Integer[] choice = new Integer[chains];
    Arrays.setAll(choice, i -> i);
    Arrays.sort(choice, (a, b) -> compare(a, b, start));
    for (int i = 0; i < chains && steps < budget && best > target; i++) {
      int c = choice[i];
      if (start[c] < firstFree && !sameAsEarlier(c, choice, i)) {
        take(c, start[c], depth, active, finishSoFar);
      }
    }
  }

  private void take(int c, int start, int depth, Active active, int finishSoFar) {
    Chain chain = problem.chains[c];
    int cycle = done[c];
    int minutes = chain.minutes(cycle);
    int before = ready[c];
    current[problem.firstItem[c] + cycle] = start;
    done[c]++;
    ready[c] = start + minutes + chain.pause(cycle);
    double work = minutes + problem.gap;
    double volume = (double) minutes * chain.flow();
    workLeft -= work;
    volumeLeft -= volume;
    Active with = with(active, start, start + minutes, chain.flow());
    branch(depth + 1, start, with, Math.max(finishSoFar, start + minutes));
    workLeft += work;
    volumeLeft += volume;
    done[c]--;
    ready[c] = before;
  }

  private int compare(int a, int b, int[] start) {
    if (start[a] == Integer.MAX_VALUE || start[b] == Integer.MAX_VALUE) {
      return Integer.compare(start[a], start[b]);
    }
    int tailA = tails[problem.firstItem[a] + done[a]];
    int tailB = tails[problem.firstItem[b] + done[b]];
    if (tailA - start[a] != tailB - start[b]) {
      return Integer.compare(tailB - start[b], tailA - start[a]);
    }
    return Long.compare(problem.chains[b].flow(), problem.chains[a].flow());
  }

  private boolean sameAsEarlier(int c, Integer[] choice, int place) {
    for (int i = 0; i < place; i++) {
      int other = choice[i];
      if (done[other] == done[c]
          && ready[other] == ready[c]
          && problem.chains[other].isTwinOf(problem.chains[c])) {
        return true;
      }
    }
    return false;
  }

  private boolean cannotWin(int earliest, Active active) {
    double positions = workLeft;
    double volume = volumeLeft;
    for (int i = 0; i < active.ends.length; i++) {
      positions += Math.max(0, active.ends[i] + problem.gap - earliest);
      volume += (double) Math.max(0, active.ends[i] - earliest) * active.flows[i];
    }
    if (problem.breaks.length > 0) {
      return false;
    }
    return earliest + Math.ceil(positions / problem.valves - 1e-9) - problem.gap >= best
        || earliest + Math.ceil(volume / problem.flowLimit - 1e-6) >= best;
  }

  private boolean metBefore(int now, Active active) {
    if (problem.breaks.length > 0) {
      return false;
    }
    int chains = problem.chains.length;
    steps += 4L * chains;
    int[] values = new int[2 * chains + 1 + 3 * active.ends.length];
    for (int c = 0; c < chains; c++) {
      values[c] = done[c];
      boolean finished = done[c] == problem.chains[c].cycles();
      values[chains + c] = finished ? 0 : Math.max(0, ready[c] - now);
    }
    int place = 2 * chains;
    long[] sorted = new long[active.ends.length];
    // Ends are few; order them so that the same set of running valves is the same state.
    Integer[] index = new Integer[active.ends.length];
    Arrays.setAll(index, i -> i);
    Arrays.sort(
        index,
        (a, b) ->
            active.ends[a] != active.ends[b]
                ? Integer.compare(active.ends[a], active.ends[b])
                : Long.compare(active.flows[a], active.flows[b]));
    for (int i = 0; i < sorted.length; i++) {
      values[place++] = active.ends[index[i]] - now;
      values[place++] = (int) (active.flows[index[i]] >>> 32);
      values[place++] = (int) active.flows[index[i]];
    }
    State state = new State(values);
    Integer sooner = seen.get(state);
    if (sooner != null && sooner <= now) {
      return true;
    }
    if (sooner != null || seen.size() < MOST_REMEMBERED) {
      seen.put(state, now);
    }
    return false;
  }

  private Active with(Active active, int now, int end, long flow) {
    int count = 0;
    for (int each : active.ends) {
      count += each + problem.gap > now ? 1 : 0;
    }
    int[] ends = new int[count + 1];
    long[] flows = new long[count + 1];
    int place = 0;
    for (int i = 0; i < active.ends.length; i++) {
      if (active.ends[i] + problem.gap > now) {
        ends[place] = active.ends[i];
        flows[place++] = active.flows[i];
      }
    }
    ends[place] = end;
    flows[place] = flow;
    return new Active(ends, flows);
  }

  private int firstStart(int from, int minutes, long flow, Active active) {
    int start = from;
    while (true) {
      int taken = 0;
      long drawn = flow;
      int event = Integer.MAX_VALUE;
      for (int i = 0; i < active.ends.length; i++) {
        int end = active.ends[i];
        if (end + problem.gap > start) {
          taken++;
          event = Math.min(event, end + problem.gap);
        }
        if (end > start) {
          drawn += active.flows[i];
          event = Math.min(event, end);
        }
      }
      if (taken < problem.valves && drawn <= problem.flowLimit) {
        int open = pastBreaks(start, minutes);
        if (open == start) {
          return start;
        }
        start = open;
      } else {
        start = event;
      }
    }
  }

  private int pastBreaks(int start, int minutes) {
    for (int[] closed : problem.breaks) {
      if (start < closed[1] && start + minutes > closed[0]) {
        return closed[1];
      }
    }
    return start;
  }
}
