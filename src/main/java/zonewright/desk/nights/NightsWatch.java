package zonewright.desk.nights;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import zonewright.design.Design;
import zonewright.desk.findings.FindingsWatch;
import zonewright.desk.part.DesignCopy;
import zonewright.desk.part.OpenDesign;
import zonewright.nights.Nights;
import zonewright.nights.NightsInput;
import zonewright.nights.NightsPlan;
import zonewright.nights.NightsPlanner;

/**
 * Keeps the timetable of the design on the desk up to date, away from the window's thread: an edit
 * gives up the plan in the making and starts another.
 */
public final class NightsWatch {
  private static final Logger LOG = Logger.getLogger(NightsWatch.class.getName());
  private static final int DELAY_MILLIS = 30;
  private static final int DELAY_OF_MANY_MILLIS = 400;
  private static final int NOTICEABLE_MILLIS = 700;

  private final OpenDesign open;
  private final DesignCopy copy;
  private final Consumer<String> progress;
  private final List<Runnable> listeners = new ArrayList<>();
  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "nights");
            thread.setDaemon(true);
            return thread;
          });
  private final Timer later = new Timer(DELAY_MILLIS, event -> begin());
  private final Timer notice;
  private Optional<NightsInput> inTheMaking = Optional.empty();
  private Future<?> job;

  /** Counts edits, so that what was read before one is not taken for what is there after it. */
  private long edits;

  /** Tells {@code progress} where a plan lasts, and an empty text when it is over. */
  public NightsWatch(OpenDesign open, DesignCopy copy, Consumer<String> progress) {
    this.open = open;
    this.copy = copy;
    this.progress = progress;
    this.notice = new Timer(NOTICEABLE_MILLIS, event -> progress.accept("Placing the nights …"));
    later.setRepeats(false);
    notice.setRepeats(false);
    open.onChanged(changes -> changed());
    open.onReplaced(this::begin);
  }

  private void changed() {
    edits++;
    later.setInitialDelay(FindingsWatch.many(open.design()) ? DELAY_OF_MANY_MILLIS : DELAY_MILLIS);
    later.restart();
  }

  /** Hears when the plan is there, or there is none to make. */
  public void onPlanned(Runnable listener) {
    listeners.add(listener);
  }

  /** Makes the plan of the design as it is, unless it is known or in the making. */
  public void begin() {
    Design design = open.design();
    if (FindingsWatch.many(design) && !design.nights().isRead()) {
      readElsewhere(design);
      return;
    }
    Optional<NightsInput> asked = design.nights().asked();
    if (asked.isEmpty() || design.nights().known().isPresent()) {
      giveUp();
      listeners.forEach(Runnable::run);
      return;
    }
    if (asked.equals(inTheMaking)) {
      return;
    }
    giveUp();
    inTheMaking = asked;
    notice.restart();
    Optional<NightsPlan> before = design.nights().before();
    job =
        worker.submit(
            () -> {
              try {
                NightsPlan plan = NightsPlanner.plan(asked.get(), before);
                SwingUtilities.invokeLater(() -> done(design, plan));
              } catch (CancellationException noLongerWanted) {
                LOG.log(Level.FINE, "given up", noLongerWanted);
              } catch (RuntimeException fault) {
                LOG.log(Level.WARNING, "the nights could not be placed", fault);
                SwingUtilities.invokeLater(this::giveUp);
              }
            });
  }

  /** Has many zones read from a copy of the design, and then begins. */
  private void readElsewhere(Design design) {
    giveUp();
    long number = edits;
    copy.use(
        other -> {
          Consumer<Nights> reading = other.nights().reading();
          SwingUtilities.invokeLater(
              () -> {
                if (number == edits && design == open.design()) {
                  reading.accept(design.nights());
                  begin();
                }
              });
        });
  }

  private void giveUp() {
    if (job != null) {
      job.cancel(true);
      job = null;
    }
    inTheMaking = Optional.empty();
    notice.stop();
    progress.accept("");
  }

  private void done(Design design, NightsPlan plan) {
    design.nights().learn(plan);
    if (inTheMaking.equals(Optional.of(plan.input()))) {
      giveUp();
    }
    if (design == open.design()) {
      listeners.forEach(Runnable::run);
    }
  }

  /** Makes no more plans. */
  public void close() {
    later.stop();
    giveUp();
    worker.shutdownNow();
  }
}
