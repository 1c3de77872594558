package zonewright.desk.picture;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import zonewright.units.QuantityText;

/** Draws the hottest week of each year as a bar with its date, and their mean as a broken line. */
public record HottestWeeksDrawing(String title, String unit, List<Week> weeks) implements Drawing {
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

  /** A week: its first day and what it asks, in the unit of the drawing. */
  public record Week(LocalDate first, double depth) {}

  private double mean() {
    return weeks.stream().mapToDouble(Week::depth).average().orElse(0);
  }

  @Override
  public String inWords() {
    Week most = weeks.stream().max(Comparator.comparingDouble(Week::depth)).orElseThrow();
    return "The hottest week of a year asks %s %s on the mean; the hottest of all, from %s %s, asked %s %s."
        .formatted(
            QuantityText.grouped(mean(), 2),
            unit,
            most.first().format(DATE),
            most.first().getYear(),
            QuantityText.grouped(most.depth(), 2),
            unit);
  }

  @Override
  public void paint(Canvas canvas) {
    double most = weeks.stream().mapToDouble(Week::depth).max().orElse(1) * 1.12;
    ScaledAxis axis = ScaledAxis.drawn(canvas, most, weeks.size());
    canvas.write(
        unit + " in seven days",
        canvas.place().x,
        canvas.place().y + canvas.metrics().getAscent(),
        canvas.palette().muted());
    double width = axis.slot() * 0.64;
    boolean dated = canvas.width("30 Sep") < axis.slot();
    int every = (int) Math.ceil(canvas.width("2000 ") / axis.slot());
    for (int at = 0; at < weeks.size(); at++) {
      Week week = weeks.get(at);
      double y = axis.y(week.depth());
      canvas.pen().setColor(canvas.palette().series(3));
      canvas.pen().fill(new Rectangle2D.Double(axis.x(at) - width / 2, y, width, axis.y(0) - y));
      if (dated) {
        String date = week.first().format(DATE);
        canvas.writeAround(date, axis.x(at), y - canvas.px(3), canvas.palette().muted());
      }
      if (at % every == 0) {
        axis.name(canvas, at, String.valueOf(week.first().getYear()));
      }
    }
    canvas.pen().setColor(canvas.palette().ink());
    canvas.pen().setStroke(canvas.broken(1.4, 4, 3));
    double mean = axis.y(mean());
    canvas.pen().draw(new Line2D.Double(axis.area().x, mean, axis.area().getMaxX(), mean));
  }
}
