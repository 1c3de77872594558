package zonewright.desk;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.nights.NightsPlan;
import zonewright.sheet.BookSnapshot;

/** Looks for findings away from the window's thread; only the last that was asked for is told. */
final class FindingsSeeker {
  private final AtomicLong asked = new AtomicLong();
  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "findings");
            thread.setDaemon(true);
            return thread;
          });

  /**
   * Seeks the findings of a design.
   *
   * @param nights the timetable made last; it counts where it is that of the design
   * @param found is told on the window's thread, unless something else was asked for meanwhile
   */
  void seek(BookSnapshot snapshot, Optional<NightsPlan> nights, Consumer<List<Finding>> found) {
    long number = asked.incrementAndGet();
    worker.execute(
        () -> {
          if (number != asked.get()) {
            return;
          }
          Design copy = Design.of(snapshot);
          nights.ifPresent(copy.nights()::learn);
          List<Finding> all = copy.findings();
          SwingUtilities.invokeLater(
              () -> {
                if (number == asked.get()) {
                  found.accept(all);
                }
              });
        });
  }

  /** Forgets what was asked for. */
  void forget() {
    asked.incrementAndGet();
  }

  /** Seeks no more. */
  void close() {
    forget();
    worker.shutdown();
  }
}
