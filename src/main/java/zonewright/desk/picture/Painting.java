package zonewright.desk.picture;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Toolkit;
import java.util.Map;
import zonewright.desk.part.Palette;

/** Paints a drawing with its title and a margin around it, in the window and in files alike. */
final class Painting {
  private static final int MARGIN = 14;

  private Painting() {}

  /** Makes lines smooth, and words as the desktop wants them. */
  static void smoothForScreen(Graphics2D pen) {
    smooth(pen);
    Object hints = Toolkit.getDefaultToolkit().getDesktopProperty("awt.font.desktophints");
    if (hints instanceof Map<?, ?> desktop) {
      pen.addRenderingHints(desktop);
    }
  }

  /** Makes lines and words smooth. */
  static void smooth(Graphics2D pen) {
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    pen.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
  }

  /**
   * Paints a drawing.
   *
   * @param titled whether its title stands above it
   */
  static void paint(
      Drawing drawing,
      Graphics2D pen,
      Dimension size,
      Font font,
      Palette palette,
      float scale,
      boolean titled) {
    int margin = Math.round(MARGIN * scale);
    int top = Math.round((titled ? 10 : 4) * scale);
    if (titled) {
      pen.setFont(font.deriveFont(Font.BOLD));
      FontMetrics metrics = pen.getFontMetrics();
      pen.setColor(palette.ink());
      pen.drawString(drawing.title(), margin, top + metrics.getAscent());
      top += metrics.getHeight() + Math.round(4 * scale);
    }
    pen.setFont(font);
    int bottom = Math.round(8 * scale);
    Rectangle place =
        new Rectangle(
            margin,
            top,
            Math.max(1, size.width - 2 * margin),
            Math.max(1, size.height - top - bottom));
    drawing.paint(new Canvas(pen, place, palette, scale));
  }
}
