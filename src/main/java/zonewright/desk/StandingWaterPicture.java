package zonewright.desk;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.UIManager;
import zonewright.units.QuantityText;
import zonewright.water.StandingWater;

/** Draws the water that stands on the soil of a zone while its cycles run and soak. */
final class StandingWaterPicture extends JPanel {
  private Optional<StandingWater> water = Optional.empty();
  private String zone = "";
  private String sentence = "Select a zone to see the water that stands on its soil.";

  StandingWaterPicture() {
    setName("standing water");
    putClientProperty(FlatClientProperties.STYLE_CLASS, "small");
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(UIScale.scale(340), UIScale.scale(180));
  }

  /** Shows the water on a zone, or why it is not known. */
  void show(String ofZone, StandingWater.Answer answer) {
    zone = ofZone;
    water = Optional.empty();
    if (answer instanceof StandingWater.Shown shown) {
      sentence = "";
      water = Optional.of(shown.water());
    } else if (answer instanceof StandingWater.NotKnown unknown) {
      sentence = unknown.sentence();
    }
    getAccessibleContext().setAccessibleName("Water standing on the soil of " + zone);
    getAccessibleContext().setAccessibleDescription(water.map(this::inWords).orElse(sentence));
    repaint();
  }

  /** Shows that there is no zone to show. */
  void nothing() {
    zone = "";
    water = Optional.empty();
    sentence = "Select a zone to see the water that stands on its soil.";
    repaint();
  }

  private String inWords(StandingWater shown) {
    if (shown.greatestAtOnce() == 0) {
      return "No water stands: the soil takes it in as fast as it comes.";
    }
    return "%s cycles; at most %s stands, %s may"
        .formatted(
            shown.cycles().size(), depth(shown, shown.greatest()), depth(shown, shown.limit()));
  }

  private static String depth(StandingWater shown, double value) {
    return QuantityText.readable(value, 2) + " " + shown.unit().symbol();
  }

  private static Color colour(String key) {
    return UIManager.getColor("Zonewright." + key);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D pen = (Graphics2D) graphics.create();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    Object hints = java.awt.Toolkit.getDefaultToolkit().getDesktopProperty("awt.font.desktophints");
    if (hints instanceof java.util.Map<?, ?> desktop) {
      pen.addRenderingHints(desktop);
    } else {
      pen.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    }
    int margin = UIScale.scale(14);
    FontMetrics metrics = pen.getFontMetrics(getFont());
    pen.setFont(getFont().deriveFont(java.awt.Font.BOLD));
    pen.setColor(UIManager.getColor("Label.foreground"));
    String title = "Water standing on the soil" + (zone.isEmpty() ? "" : ", " + zone);
    pen.drawString(title, margin, UIScale.scale(8) + metrics.getAscent());
    pen.setFont(getFont());
    int top = UIScale.scale(14) + 2 * metrics.getHeight();
    if (water.isPresent() && water.get().greatestAtOnce() > 0) {
      plot(pen, water.get(), metrics, margin, top);
    } else {
      pen.setColor(colour("muted"));
      String said = water.isPresent() ? inWords(water.get()) : sentence;
      int y = top;
      for (String line : WrappedText.lines(said, metrics, getWidth() - 2 * margin)) {
        pen.drawString(line, margin, y);
        y += metrics.getHeight();
      }
    }
    pen.dispose();
  }

  /** Where times and depths come to lie. */
  private record Frame(Rectangle area, double minutes, double depth) {
    double x(double at) {
      return area.x + area.width * at / minutes;
    }

    double y(double at) {
      return area.y + area.height - area.height * at / depth;
    }
  }

  private void plot(Graphics2D pen, StandingWater shown, FontMetrics metrics, int margin, int top) {
    double depth =
        Math.max(shown.greatest(), Math.min(shown.greatestAtOnce(), shown.limit() * 2)) * 1.08;
    depth = Math.max(depth, shown.limit() * 1.25);
    List<Double> depths = Ticks.upTo(depth, 4);
    int scaleWidth = 0;
    for (double tick : depths) {
      scaleWidth = Math.max(scaleWidth, metrics.stringWidth(number(tick)));
    }
    int left = margin + scaleWidth + UIScale.scale(6);
    int bottom = getHeight() - UIScale.scale(8) - metrics.getHeight() - UIScale.scale(3);
    Rectangle area =
        new Rectangle(
            left, top, Math.max(1, getWidth() - margin - left), Math.max(1, bottom - top));
    Frame frame = new Frame(area, shown.end(), depth);
    cycles(pen, shown, frame);
    axes(pen, shown, frame, depths, metrics);
    java.awt.Shape before = pen.getClip();
    pen.clip(new Rectangle2D.Double(area.x, area.y - 2, area.width + 2, area.height + 3));
    atOnce(pen, shown, frame);
    given(pen, shown, frame);
    pen.setClip(before);
    limit(pen, shown, frame, metrics);
    legend(pen, shown, frame, metrics, margin);
  }

  private static String number(double value) {
    return value == 0 ? "0" : QuantityText.readable(value, 0);
  }

