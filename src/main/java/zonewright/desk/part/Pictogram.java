package zonewright.desk.part;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import javax.swing.Icon;
import javax.swing.UIManager;

/** Line drawings for buttons, on a grid of 16 by 16, in the colour of the text beside them. */
public final class Pictogram implements Icon {
  public static final Pictogram NEW =
      new Pictogram(line(4, 2, 10, 2, 13, 5, 13, 14, 4, 14, 4, 2), line(10, 2, 10, 5, 13, 5));
  public static final Pictogram OPEN =
      new Pictogram(line(2, 9, 2, 14, 14, 14, 14, 9), line(8, 11, 8, 2), line(5, 5, 8, 2, 11, 5));
  public static final Pictogram SAVE =
      new Pictogram(line(2, 9, 2, 14, 14, 14, 14, 9), line(8, 2, 8, 11), line(5, 8, 8, 11, 11, 8));
  public static final Pictogram UNDO =
      new Pictogram(
          new Arc2D.Double(4, 5, 9, 8, -90, 180, Arc2D.OPEN),
          line(8.5, 5, 3, 5),
          line(6, 2, 3, 5, 6, 8));
  public static final Pictogram REDO =
      new Pictogram(
          new Arc2D.Double(3, 5, 9, 8, 90, 180, Arc2D.OPEN),
          line(7.5, 5, 13, 5),
          line(10, 2, 13, 5, 10, 8));
  public static final Pictogram ADD_ROW =
      new Pictogram(
          line(2, 3, 14, 3),
          line(2, 7, 14, 7),
          line(8, 9.5, 8, 15),
          line(5.25, 12.25, 10.75, 12.25));
  public static final Pictogram NEXT_FINDING =
      new Pictogram(line(4, 14, 4, 2, 12, 2, 9.5, 5, 12, 8, 4, 8));
  public static final Pictogram UNITS =
      new Pictogram(
          new Rectangle2D.Double(1.5, 5, 13, 6),
          line(4.5, 5, 4.5, 8),
          line(8, 5, 8, 9),
          line(11.5, 5, 11.5, 8));
  public static final Pictogram HELP =
      new Pictogram(
          new Arc2D.Double(5, 2, 6, 6, 180, -220, Arc2D.OPEN),
          line(8.6, 7.9, 8, 8.8, 8, 10.5),
          line(8, 13, 8, 13.4));
  public static final Pictogram BACK =
      new Pictogram(line(14, 8, 2.5, 8), line(7, 3.5, 2.5, 8, 7, 12.5));
  public static final Pictogram COPY =
      new Pictogram(
          new Rectangle2D.Double(2.5, 5, 8, 9), line(5.5, 5, 5.5, 2, 13.5, 2, 13.5, 11, 10.5, 11));
  public static final Pictogram CLOSE = new Pictogram(line(4, 4, 12, 12), line(12, 4, 4, 12));
  public static final Pictogram UPSTREAM =
      new Pictogram(line(12, 13, 12, 4), line(8.5, 7.5, 12, 4, 15.5, 7.5));

  public static final Pictogram EXPORT =
      new Pictogram(
          line(9, 2.5, 13.5, 2.5, 13.5, 7),
          line(13.5, 2.5, 7.5, 8.5),
          line(6.5, 3.5, 2.5, 3.5, 2.5, 13.5, 12.5, 13.5, 12.5, 9.5));
  public static final Pictogram SORT =
      new Pictogram(
          line(4.5, 2.5, 4.5, 13.5),
          line(2, 11, 4.5, 13.5, 7, 11),
          line(9, 4, 14, 4),
          line(9, 8, 12.5, 8),
          line(9, 12, 11, 12));
  public static final Pictogram FILTER =
      new Pictogram(line(2, 3.5, 14, 3.5), line(4.5, 8, 11.5, 8), line(7, 12.5, 9, 12.5));
  public static final Pictogram DOWN = new Pictogram(line(4.5, 6.5, 8, 10, 11.5, 6.5));

  private static final int SIZE = 16;

  private final List<Shape> lines;

  private Pictogram(Shape... lines) {
    this.lines = List.of(lines);
  }

  private static Shape line(double... points) {
    Path2D path = new Path2D.Double();
    path.moveTo(points[0], points[1]);
    for (int i = 2; i < points.length; i += 2) {
      path.lineTo(points[i], points[i + 1]);
    }
    return path;
  }

  @Override
  public void paintIcon(Component component, Graphics graphics, int x, int y) {
    Graphics2D pen = (Graphics2D) graphics.create();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    pen.translate(x, y);
    double scale = UIScale.scale(1f);
    pen.scale(scale, scale);
    pen.setColor(
        component.isEnabled()
            ? component.getForeground()
            : UIManager.getColor("Label.disabledForeground"));
    pen.setStroke(new BasicStroke(1.5f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    lines.forEach(pen::draw);
    pen.dispose();
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
