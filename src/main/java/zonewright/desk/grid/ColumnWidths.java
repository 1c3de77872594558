package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.awt.FontMetrics;
import java.util.stream.IntStream;
import zonewright.sheet.Book;
import zonewright.sheet.Column;

/** How wide columns should be at first: room for the heading and for what usually stands there. */
final class ColumnWidths {
  private static final int SAMPLE = 30;

  private ColumnWidths() {}

  static int usual(SheetTable table, Column column, SheetHeader header) {
    FontMetrics metrics = table.getFontMetrics(table.getFont());
    int digit = metrics.charWidth('0');
    int content =
        switch (column.content()) {
          case NUMBER -> Math.min(34 * digit, Math.max(7 * digit, sample(table, column, metrics)));
          case CHOICE ->
              Math.min(
                  30 * digit,
                  Math.max(sample(table, column, metrics), listed(table, column, metrics)));
          case WORDS -> Math.min(34 * digit, Math.max(5 * digit, sample(table, column, metrics)));
        };
    if (column.reference().equals(table.sheet().table().columns().get(0).reference())) {
      content = Math.max(content, metrics.stringWidth(table.newRowWords()));
    }
    int marks = column.takesEntries() ? UIScale.scale(8) : 0;
    return Math.max(
        header.leastWidth(column), content + 2 * EntryTable.padding() + marks + UIScale.scale(2));
  }

  /** Returns the width that the content of some rows of the book asks for. */
  static int content(SheetTable table, Column column, IntStream rows) {
    FontMetrics metrics = table.getFontMetrics(table.getFont());
    // No number that can be used is as long: one that is out of range must not push all else away.
    int most = (column.content() == Column.Content.CHOICE ? 30 : 34) * metrics.charWidth('0');
    int marks = column.takesEntries() ? UIScale.scale(8) : 0;
    return Math.min(most, widest(table, column, metrics, rows))
        + 2 * EntryTable.padding()
        + marks
        + UIScale.scale(2);
  }

  /** Returns the width of the heading or the widest text in any row, reasons too. */
  static int widest(SheetTable table, Column column, SheetHeader header) {
    FontMetrics metrics = table.getFontMetrics(table.getFont());
    int rows = table.book().rows(column.reference().table());
    int content =
        IntStream.range(0, rows)
            .map(row -> metrics.stringWidth(table.looks().look(column, row).text()))
            .max()
            .orElse(0);
    int marks = column.takesEntries() ? UIScale.scale(8) : 0;
    return Math.max(
        header.leastWidth(column), content + 2 * EntryTable.padding() + marks + UIScale.scale(4));
  }

  private static int sample(SheetTable table, Column column, FontMetrics metrics) {
    Book book = table.book();
    int rows = Math.min(SAMPLE, book.rows(column.reference().table()));
    return widest(table, column, metrics, IntStream.range(0, rows));
  }

  private static int widest(SheetTable table, Column column, FontMetrics metrics, IntStream rows) {
    return rows.mapToObj(row -> table.looks().look(column, row))
        .filter(look -> !look.standing().reason())
        .mapToInt(look -> metrics.stringWidth(look.text()))
        .max()
        .orElse(0);
  }

  /** Returns room for words that may yet be chosen, up to a usual length. */
  private static int listed(SheetTable table, Column column, FontMetrics metrics) {
    int usual = 15 * metrics.charWidth('0');
    return Math.min(
        usual,
        table.book().choices(column).stream().mapToInt(metrics::stringWidth).max().orElse(0));
  }
}