  private static void cycles(Graphics2D pen, StandingWater shown, Frame frame) {
    pen.setColor(colour("open"));
    for (StandingWater.Cycle cycle : shown.cycles()) {
      double from = frame.x(cycle.opens());
      double width = Math.max(1, frame.x(cycle.closes()) - from);
      pen.fill(new Rectangle2D.Double(from, frame.area().y, width, frame.area().height));
    }
  }

  private void axes(
      Graphics2D pen, StandingWater shown, Frame frame, List<Double> depths, FontMetrics metrics) {
    Rectangle area = frame.area();
    pen.setStroke(new BasicStroke(1f));
    for (double tick : depths) {
      double y = frame.y(tick);
      pen.setColor(colour("line"));
      pen.draw(new Line2D.Double(area.x, y, area.x + area.width, y));
      pen.setColor(colour("muted"));
      String text = number(tick);
      pen.drawString(
          text,
          area.x - UIScale.scale(6) - metrics.stringWidth(text),
          (float) y + metrics.getAscent() / 2f - 1);
    }
    int room = Math.max(2, area.width / (metrics.stringWidth("0000 min") * 2));
    int floor = area.y + area.height;
    List<Double> ticks = Ticks.upTo(shown.end(), room);
    for (double tick : ticks) {
      double x = frame.x(tick);
      pen.setColor(colour("muted"));
      pen.draw(new Line2D.Double(x, floor, x, floor + UIScale.scale(3)));
      String text = number(tick) + (tick == ticks.get(ticks.size() - 1) ? " min" : "");
      float at = (float) Math.min(x, area.x + area.width - metrics.stringWidth(text));
      pen.drawString(text, at, floor + UIScale.scale(3) + metrics.getAscent());
    }
  }

  private static Path2D path(List<StandingWater.Point> points, Frame frame) {
    Path2D path = new Path2D.Double();
    boolean first = true;
    for (StandingWater.Point point : points) {
      double x = frame.x(point.minutes());
      double y = frame.y(point.depth());
      if (first) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
      first = false;
    }
    return path;
  }

  private static void atOnce(Graphics2D pen, StandingWater shown, Frame frame) {
    if (shown.cycles().size() < 2) {
      return;
    }
    pen.setColor(colour("muted"));
    pen.setStroke(
        new BasicStroke(
            UIScale.scale(1.2f),
            BasicStroke.CAP_BUTT,
            BasicStroke.JOIN_ROUND,
            1,
            new float[] {UIScale.scale(2f), UIScale.scale(3f)},
            0));
    pen.draw(path(shown.atOnce(), frame));
  }

  private static void given(Graphics2D pen, StandingWater shown, Frame frame) {
    Path2D line = path(shown.given(), frame);
    Path2D body = new Path2D.Double(line);
    body.lineTo(frame.x(shown.given().get(shown.given().size() - 1).minutes()), frame.y(0));
    body.closePath();
    pen.setColor(colour("waterFill"));
    pen.fill(body);
    pen.setColor(colour("water"));
    pen.setStroke(
        new BasicStroke(UIScale.scale(1.8f), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    pen.draw(line);
  }

  private static void limit(Graphics2D pen, StandingWater shown, Frame frame, FontMetrics metrics) {
    Rectangle area = frame.area();
    double y = frame.y(shown.limit());
    pen.setColor(colour("limit"));
    pen.setStroke(
        new BasicStroke(
            UIScale.scale(1.4f),
            BasicStroke.CAP_BUTT,
            BasicStroke.JOIN_MITER,
            10,
            new float[] {UIScale.scale(6f), UIScale.scale(4f)},
            0));
    pen.draw(new Line2D.Double(area.x, y, area.x + area.width, y));
    String text = depth(shown, shown.limit()) + " may stand";
    pen.drawString(
        text, area.x + area.width - metrics.stringWidth(text), (float) y - UIScale.scale(4));
  }

  private static void legend(
      Graphics2D pen, StandingWater shown, Frame frame, FontMetrics metrics, int margin) {
    int base = frame.area().y - UIScale.scale(8);
    int x = margin;
    pen.setColor(colour("muted"));
    String unit = "Depth (" + shown.unit().symbol() + ")";
    pen.drawString(unit, x, base);
    x = frame.area().x + Math.max(0, metrics.stringWidth(unit) - (frame.area().x - margin));
    x += UIScale.scale(10);
    int side = UIScale.scale(9);
    pen.setColor(colour("open"));
    pen.fillRect(x, base - side + 1, side, side);
    x += side + UIScale.scale(4);
    pen.setColor(colour("muted"));
    pen.drawString("valve open", x, base);
    x += metrics.stringWidth("valve open") + UIScale.scale(12);
    String once = "in one run";
    if (shown.cycles().size() > 1
        && x + UIScale.scale(22) + metrics.stringWidth(once)
            <= frame.area().x + frame.area().width) {
      pen.setStroke(
          new BasicStroke(
              UIScale.scale(1.2f),
              BasicStroke.CAP_BUTT,
              BasicStroke.JOIN_ROUND,
              1,
              new float[] {UIScale.scale(2f), UIScale.scale(3f)},
              0));
      int y = base - metrics.getAscent() / 3;
      pen.draw(new Line2D.Double(x, y, x + UIScale.scale(18), y));
      pen.drawString(once, x + UIScale.scale(22), base);
    }
  }
}
