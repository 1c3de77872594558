package zonewright.workbook;

import java.util.Optional;
import java.util.OptionalLong;
import zonewright.design.SheetsInUse;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.workbook.kit.WorkbookLayout;

/** How large a workbook is opened, and so how large a design is taken and written. */
public final class FileSize {
  /** No workbook of more cells is opened: what 9,000 to 14,000 zones take, 1 GB in memory. */
  static final long MOST_CELLS = 5_000_000;

  /** No workbook of more rows is opened. */
  static final long MOST_ROWS = 300_000;

  /** What the tables of the trade and the sheets with one row take, and all sheets to hand over. */
  static final long REST = 40_000;

  private FileSize() {}

  /**
   * Says why a design is too large for a file that is opened again, in a sentence; nothing where it
   * is not.
   */
  public static Optional<String> refused(Book book) {
    long cells = REST + cells(book);
    long rows = rows(book);
    if (cells <= MOST_CELLS && rows <= MOST_ROWS) {
      return Optional.empty();
    }
    int zones = book.rows(Sheets.ZONES);
    OptionalLong fit =
        zones == 0
            ? OptionalLong.empty()
            : OptionalLong.of(Math.min(zones * (MOST_CELLS - REST) / cells, zones - 1L));
    return Optional.of(
        "Its file would take %s rows and %s cells and would not be opened again (no more than %s rows and %s cells are%s); divide it into several."
            .formatted(
                rows,
                cells,
                MOST_ROWS,
                MOST_CELLS,
                fit.isPresent() ? ", about " + fit.getAsLong() + " zones" : ""));
  }

  /** Says the same of what a design would be after an edit. */
  public static Optional<String> refused(Book book, Edit edit) {
    Book after = book.another(book.snapshot());
    after.start(edit);
    return refused(after);
  }

  /** Returns how many cells the rows of a design take in its file. */
  static long cells(Book book) {
    WorkbookLayout layout =
        WorkbookLayout.of(
            book, table -> SheetsInUse.uses(book, table), column -> false, column -> false);
    long cells = 0;
    for (TableDefinition table : book.schema().tables()) {
      if (!table.single()) {
        cells += (long) book.rows(table.id()) * layout.columns(table).size();
      }
    }
    return cells;
  }

  private static long rows(Book book) {
    return book.schema().tables().stream().mapToLong(table -> book.rows(table.id())).sum();
  }
}
