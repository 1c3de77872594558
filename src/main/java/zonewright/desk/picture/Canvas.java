package zonewright.desk.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import zonewright.desk.part.Palette;

/**
 * What a picture is painted on: a pen with its font set, the place to fill, the colours, and how
 * large a line of one pixel is here.
 *
 * @param pen already smooth, with the small font of the look
 * @param place where to paint, beneath the title
 * @param palette the colours to use and no others
 * @param scale how many units of the pen a pixel of an unscaled screen takes
 */
public record Canvas(Graphics2D pen, Rectangle place, Palette palette, float scale) {
  /** Returns a length given in pixels of an unscaled screen. */
  public float px(double pixels) {
    return (float) (pixels * scale);
  }

  /** Returns the measures of the pen's font. */
  public FontMetrics metrics() {
    return pen.getFontMetrics();
  }

  /** Returns the width of a text. */
  public int width(String text) {
    return metrics().stringWidth(text);
  }

  /** Writes words that stand back, broken into lines, from the top of the place. */
  public void sentence(String words) {
    pen.setColor(palette.muted());
    int y = place.y + metrics().getAscent();
    for (String line : WrappedText.lines(words, metrics(), place.width)) {
      pen.drawString(line, place.x, y);
      y += metrics().getHeight();
    }
  }

  /** Writes a text with its baseline at {@code y} and its left end at {@code x}. */
  public void write(String text, double x, double y, Color color) {
    pen.setColor(color);
    pen.drawString(text, (float) x, (float) y);
  }

  /** Writes a text that ends at {@code x}. */
  public void writeBefore(String text, double x, double y, Color color) {
    write(text, x - width(text), y, color);
  }

  /** Writes a text in the middle of {@code x}. */
  public void writeAround(String text, double x, double y, Color color) {
    write(text, x - width(text) / 2.0, y, color);
  }

  /** Draws a straight line, of {@code thick} pixels. */
  public void line(double x1, double y1, double x2, double y2, Color color, double thick) {
    pen.setColor(color);
    pen.setStroke(new BasicStroke(px(thick)));
    pen.draw(new Line2D.Double(x1, y1, x2, y2));
  }

  /** Returns a broken stroke: lengths of strokes and gaps in pixels. */
  public BasicStroke broken(double thick, double stroke, double gap) {
    float[] lengths = {px(stroke), px(gap)};
    return new BasicStroke(px(thick), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, lengths, 0);
  }

  /** Returns this canvas with less or other room. */
  public Canvas within(Rectangle room) {
    return new Canvas(pen, room, palette, scale);
  }
}
