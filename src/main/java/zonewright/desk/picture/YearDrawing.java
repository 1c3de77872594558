package zonewright.desk.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import zonewright.desk.part.Palette;
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

  @Override
  public void paint(Canvas canvas) {
    double most = months.stream().mapToDouble(Month::most).max().orElse(1) * 1.06;
    ScaledAxis axis = ScaledAxis.drawn(canvas, most, months.size());
    for (int month = 0; month < months.size(); month++) {
      month(canvas, axis, month);
    }
    legend(canvas, axis);
  }

  private void month(Canvas canvas, ScaledAxis axis, int at) {
    Month month = months.get(at);
    double width = axis.slot() * 0.64;
    double x = axis.x(at) - width / 2;
    double floor = axis.y(0);
    Rectangle2D need =
        new Rectangle2D.Double(x, axis.y(month.need()), width, floor - axis.y(month.need()));
    canvas.pen().setColor(needGround(canvas));
    canvas.pen().fill(need);
    double rain = axis.y(month.rain());
    hatched(canvas, new Rectangle2D.Double(x, rain, width, floor - rain));
    canvas.line(x, floor, x + width, floor, canvas.palette().strongLine(), 1);
    double over = canvas.px(3);
    month
        .given()
        .ifPresent(
            given ->
                canvas.line(
                    x - over,
                    axis.y(given),
                    x + width + over,
                    axis.y(given),
                    canvas.palette().ink(),
                    1.8));
    month
        .allowed()
        .ifPresent(
            allowed -> {
              canvas.pen().setColor(canvas.palette().limit());
              canvas.pen().setStroke(canvas.broken(1.4, 4, 3));
              double y = axis.y(allowed);
              double start = axis.area().x + axis.slot() * at;
              canvas.pen().draw(new Line2D.Double(start, y, start + axis.slot(), y));
            });
    String name =
        canvas.width("Mmm") < axis.slot()
            ? month.name().substring(0, 3)
            : month.name().substring(0, 1);
    axis.name(canvas, at, name);
  }

  private static Color needGround(Canvas canvas) {
    return Palette.mix(canvas.palette().series(1), canvas.palette().paper(), 0.55);
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

  private void legend(Canvas canvas, ScaledAxis axis) {
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
    boolean room = x + canvas.px(20) + canvas.width("allowed") < axis.area().getMaxX();
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
