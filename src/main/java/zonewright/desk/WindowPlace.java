package zonewright.desk;

import java.awt.Rectangle;
import javax.swing.JFrame;
import zonewright.desk.part.UserPreferences;

/** Where the window was left last, and how large. */
final class WindowPlace {
  private final UserPreferences memory;

  WindowPlace(UserPreferences memory) {
    this.memory = memory;
  }

  /** Gives a window the size in which it was left, as far as the screen has room. */
  void give(JFrame frame) {
    Rectangle screen = frame.getGraphicsConfiguration().getBounds();
    int width = Math.min(memory.number("width", 1400), screen.width);
    int height = Math.min(memory.number("height", 900), screen.height);
    frame.setSize(width, height);
    frame.setLocationRelativeTo(null);
    if (memory.word("maximised", "").equals("yes")) {
      frame.setExtendedState(JFrame.MAXIMIZED_BOTH);
    }
  }

  /** Remembers how a window is left. */
  void keep(JFrame frame) {
    boolean whole = (frame.getExtendedState() & JFrame.MAXIMIZED_BOTH) != 0;
    memory.keep("maximised", whole ? "yes" : "no");
    if (!whole) {
      memory.keep("width", frame.getWidth());
      memory.keep("height", frame.getHeight());
    }
  }
}
