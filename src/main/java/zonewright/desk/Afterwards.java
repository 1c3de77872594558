package zonewright.desk;

import java.awt.EventQueue;
import java.util.ArrayDeque;
import java.util.Deque;
import javax.swing.Timer;

/**
 * What the window does once its first picture is on the screen: a step at a time, so that keys and
 * the mouse are heard in between.
 */
final class Afterwards {
  /** A window that nobody sees, such as one that starts as an icon, is made ready all the same. */
  private static final int UNSEEN_MILLIS = 2_000;

  private final Deque<Runnable> steps = new ArrayDeque<>();
  private final Timer unseen = new Timer(UNSEEN_MILLIS, event -> begin());
  private boolean begun;

  Afterwards() {
    unseen.setRepeats(false);
  }

  /** Adds a step behind the others; where all are done, it is done with the next event. */
  Afterwards then(Runnable step) {
    steps.add(step);
    if (begun && steps.size() == 1) {
      EventQueue.invokeLater(this::next);
    }
    return this;
  }

  /** The window was asked to show itself. */
  void shown() {
    if (!begun) {
      unseen.start();
    }
  }

  /** The first picture is on the screen. */
  void begin() {
    if (!begun) {
      begun = true;
      unseen.stop();
      EventQueue.invokeLater(this::next);
    }
  }

  private void next() {
    if (!steps.isEmpty()) {
      try {
        steps.element().run();
      } finally {
        steps.remove();
        if (!steps.isEmpty()) {
          EventQueue.invokeLater(this::next);
        }
      }
    }
  }

  /** Does nothing more. */
  void close() {
    unseen.stop();
    steps.clear();
  }
}
