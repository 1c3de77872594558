package zonewright.desk.grid;

import java.awt.FontMetrics;
import java.util.List;

/** A heading on at most two lines, broken so that the longer line is as short as can be. */
record WrappedName(List<String> lines, int width) {
  WrappedName {
    lines = List.copyOf(lines);
  }

  static WrappedName of(String name, FontMetrics metrics) {
    WrappedName best = new WrappedName(List.of(name), metrics.stringWidth(name));
    for (int at = name.indexOf(' '); at >= 0; at = name.indexOf(' ', at + 1)) {
      String first = name.substring(0, at);
      String second = name.substring(at + 1);
      int width = Math.max(metrics.stringWidth(first), metrics.stringWidth(second));
      if (width < best.width()) {
        best = new WrappedName(List.of(first, second), width);
      }
    }
    return best;
  }

  /** Returns the heading on one line where there is room for it. */
  static WrappedName within(String name, FontMetrics metrics, int room) {
    int width = metrics.stringWidth(name);
    return width <= room ? new WrappedName(List.of(name), width) : of(name, metrics);
  }
}
