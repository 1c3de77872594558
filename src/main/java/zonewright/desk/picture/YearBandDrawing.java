package zonewright.desk.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.List;
import zonewright.climate.Climate;
import zonewright.units.QuantityText;

/**
 * Draws years as lines over the months within the band of all years: the driest drawn through, the
 * middle one heavy, the wettest dotted.
 *
 * @param lowest for each month the least of any year
 */
public record YearBandDrawing(
    String title, String unit, List<Line> lines, List<Double> lowest, List<Double> highest)
    implements Drawing {
  /** A year: its name and its months. */
  public record Line(String name, List<Double> months) {
    private double depth() {
      return months.stream().mapToDouble(Double::doubleValue).sum();
    }
  }

  @Override
  public String inWords() {
    StringBuilder words = new StringBuilder();
    for (Line line : lines) {
      words.append(words.isEmpty() ? "" : ", ");
      words.append(line.name()).append(' ').append(QuantityText.grouped(line.depth(), 1));
      words.append(' ').append(unit).append(" in the year");
    }
    return words + ".";
  }

  @Override
  public void paint(Canvas canvas) {
    double most = highest.stream().mapToDouble(Double::doubleValue).max().orElse(1) * 1.06;
    ScaledAxis axis = ScaledAxis.drawn(canvas, most, lowest.size());
    Path2D band = new Path2D.Double();
    band.moveTo(axis.x(0), axis.y(lowest.get(0)));
    for (int month = 0; month < lowest.size(); month++) {
      band.lineTo(axis.x(month), axis.y(highest.get(month)));
    }
    for (int month = lowest.size() - 1; month >= 0; month--) {
      band.lineTo(axis.x(month), axis.y(lowest.get(month)));
    }
    band.closePath();
    canvas.pen().setColor(canvas.palette().waterBody());
    canvas.pen().fill(band);
    double x = canvas.place().x;
    double base = canvas.place().y + canvas.metrics().getAscent();
    canvas.write(unit, x, base, canvas.palette().muted());
    x += canvas.width(unit) + canvas.px(12);
    for (int at = 0; at < lines.size(); at++) {
      canvas.pen().setColor(colour(canvas, at));
      canvas.pen().setStroke(stroke(canvas, at));
      Path2D path = new Path2D.Double();
      List<Double> months = lines.get(at).months();
      for (int month = 0; month < months.size(); month++) {
        double y = axis.y(months.get(month));
        if (month == 0) {
          path.moveTo(axis.x(month), y);
        } else {
          path.lineTo(axis.x(month), y);
        }
      }
      canvas.pen().draw(path);
      double middle = base - canvas.metrics().getAscent() / 3.0;
      canvas.pen().draw(new Line2D.Double(x, middle, x + canvas.px(18), middle));
      canvas.write(lines.get(at).name(), x + canvas.px(22), base, canvas.palette().muted());
      x += canvas.px(34) + canvas.width(lines.get(at).name());
    }
    for (int month = 0; month < lowest.size(); month++) {
      String name = Climate.MONTH_NAMES.get(month);
      axis.name(canvas, month, name.substring(0, canvas.width("Mmm") < axis.slot() ? 3 : 1));
    }
  }

  private static Color colour(Canvas canvas, int line) {
    return line == 0
        ? canvas.palette().limit()
        : line == 1 ? canvas.palette().ink() : canvas.palette().water();
  }

  private static BasicStroke stroke(Canvas canvas, int line) {
    return line == 2 ? canvas.broken(1.8, 2, 3) : new BasicStroke(canvas.px(line == 1 ? 2.4 : 1.4));
  }
}
