package zonewright.desk.picture;

import java.awt.FontMetrics;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import zonewright.nights.NightNames;
import zonewright.nights.NightsInput;
import zonewright.nights.NightsPlan;
import zonewright.nights.ZoneShare;
import zonewright.timetable.NightPlan;
import zonewright.timetable.Undone;
import zonewright.timetable.ValveRun;
import zonewright.timetable.WateredZone;

/**
 * Where the parts of a night come to lie: a line for each zone, its cycles over time, the flow
 * below.
 */
final class NightChart {
  private static final int MOST_LINE_PIXELS = 24;
  private static final int FLOW_PIXELS = 76;
  private static final int MOST_FLOW_PIXELS = 170;

  /**
   * The line of a zone.
   *
   * @param label what stands before it
   * @param program number of its program
   * @param runs its cycles, by start
   * @param late its cycles that find no room, where they would lie
   * @param note what keeps it or some of it out, in words; empty where nothing does
   */
  record Line(String label, long program, List<ValveRun> runs, List<Undone> late, String note) {
    Line {
      runs = List.copyOf(runs);
      late = List.copyOf(late);
    }
  }

  private final NightPlan night;
  private final List<Line> lines;
  private final List<Long> programs;
  private final Rectangle bars;
  private final Rectangle flow;
  private final double from;
  private final double to;
  private final double lineHeight;

  /**
   * Lays a night out.
   *
   * @param from first minute shown
   * @param to last minute shown
   */
  NightChart(
      NightsPlan plan,
      NightPlan night,
      double from,
      double to,
      Rectangle place,
      FontMetrics metrics,
      float scale) {
    this.night = night;
    this.from = from;
    this.to = to;
    this.lines = lines(plan, night);
    this.programs = programs(plan);
    int widest = lines.stream().mapToInt(line -> metrics.stringWidth(line.label())).max().orElse(0);
    int left = place.x + Math.min(widest + Math.round(8 * scale), place.width * 3 / 10);
    int width = Math.max(1, place.x + place.width - left);
    int head = metrics.getHeight() + Math.round(6 * scale);
    int foot = metrics.getHeight() + Math.round(4 * scale);
    int room = Math.max(2, place.height - head - foot - Math.round(12 * scale));
    int flowHeight = Math.max(1, Math.min(Math.round(FLOW_PIXELS * scale), room * 2 / 5));
    int barsHeight = room - flowHeight;
    this.lineHeight =
        Math.min(MOST_LINE_PIXELS * scale, (double) barsHeight / Math.max(1, lines.size()));
    int used = (int) Math.max(1, Math.ceil(lineHeight * lines.size()));
    this.bars = new Rectangle(left, place.y + head, width, used);
    // What the lines leave goes to the flow, as far as that helps to read it.
    int free = Math.max(0, barsHeight - used);
    int height = Math.min(flowHeight + free, Math.round(MOST_FLOW_PIXELS * scale));
    this.flow =
        new Rectangle(
            left, bars.y + used + Math.round(12 * scale), width, Math.max(flowHeight, height));
  }

  /**
   * Returns the lines of a night: zones by their first start, then those that no night has a place
   * for.
   */
  static List<Line> lines(NightsPlan plan, NightPlan night) {
    NightNames names = new NightNames(plan);
    Map<WateredZone, List<ValveRun>> runs = new LinkedHashMap<>();
    Map<WateredZone, List<Undone>> late = new LinkedHashMap<>();
    night.runs().stream()
        .sorted(Comparator.comparingInt(ValveRun::startMinute))
        .forEach(run -> runs.computeIfAbsent(run.zone(), any -> new ArrayList<>()).add(run));
    for (Undone each : night.undone()) {
      late.computeIfAbsent(each.zone(), any -> new ArrayList<>()).add(each);
    }
    Set<WateredZone> zones = new LinkedHashSet<>(runs.keySet());
    zones.addAll(late.keySet());
    List<Line> lines = new ArrayList<>();
    Set<Integer> shown = new HashSet<>();
    for (WateredZone zone : zones) {
      NightsInput.SheetZone sheet = names.sheet(zone);
      List<Undone> lost = late.getOrDefault(zone, List.of());
      lines.add(
          new Line(
              label(sheet, names.program(names.part(zone))),
              zone.program(),
              runs.getOrDefault(zone, List.of()),
              lost,
              lost.isEmpty() ? "" : ZoneShare.words(lost.get(0).why())));
      shown.add(sheet.row());
    }
    for (ZoneShare share : ZoneShare.of(plan)) {
      if (share.state() == ZoneShare.State.NOT_PLACED && shown.add(share.sheet().row())) {
        long program = share.sheet().program();
        String label = label(share.sheet(), names.program(program));
        lines.add(new Line(label, program, List.of(), List.of(), share.why()));
      }
    }
    return lines;
  }

  private static String label(NightsInput.SheetZone zone, String program) {
    return (program.isEmpty() ? "" : program + " · ") + (zone.name() + " " + zone.place()).strip();
  }

  private static List<Long> programs(NightsPlan plan) {
    NightNames names = new NightNames(plan);
    return plan.input().stations().stream()
        .map(station -> station.zone().program())
        .distinct()
        .sorted(Comparator.comparing(names::program))
        .toList();
  }

  NightPlan night() {
    return night;
  }

  List<Line> lines() {
    return lines;
  }

  /** Returns the place of a program among all of them, to choose its colour by. */
  int place(long program) {
    return Math.max(0, programs.indexOf(program));
  }

  Rectangle bars() {
    return bars;
  }

  Rectangle flow() {
    return flow;
  }

  double lineHeight() {
    return lineHeight;
  }

  double from() {
    return from;
  }

  double to() {
    return to;
  }

  double x(double minute) {
    return bars.x + bars.width * (minute - from) / (to - from);
  }

  /** Returns the minute at a place across. */
  double minute(double x) {
    return from + (x - bars.x) / bars.width * (to - from);
  }

  /** Returns where a cycle lies. */
  Rectangle2D bar(int line, int startMinute, int endMinute) {
    double left = x(startMinute);
    double inset = Math.min(3, lineHeight * 0.14);
    return new Rectangle2D.Double(
        left,
        bars.y + line * lineHeight + inset,
        Math.max(1, x(endMinute) - left),
        Math.max(1, lineHeight - 2 * inset));
  }

  Rectangle2D bar(int line, ValveRun run) {
    return bar(line, run.startMinute(), run.endMinute());
  }

  /** Returns the cycle at a point. */
  Optional<ValveRun> runAt(double x, double y) {
    int line = (int) Math.floor((y - bars.y) / lineHeight);
    if (line < 0 || line >= lines.size()) {
      return Optional.empty();
    }
    return lines.get(line).runs().stream().filter(run -> bar(line, run).contains(x, y)).findFirst();
  }

  /** Returns the first minute of a program in the night. */
  int firstStart(long program) {
    return night.runs().stream()
        .filter(run -> run.zone().program() == program)
        .mapToInt(ValveRun::startMinute)
        .min()
        .orElse(night.opensMinute());
  }
}
