package zonewright.desk.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Rectangle;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import zonewright.pipes.PressureLine;
import zonewright.units.QuantityText;

/** Draws the pressure step by step from the street main to the worst head. */
record PressureLineDrawing(String title, PressureLine line) implements Drawing {
  @Override
  public String inWords() {
    PressureLine.Step most =
        line.steps().stream()
            .max((one, other) -> Double.compare(one.loss(), other.loss()))
            .orElseThrow();
    return "From %s to %s at the worst head, which needs %s; most goes into the %s, %s"
        .formatted(
            pressure(line.begins()),
            pressure(line.ends()),
            pressure(line.needed()),
            most.name(),
            pressure(most.loss()));
  }

  private String number(double value) {
    return QuantityText.fixed(value, line.unit().symbol().equals("psi") ? 1 : 0);
  }

  private String pressure(double value) {
    return number(value) + " " + line.unit().symbol();
  }

  /** Where steps and pressures come to lie. */
  private record Frame(Rectangle area, int steps, double low, double high) {
    double x(int step) {
      return area.x + area.width * (double) step / steps;
    }

    double y(double pressure) {
      return area.y + area.height - area.height * (pressure - low) / (high - low);
    }
  }

  @Override
  public void paint(Canvas canvas) {
    double low = Math.min(0, line.steps().stream().mapToDouble(s -> s.left()).min().orElse(0));
    double high =
        Math.max(
                Math.max(line.begins(), line.needed()),
                line.steps().stream().mapToDouble(s -> s.left()).max().orElse(0))
            * 1.12;
    Rectangle place = canvas.place();
    int height = canvas.metrics().getHeight();
    int top = place.y + height + Math.round(canvas.px(4));
    double each = (place.width - canvas.px(50)) / line.steps().size();
    boolean staggered =
        line.steps().stream().anyMatch(step -> canvas.width(step.name()) > each - canvas.px(4));
    int bottom = place.y + place.height - (staggered ? 3 : 2) * height - Math.round(canvas.px(4));
    List<Double> ticks = Ticks.upTo(high, Math.max(1, Math.min(5, (bottom - top) / (2 * height))));
    int scale = ticks.stream().mapToInt(tick -> canvas.width(tick(tick))).max().orElse(0);
    int left = place.x + scale + Math.round(canvas.px(6));
    Rectangle area =
        new Rectangle(
            left,
            top,
            Math.max(1, place.x + place.width - left - Math.round(canvas.px(8))),
            Math.max(1, bottom - top));
    Frame frame = new Frame(area, line.steps().size(), low, Math.max(high, low + 1e-9));
    for (double tick : ticks) {
      double y = frame.y(tick);
      canvas.line(area.x, y, area.getMaxX(), y, canvas.palette().line(), 1);
      double base = y + canvas.metrics().getAscent() / 2.0 - 1;
      canvas.writeBefore(tick(tick), area.x - canvas.px(6), base, canvas.palette().muted());
    }
    canvas.write(
        "Pressure (" + line.unit().symbol() + ")",
        place.x,
        place.y + canvas.metrics().getAscent(),
        canvas.palette().muted());
    body(canvas, frame);
    needed(canvas, frame);
    labels(canvas, frame, staggered);
  }

  private static String tick(double value) {
    return value == 0 ? "0" : QuantityText.readable(value, 0);
  }

