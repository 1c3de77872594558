package zonewright.desk.grid;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import zonewright.paper.DrawnPages;

/** What a page of a sheet is drawn with: on a printer or the screen, or into a file. */
interface PagePen {
  /** Fills a rectangle. */
  void fill(Color colour, double x, double y, double width, double height);

  /** Writes words on a base line. */
  void words(Color colour, String words, Font font, double x, double base);

  /** Returns how wide words are. */
  double width(String words, Font font);

  /** A pen for a printer or the screen. */
  static PagePen on(Graphics2D graphics) {
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    graphics.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    return new PagePen() {
      @Override
      public void fill(Color colour, double x, double y, double width, double height) {
        graphics.setColor(colour);
        graphics.fill(new Rectangle2D.Double(x, y, width, height));
      }

      @Override
      public void words(Color colour, String words, Font font, double x, double base) {
        graphics.setColor(colour);
        graphics.setFont(font);
        graphics.drawString(words, (float) x, (float) base);
      }

      @Override
      public double width(String words, Font font) {
        return graphics.getFontMetrics(font).stringWidth(words);
      }
    };
  }

  /**
   * A pen for pages of a file.
   *
   * @param left where the page begins, in points; likewise {@code top}
   */
  static PagePen in(DrawnPages pages, double left, double top, double scale) {
    return new PagePen() {
      @Override
      public void fill(Color colour, double x, double y, double width, double height) {
        pages.fill(
            colour.getRGB(), left + x * scale, top + y * scale, width * scale, height * scale);
      }

      @Override
      public void words(Color colour, String words, Font font, double x, double base) {
        pages.words(
            colour.getRGB(),
            words,
            left + x * scale,
            top + base * scale,
            font.getSize2D() * scale,
            font.isBold(),
            font.isItalic());
      }

      @Override
      public double width(String words, Font font) {
        return pages.width(words, font.getSize2D());
      }
    };
  }
}
