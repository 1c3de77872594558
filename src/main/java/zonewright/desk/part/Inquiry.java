package zonewright.desk.part;

import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/**
 * Finds out what takes longer than a frame, on a thread of its own: once a person pauses, and only
 * for what was asked last. All but the work itself is done on the window's thread.
 */
public final class Inquiry {
  /** What takes less time than this need not be said to take time. */
  private static final int NOTICEABLE_MILLIS = 300;

  private final ExecutorService worker;
  private final Timer soon;
  private final Timer notice = new Timer(NOTICEABLE_MILLIS, event -> lasts(true));
  private final Consumer<Boolean> lasting;
  private volatile Asked last = new Asked();
  private Future<?> job;

  /**
   * Prepares; nothing is asked yet.
   *
   * @param name what its thread is called
   * @param pauseMillis how long a person must pause
   * @param ask looks at what is wanted now, and calls {@link #ask} where anything is
   * @param lasting hears whether an answer is waited for long enough to say so
   */
  public Inquiry(String name, int pauseMillis, Runnable ask, Consumer<Boolean> lasting) {
    this.lasting = lasting;
    worker =
        Executors.newSingleThreadExecutor(
            work -> {
              Thread thread = new Thread(work, name);
              thread.setDaemon(true);
              return thread;
            });
    soon = new Timer(pauseMillis, event -> ask.run());
    soon.setRepeats(false);
    notice.setRepeats(false);
  }

  /** Prepares one that nobody hears of while it works. */
  public Inquiry(String name, int pauseMillis, Runnable ask) {
    this(name, pauseMillis, ask, lasts -> {});
  }

  /** Prepares one that is only asked at once. */
  public Inquiry(String name) {
    this(name, 0, () -> {});
  }

  /** A question; what comes of it counts until another is put. */
  public final class Asked {
    private Asked() {}

    /** Says, on any thread, whether nobody wants the answer any more. */
    public boolean dropped() {
      return last != this;
    }

    /** Does something on the window's thread, unless the question is dropped by then. */
    public void tell(Runnable told) {
      SwingUtilities.invokeLater(
          () -> {
            if (!dropped()) {
              told.run();
            }
          });
    }
  }

  /** Asks a moment later; what is being found out now is dropped. */
  public void soon() {
    drop();
    soon.restart();
  }

  /**
   * Asks at once, in place of whatever was asked before.
   *
   * @param work done on the other thread; it is interrupted, or ends with a {@link
   *     CancellationException}, where the question is dropped
   */
  public void ask(Consumer<Asked> work) {
    drop();
    Asked mine = last;
    notice.restart();
    job = worker.submit(() -> answer(work, mine));
  }

  private void answer(Consumer<Asked> work, Asked mine) {
    try {
      work.accept(mine);
    } catch (CancellationException noLongerWanted) {
      return;
    } catch (RuntimeException fault) {
      SwingUtilities.invokeLater(
          () -> {
            throw fault;
          });
    }
    mine.tell(() -> lasts(false));
  }

  private void lasts(boolean yes) {
    notice.stop();
    lasting.accept(yes);
  }

  /** Wants no answer to what was asked. */
  public void drop() {
    soon.stop();
    last = new Asked();
    if (job != null) {
      job.cancel(true);
      job = null;
      lasts(false);
    }
  }

  /** Finds out no more. */
  public void close() {
    drop();
    worker.shutdownNow();
  }
}
