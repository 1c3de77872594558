package zonewright.workbook.pack;

import java.util.List;
import org.apache.poi.ss.util.CellReference;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.workbook.kit.SheetColumn;
import zonewright.workbook.kit.WorkbookLayout;
import zonewright.workbook.kit.WorkbookNames;

/**
 * How formulas refer to cells of the design: by names and table headings, so that they hold where
 * rows are sorted, columns moved, or rows added in another program.
 */
public final class Live {
  private final Book book;
  private final WorkbookLayout layout;

  Live(Book book, WorkbookLayout layout) {
    this.book = book;
    this.layout = layout;
  }

  private boolean single(Column column) {
    return book.schema().table(column.reference().table()).single();
  }

  /**
   * Returns the text for all cells of a column, such as {@code Zones[Cycles]}; for one of a one-row
   * table the name of its cell, such as {@code Site_Peak_month}.
   */
  public String all(Column column) {
    return layout.names(book.schema().table(column.reference().table())).shown(column);
  }

  /** Returns the letters of the column of a table's sheet in which one types into a column. */
  String letters(Column column) {
    List<SheetColumn> all = layout.columns(book.schema().table(column.reference().table()));
    int at = 0;
    while (!all.get(at).is(SheetColumn.Role.TYPED, column)) {
      at++;
    }
    return CellReference.convertNumToColString(at);
  }

  /** Says whether a column stands in the workbook, so that a formula may refer to it. */
  public boolean has(Column column) {
    return layout.has(column);
  }

  /** Returns the text for the cell in a row, counted from 0 in the order of the design. */
  public String at(Column column, int row) {
    return single(column) ? all(column) : "INDEX(%s,%s)".formatted(all(column), row + 1);
  }

  /**
   * Returns the text for the cell in the row whose name stands in a cell of the page: it follows
   * the row when the table is sorted, and is an error where the row is gone.
   *
   * @param nameCell where the name stands, such as {@code $B5}
   */
  public String ofRowNamed(Column column, String nameCell) {
    TableDefinition table = book.schema().table(column.reference().table());
    return "INDEX(%s,MATCH(%s,%s,0))"
        .formatted(all(column), nameCell, all(table.key().orElseThrow()));
  }

  /** Says whether each row of a column's table has a number that stays with it. */
  boolean identified(Column column) {
    TableDefinition table = book.schema().table(column.reference().table());
    return layout.columns(table).stream()
        .anyMatch(each -> each.role() == SheetColumn.Role.IDENTITY);
  }

  /** Returns the number that stays with a row, counted from 0 in the order of the design. */
  static double identity(Book book, Column column, int row) {
    return book.contents().row(column.reference().table(), row).id() + 1;
  }

  /**
   * Returns the text for the cell in the row whose number stands in a cell of the page: it follows
   * the row wherever it is put and whatever it is called.
   */
  String ofIdentity(Column column, String numberCell) {
    TableDefinition table = book.schema().table(column.reference().table());
    return "INDEX(%s,MATCH(%s,%s[%s],0))"
        .formatted(all(column), numberCell, table.title(), WorkbookNames.IDENTITY);
  }

  /** Returns what a cell of the design shows, as number or words, for the result of a formula. */
  Result result(Column column, int row) {
    return result(book, column, row);
  }

  /** Returns what a cell of a book shows, as number or words. */
  static Result result(Book book, Column column, int row) {
    double number = book.number(column.reference(), row);
    if (column.content() == Column.Content.NUMBER && !Double.isNaN(number)) {
      return new Result(number, "");
    }
    Outcome outcome = book.outcome(column.reference(), row);
    String words =
        outcome instanceof Outcome.Words text
            ? text.text()
            : outcome instanceof Outcome.NotApplicable not
                ? not.shown()
                : outcome instanceof Outcome.Blank ? "" : "–";
    return new Result(Double.NaN, words);
  }

  /** A number, or words where there is none. */
  record Result(double number, String words) {}
}
