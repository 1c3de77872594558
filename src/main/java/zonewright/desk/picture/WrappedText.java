package zonewright.desk.picture;

import java.awt.FontMetrics;
import java.util.ArrayList;
import java.util.List;

/** Breaks a sentence into the lines that fit a width, between words. */
public final class WrappedText {
  private WrappedText() {}

  /** Returns the lines; a word wider than {@code width} has a line of its own. */
  public static List<String> lines(String text, FontMetrics metrics, int width) {
    List<String> lines = new ArrayList<>();
    if (text.isEmpty()) {
      return lines;
    }
    if (metrics.stringWidth(text) <= width) {
      return List.of(text);
    }
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && metrics.stringWidth(longer) > width) {
        lines.add(line.toString());
        line.setLength(0);
        line.append(word);
      } else {
        line.setLength(0);
        line.append(longer);
      }
    }
    lines.add(line.toString());
    return lines;
  }
}
