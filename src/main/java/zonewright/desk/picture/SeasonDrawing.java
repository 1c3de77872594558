package zonewright.desk.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import zonewright.balance.DaysOfWeather;
import zonewright.balance.SoilDays;
import zonewright.balance.ZoneRun;
import zonewright.climate.Climate;
import zonewright.desk.part.Palette;
import zonewright.desk.part.Prose;
import zonewright.season.Season;
import zonewright.season.SeasonTable;
import zonewright.season.SeasonZone;
import zonewright.units.QuantityText;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/**
 * Draws a year of a zone: how far its soil is used up between field capacity and wilting point,
 * with the allowed depletion; below it what came, and what was lost.
 */
public final class SeasonDrawing implements Drawing {
  private static final double SOIL_PART = 0.62;
  private static final double IN_PART = 0.70;

  private final String title;
  private final UnitSystem system;
  private final double total;
  private final double allowed;
  private final int days;
  private final int[] months;
  private final double[] depletion;
  private final double[] drier;
  private final double[] irrigation;
  private final double[] rain;
  private final double[] drained;
  private final double[] runOff;
  private final String words;

  /**
   * Takes what it needs of a season.
   *
   * @param rule what drives the schedule, to stand in the title
   * @param year the year to draw
   */
  public SeasonDrawing(Season season, SeasonZone zone, String rule, int year, UnitSystem system) {
    this.system = system;
    ZoneRun run = season.run(zone);
    DaysOfWeather weather = season.weather().days();
    int from = 0;
    while (from < weather.size() && weather.year(from) < year) {
      from++;
    }
    int to = from;
    while (to < weather.size() && weather.year(to) == year) {
      to++;
    }
    days = to - from;
    total = zone.soil().totalAvailable();
    allowed = zone.soil().readilyAvailable();
    months = new int[days];
    depletion = new double[days];
    drier = new double[days];
    irrigation = new double[days];
    rain = new double[days];
    drained = new double[days];
    runOff = new double[days];
    SoilDays soil = run.scheduled();
    double part = zone.application().scheduled();
    double need = 0;
    double taken = 0;
    int below = 0;
    for (int day = 0; day < days; day++) {
      int at = from + day;
      months[day] = weather.month(at);
      depletion[day] = soil.depletion(at);
      drier[day] = run.drier().depletion(at);
      irrigation[day] = soil.irrigation(at) + run.given().runOff(at) * part;
      rain[day] = soil.rain(at);
      drained[day] = soil.drainedIrrigation(at) + soil.drainedRain(at);
      runOff[day] = run.given().runOff(at) * part;
      need += soil.need(at);
      taken += soil.taken(at);
      below += soil.belowAllowed(at) ? 1 : 0;
    }
    title =
        Prose.capital(zone.withPlace())
            + ", "
            + rule
            + (season.weather().typical() ? "" : ", " + year);
    words =
        "Plants get %s %% of what they need; the soil is below the allowed depletion on %s of %s days; %s comes as irrigation, %s as rain, and %s is lost."
            .formatted(
                QuantityText.grouped(need > 0 ? 100 * taken / need : 100, 0),
                below,
                days,
                depth(sum(irrigation)),
                depth(sum(rain)),
                depth(sum(drained) + sum(runOff)));
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  private String depth(double millimetres) {
    return SeasonTable.depth(millimetres, system);
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public String inWords() {
    return words;
  }

  @Override
  public void paint(Canvas canvas) {
    int line = canvas.metrics().getHeight();
    Rectangle place = canvas.place();
    int left =
        place.x
            + Math.max(canvas.width("00.0"), canvas.width(QuantityText.grouped(shown(total), 1)))
            + Math.round(canvas.px(8));
    int legend = legend(canvas, line);
    int top = place.y + legend + line + Math.round(canvas.px(4));
    int bottom = place.y + place.height - line - Math.round(canvas.px(4));
    int height = Math.max(10, bottom - top);
    int soilHeight = (int) (height * SOIL_PART);
    int gap = line;
    Rectangle soil =
        new Rectangle(left, top, Math.max(1, place.x + place.width - left), soilHeight);
    Rectangle flows =
        new Rectangle(
            left, top + soilHeight + gap, soil.width, Math.max(4, height - soilHeight - gap));
    paintMonths(canvas, soil, flows);
    paintSoil(canvas, soil);
    paintFlows(canvas, flows);
  }

  private double shown(double millimetres) {
    return Units.MILLIMETRE.convert(millimetres, SeasonTable.depthUnit(system));
  }

  private double x(Rectangle area, double day) {
    return area.x + area.getWidth() * day / Math.max(1, days);
  }

  private void paintMonths(Canvas canvas, Rectangle soil, Rectangle flows) {
    Palette palette = canvas.palette();
    double base = flows.getMaxY() + canvas.px(3) + canvas.metrics().getAscent();
    int from = 0;
    for (int day = 1; day <= days; day++) {
      if (day == days || months[day] != months[from]) {
        if (from > 0) {
          canvas.line(x(soil, from), soil.y, x(soil, from), soil.getMaxY(), palette.line(), 1);
          canvas.line(x(flows, from), flows.y, x(flows, from), flows.getMaxY(), palette.line(), 1);
        }
        String month = Climate.MONTH_NAMES.get(months[from]);
        double slot = x(soil, day) - x(soil, from);
        String name = month.substring(0, canvas.width("Mmm") + canvas.px(4) < slot ? 3 : 1);
        if (canvas.width(name) < slot) {
          canvas.writeAround(name, x(soil, (from + day) / 2.0), base, palette.muted());
        }
        from = day;
      }
    }
  }

  private void paintSoil(Canvas canvas, Rectangle area) {
    Palette palette = canvas.palette();
    Path2D curve = new Path2D.Double();
    for (int day = 0; day < days; day++) {
      double y = soilY(area, depletion[day]);
      if (day == 0) {
        curve.moveTo(area.x, y);
      }
      curve.lineTo(x(area, day + 1), y);
    }
    Path2D body = new Path2D.Double(curve);
    body.lineTo(area.getMaxX(), area.getMaxY());
    body.lineTo(area.x, area.getMaxY());
    body.closePath();
    canvas.pen().setColor(palette.waterBody());
    canvas.pen().fill(body);
    double limit = soilY(area, allowed);
    Shape before = canvas.pen().getClip();
    canvas.pen().clip(new Rectangle2D.Double(area.x, limit, area.width, area.getMaxY() - limit));
    Path2D lack = new Path2D.Double(curve);
    lack.lineTo(area.getMaxX(), limit);
    lack.lineTo(area.x, limit);
    lack.closePath();
    canvas.pen().setColor(Palette.mix(palette.limit(), palette.paper(), 0.30));
    canvas.pen().fill(lack);
    canvas.pen().setClip(before);
    canvas.line(area.x, area.y, area.getMaxX(), area.y, palette.strongLine(), 1);
    canvas.line(area.x, area.getMaxY(), area.getMaxX(), area.getMaxY(), palette.strongLine(), 1);
    Path2D quarter = new Path2D.Double();
    for (int day = 0; day < days; day++) {
      double y = soilY(area, drier[day]);
      if (day == 0) {
        quarter.moveTo(area.x, y);
      }
      quarter.lineTo(x(area, day + 1), y);
    }
    canvas.pen().setColor(palette.muted());
    canvas.pen().setStroke(canvas.broken(1, 2, 2));
    canvas.pen().draw(quarter);
    canvas.pen().setColor(palette.water());
    canvas
        .pen()
        .setStroke(new BasicStroke(canvas.px(1.5), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
    canvas.pen().draw(curve);
    canvas.pen().setColor(palette.limit());
    canvas.pen().setStroke(canvas.broken(1.4, 5, 3));
    canvas.pen().draw(new Line2D.Double(area.x, limit, area.getMaxX(), limit));
    double ascent = canvas.metrics().getAscent();
    mark(canvas, area, area.y + ascent / 2 - 1, 0);
    mark(canvas, area, limit + ascent / 2 - 1, allowed);
    mark(canvas, area, area.getMaxY() + ascent / 2 - 1, total);
    double at = area.x + canvas.px(5);
    canvas.write("field capacity", at, area.y - canvas.px(3), palette.softInk());
    canvas.write("allowed depletion", at, limit + ascent + canvas.px(1), palette.limit());
    canvas.write("wilting point", at, area.getMaxY() - canvas.px(4), palette.softInk());
  }

  private void mark(Canvas canvas, Rectangle area, double base, double depth) {
    canvas.writeBefore(
        depth == 0 ? "0" : QuantityText.grouped(shown(depth), SeasonTable.depthDecimals(system)),
        area.x - canvas.px(5),
        base,
        canvas.palette().muted());
  }

  private double soilY(Rectangle area, double depth) {
    return area.y + area.getHeight() * Math.min(1, depth / total);
  }

  private void paintFlows(Canvas canvas, Rectangle area) {
    double up = 1e-9;
    double down = 1e-9;
    for (int day = 0; day < days; day++) {
      up = Math.max(up, irrigation[day] + rain[day]);
      down = Math.max(down, drained[day] + runOff[day]);
    }
    double zero = area.y + area.getHeight() * IN_PART;
    double scale = Math.min((zero - area.y) / (up * 1.05), (area.getMaxY() - zero) / (down * 1.05));
    Palette palette = canvas.palette();
    double width = Math.max(canvas.px(1), area.getWidth() / Math.max(1, days) * 0.8);
    for (int day = 0; day < days; day++) {
      double x = x(area, day + 0.5) - width / 2;
      double water = irrigation[day] * scale;
      double fell = rain[day] * scale;
      bar(canvas, x, zero - water, width, water, irrigationColor(palette));
      bar(canvas, x, zero - water - fell, width, fell, rainColor(palette));
      double below = drained[day] * scale;
      double off = runOff[day] * scale;
      bar(canvas, x, zero, width, below, lostColor(palette));
      bar(canvas, x, zero + below, width, off, palette.limit());
    }
    canvas.line(area.x, zero, area.getMaxX(), zero, palette.strongLine(), 1);
    double ascent = canvas.metrics().getAscent();
    List<Double> ticks = Ticks.upTo(shown((zero - area.y) / scale), 2);
    for (double tick : ticks) {
      double y = zero - SeasonTable.depthUnit(system).convert(tick, Units.MILLIMETRE) * scale;
      if (tick > 0) {
        canvas.line(area.x, y, area.getMaxX(), y, palette.line(), 1);
      }
      canvas.writeBefore(
          tick == 0 ? "0" : QuantityText.grouped(tick, tick < 10 ? (tick < 1 ? 2 : 1) : 0),
          area.x - canvas.px(5),
          y + ascent / 2 - 1,
          palette.muted());
    }
  }

  private static void bar(
      Canvas canvas, double x, double y, double width, double height, Color color) {
    if (height > 0) {
      canvas.pen().setColor(color);
      canvas.pen().fill(new Rectangle2D.Double(x, y, width, height));
    }
  }

  private static Color irrigationColor(Palette palette) {
    return palette.series(1);
  }

  private static Color rainColor(Palette palette) {
    return palette.water();
  }

  private static Color lostColor(Palette palette) {
    return palette.series(3);
  }

  /** Says what the colours are, in as many lines as it takes; returns their height. */
  private int legend(Canvas canvas, int line) {
    Palette palette = canvas.palette();
    boolean anyRunOff = sum(runOff) > 0;
    List<Color> colors =
        List.of(
            palette.water(),
            palette.muted(),
            irrigationColor(palette),
            rainColor(palette),
            lostColor(palette),
            palette.limit());
    List<String> names =
        List.of("used up", "on the drier quarter", "irrigation", "rain", "drained", "run off");
    Rectangle place = canvas.place();
    String unit = SeasonTable.depthUnit(system).symbol();
    double x = place.x;
    double base = place.y + canvas.metrics().getAscent();
    canvas.write(unit, x, base, palette.muted());
    x += canvas.width(unit) + canvas.px(12);
    int lines = 1;
    double side = canvas.px(9);
    for (int at = 0; at < names.size() - (anyRunOff ? 0 : 1); at++) {
      double wide = side + canvas.px(5) + canvas.width(names.get(at));
      if (x + wide > place.getMaxX() && x > place.x) {
        x = place.x;
        base += line;
        lines++;
      }
      double middle = base - canvas.metrics().getAscent() / 3.0;
      if (at == 0) {
        canvas.line(x, middle, x + side, middle, colors.get(at), 1.8);
      } else if (at == 1) {
        canvas.pen().setColor(colors.get(at));
        canvas.pen().setStroke(canvas.broken(1, 2, 2));
        canvas.pen().draw(new Line2D.Double(x, middle, x + side, middle));
      } else {
        bar(canvas, x, base - side + 1, side, side, colors.get(at));
      }
      canvas.write(names.get(at), x + side + canvas.px(5), base, palette.muted());
      x += wide + canvas.px(14);
    }
    return lines * line;
  }
}
