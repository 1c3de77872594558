package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Toolkit;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Map;
import zonewright.desk.part.Palette;
import zonewright.sheet.Severity;

/** Small marks in cells, each of a shape of its own so that none depends on its colour. */
final class Marks {
  private Marks() {}

  /**
   * Draws plain: rectangles on whole pixels need no smoothing, and with it some desktops take many
   * times as long.
   */
  static void plain(Graphics2D g) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_DEFAULT);
  }

  /** Draws words as the desktop wants them. */
  static void words(Graphics2D g) {
    if (Toolkit.getDefaultToolkit().getDesktopProperty("awt.font.desktophints")
        instanceof Map<?, ?> hints) {
      g.addRenderingHints(hints);
    } else {
      g.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    }
  }

  /** Draws curves smoothly. */
  static void smooth(Graphics2D g) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
  }

  /**
   * Draws a mark in an upper corner, the left one of a cell that was typed over its default, the
   * right one of a cell with a note.
   *
   * @param x where the corner is
   * @param around what lies between it and a person's colour
   */
  static void corner(Graphics2D g, Color color, Color around, int x) {
    corner(g, around, x, UIScale.scale(10f));
    corner(g, color, x, UIScale.scale(7f));
  }

  private static void corner(Graphics2D g, Color color, int x, float side) {
    Path2D corner = new Path2D.Float();
    corner.moveTo(x, 0);
    corner.lineTo(x == 0 ? side : x - side, 0);
    corner.lineTo(x, side);
    corner.closePath();
    g.setColor(color);
    g.fill(corner);
  }

  /** Draws a triangle with a stroke in it. */
  static void warning(Graphics2D g, Color color, int x, int y, int side) {
    Path2D triangle = new Path2D.Float();
    triangle.moveTo(x + side / 2f, y + 0.5f);
    triangle.lineTo(x + side, y + side - 1f);
    triangle.lineTo(x, y + side - 1f);
    triangle.closePath();
    g.setColor(color);
    g.setStroke(
        new BasicStroke(UIScale.scale(1.3f), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    g.draw(triangle);
    float middle = x + side / 2f;
    g.draw(new Line2D.Float(middle, y + side * 0.40f, middle, y + side * 0.62f));
    float dot = UIScale.scale(1.5f);
    g.fill(new Ellipse2D.Float(middle - dot / 2, y + side * 0.74f, dot, dot));
  }

  /** Draws the mark of a list that can be opened: a small angle that points down. */
  static void chevron(Graphics2D g, Color color, int x, int y, int width, int height) {
    float reach = UIScale.scale(3.5f);
    float middle = x + width / 2f - UIScale.scale(1f);
    float low = y + height / 2f + reach / 2;
    Path2D angle = new Path2D.Float();
    angle.moveTo(middle - reach, low - reach);
    angle.lineTo(middle, low);
    angle.lineTo(middle + reach, low - reach);
    g.setColor(color);
    g.setStroke(
        new BasicStroke(UIScale.scale(1.5f), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    g.draw(angle);
  }

  /** Draws the mark of a finding: square where a cell is wrong, a ring where one is missing. */
  static void finding(Graphics2D g, Severity severity, Palette palette, int x, int height) {
    float side = UIScale.scale(6f);
    float y = Math.max(UIScale.scale(3f), height / 2f - side / 2 - UIScale.scale(1f));
    g.setColor(palette.severity(severity));
    g.setStroke(new BasicStroke(UIScale.scale(1.5f)));
    switch (severity) {
      case WRONG -> g.fill(new Rectangle2D.Float(x, y, side, side));
      case MISSING -> g.draw(new Ellipse2D.Float(x, y, side - 1, side - 1));
      case CHECK -> g.fill(new Ellipse2D.Float(x, y, side, side));
      case NOTE -> g.fill(new Ellipse2D.Float(x + 1, y + 1, side - 2, side - 2));
    }
  }

  /** Draws a wavy line under words. */
  static void wave(Graphics2D g, int x, int y, int width) {
    float step = UIScale.scale(2f);
    Path2D wave = new Path2D.Float();
    wave.moveTo(x, y);
    boolean up = true;
    for (float at = x + step; at <= x + width; at += step) {
      wave.lineTo(at, up ? y - step : y);
      up = !up;
    }
    g.setStroke(new BasicStroke(UIScale.scale(1f)));
    g.draw(wave);
  }
}
