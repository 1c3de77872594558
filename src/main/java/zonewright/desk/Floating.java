package zonewright.desk;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Container;
import java.awt.Point;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JComponent;
import javax.swing.JLayeredPane;
import javax.swing.SwingUtilities;
import zonewright.desk.part.MessageBar;

/** Lets messages lie over the window just above its foot, so that nothing moves when one comes. */
final class Floating {
  private static final int WIDEST = 860;
  private static final int AROUND = 16;

  private final MessageBar messages;
  private final JLayeredPane layers;
  private final JComponent foot;

  private Floating(MessageBar messages, JLayeredPane layers, JComponent foot) {
    this.messages = messages;
    this.layers = layers;
    this.foot = foot;
  }

  /** Lays messages over a window, above what stands at its foot. */
  static void over(JLayeredPane layers, MessageBar messages, JComponent foot) {
    Floating floating = new Floating(messages, layers, foot);
    layers.add(messages, JLayeredPane.PALETTE_LAYER);
    messages.onShown(floating::place);
    layers.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            floating.place();
          }
        });
  }

  private void place() {
    if (!messages.isVisible() || layers.getWidth() == 0) {
      return;
    }
    int around = UIScale.scale(AROUND);
    int width = Math.min(UIScale.scale(WIDEST), layers.getWidth() - 2 * around);
    messages.setSize(width, Math.max(1, messages.getHeight()));
    layOut(messages);
    int height = messages.getPreferredSize().height;
    Point below = SwingUtilities.convertPoint(foot, 0, 0, layers);
    int bottom = below.y > 0 ? below.y : layers.getHeight();
    messages.setBounds(
        (layers.getWidth() - width) / 2, bottom - height - around / 2, width, height);
    layOut(messages);
    messages.repaint();
  }

  /** Lays out all within, so that prose knows its width and how high it is then. */
  private static void layOut(Container container) {
    container.doLayout();
    for (java.awt.Component each : container.getComponents()) {
      if (each instanceof Container inner) {
        layOut(inner);
      }
    }
  }
}
