package zonewright.timetable;

/** Refusals in plain sentences. */
final class Require {
  private Require() {}

  static void that(boolean holds, String sentence) {
    if (!holds) {
      throw new IllegalArgumentException(sentence);
    }
  }

  static void between(int value, int least, int most, String what) {
    that(
        value >= least && value <= most,
        what + " must be from " + least + " to " + most + "; it is " + value + ".");
  }
}
