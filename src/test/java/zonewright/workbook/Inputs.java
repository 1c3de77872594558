package zonewright.workbook;

import java.math.BigDecimal;
import java.math.MathContext;
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
    return of(design, 17);
  }

  /** The same, numbers to so many digits. */
  static List<String> of(Design design, int digits) {
    Book book = design.book();
    List<String> lines = new ArrayList<>();
    lines.add(book.system().toString());
    for (TableDefinition table : book.blueprint().tables()) {
      for (Row row : book.contents().rows(table.id())) {
        StringBuilder line = new StringBuilder(table.id());
        for (int i = 0; i < table.columns().size(); i++) {
          line.append(" | ").append(text(row.entry(i), digits));
        }
        lines.add(line.toString());
      }
    }
    return lines;
  }

  private static String text(Entry entry, int digits) {
    if (entry instanceof Entry.Figure figure) {
      return digits >= 17
          ? Double.toString(figure.value())
          : new BigDecimal(figure.value())
              .round(new MathContext(digits))
              .stripTrailingZeros()
              .toString();
    }
    if (entry instanceof Entry.Words words) {
      return "“" + words.text() + "”";
    }
    return entry instanceof Entry.Unreadable unreadable ? "unreadable " + unreadable.text() : "";
  }
}
