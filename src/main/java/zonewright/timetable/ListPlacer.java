package zonewright.timetable;

/**
 * Places cycles one after another in a given order, each at the first minute where it fits. Some
 * order gives the least finish: take any best night and place its cycles in the order of their
 * starts; none starts later than it did.
 */
final class ListPlacer {
  private final PlacementProblem problem;
  private final MinuteProfile profile;
  private final int[] done;
  private final int[] ready;

  ListPlacer(PlacementProblem problem) {
    this.problem = problem;
    this.profile = new MinuteProfile(problem);
    this.done = new int[problem.chains.length];
    this.ready = new int[problem.chains.length];
  }

  /** Steps of work done so far. */
  long steps() {
    return profile.steps();
  }

  /**
   * Places the cycles.
   *
   * @param order chain numbers, each as often as it has cycles
   * @param starts receives the start of every item
   * @return the minute the last cycle ends
   */
  int place(int[] order, int[] starts) {
    profile.clear();
    int finish = 0;
    for (int i = 0; i < problem.chains.length; i++) {
      done[i] = 0;
      ready[i] = problem.chains[i].release();
    }
    for (int number : order) {
      Chain chain = problem.chains[number];
      int cycle = done[number]++;
      int minutes = chain.minutes(cycle);
      int start = profile.firstStart(ready[number], minutes, chain.flow());
      profile.add(start, minutes, chain.flow());
      starts[problem.firstItem[number] + cycle] = start;
      int end = start + minutes;
      if (cycle + 1 < chain.cycles()) {
        ready[number] = end + chain.pause(cycle);
      }
      finish = Math.max(finish, end);
    }
    return finish;
  }
}
