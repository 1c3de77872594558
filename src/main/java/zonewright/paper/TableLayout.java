package zonewright.paper;

import java.util.ArrayList;
import java.util.List;

/** A table broken into lines for one size of letters. */
final class TableLayout {
  static final float PADDING = 4;
  static final float LEADING = 1.22f;

  private static final float GAP = 8;

  private final Typeface typeface;
  private final PaperTable table;
  private final float width;
  private final float size;
  private final float[] widths;
  private final Row headings;
  private final List<Row> rows = new ArrayList<>();

  /** A cell's lines, where it begins and how wide it is. */
  record Cell(List<String> lines, float x, float room, boolean number, boolean strong) {}

  /** A row's cells and its height. */
  record Row(List<Cell> cells, float height) {}

  TableLayout(Typeface typeface, PaperTable table, float width, float size) {
    this.typeface = typeface;
    this.table = table;
    this.width = width;
    this.size = size;
    this.widths = widths();
    List<String> names = table.columns().stream().map(PaperTable.Column::heading).toList();
    this.headings =
        names.stream().allMatch(String::isEmpty)
            ? new Row(List.of(), 0)
            : row(names, headingSize());
    table.rows().forEach(cells -> rows.add(row(cells, size)));
  }

  float size() {
    return size;
  }

  float headingSize() {
    return Math.max(8, Math.min(10, size - 1));
  }

  Row headings() {
    return headings;
  }

  List<Row> rows() {
    return rows;
  }

  /** Returns the height of all of it. */
  float height() {
    float height = headings.height();
    for (Row row : rows) {
      height += row.height();
    }
    return height;
  }

  /** Widths by weight, but none narrower than the longest word of its heading. */
  private float[] widths() {
    int count = table.columns().size();
    float[] least = new float[count];
    float needed = 0;
    float weights = 0;
    for (int i = 0; i < count; i++) {
      PaperTable.Column column = table.columns().get(i);
      for (String word : typeface.printable(column.heading()).split(" ", -1)) {
        least[i] = Math.max(least[i], typeface.width(word, headingSize()) + GAP + 2);
      }
      needed += least[i];
      weights += column.weight();
    }
    float[] widths = new float[count];
    float over = 0;
    float spare = 0;
    for (int i = 0; i < count; i++) {
      float wished = width * table.columns().get(i).weight() / weights;
      widths[i] = needed < width ? Math.max(least[i], wished) : wished;
      over += widths[i];
      spare += widths[i] - least[i];
    }
    over -= width;
    for (int i = 0; i < count && over > 0.01f && spare > 0; i++) {
      widths[i] -= over * Math.max(0, widths[i] - least[i]) / spare;
    }
    return widths;
  }

  private Row row(List<String> words, float points) {
    List<Cell> cells = new ArrayList<>();
    float x = 0;
    int most = 1;
    for (int i = 0; i < words.size(); i++) {
      PaperTable.Column column = table.columns().get(i);
      float whole = widths[i];
      boolean last = i == words.size() - 1;
      // Words that follow a number would touch it without some room of their own.
      float shift = i > 0 && !column.number() && table.columns().get(i - 1).number() ? GAP : 1;
      float room = Math.max(10, whole - shift - (last ? 1 : GAP));
      List<String> lines = typeface.lines(words.get(i), points, room);
      cells.add(new Cell(lines, x + shift, room, column.number(), column.strong()));
      most = Math.max(most, lines.size());
      x += whole;
    }
    return new Row(cells, most * points * LEADING + 2 * PADDING);
  }
}
