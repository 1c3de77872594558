package zonewright.desk.picture;

import java.awt.Rectangle;
import java.util.List;
import zonewright.units.QuantityText;

/**
 * The area of a picture beside a scale that begins at 0, with slots of equal width along the foot.
 */
record ScaledAxis(Rectangle area, double most, int slots) {
  /**
   * Draws the scale and its lines, and leaves a line above for a legend and one below for names.
   */
  static ScaledAxis drawn(Canvas canvas, double most, int slots) {
    int line = canvas.metrics().getHeight();
    Rectangle place = canvas.place();
    List<Double> ticks =
        Ticks.upTo(most, Math.max(1, Math.min(5, (place.height - 2 * line) / (2 * line))));
    int scale = ticks.stream().mapToInt(tick -> canvas.width(number(tick))).max().orElse(0);
    int left = place.x + scale + Math.round(canvas.px(6));
    int top = place.y + line + Math.round(canvas.px(6));
    int bottom = place.y + place.height - line - Math.round(canvas.px(3));
    ScaledAxis axis =
        new ScaledAxis(
            new Rectangle(
                left, top, Math.max(1, place.x + place.width - left), Math.max(1, bottom - top)),
            most,
            slots);
    for (double tick : ticks) {
      double y = axis.y(tick);
      canvas.line(left, y, axis.area.getMaxX(), y, canvas.palette().line(), 1);
      double base = y + canvas.metrics().getAscent() / 2.0 - 1;
      canvas.writeBefore(number(tick), left - canvas.px(6), base, canvas.palette().muted());
    }
    return axis;
  }

  private static String number(double value) {
    return value == 0 ? "0" : QuantityText.grouped(value, value < 10 ? 1 : 0);
  }

  double slot() {
    return area.getWidth() / slots;
  }

  /** Returns the middle of a slot. */
  double x(int slot) {
    return area.x + slot() * (slot + 0.5);
  }

  double y(double amount) {
    return area.getMaxY() - area.height * amount / most;
  }

  /** Writes a name below a slot. */
  void name(Canvas canvas, int slot, String name) {
    canvas.writeAround(
        name,
        x(slot),
        area.getMaxY() + canvas.px(3) + canvas.metrics().getAscent(),
        canvas.palette().muted());
  }
}
