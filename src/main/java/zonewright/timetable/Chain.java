package zonewright.timetable;

import java.util.Arrays;

/**
 * Cycles that follow one another with a shortest pause between them: the cycles of one valve, or
 * the starts of one program.
 */
final class Chain {
  private final int[] minutes;
  private final int[] pauses;
  private final long flow;
  private final int release;
  private final int wish;

  /**
   * A chain.
   *
   * @param minutes length of each cycle, in order
   * @param pauses shortest pause after each cycle but the last
   * @param flow flow while it runs, in the whole units of {@link PlacementProblem}
   * @param release first minute of the night at which the first cycle may start
   * @param wish place in the order the designer would like; ties keep the given order
   */
  Chain(int[] minutes, int[] pauses, long flow, int release, int wish) {
    this.minutes = minutes;
    this.pauses = pauses;
    this.flow = flow;
    this.release = release;
    this.wish = wish;
  }

  int minutes(int cycle) {
    return minutes[cycle];
  }

  /** Shortest pause after this cycle; none after the last. */
  int pause(int cycle) {
    return cycle < pauses.length ? pauses[cycle] : 0;
  }

  long flow() {
    return flow;
  }

  int release() {
    return release;
  }

  int wish() {
    return wish;
  }

  int cycles() {
    return minutes.length;
  }

  /**
   * Minutes from the start of a cycle to the end of the last one, when only its own pauses hold it
   * up.
   */
  int tailFrom(int cycle) {
    int total = 0;
    for (int i = cycle; i < minutes.length; i++) {
      total += minutes[i] + (i + 1 < minutes.length ? pauses[i] : 0);
    }
    return total;
  }

  /** Minutes of watering in all cycles. */
  int work() {
    int total = 0;
    for (int each : minutes) {
      total += each;
    }
    return total;
  }

  /** The same chain run backwards in time. */
  Chain mirrored() {
    return new Chain(reversed(minutes), reversed(pauses), flow, 0, wish);
  }

  /** True when exchanging the two would change nothing. */
  boolean isTwinOf(Chain other) {
    return flow == other.flow
        && release == other.release
        && Arrays.equals(minutes, other.minutes)
        && Arrays.equals(pauses, other.pauses);
  }

  private static int[] reversed(int[] values) {
    int[] turned = new int[values.length];
    for (int i = 0; i < values.length; i++) {
      turned[i] = values[values.length - 1 - i];
    }
    return turned;
  }
}
