package zonewright.desk;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/**
 * Work away from the window's thread, one errand after the other.
 *
 * <p>An errand may touch only what was handed to it; what it brings back is handed to the window's
 * thread.
 */
final class Errands {
  private static final int NOTICEABLE_MILLIS = 350;

  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "files");
            thread.setDaemon(true);
            return thread;
          });
  private final Consumer<String> progress;

  /** Tells {@code progress} what is going on where it lasts, and an empty text when it is over. */
  Errands(Consumer<String> progress) {
    this.progress = progress;
  }

  /**
   * Runs an errand.
   *
   * @param words what to say where it lasts
   * @param work what to do, away from the window's thread
   * @param done what to do with the result, on the window's thread
   * @param failed what to do with what went wrong, on the window's thread
   */
  <T> void run(String words, Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
    Timer notice = new Timer(NOTICEABLE_MILLIS, event -> progress.accept(words));
    notice.setRepeats(false);
    notice.start();
    worker.execute(
        () -> {
          Runnable after;
          try {
            T result = work.call();
            after = () -> done.accept(result);
          } catch (Exception problem) {
            after = () -> failed.accept(problem);
          }
          Runnable then = after;
          SwingUtilities.invokeLater(
              () -> {
                notice.stop();
                progress.accept("");
                then.run();
              });
        });
  }

  /** Takes no more errands. */
  void close() {
    worker.shutdown();
  }
}
