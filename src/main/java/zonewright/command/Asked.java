package zonewright.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import zonewright.design.ListedValues;
import zonewright.design.NamedCell;
import zonewright.design.Synonyms;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.ColumnFinder;
import zonewright.sheet.Place;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;

/** The column, or the cell, a person names on the command line. */
final class Asked {
  private Asked() {}

  /**
   * Returns what was written for each column, in the order in which it was.
   *
   * @param values each a name, an equals sign and a value
   * @param blanks whether a value may be blank
   * @throws Complaint where one is something else, or its column none, several or named before
   */
  static Map<Column, String> values(ColumnFinder finder, List<String> values, boolean blanks) {
    Map<Column, String> given = new LinkedHashMap<>();
    for (String value : values) {
      int equals = value.indexOf('=');
      if (equals < 1 || (!blanks && value.substring(equals + 1).isBlank())) {
        throw new Complaint(
            ExitCode.USAGE,
            "“%s” gives no value; write a name, an equals sign and a value, as \"Area=900 ft2\"."
                .formatted(value));
      }
      String name = value.substring(0, equals);
      Column column =
          ListedValues.looksSo(value.substring(equals + 1))
                  && finder.ofMany(name) instanceof ColumnFinder.One many
              ? many.column()
              : column(finder, name);
      if (given.put(column, value.substring(equals + 1).strip()) != null) {
        throw new Complaint(ExitCode.USAGE, column.name() + " is given twice; give it once.");
      }
    }
    return given;
  }

  /**
   * Returns the column a name means.
   *
   * @throws Complaint where it means none or several
   */
  static Column column(ColumnFinder finder, String name) {
    ColumnFinder.Found found = finder.find(name);
    if (found instanceof ColumnFinder.Unclear unclear) {
      throw new Complaint(ExitCode.USAGE, unclear.sentence());
    }
    return ((ColumnFinder.One) found).column();
  }

  /**
   * Returns the cell that words name: a column, and after "of" its row.
   *
   * @throws Complaint where they name none
   */
  static Place cell(Book book, List<String> named) {
    int of = named.lastIndexOf("of");
    boolean row = of > 0 && of + 1 < named.size();
    String name = String.join(" ", row ? named.subList(0, of) : named);
    String ofRow = row ? String.join(" ", named.subList(of + 1, named.size())) : "";
    NamedCell found = NamedCell.in(book, name, ofRow);
    if (found instanceof NamedCell.OfAll all) {
      TableDefinition table = book.schema().table(all.column().reference().table());
      throw new Complaint(
          ExitCode.USAGE,
          "%s has many rows; say of which %s, as \"%s\" of %s."
              .formatted(table.title(), table.rowWord(), name, example(book, table)));
    }
    if (found instanceof NamedCell.Unclear unclear) {
      throw new Complaint(ExitCode.USAGE, unclear.sentence());
    }
    NamedCell.OfRow cell = (NamedCell.OfRow) found;
    return new Place(cell.column().reference(), cell.row());
  }

  /**
   * Returns all cells of the column a name means.
   *
   * @throws Complaint where it means none or several
   */
  static List<Place> all(Book book, String name) {
    Reference column = column(Synonyms.finder(book.schema(), Sheets.ZONES), name).reference();
    return IntStream.range(0, book.rows(column.table()))
        .mapToObj(row -> new Place(column, row))
        .toList();
  }

  private static String example(Book book, TableDefinition table) {
    List<String> names = NamedCell.names(book, table);
    return names.isEmpty() ? "1" : names.get(0);
  }
}
