package zonewright.desk.task;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/**
 * Work away from the window's thread, one task after the other.
 *
 * <p>An task may touch only what was handed to it; what it brings back is handed to the window's
 * thread.
 */
public final class BackgroundTasks {
  private static final Logger LOG = Logger.getLogger(BackgroundTasks.class.getName());
  private static final int NOTICEABLE_MILLIS = 350;
  private static final String NO_MEMORY =
      "There is not enough memory for this; close other programs and try again.";

  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "files");
            thread.setDaemon(true);
            return thread;
          });
  private final Progress progress;

  /** Shows what goes on. */
  public interface Progress {
    /**
     * Shows that something lasts, or that nothing does any more.
     *
     * @param words what goes on; empty where nothing does
     * @param cancel ends it early, where that can be done
     */
    void show(String words, Optional<Runnable> cancel);
  }

  /** Tells {@code progress} what is going on where it lasts, and an empty text when it is over. */
  public BackgroundTasks(Progress progress) {
    this.progress = progress;
  }

  /**
   * Runs a task.
   *
   * @param words what to say where it lasts
   * @param work what to do, away from the window's thread
   * @param done what to do with the result, on the window's thread
   * @param failed what to do with what went wrong, on the window's thread
   */
  public <T> void run(
      String words, Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
    start(words, work, done, failed, Optional.empty());
  }

  /**
   * Runs a task that a person may break off; then its result is not used.
   *
   * @param cancelled what to do when it was broken off
   */
  public <T> void runCancellable(
      String words,
      Callable<T> work,
      Consumer<T> done,
      Consumer<Exception> failed,
      Runnable cancelled) {
    start(words, work, done, failed, Optional.of(cancelled));
  }

  /** Work that tells how far it is, and ends when it is told to. */
  public interface Watched<T> {
    T under(zonewright.workbook.Progress progress) throws Exception;
  }

  /**
   * Runs a task that a person may stop on the way: how far it is stands in the line of progress,
   * and where it is stopped, {@code failed} is given a {@code BrokenOff}. What is done already by
   * then stays done, and {@code done} is told.
   */
  public <T> void runStoppable(
      String words, Watched<T> work, Consumer<T> done, Consumer<Exception> failed) {
    watched(words, work, done, failed, false);
  }

  /**
   * Runs a task that a person may give up at any moment, whether or not it looks up from its work
   * then: {@code failed} is given a {@code BrokenOff} at once, and what comes of it is not used.
   * For work that changes nothing.
   */
  public <T> void runAbandonable(
      String words, Watched<T> work, Consumer<T> done, Consumer<Exception> failed) {
    watched(words, work, done, failed, true);
  }

  private <T> void watched(
      String words,
      Watched<T> work,
      Consumer<T> done,
      Consumer<Exception> failed,
      boolean abandoned) {
    AtomicBoolean stopped = new AtomicBoolean();
    AtomicInteger tenths = new AtomicInteger();
    AtomicBoolean shown = new AtomicBoolean();
    Runnable stop =
        () -> {
          stopped.set(true);
          progress.show(abandoned ? "" : "Stopping …", Optional.empty());
          if (abandoned) {
            failed.accept(new zonewright.workbook.Progress.BrokenOff());
          }
        };
    Runnable tell =
        () -> {
          if (shown.get() && !stopped.get()) {
            progress.show(words + " " + tenths.get() * 10 + " %", Optional.of(stop));
          }
        };
    Timer notice =
        new Timer(
            NOTICEABLE_MILLIS,
            event -> {
              shown.set(true);
              progress.show(words, Optional.of(stop));
            });
    notice.setRepeats(false);
    notice.start();
    zonewright.workbook.Progress watch =
        (at, of) -> {
          if (stopped.get()) {
            throw new zonewright.workbook.Progress.BrokenOff();
          }
          int now = (int) (10 * at / of);
          if (now != tenths.getAndSet(now)) {
            SwingUtilities.invokeLater(tell);
          }
        };
    worker.execute(
        () -> {
          Runnable then = outcome(() -> work.under(watch), done, failed);
          SwingUtilities.invokeLater(
              () -> {
                notice.stop();
                shown.set(false);
                if (!abandoned || !stopped.get()) {
                  progress.show("", Optional.empty());
                  then.run();
                }
              });
        });
  }

  /** Does the work here and now, and returns what is to be done with what came of it. */
  private static <T> Runnable outcome(
      Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
    try {
      T result = work.call();
      return () -> done.accept(result);
    } catch (Exception problem) {
      return () -> failed.accept(problem);
    } catch (OutOfMemoryError problem) {
      return () -> failed.accept(new Refused(NO_MEMORY, problem));
    }
  }

  private <T> void start(
      String words,
      Callable<T> work,
      Consumer<T> done,
      Consumer<Exception> failed,
      Optional<Runnable> cancelled) {
    AtomicBoolean over = new AtomicBoolean();
    Optional<Runnable> cancel =
        cancelled.map(
            then ->
                () -> {
                  over.set(true);
                  progress.show("", Optional.empty());
                  then.run();
                });
    Timer notice = new Timer(NOTICEABLE_MILLIS, event -> progress.show(words, cancel));
    notice.setRepeats(false);
    notice.start();
    worker.execute(
        () -> {
          Runnable then = outcome(work, done, failed);
          SwingUtilities.invokeLater(
              () -> {
                notice.stop();
                if (!over.get()) {
                  progress.show("", Optional.empty());
                  then.run();
                }
              });
        });
  }

  /** Runs a task that nobody needs to be told of; where it fails, nothing happens. */
  public <T> void quietly(Callable<T> work, Consumer<T> done) {
    worker.execute(
        () -> {
          try {
            T result = work.call();
            SwingUtilities.invokeLater(() -> done.accept(result));
          } catch (Exception noMatter) {
            LOG.log(Level.FINE, "a look at a file", noMatter);
          }
        });
  }

  /** Takes no more tasks. */
  public void close() {
    worker.shutdown();
  }
}
