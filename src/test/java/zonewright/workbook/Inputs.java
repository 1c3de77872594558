package zonewright.workbook;

import java.util.ArrayList;
import java.util.List;
import zonewright.design.Design;
import zonewright.sheet.Book;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.sheet.TableDefinition;

/** All that was entered in a design, as lines that can be compared. */
final class Inputs {
  private Inputs() {}

  static List<String> of(Design design) {
    Book book = design.book();
    List<String> lines = new ArrayList<>();
    lines.add(book.system().toString());
    for (TableDefinition table : book.schema().tables()) {
      for (Row row : book.contents().rows(table.id())) {
        StringBuilder line = new StringBuilder(table.id());
        for (int i = 0; i < table.columns().size(); i++) {
          line.append(" | ").append(text(row.entry(i)));
        }
        lines.add(line.toString());
      }
    }
    return lines;
  }

  private static String text(Entry entry) {
    if (entry instanceof Entry.Figure figure) {
      return Double.toString(figure.value());
    }
    if (entry instanceof Entry.Words words) {
      return "“" + words.text() + "”";
    }
    return entry instanceof Entry.Unreadable unreadable ? "unreadable " + unreadable.text() : "";
  }

  /** The cells in which two designs differ by more than the 15 digits another program keeps. */
  static List<String> differences(Design one, Design other) {
    List<String> differences = new ArrayList<>();
    for (TableDefinition table : one.book().schema().tables()) {
      List<Row> rows = one.book().contents().rows(table.id());
      List<Row> others = other.book().contents().rows(table.id());
      for (int row = 0; row < Math.max(rows.size(), others.size()); row++) {
        if (row >= rows.size() || row >= others.size()) {
          differences.add(table.id() + " row " + row + " stands on one side only");
          continue;
        }
        for (int i = 0; i < table.columns().size(); i++) {
          Entry left = rows.get(row).entry(i);
          Entry right = others.get(row).entry(i);
          if (!near(left, right)) {
            differences.add(table.columns().get(i) + " row " + row + ": " + left + ", " + right);
          }
        }
      }
    }
    return differences;
  }

  private static boolean near(Entry left, Entry right) {
    if (left instanceof Entry.Figure first && right instanceof Entry.Figure second) {
      return Math.abs(first.value() - second.value()) <= 1e-14 * Math.abs(first.value());
    }
    if (left instanceof Entry.Unreadable first && right instanceof Entry.Unreadable second) {
      return first.text().equals(second.text());
    }
    return left.equals(right);
  }
}
