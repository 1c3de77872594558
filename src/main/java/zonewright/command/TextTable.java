package zonewright.command;

import java.util.ArrayList;
import java.util.List;

/** Lines of text with aligned columns: numbers to the right, words to the left. */
final class TextTable {
  private static final String GAP = "  ";
  private static final int HEADING_WIDTH = 12;

  private final List<List<String>> headings = new ArrayList<>();
  private final List<Boolean> numbers = new ArrayList<>();
  private final List<List<String>> rows = new ArrayList<>();

  /** Adds a column; its heading is broken into short lines. */
  void column(String heading, boolean holdsNumbers) {
    headings.add(broken(heading));
    numbers.add(holdsNumbers);
  }

  /** Adds a row with a text for each column. */
  void row(List<String> cells) {
    if (cells.size() != headings.size()) {
      throw new IllegalArgumentException("a row has a cell for each column");
    }
    rows.add(List.copyOf(cells));
  }

  private static List<String> broken(String heading) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : heading.split(" ", -1)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > HEADING_WIDTH) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /** Returns the lines, headings first, each without blanks at its end. */
  List<String> lines() {
    int height = headings.stream().mapToInt(List::size).max().orElse(0);
    List<List<String>> all = new ArrayList<>();
    for (int i = 0; i < height; i++) {
      List<String> line = new ArrayList<>();
      for (List<String> heading : headings) {
        int from = i - (height - heading.size());
        line.add(from < 0 ? "" : heading.get(from));
      }
      all.add(line);
    }
    all.addAll(rows);
    int[] widths = new int[headings.size()];
    for (List<String> line : all) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], length(line.get(i)));
      }
    }
    List<String> lines = new ArrayList<>(all.stream().map(line -> aligned(line, widths)).toList());
    List<String> rule = new ArrayList<>();
    for (int width : widths) {
      rule.add("─".repeat(width));
    }
    lines.add(height, String.join(GAP, rule));
    return lines;
  }

  private String aligned(List<String> cells, int[] widths) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < widths.length; i++) {
      String space = " ".repeat(widths[i] - length(cells.get(i)));
      line.append(i > 0 ? GAP : "");
      line.append(numbers.get(i) ? space + cells.get(i) : cells.get(i) + space);
    }
    return line.toString().stripTrailing();
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }
}
