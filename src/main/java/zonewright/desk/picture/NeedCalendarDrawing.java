package zonewright.desk.picture;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.List;
import zonewright.climate.Climate;
import zonewright.desk.part.Palette;
import zonewright.units.QuantityText;

/**
 * Draws the days of a usual year, a row for each month, darker the more they ask (lighter on a dark
 * ground).
 *
 * @param days by month and day of the month, counted from 0; not-a-number where there is no such
 *     day
 */
public record NeedCalendarDrawing(String title, String unit, List<List<Double>> days)
    implements Drawing {
  private static final int COLUMNS = 31;
  private static final double PALEST = 0.06;

  private double most() {
    return days.stream()
        .flatMap(List::stream)
        .filter(value -> !Double.isNaN(value))
        .mapToDouble(Double::doubleValue)
        .max()
        .orElse(1);
  }

  @Override
  public String inWords() {
    for (int month = 0; month < days.size(); month++) {
      int day = days.get(month).indexOf(most());
      if (day >= 0) {
        return "On the mean of the years most is asked on %s %s, %s %s."
            .formatted(
                day + 1, Climate.MONTH_NAMES.get(month), QuantityText.grouped(most(), 2), unit);
      }
    }
    return "No day is known.";
  }

  private static Color shade(Canvas canvas, double share) {
    Palette palette = canvas.palette();
    Color strong = Palette.mix(palette.series(3), palette.ink(), 0.6);
    return Palette.mix(strong, palette.paper(), PALEST + (1 - PALEST) * share);
  }

  @Override
  public void paint(Canvas canvas) {
    double most = most();
    int line = canvas.metrics().getHeight();
    double left = canvas.place().x + canvas.width("Mmm") + canvas.px(6);
    double top = canvas.place().y + line + canvas.px(6);
    double width = (canvas.place().getMaxX() - left) / COLUMNS;
    double height = (canvas.place().getMaxY() - line - top) / days.size();
    for (int month = 0; month < days.size(); month++) {
      double y = top + month * height;
      canvas.writeBefore(
          Climate.MONTH_NAMES.get(month).substring(0, 3),
          left - canvas.px(6),
          y + height / 2 + canvas.metrics().getAscent() / 2.0 - 1,
          canvas.palette().muted());
      for (int day = 0; day < days.get(month).size(); day++) {
        double value = days.get(month).get(day);
        if (!Double.isNaN(value)) {
          canvas.pen().setColor(shade(canvas, value / most));
          canvas
              .pen()
              .fill(
                  new Rectangle2D.Double(
                      left + day * width, y, width - canvas.px(1), height - canvas.px(1)));
        }
      }
    }
    for (int day : new int[] {1, 10, 20, 30}) {
      canvas.writeAround(
          Integer.toString(day),
          left + (day - 0.5) * width,
          canvas.place().getMaxY() - canvas.metrics().getDescent(),
          canvas.palette().muted());
    }
    legend(canvas, most);
  }

  private void legend(Canvas canvas, double most) {
    double base = canvas.place().y + canvas.metrics().getAscent();
    double side = canvas.px(10);
    double x = canvas.place().x;
    for (double share : new double[] {0, 0.25, 0.5, 0.75, 1}) {
      canvas.pen().setColor(shade(canvas, share));
      canvas.pen().fill(new Rectangle2D.Double(x, base - side + 1, side, side));
      String words = QuantityText.grouped(most * share, 2) + (share == 1 ? " " + unit : "");
      canvas.write(words, x + side + canvas.px(4), base, canvas.palette().muted());
      x += side + canvas.px(16) + canvas.width(words);
    }
  }
}
