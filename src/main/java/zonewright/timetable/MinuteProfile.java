package zonewright.timetable;

import java.util.Arrays;

/**
 * What runs at each minute of a night: valve positions taken and flow drawn. Finds the first minute
 * where a cycle fits.
 */
final class MinuteProfile {
  private static final long CLOSED = Long.MAX_VALUE / 4;

  private final PlacementProblem problem;
  private final long smallestFlow;
  private int[] taken = new int[0];
  private long[] drawn = new long[0];

  /**
   * For a minute where nothing can start, a later minute to look at instead; itself when something
   * might.
   */
  private int[] next = new int[0];

  private int used;
  private long steps;

  MinuteProfile(PlacementProblem problem) {
    this.problem = problem;
    long smallest = Long.MAX_VALUE / 8;
    for (Chain chain : problem.chains) {
      smallest = Math.min(smallest, chain.flow());
    }
    this.smallestFlow = smallest;
    clear();
  }

  /** Minutes looked at so far: the measure of work done. */
  long steps() {
    return steps;
  }

  void clear() {
    Arrays.fill(taken, 0, used, 0);
    Arrays.fill(drawn, 0, used, 0);
    for (int i = 0; i < used; i++) {
      next[i] = i;
    }
    steps += used / 8;
    used = 0;
    for (int[] closed : problem.breaks) {
      reach(closed[1]);
      for (int minute = closed[0]; minute < closed[1]; minute++) {
        drawn[minute] = CLOSED;
        next[minute] = closed[1];
      }
    }
  }

  /** First start not before {@code ready} at which the cycle fits. */
  int firstStart(int ready, int minutes, long flow) {
    int span = minutes + problem.gap;
    int start = ready;
    while (true) {
      start = open(start);
      int blocked = -1;
      int flowEnd = Math.min(start + minutes, used);
      int spanEnd = Math.min(start + span, used);
      int minute = spanEnd - 1;
      for (; minute >= flowEnd && minute >= start; minute--) {
        if (taken[minute] >= problem.valves) {
          blocked = minute;
          break;
        }
      }
      if (blocked < 0) {
        long room = problem.flowLimit - flow;
        for (; minute >= start; minute--) {
          if (taken[minute] >= problem.valves || drawn[minute] > room) {
            blocked = minute;
            break;
          }
        }
      }
      steps += spanEnd - minute + 1;
      if (blocked < 0) {
        return start;
      }
      start = blocked + 1;
    }
  }

  /** Marks the cycle as placed. */
  void add(int start, int minutes, long flow) {
    int spanEnd = start + minutes + problem.gap;
    reach(spanEnd);
    for (int minute = start; minute < spanEnd; minute++) {
      taken[minute]++;
      if (minute < start + minutes) {
        drawn[minute] += flow;
      }
      if (taken[minute] >= problem.valves || drawn[minute] + smallestFlow > problem.flowLimit) {
        next[minute] = Math.max(next[minute], minute + 1);
      }
    }
    steps += spanEnd - start;
  }

  private int open(int from) {
    int minute = from;
    while (minute < used && next[minute] != minute) {
      int after = next[minute];
      if (after < used) {
        next[minute] = next[after];
      }
      minute = after;
      steps++;
    }
    return minute;
  }

  private void reach(int end) {
    if (end > next.length) {
      int size = Math.max(1024, Math.max(end, next.length * 2));
      int old = next.length;
      taken = Arrays.copyOf(taken, size);
      drawn = Arrays.copyOf(drawn, size);
      next = Arrays.copyOf(next, size);
      for (int i = old; i < size; i++) {
        next[i] = i;
      }
    }
    used = Math.max(used, end);
  }
}