  private void body(Canvas canvas, Frame frame) {
    Path2D path = new Path2D.Double();
    path.moveTo(frame.x(0), frame.y(line.begins()));
    for (int i = 0; i < line.steps().size(); i++) {
      path.lineTo(frame.x(i + 1), frame.y(line.steps().get(i).left()));
    }
    Path2D filled = new Path2D.Double(path);
    filled.lineTo(frame.x(line.steps().size()), frame.y(0));
    filled.lineTo(frame.x(0), frame.y(0));
    filled.closePath();
    Color water = canvas.palette().water();
    canvas.pen().setColor(new Color(water.getRed(), water.getGreen(), water.getBlue(), 46));
    canvas.pen().fill(filled);
    canvas.pen().setColor(water);
    canvas
        .pen()
        .setStroke(new BasicStroke(canvas.px(2), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    canvas.pen().draw(path);
    double side = canvas.px(5);
    for (int i = 0; i <= line.steps().size(); i++) {
      double left = i == 0 ? line.begins() : line.steps().get(i - 1).left();
      canvas
          .pen()
          .fill(new Ellipse2D.Double(frame.x(i) - side / 2, frame.y(left) - side / 2, side, side));
    }
  }

  private void needed(Canvas canvas, Frame frame) {
    double y = frame.y(line.needed());
    Color color = canvas.palette().limit();
    canvas.pen().setColor(color);
    canvas.pen().setStroke(canvas.broken(1.4, 6, 4));
    canvas.pen().draw(new Line2D.Double(frame.area().x, y, frame.area().getMaxX(), y));
    String text = "heads need " + pressure(line.needed());
    onPaper(canvas, text, frame.area().x + canvas.px(4), y + canvas.metrics().getAscent(), color);
  }

  /**
   * Names beneath each step with what it takes, in two rows by turns where one is too narrow;
   * pressures above the line where there is room.
   */
  private void labels(Canvas canvas, Frame frame, boolean staggered) {
    Color words = canvas.palette().muted();
    double step = frame.x(1) - frame.x(0);
    double base = frame.area().getMaxY() + canvas.metrics().getAscent() + canvas.px(2);
    for (int i = 0; i < line.steps().size(); i++) {
      PressureLine.Step each = line.steps().get(i);
      double middle = (frame.x(i) + frame.x(i + 1)) / 2;
      String name = fitting(canvas, each.name(), (staggered ? 2 : 1) * step - canvas.px(4));
      double half = canvas.width(name) / 2.0;
      double within =
          Math.min(Math.max(middle, frame.area().x + half), frame.area().getMaxX() - half);
      double row = staggered && i % 2 == 1 ? canvas.metrics().getHeight() : 0;
      canvas.writeAround(name, staggered ? within : middle, base + row, words);
      String loss =
          (each.loss() > 0 ? "−" : each.loss() < 0 ? "+" : "") + number(Math.abs(each.loss()));
      if (canvas.width(loss) < step) {
        canvas.writeAround(
            loss,
            middle,
            base + (staggered ? 2 : 1) * canvas.metrics().getHeight(),
            canvas.palette().ink());
      }
    }
    double above = canvas.px(6);
    onPaper(
        canvas,
        pressure(line.begins()),
        frame.x(0) + canvas.px(2),
        frame.y(line.begins()) - above,
        canvas.palette().ink());
    String end = pressure(line.ends());
    onPaper(
        canvas,
        end,
        frame.area().getMaxX() - canvas.width(end),
        frame.y(line.ends()) - above,
        canvas.palette().ink());
  }

  /** Returns the words if there is room for them, or else the first of them that fits. */
  private static String fitting(Canvas canvas, String words, double room) {
    if (canvas.width(words) <= room) {
      return words;
    }
    for (String word : words.split(" ", -1)) {
      if (canvas.width(word) <= room) {
        return word;
      }
    }
    return "";
  }

  private static void onPaper(Canvas canvas, String text, double x, double base, Color color) {
    Color paper = canvas.palette().paper();
    canvas.pen().setColor(new Color(paper.getRed(), paper.getGreen(), paper.getBlue(), 215));
    canvas
        .pen()
        .fill(
            new Rectangle2D.Double(
                x - canvas.px(2),
                base - canvas.metrics().getAscent(),
                canvas.width(text) + canvas.px(4),
                canvas.metrics().getAscent() + canvas.px(2)));
    canvas.write(text, x, base, color);
  }
}
