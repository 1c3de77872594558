package zonewright.design;

import java.util.List;
import java.util.stream.IntStream;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.ColumnFinder;
import zonewright.sheet.Nearest;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;

/** What a person means by {@code Cycles of 7}: a column, and the row of it where it has several. */
public sealed interface NamedCell {
  /** A cell of one row. */
  record OfRow(Column column, int row) implements NamedCell {}

  /** A column of a sheet with several rows, none of them named. */
  record OfAll(Column column) implements NamedCell {}

  /** Nothing; the sentence says why, and what would do. */
  record Unclear(String sentence) implements NamedCell {}

  /** Returns what words mean that say nothing of a row but behind the last “of” among them. */
  static NamedCell in(Book book, String words) {
    String plain = words.strip();
    int of = plain.lastIndexOf(" of ");
    if (of > 0) {
      NamedCell cell = in(book, plain.substring(0, of), plain.substring(of + 4));
      if (cell instanceof OfRow || !(in(book, plain, "") instanceof OfRow)) {
        return cell;
      }
    }
    return in(book, plain, "");
  }

  /**
   * Returns what a column's name and a row's name mean.
   *
   * @param row none where it is empty
   */
  static NamedCell in(Book book, String name, String row) {
    ColumnFinder finder = Synonyms.finder(book.schema(), Sheets.ZONES);
    if (finder.find(name) instanceof ColumnFinder.One found) {
      TableDefinition table = book.schema().table(found.column().reference().table());
      return row.isBlank()
          ? table.single() ? new OfRow(found.column(), 0) : new OfAll(found.column())
          : inRow(book, table, found.column(), row.strip());
    }
    return new Unclear(((ColumnFinder.Unclear) finder.find(name)).sentence());
  }

  private static NamedCell inRow(Book book, TableDefinition table, Column column, String row) {
    List<String> names = names(book, table);
    int at =
        IntStream.range(0, names.size())
            .filter(each -> names.get(each).equalsIgnoreCase(row))
            .findFirst()
            .orElse(-1);
    if (at >= 0) {
      return new OfRow(column, at);
    }
    return new Unclear(
        names.isEmpty()
            ? "The sheet %s holds no %s yet.".formatted(table.title(), table.rowWord())
            : "There is no %s “%s”; did you mean “%s”?"
                .formatted(table.rowWord(), row, Nearest.to(row, names, 1).get(0)));
  }

  /** Returns what the rows of a sheet are called. */
  static List<String> names(Book book, TableDefinition table) {
    Reference key = table.columns().get(0).reference();
    return IntStream.range(0, book.rows(table.id()))
        .mapToObj(row -> book.shown(key, book.outcome(key, row)))
        .toList();
  }
}
