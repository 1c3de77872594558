package zonewright.desk.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import zonewright.units.QuantityText;
import zonewright.water.StandingWater;

/** Draws standing water over time, with the depth that may stand. */
record StandingWaterDrawing(String title, StandingWater water) implements Drawing {
  @Override
  public String inWords() {
    return "%s cycles; at most %s stands, %s may"
        .formatted(water.cycles().size(), depth(water.greatest()), depth(water.limit()));
  }

  private String depth(double value) {
    return QuantityText.readable(value, 2) + " " + water.unit().symbol();
  }

  private static String number(double value) {
    return value == 0 ? "0" : QuantityText.readable(value, 0);
  }

  /** Where times and depths come to lie. */
  private record Frame(Rectangle area, double minutes, double depth) {
    double x(double at) {
      return area.x + area.width * at / minutes;
    }

    double y(double at) {
      return area.y + area.height - area.height * at / depth;
    }

    double right() {
      return area.getMaxX();
    }
  }

  @Override
  public void paint(Canvas canvas) {
    double depth =
        Math.max(water.greatest(), Math.min(water.greatestAtOnce(), water.limit() * 2)) * 1.08;
    depth = Math.max(depth, water.limit() * 1.25);
    Rectangle place = canvas.place();
    int line = canvas.metrics().getHeight();
    int top = place.y + line + Math.round(canvas.px(5));
    List<Double> depths =
        Ticks.upTo(depth, Math.max(1, Math.min(5, (place.height - 2 * line) / (2 * line))));
    int scaleWidth = depths.stream().mapToInt(tick -> canvas.width(number(tick))).max().orElse(0);
    int left = place.x + scaleWidth + Math.round(canvas.px(6));
    int bottom = place.y + place.height - line - Math.round(canvas.px(3));
    Rectangle area =
        new Rectangle(
            left, top, Math.max(1, place.x + place.width - left), Math.max(1, bottom - top));
    Frame frame = new Frame(area, water.end(), depth);
    cycles(canvas, frame);
    axes(canvas, frame, depths);
    Graphics2D pen = canvas.pen();
    Shape before = pen.getClip();
    pen.clip(new Rectangle2D.Double(area.x, area.y - 2.0, area.width + 2.0, area.height + 3.0));
    atOnce(canvas, frame);
    given(canvas, frame);
    pen.setClip(before);
    limit(canvas, frame);
    legend(canvas, frame);
  }

  private void cycles(Canvas canvas, Frame frame) {
    canvas.pen().setColor(canvas.palette().busy());
    for (StandingWater.Cycle cycle : water.cycles()) {
      double from = frame.x(cycle.opens());
      double width = Math.max(1, frame.x(cycle.closes()) - from);
      canvas.pen().fill(new Rectangle2D.Double(from, frame.area.y, width, frame.area.height));
    }
  }

  private void axes(Canvas canvas, Frame frame, List<Double> depths) {
    Color line = canvas.palette().line();
    Color words = canvas.palette().muted();
    for (double tick : depths) {
      double y = frame.y(tick);
      canvas.line(frame.area.x, y, frame.right(), y, line, 1);
      double base = y + canvas.metrics().getAscent() / 2.0 - 1;
      canvas.writeBefore(number(tick), frame.area.x - canvas.px(6), base, words);
    }
    int room = Math.max(2, frame.area.width / (canvas.width("0000 min") * 2));
    double floor = frame.area.getMaxY();
    List<Double> ticks = Ticks.upTo(water.end(), room);
    for (double tick : ticks) {
      double x = frame.x(tick);
      canvas.line(x, floor, x, floor + canvas.px(3), words, 1);
      String text = number(tick) + (tick == ticks.get(ticks.size() - 1) ? " min" : "");
      double at = Math.min(x, frame.right() - canvas.width(text));
      canvas.write(text, at, floor + canvas.px(3) + canvas.metrics().getAscent(), words);
    }
  }

  private static Path2D path(List<StandingWater.Point> points, Frame frame) {
    Path2D path = new Path2D.Double();
    for (StandingWater.Point point : points) {
      double x = frame.x(point.minutes());
      double y = frame.y(point.depth());
      if (path.getCurrentPoint() == null) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
    }
    return path;
  }

  private void atOnce(Canvas canvas, Frame frame) {
    if (water.cycles().size() > 1) {
      canvas.pen().setColor(canvas.palette().muted());
      canvas.pen().setStroke(canvas.broken(1.2, 2, 3));
      canvas.pen().draw(path(water.atOnce(), frame));
    }
  }

  private void given(Canvas canvas, Frame frame) {
    Path2D line = path(water.given(), frame);
    Path2D body = new Path2D.Double(line);
    double end = water.given().get(water.given().size() - 1).minutes();
    body.lineTo(frame.x(end), frame.y(0));
    body.closePath();
    Color water = canvas.palette().water();
    canvas.pen().setColor(new Color(water.getRed(), water.getGreen(), water.getBlue(), 51));
    canvas.pen().fill(body);
    canvas.pen().setColor(water);
    canvas
        .pen()
        .setStroke(new BasicStroke(canvas.px(1.8), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    canvas.pen().draw(line);
  }

  /** The limit, and what it is in words on a ground of their own so that no line runs through. */
  private void limit(Canvas canvas, Frame frame) {
    double y = frame.y(water.limit());
    Color color = canvas.palette().limit();
    canvas.pen().setColor(color);
    canvas.pen().setStroke(canvas.broken(1.4, 6, 4));
    canvas.pen().draw(new Line2D.Double(frame.area.x, y, frame.right(), y));
    String text = depth(water.limit()) + " may stand";
    int width = canvas.width(text);
    double base = y - canvas.px(5);
    Color paper = canvas.palette().paper();
    canvas.pen().setColor(new Color(paper.getRed(), paper.getGreen(), paper.getBlue(), 225));
    canvas
        .pen()
        .fill(
            new Rectangle2D.Double(
                frame.right() - width - canvas.px(3),
                base - canvas.metrics().getAscent(),
                width + canvas.px(3),
                canvas.metrics().getAscent() + canvas.px(2)));
    canvas.writeBefore(text, frame.right(), base, color);
  }

  private void legend(Canvas canvas, Frame frame) {
    double base = canvas.place().y + canvas.metrics().getAscent();
    Color words = canvas.palette().muted();
    String unit = "Depth (" + water.unit().symbol() + ")";
    double x = canvas.place().x;
    canvas.write(unit, x, base, words);
    x += canvas.width(unit) + canvas.px(12);
    double side = canvas.px(9);
    canvas.pen().setColor(canvas.palette().busy());
    canvas.pen().fill(new Rectangle2D.Double(x, base - side + 1, side, side));
    x += side + canvas.px(4);
    canvas.write("valve open", x, base, words);
    x += canvas.width("valve open") + canvas.px(12);
    String once = "in one run";
    if (water.cycles().size() > 1 && x + canvas.px(22) + canvas.width(once) <= frame.right()) {
      double y = base - canvas.metrics().getAscent() / 3.0;
      canvas.pen().setColor(words);
      canvas.pen().setStroke(canvas.broken(1.2, 2, 3));
      canvas.pen().draw(new Line2D.Double(x, y, x + canvas.px(18), y));
      canvas.write(once, x + canvas.px(22), base, words);
    }
  }
}
