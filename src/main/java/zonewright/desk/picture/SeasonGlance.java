package zonewright.desk.picture;

import java.awt.Color;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import zonewright.balance.DaysOfWeather;
import zonewright.balance.ZoneRun;
import zonewright.climate.Climate;
import zonewright.desk.part.Palette;
import zonewright.season.Season;
import zonewright.season.ZoneResult;
import zonewright.units.QuantityText;

/**
 * All zones of a season at a glance: a strip for each, day by day, from soil that is full to soil
 * below the allowed depletion, with what plants got and what was wasted beside it.
 */
public final class SeasonGlance implements Drawing {
  private final String title;
  private final int[] months;
  private final List<Strip> strips = new ArrayList<>();

  /** A zone, and on each day its depletion as a part of the allowed one. */
  private record Strip(String name, List<Double> used, double adequacy, double excess) {}

  /** Takes what it needs of a season; a year of it. */
  public SeasonGlance(Season season, String rule, int year) {
    title = "All zones, " + rule + (season.weather().typical() ? "" : ", " + year);
    DaysOfWeather days = season.weather().days();
    List<Integer> of = new ArrayList<>();
    for (int day = 0; day < days.size(); day++) {
      if (days.year(day) == year) {
        of.add(day);
      }
    }
    months = of.stream().mapToInt(days::month).toArray();
    for (ZoneResult result : season.results()) {
      ZoneRun run = season.run(result.zone());
      double allowed = result.zone().soil().readilyAvailable();
      strips.add(
          new Strip(
              result.zone().name(),
              of.stream().map(day -> run.scheduled().depletion(day) / allowed).toList(),
              result.whole().adequacy(),
              result.whole().excess()));
    }
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public String inWords() {
    long dry =
        strips.stream()
            .filter(strip -> strip.used().stream().anyMatch(used -> used > 1.001))
            .count();
    return "%s of %s zones fall below the allowed depletion at some time; the driest gets %s %% of what it needs, and the most is wasted where %s %% is."
        .formatted(
            dry,
            strips.size(),
            whole(strips.stream().mapToDouble(Strip::adequacy).min().orElse(1)),
            whole(strips.stream().mapToDouble(Strip::excess).max().orElse(0)));
  }

  private static String whole(double share) {
    return QuantityText.grouped(100 * share, 0);
  }

  @Override
  public void paint(Canvas canvas) {
    Palette palette = canvas.palette();
    int line = canvas.metrics().getHeight();
    Rectangle place = canvas.place();
    double base = place.y + canvas.metrics().getAscent();
    legend(canvas, base);
    String met = "met";
    String wasted = "wasted";
    double figures = canvas.width("100 %") + canvas.px(10);
    double wide = Math.max(figures, canvas.width(wasted) + canvas.px(10));
    double names =
        strips.stream().mapToInt(strip -> canvas.width(strip.name())).max().orElse(0)
            + canvas.px(8);
    double left = place.x + names;
    double right = place.getMaxX() - 2 * wide;
    double top = place.y + 2.6 * line;
    double bottom = place.getMaxY() - line - canvas.px(4);
    double row = Math.min(2.4 * line, (bottom - top) / Math.max(1, strips.size()));
    boolean lettered = row >= line * 0.8;
    canvas.writeBefore(met, right + wide, top - canvas.px(5), palette.muted());
    canvas.writeBefore(wasted, right + 2 * wide, top - canvas.px(5), palette.muted());
    double slot = (right - left) / Math.max(1, months.length);
    for (int at = 0; at < strips.size(); at++) {
      Strip strip = strips.get(at);
      double y = top + at * row;
      double height = Math.max(1, row - (lettered ? canvas.px(3) : canvas.px(1)));
      int from = 0;
      for (int day = 1; day <= months.length; day++) {
        boolean ends =
            day == months.length || shade(strip.used().get(day)) != shade(strip.used().get(from));
        if (ends) {
          canvas.pen().setColor(color(palette, shade(strip.used().get(from))));
          canvas
              .pen()
              .fill(
                  new Rectangle2D.Double(
                      left + from * slot, y, (day - from) * slot + canvas.px(0.3), height));
          from = day;
        }
      }
      if (lettered) {
        double at1 = y + height / 2 + canvas.metrics().getAscent() / 2.0 - canvas.px(1.5);
        canvas.write(strip.name(), place.x, at1, palette.ink());
        canvas.writeBefore(
            whole(strip.adequacy()) + " %",
            right + wide,
            at1,
            strip.adequacy() < 0.945 ? palette.limit() : palette.ink());
        canvas.writeBefore(
            whole(strip.excess()) + " %",
            right + 2 * wide,
            at1,
            strip.excess() > 0.105 ? palette.limit() : palette.ink());
      }
    }
    months(canvas, left, slot, top, top + strips.size() * row);
  }

  /** Steps of the strip: 0 to 3 between full and the allowed depletion, 4 to 6 below it. */
  private static int shade(double used) {
    return used <= 1.001
        ? (int) Math.max(0, Math.min(3, used * 4 - 1e-9))
        : used < 1.25 ? 4 : used < 1.6 ? 5 : 6;
  }

  private static Color color(Palette palette, int shade) {
    return switch (shade) {
      case 0 -> Palette.mix(palette.water(), palette.paper(), 0.75);
      case 1 -> Palette.mix(palette.water(), palette.paper(), 0.52);
      case 2 -> Palette.mix(palette.water(), palette.paper(), 0.34);
      case 3 -> Palette.mix(palette.water(), palette.paper(), 0.18);
      case 4 -> Palette.mix(palette.limit(), palette.paper(), 0.34);
      case 5 -> Palette.mix(palette.limit(), palette.paper(), 0.62);
      default -> Palette.mix(palette.limit(), palette.paper(), 0.90);
    };
  }

  private static void legend(Canvas canvas, double base) {
    double x = canvas.place().x;
    double side = canvas.px(10);
    canvas.write("soil full", x, base, canvas.palette().muted());
    x += canvas.width("soil full") + canvas.px(6);
    for (int shade = 0; shade <= 6; shade++) {
      if (shade == 4) {
        String allowed = "allowed depletion";
        canvas.write(allowed, x + canvas.px(6), base, canvas.palette().muted());
        x += canvas.width(allowed) + canvas.px(12);
      }
      canvas.pen().setColor(color(canvas.palette(), shade));
      canvas.pen().fill(new Rectangle2D.Double(x, base - side + 1, side, side));
      x += side;
    }
    canvas.write("dry", x + canvas.px(6), base, canvas.palette().muted());
  }

  private void months(Canvas canvas, double left, double slot, double top, double bottom) {
    double base = bottom + canvas.px(3) + canvas.metrics().getAscent();
    int from = 0;
    for (int day = 1; day <= months.length; day++) {
      if (day == months.length || months[day] != months[from]) {
        if (from > 0) {
          double x = left + from * slot;
          canvas.line(x, top, x, bottom, canvas.palette().paper(), 1);
        }
        double wide = (day - from) * slot;
        String name =
            Climate.MONTH_NAMES
                .get(months[from])
                .substring(0, canvas.width("Mmm") + canvas.px(4) < wide ? 3 : 1);
        if (canvas.width(name) < wide) {
          canvas.writeAround(
              name, left + (from + day) / 2.0 * slot, base, canvas.palette().muted());
        }
        from = day;
      }
    }
  }
}
