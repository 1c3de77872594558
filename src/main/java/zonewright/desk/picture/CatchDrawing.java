package zonewright.desk.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import zonewright.desk.part.Palette;
import zonewright.fieldwork.CatchSurface;
import zonewright.units.QuantityText;

/** Draws cans where they stood, their depths written out, on ground shaded in steps of the mean. */
record CatchDrawing(String title, CatchSurface surface, String result) implements Drawing {
  /** Parts of the mean at which the shading steps. */
  private static final List<Double> STEPS = List.of(0.5, 0.75, 1.0, 1.25, 1.5);

  /** Fields of the ground along its longer side. */
  private static final int FIELDS = 56;

  @Override
  public String inWords() {
    double least = surface.cans().stream().mapToDouble(CatchSurface.Can::depth).min().orElse(0);
    double most = surface.cans().stream().mapToDouble(CatchSurface.Can::depth).max().orElse(0);
    long outliers = surface.cans().stream().filter(CatchSurface.Can::outlier).count();
    return "%s cans from %s to %s, mean %s; %s far from the rest. %s."
        .formatted(
            surface.cans().size(),
            surface.inWords(least),
            surface.inWords(most),
            surface.inWords(surface.mean()),
            outliers,
            result);
  }

  /** Where the plan comes to lie: one scale both ways, the plan's upper edge on top. */
  private record Plan(double left, double bottom, double scale, double x, double y) {
    double across(double at) {
      return left + (at - x) * scale;
    }

    double up(double at) {
      return bottom - (at - y) * scale;
    }
  }

  @Override
  public void paint(Canvas canvas) {
    int line = canvas.metrics().getHeight();
    Rectangle place = canvas.place();
    Rectangle room =
        new Rectangle(
            place.x,
            place.y + line,
            Math.max(1, place.width),
            Math.max(1, place.height - 3 * line));
    double reach = 0.75 * surface.spacing();
    double left = surface.cans().stream().mapToDouble(CatchSurface.Can::x).min().orElse(0) - reach;
    double right = surface.cans().stream().mapToDouble(CatchSurface.Can::x).max().orElse(0) + reach;
    double low = surface.cans().stream().mapToDouble(CatchSurface.Can::y).min().orElse(0) - reach;
    double high = surface.cans().stream().mapToDouble(CatchSurface.Can::y).max().orElse(0) + reach;
    double scale = Math.min(room.width / (right - left), room.height / (high - low));
    double spare = (room.width - (right - left) * scale) / 2;
    double spareDown = (room.height - (high - low) * scale) / 2;
    Plan plan = new Plan(room.x + spare, room.getMaxY() - spareDown, scale, left, low);
    ground(canvas, plan, right, high, reach);
    cans(canvas, plan);
    canvas.write(
        shortened(canvas, result, place.width),
        place.x,
        place.y + canvas.metrics().getAscent(),
        canvas.palette().muted());
    legend(canvas, place);
    ruler(canvas, plan, place);
  }

  private static String shortened(Canvas canvas, String words, int room) {
    String text = words;
    while (text.length() > 2 && canvas.width(text) > room) {
      text = text.substring(0, text.length() - 2) + "…";
    }
    return text;
  }

  /** The depths of the corners of all fields; no number where no can is near. */
  private double[][] corners(Plan plan, double right, double high, double reach, double side) {
    int columns = (int) Math.ceil((right - plan.x()) / side) + 1;
    int rows = (int) Math.ceil((high - plan.y()) / side) + 1;
    double[][] depths = new double[columns][rows];
    for (int i = 0; i < columns; i++) {
      for (int j = 0; j < rows; j++) {
        double x = plan.x() + i * side;
        double y = plan.y() + j * side;
        depths[i][j] = surface.near(x, y, reach) ? surface.at(x, y) : Double.NaN;
      }
    }
    return depths;
  }

