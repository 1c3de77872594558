package zonewright.desk.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import zonewright.units.QuantityText;

/**
 * Draws the need of each month as a bar, the part that rain meets hatched in it, the water given as
 * a line across the bar and the allowance as a broken one.
 */
record YearDrawing(String title, List<Month> months, String unit) implements Drawing {
  /** A month, in one unit of volume; given and allowed only where they are known. */
  record Month(
      String name, double need, double rain, Optional<Double> allowed, Optional<Double> given) {
    double most() {
      return Math.max(need, Math.max(allowed.orElse(0.0), given.orElse(0.0)));
    }
  }

  YearDrawing {
    months = List.copyOf(months);
  }

  private String amount(double value) {
    return QuantityText.grouped(value, 0) + " " + unit;
  }

  @Override
  public String inWords() {
    Month greatest = months.stream().max(Comparator.comparingDouble(Month::need)).orElseThrow();
    double rain = months.stream().mapToDouble(Month::rain).sum();
    long over =
        months.stream()
            .filter(month -> month.allowed().isPresent() && month.given().isPresent())
            .filter(month -> month.given().get() > month.allowed().get())
            .count();
    boolean budget = months.stream().anyMatch(month -> month.allowed().isPresent());
    String allowance =
        !budget
            ? "no allowance is known"
            : over == 0
                ? "no month is given more than its part of the allowance"
                : over
                    + (over == 1 ? " month is" : " months are")
                    + " given more than their part of the allowance";
    return "The plants need most in %s, %s; rain meets %s of the year's need; %s."
        .formatted(greatest.name(), amount(greatest.need()), amount(rain), allowance);
  }

  /** Where months and amounts come to lie. */
  private record Frame(Rectangle area, double most, int count) {
    double slot() {
      return area.getWidth() / count;
    }

    double left(int month) {
      return area.x + slot() * (month + 0.18);
    }

    double width() {
      return slot() * 0.64;
    }

    double y(double amount) {
      return area.getMaxY() - area.height * amount / most;
    }
  }

  @Override
  public void paint(Canvas canvas) {
    double most = months.stream().mapToDouble(Month::most).max().orElse(1) * 1.06;
    int line = canvas.metrics().getHeight();
    Rectangle place = canvas.place();
    List<Double> ticks =
        Ticks.upTo(most, Math.max(1, Math.min(5, (place.height - 2 * line) / (2 * line))));
    int scale = ticks.stream().mapToInt(tick -> canvas.width(number(tick))).max().orElse(0);
    int left = place.x + scale + Math.round(canvas.px(6));
    int top = place.y + line + Math.round(canvas.px(6));
    int bottom = place.y + place.height - line - Math.round(canvas.px(3));
    Rectangle area =
        new Rectangle(
            left, top, Math.max(1, place.x + place.width - left), Math.max(1, bottom - top));
    Frame frame = new Frame(area, most, months.size());
    for (double tick : ticks) {
      double y = frame.y(tick);
      canvas.line(area.x, y, area.getMaxX(), y, canvas.palette().line(), 1);
      double base = y + canvas.metrics().getAscent() / 2.0 - 1;
      canvas.writeBefore(number(tick), area.x - canvas.px(6), base, canvas.palette().muted());
    }
    for (int month = 0; month < months.size(); month++) {
      month(canvas, frame, month);
    }
    legend(canvas, frame);
  }

  private static String number(double value) {
    return value == 0 ? "0" : QuantityText.grouped(value, value < 10 ? 1 : 0);
  }

  private void month(Canvas canvas, Frame frame, int at) {
    Month month = months.get(at);
    double x = frame.left(at);
    double width = frame.width();
    double floor = frame.y(0);
    Rectangle2D need =
        new Rectangle2D.Double(x, frame.y(month.need()), width, floor - frame.y(month.need()));
    canvas.pen().setColor(needGround(canvas));
    canvas.pen().fill(need);
    double rain = frame.y(month.rain());
    hatched(canvas, new Rectangle2D.Double(x, rain, width, floor - rain));
    canvas.line(x, floor, x + width, floor, canvas.palette().strongLine(), 1);
    double over = canvas.px(3);
    month
        .given()
        .ifPresent(
            given ->
                canvas.line(
                    x - over,
                    frame.y(given),
                    x + width + over,
                    frame.y(given),
                    canvas.palette().ink(),
                    1.8));
    month
        .allowed()
        .ifPresent(
            allowed -> {
              canvas.pen().setColor(canvas.palette().limit());
              canvas.pen().setStroke(canvas.broken(1.4, 4, 3));
              double y = frame.y(allowed);
              double start = frame.area.x + frame.slot() * at;
              canvas.pen().draw(new Line2D.Double(start, y, start + frame.slot(), y));
            });
    String name =
        canvas.width("Mmm") < frame.slot()
            ? month.name().substring(0, 3)
            : month.name().substring(0, 1);
    canvas.writeAround(
        name,
        x + width / 2,
        frame.area.getMaxY() + canvas.px(3) + canvas.metrics().getAscent(),
        canvas.palette().muted());
  }

  private static Color needGround(Canvas canvas) {
    return zonewright.desk.grid.Palette.mix(
        canvas.palette().series(1), canvas.palette().paper(), 0.55);
  }

  /** Fills with the colour of water and slanting lines, so that the colour is not needed. */
  private static void hatched(Canvas canvas, Rectangle2D box) {
    if (box.getHeight() <= 0) {
      return;
    }
    canvas.pen().setColor(canvas.palette().waterBody());
    canvas.pen().fill(box);
    canvas.pen().setColor(canvas.palette().water());
    canvas.pen().setStroke(new BasicStroke(canvas.px(1)));
    java.awt.Shape before = canvas.pen().getClip();
    canvas.pen().clip(box);
    double step = canvas.px(4);
    for (double x = box.getX() - box.getHeight(); x < box.getMaxX(); x += step) {
      canvas.pen().draw(new Line2D.Double(x, box.getMaxY(), x + box.getHeight(), box.getY()));
    }
    canvas.pen().setClip(before);
  }

  private void legend(Canvas canvas, Frame frame) {
    double base = canvas.place().y + canvas.metrics().getAscent();
    double side = canvas.px(9);
    double middle = base - canvas.metrics().getAscent() / 3.0;
    Color words = canvas.palette().muted();
    double x = canvas.place().x;
    canvas.write(unit, x, base, words);
    x += canvas.width(unit) + canvas.px(12);
    canvas.pen().setColor(needGround(canvas));
    canvas.pen().fill(new Rectangle2D.Double(x, base - side + 1, side, side));
    x = said(canvas, "need", x + side, base);
    hatched(canvas, new Rectangle2D.Double(x, base - side + 1, side, side));
    x = said(canvas, "rain", x + side, base);
    canvas.line(x, middle, x + canvas.px(14), middle, canvas.palette().ink(), 1.8);
    x = said(canvas, "given", x + canvas.px(14), base);
    boolean room = x + canvas.px(20) + canvas.width("allowed") < frame.area.getMaxX();
    if (room && months.stream().anyMatch(month -> month.allowed().isPresent())) {
      canvas.pen().setColor(canvas.palette().limit());
      canvas.pen().setStroke(canvas.broken(1.4, 4, 3));
      canvas.pen().draw(new Line2D.Double(x, middle, x + canvas.px(16), middle));
      said(canvas, "allowed", x + canvas.px(16), base);
    }
  }

  private static double said(Canvas canvas, String text, double x, double base) {
    canvas.write(text, x + canvas.px(4), base, canvas.palette().muted());
    return x + canvas.px(4) + canvas.width(text) + canvas.px(12);
  }
}
