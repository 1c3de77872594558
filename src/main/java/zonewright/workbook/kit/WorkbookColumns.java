package zonewright.workbook.kit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import zonewright.design.AtAGlance;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;

/** Which columns of the design stand in a workbook, and which of them have a cell to type into. */
final class WorkbookColumns {
  private final Schema schema;
  private final Equations equations;
  private final Set<Column> written = new HashSet<>();
  private final Set<Column> typed = new HashSet<>();
  private final Set<Column> filled = new HashSet<>();

  /**
   * Chooses the columns.
   *
   * @param equations the formulas as they are written
   * @param wanted says which columns are to be there; what they rest on comes with them
   * @param typedInto says whether somebody typed into a column: usual values have a cell to put
   *     one's own beside them where somebody did, and where a sheet is opened on them
   */
  WorkbookColumns(
      Schema schema, Equations equations, Predicate<Column> wanted, Predicate<Column> typedInto) {
    this.schema = schema;
    this.equations = equations;
    for (TableDefinition table : schema.tables()) {
      table.columns().stream().filter(wanted).forEach(this::write);
    }
    Set<Reference> givens = new HashSet<>();
    written.forEach(
        column -> equations.needs(column).ifPresent(needs -> givens.addAll(needs.givens())));
    for (TableDefinition table : schema.tables()) {
      for (Column column : table.columns()) {
        boolean usual =
            !table.single()
                && column.role() == Column.Role.DEFAULTED
                && !givens.contains(column.reference())
                && (table.givenNames() || !AtAGlance.shows(table, column))
                && !typedInto.test(column);
        if (table.takesEntries(column) && !usual && written.contains(column)) {
          typed.add(column);
        }
        if (typedInto.test(column)) {
          filled.add(column);
        }
      }
    }
  }

  /** Takes a column in, with all it rests on and the names its words are chosen from. */
  private void write(Column column) {
    if (!written.add(column)) {
      return;
    }
    TableDefinition table = schema.table(column.reference().table());
    table.key().ifPresent(this::write);
    table.other().ifPresent(other -> write(schema.table(other).columns().get(0)));
    equations
        .needs(column)
        .ifPresent(
            needs -> {
              needs.cells().forEach(cell -> write(schema.column(cell)));
              needs.columns().forEach(each -> write(schema.column(each)));
            });
    column
        .words()
        .filter(WordList.RowsOf.class::isInstance)
        .map(WordList.RowsOf.class::cast)
        .ifPresent(list -> write(schema.table(list.table()).columns().get(0)));
  }

  /** Says whether a column stands in the workbook. */
  boolean has(Column column) {
    return written.contains(column);
  }

  /** Says whether a column has a cell to type into. */
  boolean typed(Column column) {
    return typed.contains(column);
  }

  /** Says whether somebody typed into a column. */
  boolean filled(Column column) {
    return filled.contains(column);
  }

  /** Returns all columns that stand in the workbook. */
  Set<Column> all() {
    return Set.copyOf(written);
  }

  /** Returns the columns of a table that stand in the workbook. */
  List<Column> of(TableDefinition table) {
    return table.columns().stream().filter(written::contains).toList();
  }

  /** Says whether somebody typed into a column of a book, but for names that are given. */
  static boolean typedInto(Book book, Column column) {
    Reference reference = column.reference();
    for (int row = 0; row < book.rows(reference.table()); row++) {
      boolean given = book.schema().table(reference.table()).givenNames();
      if (!(given && book.schema().table(reference.table()).columns().get(0).equals(column))
          && !(book.entry(reference, row) instanceof Entry.Blank)) {
        return true;
      }
    }
    return false;
  }
}