  private void ground(Canvas canvas, Plan plan, double right, double high, double reach) {
    double side = Math.max(right - plan.x(), high - plan.y()) / FIELDS;
    double[][] depths = corners(plan, right, high, reach, side);
    Graphics2D pen = canvas.pen();
    Object known = pen.getRenderingHint(RenderingHints.KEY_ANTIALIASING);
    Object smooth = known == null ? RenderingHints.VALUE_ANTIALIAS_DEFAULT : known;
    // Fields meet edge to edge: smoothed edges would let the ground shine through between them.
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
    for (int step = 0; step <= STEPS.size(); step++) {
      double from = step == 0 ? Double.NEGATIVE_INFINITY : STEPS.get(step - 1) * surface.mean();
      Path2D above = new Path2D.Double();
      Path2D border = new Path2D.Double();
      for (int i = 0; i + 1 < depths.length; i++) {
        for (int j = 0; j + 1 < depths[i].length; j++) {
          Corner a = corner(plan, depths, side, i, j);
          Corner b = corner(plan, depths, side, i + 1, j);
          Corner c = corner(plan, depths, side, i + 1, j + 1);
          Corner d = corner(plan, depths, side, i, j + 1);
          triangle(a, b, c, from, above, border);
          triangle(a, c, d, from, above, border);
        }
      }
      pen.setColor(shade(canvas.palette(), step));
      pen.fill(above);
      pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, smooth);
      pen.setColor(Palette.mix(canvas.palette().water(), canvas.palette().ink(), 0.35));
      pen.setStroke(new BasicStroke(canvas.px(STEPS.indexOf(1.0) == step - 1 ? 1.3 : 0.6)));
      pen.draw(border);
      pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
    }
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, smooth);
  }

  private record Corner(double x, double y, double depth) {}

  private static Corner corner(Plan plan, double[][] depths, double side, int i, int j) {
    return new Corner(plan.across(plan.x() + i * side), plan.up(plan.y() + j * side), depths[i][j]);
  }

  /** Adds the part of a triangle that is deeper than {@code from}, and its border with the rest. */
  private static void triangle(
      Corner a, Corner b, Corner c, double from, Path2D above, Path2D border) {
    Corner[] corners = {a, b, c};
    if (Double.isNaN(a.depth() + b.depth() + c.depth())) {
      return;
    }
    Path2D part = new Path2D.Double();
    double[] crossings = new double[4];
    int found = 0;
    for (int i = 0; i < 3; i++) {
      Corner one = corners[i];
      Corner next = corners[(i + 1) % 3];
      if (one.depth() >= from) {
        to(part, one.x(), one.y());
      }
      if ((one.depth() >= from) != (next.depth() >= from)) {
        double at = (from - one.depth()) / (next.depth() - one.depth());
        double x = one.x() + at * (next.x() - one.x());
        double y = one.y() + at * (next.y() - one.y());
        to(part, x, y);
        crossings[found++] = x;
        crossings[found++] = y;
      }
    }
    if (part.getCurrentPoint() != null) {
      part.closePath();
      above.append(part, false);
    }
    if (found == 4) {
      border.moveTo(crossings[0], crossings[1]);
      border.lineTo(crossings[2], crossings[3]);
    }
  }

  private static void to(Path2D path, double x, double y) {
    if (path.getCurrentPoint() == null) {
      path.moveTo(x, y);
    } else {
      path.lineTo(x, y);
    }
  }

  private static Color shade(Palette palette, int step) {
    return Palette.mix(palette.paper(), palette.water(), 0.06 + 0.13 * step);
  }

  private void cans(Canvas canvas, Plan plan) {
    Graphics2D pen = canvas.pen();
    double side = canvas.px(2.5);
    double gap = surface.spacing() * plan.scale();
    for (CatchSurface.Can can : surface.cans()) {
      double x = plan.across(can.x());
      double y = plan.up(can.y());
      pen.setColor(canvas.palette().ink());
      pen.fill(new Ellipse2D.Double(x - side, y - side, 2 * side, 2 * side));
      String text = number(can.depth());
      if (canvas.width(text) < gap * 1.05) {
        double base = y - side - canvas.px(2);
        Color paper = canvas.palette().paper();
        pen.setColor(new Color(paper.getRed(), paper.getGreen(), paper.getBlue(), 190));
        pen.fill(
            new Rectangle2D.Double(
                x - canvas.width(text) / 2.0 - 1,
                base - canvas.metrics().getAscent() + canvas.px(2),
                canvas.width(text) + 2.0,
                canvas.metrics().getAscent()));
        canvas.writeAround(text, x, base, canvas.palette().ink());
      }
      if (can.outlier()) {
        double ring = canvas.px(7);
        pen.setColor(canvas.palette().limit());
        pen.setStroke(new BasicStroke(canvas.px(1.8)));
        pen.draw(new Ellipse2D.Double(x - ring, y - ring, 2 * ring, 2 * ring));
      }
    }
  }

  private static String number(double depth) {
    return depth == 0 ? "0" : QuantityText.readable(depth, 1);
  }

  private void legend(Canvas canvas, Rectangle place) {
    double base = place.getMaxY() - canvas.metrics().getDescent();
    double x = place.x;
    double side = canvas.metrics().getAscent() * 0.8;
    String head = "Depth (" + surface.depth().symbol() + "), shaded from";
    canvas.write(head, x, base, canvas.palette().muted());
    x += canvas.width(head) + canvas.px(8);
    for (int step = 0; step <= STEPS.size(); step++) {
      String text = step == 0 ? "0" : number(STEPS.get(step - 1) * surface.mean());
      if (x + side + canvas.px(3) + canvas.width(text) > place.getMaxX()) {
        return;
      }
      Rectangle2D box = new Rectangle2D.Double(x, base - side, side, side);
      canvas.pen().setColor(shade(canvas.palette(), step));
      canvas.pen().fill(box);
      canvas.pen().setColor(canvas.palette().strongLine());
      canvas.pen().setStroke(new BasicStroke(canvas.px(0.7)));
      canvas.pen().draw(box);
      x += side + canvas.px(3);
      canvas.write(text, x, base, canvas.palette().muted());
      x += canvas.width(text) + canvas.px(9);
    }
    if (surface.cans().stream().anyMatch(CatchSurface.Can::outlier)) {
      String text = "◯ far from the rest";
      if (x + canvas.width(text) <= place.getMaxX()) {
        canvas.write(text, x, base, canvas.palette().limit());
      }
    }
  }

  /** A length to measure by, above the legend. */
  private void ruler(Canvas canvas, Plan plan, Rectangle place) {
    double most = place.width / 4.0 / plan.scale();
    List<Double> ticks = Ticks.upTo(most, 1);
    double length = ticks.get(ticks.size() - 1);
    if (!(length > 0)) {
      return;
    }
    double y = place.getMaxY() - 1.6 * canvas.metrics().getHeight();
    double end = place.x + length * plan.scale();
    Color ink = canvas.palette().muted();
    canvas.line(place.x, y, end, y, ink, 1);
    canvas.line(place.x, y - canvas.px(3), place.x, y + canvas.px(3), ink, 1);
    canvas.line(end, y - canvas.px(3), end, y + canvas.px(3), ink, 1);
    String text = QuantityText.readable(length, 0) + " " + surface.length().symbol();
    canvas.write(text, end + canvas.px(5), y + canvas.metrics().getAscent() / 2.5, ink);
    if (surface.unplaced() > 0) {
      String rest = surface.unplaced() + " without a place";
      canvas.writeBefore(rest, place.getMaxX(), y + canvas.metrics().getAscent() / 2.5, ink);
    }
  }
}
