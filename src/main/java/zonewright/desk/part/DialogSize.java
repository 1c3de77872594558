package zonewright.desk.part;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.Window;

/** How large windows beside the main one are: as wanted, where the screen has room for it. */
public final class DialogSize {
  private DialogSize() {}

  /**
   * Sets a window's size.
   *
   * @param width the width wanted, before the desktop enlarges it
   * @param height the height wanted, before the desktop enlarges it
   */
  public static void set(Window window, int width, int height) {
    Dimension wanted = UIScale.scale(new Dimension(width, height));
    Rectangle screen = window.getGraphicsConfiguration().getBounds();
    Insets taken = Toolkit.getDefaultToolkit().getScreenInsets(window.getGraphicsConfiguration());
    // the frame around a window is not known before it is shown
    int frame = UIScale.scale(24);
    window.setSize(
        Math.min(wanted.width, screen.width - taken.left - taken.right - frame),
        Math.min(wanted.height, screen.height - taken.top - taken.bottom - 2 * frame));
  }
}
