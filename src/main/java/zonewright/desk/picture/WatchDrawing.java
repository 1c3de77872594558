package zonewright.desk.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Rectangle;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import zonewright.climate.Climate;
import zonewright.units.CalendarText;
import zonewright.units.QuantityText;

/** Draws percents by date as dots, the months as steps, and the band that is no matter. */
record WatchDrawing(String title, List<Point> points, List<Double> months, double tolerance)
    implements Drawing {
  WatchDrawing {
    points = List.copyOf(points);
    months = List.copyOf(months);
  }

  /**
   * A reading.
   *
   * @param day its number; see {@link CalendarText}
   * @param shown the percent, as a share
   * @param zone the zone's name; empty for the whole site
   * @param selected whether its row is the one selected
   */
  record Point(double day, double shown, String zone, boolean selected) {}

  @Override
  public String inWords() {
    long outside = points.stream().filter(this::outside).count();
    return "%s readings from %s to %s; %s stray more than %s points from what their month asks"
        .formatted(
            points.size(),
            CalendarText.date(points.get(0).day()),
            CalendarText.date(points.get(points.size() - 1).day()),
            outside,
            QuantityText.readable(tolerance * 100, 0));
  }

  private double asked(LocalDate day) {
    return months.get(day.getMonthValue() - 1);
  }

  private boolean outside(Point point) {
    double asked = asked(CalendarText.date(point.day()));
    return Math.abs(point.shown() - asked) > tolerance + 1e-9;
  }

  private record Frame(Rectangle area, LocalDate from, double days, double most) {
    double x(LocalDate day) {
      return x((double) (day.toEpochDay() - from.toEpochDay()));
    }

    double x(double day) {
      return area.x + area.width * day / days;
    }

    double y(double share) {
      return area.y + area.height - area.height * share / most;
    }
  }

  @Override
  public void paint(Canvas canvas) {
    LocalDate from = CalendarText.date(points.get(0).day()).withDayOfMonth(1);
    LocalDate last = CalendarText.date(points.get(points.size() - 1).day());
    LocalDate to = YearMonth.from(last).plusMonths(1).atDay(1);
    double most = 1.1;
    for (Point point : points) {
      most = Math.max(most, point.shown() * 1.1);
    }
    int line = canvas.metrics().getHeight();
    Rectangle place = canvas.place();
    int left = place.x + canvas.width("100 %") + Math.round(canvas.px(6));
    int top = place.y + line + Math.round(canvas.px(5));
    int bottom = place.y + place.height - line - Math.round(canvas.px(3));
    Rectangle area =
        new Rectangle(
            left, top, Math.max(1, place.x + place.width - left), Math.max(1, bottom - top));
    Frame frame = new Frame(area, from, to.toEpochDay() - from.toEpochDay(), most);
    band(canvas, frame, to);
    axes(canvas, frame, to);
    steps(canvas, frame, to);
    dots(canvas, frame);
    legend(canvas, area);
  }

  private void band(Canvas canvas, Frame frame, LocalDate to) {
    canvas.pen().setColor(canvas.palette().waterBody());
    for (LocalDate month = frame.from; month.isBefore(to); month = month.plusMonths(1)) {
      double asked = asked(month);
      if (!Double.isNaN(asked)) {
        double high = frame.y(Math.min(frame.most, asked + tolerance));
        double low = frame.y(Math.max(0, asked - tolerance));
        double x = frame.x(month);
        canvas
            .pen()
            .fill(new Rectangle2D.Double(x, high, frame.x(month.plusMonths(1)) - x, low - high));
      }
    }
  }

  private void axes(Canvas canvas, Frame frame, LocalDate to) {
    int lines = Math.max(1, Math.min(5, frame.area.height / (2 * canvas.metrics().getHeight())));
    for (double tick : Ticks.upTo(frame.most * 100, lines)) {
      double y = frame.y(tick / 100);
      canvas.line(frame.area.x, y, frame.area.getMaxX(), y, canvas.palette().line(), 1);
      double base = y + canvas.metrics().getAscent() / 2.0 - 1;
      String text = (tick == 0 ? "0" : QuantityText.readable(tick, 0)) + " %";
      canvas.writeBefore(text, frame.area.x - canvas.px(6), base, canvas.palette().muted());
    }
    double floor = frame.area.getMaxY();
    double free = frame.area.x;
    for (LocalDate month = frame.from; month.isBefore(to); month = month.plusMonths(1)) {
      double x = frame.x(month);
      canvas.line(x, floor, x, floor + canvas.px(3), canvas.palette().muted(), 1);
      String text = Climate.MONTH_NAMES.get(month.getMonthValue() - 1).substring(0, 3);
      boolean year = month.equals(frame.from) || month.getMonthValue() == 1;
      text = year ? text + " " + month.getYear() : text;
      double middle = (x + frame.x(month.plusMonths(1))) / 2;
      double start = middle - canvas.width(text) / 2.0;
      if (start >= free) {
        double base = floor + canvas.px(3) + canvas.metrics().getAscent();
        canvas.write(text, start, base, canvas.palette().muted());
        free = start + canvas.width(text) + canvas.px(8);
      }
    }
  }

  private void steps(Canvas canvas, Frame frame, LocalDate to) {
    Path2D path = new Path2D.Double();
    boolean open = false;
    for (LocalDate month = frame.from; month.isBefore(to); month = month.plusMonths(1)) {
      double asked = asked(month);
      if (Double.isNaN(asked)) {
        open = false;
        continue;
      }
      if (open) {
        path.lineTo(frame.x(month), frame.y(asked));
      } else {
        path.moveTo(frame.x(month), frame.y(asked));
      }
      path.lineTo(frame.x(month.plusMonths(1)), frame.y(asked));
      open = true;
    }
    canvas.pen().setColor(canvas.palette().water());
    canvas.pen().setStroke(new BasicStroke(canvas.px(1.8)));
    canvas.pen().draw(path);
  }

  private void dots(Canvas canvas, Frame frame) {
    for (Point point : points) {
      double x = frame.x(CalendarText.date(point.day()));
      double y = frame.y(point.shown());
      double radius = canvas.px(point.selected() ? 5 : 3.5);
      Ellipse2D dot = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
      boolean outside = outside(point);
      Color color = outside ? canvas.palette().limit() : canvas.palette().ink();
      canvas.pen().setColor(point.zone().isEmpty() ? color : canvas.palette().paper());
      canvas.pen().fill(dot);
      canvas.pen().setColor(color);
      canvas.pen().setStroke(new BasicStroke(canvas.px(1.4)));
      canvas.pen().draw(dot);
      if (outside) {
        canvas.pen().setStroke(new BasicStroke(canvas.px(1)));
        double reach = radius + canvas.px(3);
        canvas.pen().draw(new Ellipse2D.Double(x - reach, y - reach, 2 * reach, 2 * reach));
      }
      if (!point.zone().isEmpty()) {
        canvas.write(point.zone(), x + radius + canvas.px(3), y - canvas.px(2), color);
      }
    }
  }

  private void legend(Canvas canvas, Rectangle area) {
    double base = canvas.place().y + canvas.metrics().getAscent();
    double x = canvas.place().x;
    double middle = base - canvas.metrics().getAscent() / 3.0;
    canvas.line(x, middle, x + canvas.px(18), middle, canvas.palette().water(), 1.8);
    x += canvas.px(22);
    String asks =
        "the month asks, give or take " + QuantityText.readable(tolerance * 100, 0) + " points";
    canvas.write(asks, x, base, canvas.palette().muted());
    x += canvas.width(asks) + canvas.px(12);
    String shown = "● shown   ◎ strays   ○ 7  of one zone";
    if (x + canvas.width(shown) <= area.getMaxX()) {
      canvas.write(shown, x, base, canvas.palette().muted());
    }
  }
}
