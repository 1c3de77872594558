package zonewright.desk.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import zonewright.nights.NightNames;
import zonewright.nights.NightWords;
import zonewright.nights.NightsPlan;
import zonewright.nights.ZoneShare;
import zonewright.timetable.NightPlan;
import zonewright.timetable.Undone;
import zonewright.timetable.ValveRun;
import zonewright.timetable.WateredZone;
import zonewright.timetable.WateringWindow;
import zonewright.units.QuantityText;

/**
 * Draws a night: a line for each zone with its cycles and soaks, the flow below them against what
 * is available, and the least time the night could take.
 *
 * @param title the line above it
 * @param plan the timetable
 * @param night the night
 * @param flowUnit the unit of flows
 * @param from first minute shown
 * @param to last minute shown
 */
public record NightDrawing(
    String title, NightsPlan plan, NightPlan night, String flowUnit, double from, double to)
    implements Drawing {
  private static final int[] HOURS = {1, 2, 3, 4, 6, 12, 24};

  /** Draws a whole night. */
  public static NightDrawing whole(NightsPlan plan, NightPlan night, String flowUnit) {
    return new NightDrawing(
        title(night), plan, night, flowUnit, night.opensMinute() - 10, last(night) + 10);
  }

  /** Returns the line above a night. */
  public static String title(NightPlan night) {
    return NightWords.label(night.night()) + " night, " + NightWords.hours(night);
  }

  /** Returns the last minute worth showing. */
  public static int last(NightPlan night) {
    return Math.max(night.closesMinute(), night.finishMinute());
  }

  @Override
  public String inWords() {
    List<ZoneShare> shares = ZoneShare.of(plan);
    String all = ZoneShare.summary(shares);
    if (night.isEmpty()) {
      return "Nothing waters on this night. " + all;
    }
    double available = plan.input().rules().availableFlow();
    String flow =
        "at most %s %s at once".formatted(number(NightsPlan.greatestFlow(night)), flowUnit);
    long zones = night.runs().stream().map(ValveRun::zone).distinct().count();
    String noRoom = NightWords.noRoom(night, new NightNames(plan));
    return "%s zones, %s, %s%s. %s%s"
        .formatted(
            zones,
            NightWords.result(night),
            flow,
            Double.isInfinite(available)
                ? ""
                : " of %s %s available".formatted(number(available), flowUnit),
            noRoom.isEmpty() ? "" : "No room for " + noRoom + ". ",
            all);
  }

  private static String number(double value) {
    return value == 0 ? "0" : QuantityText.readable(value, 0);
  }

  /** Returns where all comes to lie on a canvas. */
  NightChart chart(Canvas canvas) {
    return new NightChart(plan, night, from, to, canvas.place(), canvas.metrics(), canvas.scale());
  }

  @Override
  public void paint(Canvas canvas) {
    if (NightChart.lines(plan, night).isEmpty()) {
      canvas.sentence("Nothing waters on this night.");
      return;
    }
    NightChart chart = chart(canvas);
    ground(canvas, chart);
    hours(canvas, chart);
    Graphics2D pen = canvas.pen();
    Shape before = pen.getClip();
    Rectangle bars = chart.bars();
    pen.clip(
        new Rectangle2D.Double(bars.x - 1.0, bars.y - 2.0, bars.width + 2.0, bars.height + 4.0));
    for (int line = 0; line < chart.lines().size(); line++) {
      bars(canvas, chart, line);
    }
    pen.setClip(before);
    labels(canvas, chart);
    flow(canvas, chart);
    marks(canvas, chart);
  }

  /** The hours in which water may run, lighter than those in which it may not. */
  private void ground(Canvas canvas, NightChart chart) {
    Graphics2D pen = canvas.pen();
    for (Rectangle area : new Rectangle[] {chart.bars(), chart.flow()}) {
      pen.setColor(canvas.palette().line());
      pen.fill(area);
      pen.setColor(canvas.palette().paper());
      for (WateringWindow window : night.windows()) {
        double left = Math.max(area.x, chart.x(window.startMinute()));
        double right = Math.min(area.getMaxX(), chart.x(window.endMinute()));
        if (right > left) {
          pen.fill(new Rectangle2D.Double(left, area.y, right - left, area.height));
        }
      }
    }
  }

  private void hours(Canvas canvas, NightChart chart) {
    double pixelsAnHour = chart.bars().width * 60.0 / (chart.to() - chart.from());
    int widest = canvas.width("00:00") + Math.round(canvas.px(14));
    int step = 60 * HOURS[HOURS.length - 1];
    for (int i = HOURS.length - 1; i >= 0; i--) {
      step = pixelsAnHour * HOURS[i] >= widest ? 60 * HOURS[i] : step;
    }
    for (int minutes : new int[] {30, 15, 10, 5}) {
      step = pixelsAnHour * minutes / 60 >= widest ? minutes : step;
    }
    double top = chart.bars().y;
    double bottom = chart.flow().getMaxY();
    double base = top - canvas.px(6);
    for (int minute = (int) Math.ceil(chart.from() / step) * step;
        minute <= chart.to();
        minute += step) {
      double x = chart.x(minute);
      canvas.line(x, top - canvas.px(3), x, bottom, canvas.palette().line(), 1);
      double half = canvas.width("00:00") / 2.0;
      if (x + half <= canvas.place().getMaxX() + 1) {
        canvas.writeAround(NightWords.time(minute), x, base, canvas.palette().muted());
      }
    }
  }

  private void bars(Canvas canvas, NightChart chart, int number) {
    NightChart.Line line = chart.lines().get(number);
    Graphics2D pen = canvas.pen();
    double middle = chart.bars().y + (number + 0.5) * chart.lineHeight();
    Color tone = canvas.palette().series(chart.place(line.program()));
    ValveRun last = null;
    for (ValveRun run : line.runs()) {
      if (last != null) {
        pen.setColor(canvas.palette().muted());
        pen.setStroke(canvas.broken(1, 2, 2));
        pen.draw(
            new Line2D.Double(
                chart.x(last.endMinute()), middle, chart.x(run.startMinute()), middle));
      }
      bar(canvas, chart.bar(number, run), run.minutes(), tone, false);
      last = run;
    }
    boolean seen = !line.runs().isEmpty();
    for (Undone each : line.late()) {
      int start = each.startMinute().orElse(0);
      if (start + each.minutes() > night.closesMinute()) {
        Rectangle2D bar = chart.bar(number, start, start + each.minutes());
        bar(canvas, bar, each.minutes(), tone, true);
        seen = true;
      }
    }
    if (!seen && !line.note().isEmpty()) {
      String note = "not placed: " + line.note();
      double left = chart.bars().x + canvas.px(4);
      double base = middle + canvas.metrics().getAscent() / 2.0 - canvas.px(1.5);
      String shortened = shortened(canvas, note, chart.bars().width - canvas.px(8));
      canvas.writeAround(
          shortened, left + canvas.width(shortened) / 2.0, base, canvas.palette().limit());
    }
  }

  private static void bar(Canvas canvas, Rectangle2D bar, int length, Color tone, boolean late) {
    Graphics2D pen = canvas.pen();
    pen.setColor(tone);
    pen.fill(bar);
    if (late) {
      Shape before = pen.getClip();
      pen.clip(bar);
      pen.setColor(canvas.palette().paper());
      pen.setStroke(new BasicStroke(canvas.px(1.5)));
      for (double x = bar.getX() - bar.getHeight(); x < bar.getMaxX(); x += canvas.px(6)) {
        pen.draw(new Line2D.Double(x, bar.getMaxY(), x + bar.getHeight(), bar.getY()));
      }
      pen.setClip(before);
      pen.setColor(canvas.palette().limit());
      pen.setStroke(new BasicStroke(canvas.px(1.4)));
      pen.draw(bar);
    }
    String minutes = length + " min";
    boolean room =
        bar.getHeight() >= canvas.metrics().getAscent()
            && bar.getWidth() >= canvas.width(minutes) + canvas.px(6);
    if (room && !late) {
      double base = bar.getCenterY() + canvas.metrics().getAscent() / 2.0 - canvas.px(1.5);
      canvas.writeAround(minutes, bar.getCenterX(), base, canvas.palette().paper());
    }
  }

  /** The names of the zones; where lines are narrow, of as many as can be read. */
  private void labels(Canvas canvas, NightChart chart) {
    int step =
        (int) Math.max(1, Math.ceil(canvas.metrics().getHeight() * 0.92 / chart.lineHeight()));
    double right = chart.bars().x - canvas.px(6);
    double room = right - canvas.place().x;
    for (int number = 0; number < chart.lines().size(); number += step) {
      String label = shortened(canvas, chart.lines().get(number).label(), room);
      double base =
          chart.bars().y
              + (number + 0.5) * chart.lineHeight()
              + canvas.metrics().getAscent() / 2.0
              - canvas.px(1.5);
      canvas.write(label, canvas.place().x, base, canvas.palette().ink());
    }
    boolean programs =
        plan.input().stations().stream()
            .anyMatch(zone -> zone.sheet().program() != WateredZone.NO_PROGRAM);
    String head = programs ? "program · zone" : "zone";
    if (canvas.width(head) + canvas.width("00:00") / 2 <= room) {
      double base = chart.bars().y - canvas.px(6);
      canvas.write(head, canvas.place().x, base, canvas.palette().muted());
    }
  }

  private static String shortened(Canvas canvas, String words, double room) {
    if (canvas.width(words) <= room) {
      return words;
    }
    int end = words.length();
    while (end > 1 && canvas.width(words.substring(0, end) + "…") > room) {
      end--;
    }
    return words.substring(0, end).strip() + "…";
  }

  /** The flow at every minute, by the minutes at which it changes. */
  private Map<Integer, Double> steps() {
    Map<Integer, Double> changes = new TreeMap<>();
    for (ValveRun run : night.runs()) {
      changes.merge(run.startMinute(), run.zone().flow(), Double::sum);
      changes.merge(run.endMinute(), -run.zone().flow(), Double::sum);
    }
    Map<Integer, Double> steps = new TreeMap<>();
    double now = 0;
    for (Map.Entry<Integer, Double> change : changes.entrySet()) {
      now += change.getValue();
      steps.put(change.getKey(), Math.max(0, now));
    }
    return steps;
  }

  private void flow(Canvas canvas, NightChart chart) {
    Rectangle area = chart.flow();
    double available = plan.input().rules().availableFlow();
    boolean limited = !Double.isInfinite(available);
    double greatest = NightsPlan.greatestFlow(night);
    double top = Math.max(greatest, limited ? available : 0) * 1.15;
    if (top <= 0) {
      return;
    }
    Path2D line = new Path2D.Double();
    double floor = area.getMaxY();
    line.moveTo(chart.x(night.opensMinute()), floor);
    double now = 0;
    for (Map.Entry<Integer, Double> step : steps().entrySet()) {
      double x = chart.x(step.getKey());
      line.lineTo(x, floor - area.height * now / top);
      now = step.getValue();
      line.lineTo(x, floor - area.height * now / top);
    }
    Graphics2D pen = canvas.pen();
    Shape before = pen.getClip();
    pen.clip(area);
    Path2D body = new Path2D.Double(line);
    body.closePath();
    pen.setColor(canvas.palette().waterBody());
    pen.fill(body);
    pen.setColor(canvas.palette().water());
    pen.setStroke(new BasicStroke(canvas.px(1.4)));
    pen.draw(line);
    pen.setClip(before);
    canvas.line(area.x, floor, area.getMaxX(), floor, canvas.palette().strongLine(), 1);
    String unit = "Flow (" + flowUnit + ")";
    canvas.write(
        shortened(canvas, unit, area.x - canvas.px(6) - canvas.place().x),
        canvas.place().x,
        area.y + canvas.metrics().getAscent(),
        canvas.palette().muted());
    canvas.writeBefore("0", area.x - canvas.px(4), floor, canvas.palette().muted());
    if (limited) {
      double y = floor - area.height * available / top;
      pen.setColor(canvas.palette().limit());
      pen.setStroke(canvas.broken(1.4, 6, 4));
      pen.draw(new Line2D.Double(area.x, y, area.getMaxX(), y));
      String words = number(available) + " " + flowUnit + " available";
      canvas.write(words, area.x + canvas.px(4), y - canvas.px(3), canvas.palette().limit());
    }
  }

  /** When the night is done, and when it would be at the least. */
  private void marks(Canvas canvas, NightChart chart) {
    double top = chart.bars().y;
    double bottom = chart.flow().getMaxY();
    double base = bottom + canvas.metrics().getAscent() + canvas.px(2);
    boolean proven = night.finishMinute() == night.boundMinute();
    if (night.isEmpty()) {
      return;
    }
    mark(canvas, chart, night.finishMinute(), false, top, bottom);
    boolean all = night.undone().isEmpty();
    String done = (all ? "done " : "all would be done ") + NightWords.time(night.finishMinute());
    String text = proven ? done + ", no arrangement is shorter" : done;
    double x = chart.x(night.finishMinute());
    if (!proven) {
      mark(canvas, chart, night.boundMinute(), true, top, bottom);
      text += "; proven: not before " + NightWords.time(night.boundMinute());
    }
    double right = canvas.place().getMaxX();
    double at = Math.max(canvas.place().x, Math.min(x, right - canvas.width(text)));
    canvas.write(text, at, base, canvas.palette().ink());
  }

  private static void mark(
      Canvas canvas, NightChart chart, int minute, boolean dashed, double top, double bottom) {
    if (minute < chart.from() || minute > chart.to()) {
      return;
    }
    double x = chart.x(minute);
    canvas.pen().setColor(canvas.palette().ink());
    canvas.pen().setStroke(dashed ? canvas.broken(1.4, 2, 3) : new BasicStroke(canvas.px(1.4)));
    canvas.pen().draw(new Line2D.Double(x, top, x, bottom + canvas.px(2)));
  }
}
