package zonewright.desk.part;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import zonewright.design.Design;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Changes;
import zonewright.sheet.Edit;

/**
 * A copy of the design on the desk, on a thread of its own: for looking through all of it without
 * holding up the window. It is made when somebody asks for it first, and from then on follows the
 * edits, so that what was found out of it need not be found again.
 *
 * <p>All is called on the window's thread; what is to be done with the copy runs on the other.
 */
public final class DesignCopy {
  private final OpenDesign open;
  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "copy of the design");
            thread.setDaemon(true);
            return thread;
          });

  /** What was done to the design since the copy was brought up to date last. */
  private final List<Edit> since = new ArrayList<>();

  private boolean fresh;

  /** Touched by the worker only. */
  private Design copy;

  public DesignCopy(OpenDesign open) {
    this.open = open;
    open.onReplaced(this::forget);
    open.onChanged(this::changed);
  }

  /**
   * Rows that came or went carry along what stands beside them, which only the design itself knows:
   * then all is copied anew.
   */
  private void changed(Changes changes) {
    if (changes.everything() || !changes.tables().isEmpty()) {
      forget();
    } else if (fresh) {
      since.add(changes.edit());
    }
  }

  private void forget() {
    since.clear();
    if (fresh) {
      fresh = false;
      worker.execute(() -> copy = null);
    }
  }

  /** Does something with a copy of the design as it is now, once it is its turn. */
  public void use(Consumer<Design> work) {
    if (worker.isShutdown()) {
      return;
    }
    if (fresh) {
      Edit edit = new Edit.Several("", since);
      since.clear();
      worker.execute(() -> copy.book().start(edit));
    } else {
      fresh = true;
      BookSnapshot snapshot = open.book().snapshot();
      worker.execute(() -> copy = Design.of(snapshot));
    }
    worker.execute(() -> work.accept(copy));
  }

  /** Does no more. */
  public void close() {
    worker.shutdownNow();
  }
}
