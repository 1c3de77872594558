package zonewright.desk.part;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import javax.swing.Icon;
import zonewright.sheet.Severity;

/** A mark of its own shape and colour for each severity, so that neither carries it alone. */
public record SeverityMark(Severity severity) implements Icon {
  private static final int SIZE = 14;

  /** Returns the colour of a severity in the look in force. */
  public static Color colour(Severity severity) {
    return Palette.current().severity(severity);
  }

  @Override
  public void paintIcon(Component component, Graphics graphics, int x, int y) {
    Graphics2D pen = (Graphics2D) graphics.create();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    pen.translate(x, y);
    pen.scale(UIScale.scale(1f), UIScale.scale(1f));
    pen.setColor(colour(severity));
    pen.setStroke(new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    switch (severity) {
      case WRONG -> wrong(pen);
      case MISSING -> missing(pen);
      case CHECK -> check(pen);
      case NOTE -> note(pen);
    }
    pen.dispose();
  }

  /** A full square with a cross. */
  private static void wrong(Graphics2D pen) {
    pen.fill(new java.awt.geom.RoundRectangle2D.Double(1, 1, 12, 12, 4, 4));
    pen.setColor(Palette.current().paper());
    pen.draw(new Line2D.Double(4.5, 4.5, 9.5, 9.5));
    pen.draw(new Line2D.Double(9.5, 4.5, 4.5, 9.5));
  }

  /** A box with a broken outline: something belongs here. */
  private static void missing(Graphics2D pen) {
    pen.setStroke(
        new BasicStroke(
            1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {3, 2}, 0));
    pen.draw(new Rectangle2D.Double(2, 2, 10, 10));
  }

  /** A triangle with a stroke in it. */
  private static void check(Graphics2D pen) {
    Path2D triangle = new Path2D.Double();
    triangle.moveTo(7, 1.5);
    triangle.lineTo(13, 12.5);
    triangle.lineTo(1, 12.5);
    triangle.closePath();
    pen.fill(triangle);
    pen.setColor(Palette.current().paper());
    pen.draw(new Line2D.Double(7, 5.5, 7, 8.6));
    pen.draw(new Line2D.Double(7, 10.6, 7, 10.7));
  }

  /** An open circle with a dot. */
  private static void note(Graphics2D pen) {
    pen.draw(new Ellipse2D.Double(1.5, 1.5, 11, 11));
    pen.fill(new Ellipse2D.Double(5.4, 5.4, 3.2, 3.2));
  }

  @Override
  public int getIconWidth() {
    return UIScale.scale(SIZE);
  }

  @Override
  public int getIconHeight() {
    return UIScale.scale(SIZE);
  }
}
