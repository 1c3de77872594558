package zonewright.timetable;

import java.util.concurrent.CancellationException;

/** Lets whoever waits for a timetable think better of it: a thread that is interrupted gives up. */
final class Interruption {
  private Interruption() {}

  /** Gives up where the thread was interrupted; the thread stays marked as such. */
  static void heed() {
    if (Thread.currentThread().isInterrupted()) {
      throw new CancellationException("the timetable is no longer wanted");
    }
  }
}
