package zonewright.command;

import java.io.PrintWriter;
import java.util.concurrent.TimeUnit;
import zonewright.workbook.Progress;

/** Tells how far reading or writing is, where it lasts longer than a person likes to wait. */
final class SlowWork {
  private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(3);
  private static final int STEPS = 10;

  private SlowWork() {}

  /**
   * Returns a watcher that prints a line for each tenth.
   *
   * @param words what goes on
   */
  static Progress telling(String words, PrintWriter err) {
    long begun = System.nanoTime();
    int[] told = {0};
    return (done, of) -> {
      int step = (int) (STEPS * done / of);
      if (step > told[0] && System.nanoTime() - begun > PATIENCE_NANOS) {
        told[0] = step;
        err.println(words + ": " + step * (100 / STEPS) + " %");
        err.flush();
      }
    };
  }
}
