package zonewright.desk.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Rectangle;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import zonewright.units.QuantityText;

/** Draws sums of cash over years: a line for each case, above and below nothing. */
record CashDrawing(String title, List<CashDrawing.Line> lines, String result) implements Drawing {
  /** One case: its name, and the cash summed up to each year, the start first. */
  record Line(String name, List<Double> values) {
    Line {
      values = List.copyOf(values);
    }

    double last() {
      return values.get(values.size() - 1);
    }
  }

  @Override
  public String inWords() {
    List<String> ends = new ArrayList<>();
    lines.forEach(line -> ends.add(line.name() + " " + number(line.last())));
    return "Cumulative cash at the end of year %s: %s; %s"
        .formatted(
            Integer.toString(lines.get(0).values().size() - 1), String.join(", ", ends), result);
  }

  private static String number(double value) {
    return value == 0 ? "0" : QuantityText.readable(Math.rint(value), 0);
  }

  /** Where years and cash come to lie. */
  private record Frame(Rectangle area, int years, double low, double high) {
    double x(double year) {
      return area.x + area.width * year / Math.max(1, years);
    }

    double y(double cash) {
      return area.y + area.height * (high - cash) / (high - low);
    }
  }

  @Override
  public void paint(Canvas canvas) {
    double low = 0;
    double high = 0;
    for (Line line : lines) {
      for (double value : line.values()) {
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
    }
    if (low == high) {
      high = 1;
    }
    Rectangle place = canvas.place();
    int text = canvas.metrics().getHeight();
    List<Double> ticks = ticks(low, high, Math.max(2, place.height / (3 * text)));
    int scale = ticks.stream().mapToInt(tick -> canvas.width(number(tick))).max().orElse(0);
    int left = place.x + scale + Math.round(canvas.px(6));
    int right =
        lines.stream().mapToInt(line -> canvas.width(line.name())).max().orElse(0)
            + Math.round(canvas.px(8));
    int top = place.y + text;
    int bottom = place.y + place.height - text - Math.round(canvas.px(3));
    Rectangle area =
        new Rectangle(
            left,
            top,
            Math.max(1, place.x + place.width - right - left),
            Math.max(1, bottom - top));
    double room = (high - low) * 0.04;
    Frame frame = new Frame(area, lines.get(0).values().size() - 1, low - room, high + room);
    axes(canvas, frame, ticks);
    for (int at = 0; at < lines.size(); at++) {
      line(canvas, frame, at);
    }
    names(canvas, frame);
    canvas.write(result, place.x, place.y + canvas.metrics().getAscent(), canvas.palette().muted());
  }

  private static List<Double> ticks(double low, double high, int most) {
    List<Double> up = Ticks.upTo(Math.max(high, -low), most);
    double step = up.size() > 1 ? up.get(1) : 1;
    List<Double> all = new ArrayList<>();
    for (double tick = Math.ceil(low / step) * step; tick <= high; tick += step) {
      all.add(tick + 0.0);
    }
    return all;
  }

  private void axes(Canvas canvas, Frame frame, List<Double> ticks) {
    Color words = canvas.palette().muted();
    double end = frame.area.getMaxX();
    for (double tick : ticks) {
      boolean nothing = Math.abs(tick) < 1e-9;
      Color color = nothing ? canvas.palette().strongLine() : canvas.palette().line();
      double y = frame.y(tick);
      canvas.line(frame.area.x, y, end, y, color, nothing ? 1.4 : 1);
      canvas.writeBefore(
          number(tick),
          frame.area.x - canvas.px(6),
          y + canvas.metrics().getAscent() / 2.0 - 1,
          words);
    }
    int room = Math.max(1, frame.area.width / (canvas.width("year 00") * 2));
    double floor = frame.area.getMaxY();
    List<Double> years = Ticks.upTo(frame.years, Math.min(room, frame.years));
    for (double year : years) {
      if (year != Math.rint(year)) {
        continue;
      }
      double x = frame.x(year);
      canvas.line(x, floor, x, floor + canvas.px(3), words, 1);
      String text = (year == 0 ? "start" : number(year));
      canvas.writeAround(text, x, floor + canvas.px(3) + canvas.metrics().getAscent(), words);
    }
  }

  private void line(Canvas canvas, Frame frame, int at) {
    Path2D path = new Path2D.Double();
    List<Double> values = lines.get(at).values();
    for (int year = 0; year < values.size(); year++) {
      if (year == 0) {
        path.moveTo(frame.x(year), frame.y(values.get(year)));
      } else {
        path.lineTo(frame.x(year), frame.y(values.get(year)));
      }
    }
    canvas.pen().setColor(canvas.palette().series(at));
    boolean middle = at == lines.size() / 2;
    canvas
        .pen()
        .setStroke(
            middle
                ? new BasicStroke(canvas.px(2.2), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
                : canvas.broken(1.6, at == 0 ? 3 : 8, 4));
    canvas.pen().draw(path);
  }

  /** The names at the ends of their lines, pushed apart where they would touch. */
  private void names(Canvas canvas, Frame frame) {
    List<Integer> order = new ArrayList<>();
    for (int at = 0; at < lines.size(); at++) {
      order.add(at);
    }
    order.sort((one, other) -> Double.compare(lines.get(other).last(), lines.get(one).last()));
    double free = frame.area.y + canvas.metrics().getAscent() / 2.0;
    for (int at : order) {
      double y = Math.max(free, frame.y(lines.get(at).last()) + canvas.metrics().getAscent() / 3.0);
      canvas.write(
          lines.get(at).name(),
          frame.area.getMaxX() + canvas.px(5),
          y,
          canvas.palette().series(at));
      free = y + canvas.metrics().getHeight();
    }
  }
}
