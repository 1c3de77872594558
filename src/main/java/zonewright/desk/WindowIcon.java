package zonewright.desk;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Stream;

/** The sign of the program: a drop over three layers of soil. */
public final class WindowIcon {
  private static final List<Image> IMAGES =
      Stream.of(16, 24, 32, 48, 64, 128).<Image>map(WindowIcon::image).toList();

  private WindowIcon() {}

  /** Returns the sign in the sizes that desktops ask for; drawn once, on whichever thread. */
  static List<Image> images() {
    return IMAGES;
  }

  /** Returns the sign, so many points wide and high. */
  public static BufferedImage image(int size) {
    BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
    Graphics2D pen = image.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    pen.scale(size / 32.0, size / 32.0);
    pen.setColor(new Color(0x1d6b73));
    pen.fill(new RoundRectangle2D.Double(0, 0, 32, 32, 9, 9));
    Path2D drop = new Path2D.Double();
    drop.moveTo(16, 3.5);
    drop.curveTo(19.5, 8.5, 22, 11.2, 22, 14);
    drop.curveTo(22, 17.6, 19.3, 20, 16, 20);
    drop.curveTo(12.7, 20, 10, 17.6, 10, 14);
    drop.curveTo(10, 11.2, 12.5, 8.5, 16, 3.5);
    pen.setColor(new Color(0xeaf6f6));
    pen.fill(drop);
    pen.setStroke(new BasicStroke(2.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    pen.setColor(new Color(0xe8cf9a));
    pen.draw(new Line2D.Double(6, 23, 26, 23));
    pen.setColor(new Color(0xc9a86a));
    pen.draw(new Line2D.Double(8, 26.6, 24, 26.6));
    pen.dispose();
    return image;
  }
}
