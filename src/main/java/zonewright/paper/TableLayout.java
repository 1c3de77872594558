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
    this.headings =
        row(table.columns().stream().map(PaperTable.Column::heading).toList(), headingSize());
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

  private Row row(List<String> words, float points) {
    float weights = 0;
    for (PaperTable.Column column : table.columns()) {
      weights += column.weight();
    }
    List<Cell> cells = new ArrayList<>();
    float x = 0;
    int most = 1;
    for (int i = 0; i < words.size(); i++) {
      PaperTable.Column column = table.columns().get(i);
      float whole = width * column.weight() / weights;
      boolean last = i == words.size() - 1;
      float room = Math.max(10, whole - (last ? 2 : GAP));
      List<String> lines = typeface.lines(words.get(i), points, room);
      cells.add(new Cell(lines, x + 1, room, column.number(), column.strong()));
      most = Math.max(most, lines.size());
      x += whole;
    }
    return new Row(cells, most * points * LEADING + 2 * PADDING);
  }
}
