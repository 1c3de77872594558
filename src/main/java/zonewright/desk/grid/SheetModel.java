package zonewright.desk.grid;

import java.util.List;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;

/** A table of a book as Swing wants it: the texts of its cells, and one more row to begin. */
final class SheetModel extends AbstractTableModel {
  private final transient Book book;
  private final transient CellLooks looks;
  private transient TableDefinition table;
  private transient List<Optional<Column>> columns;
  private final transient RowsShown shown;

  SheetModel(Book book, String tableId, CellLooks looks) {
    this.book = book;
    this.looks = looks;
    takeColumns(tableId);
    this.shown = new RowsShown(book, tableId);
  }

  /** Takes over which columns the table has now. */
  final void takeColumns(String tableId) {
    table = book.schema().table(tableId);
    columns = table.columns().stream().map(Optional::of).toList();
  }

  TableDefinition table() {
    return table;
  }

  Optional<Column> column(int at) {
    return columns.get(at);
  }

  boolean grows() {
    return table.rows() instanceof TableDefinition.Rows.Free;
  }

  /** Says whether a row is the one in which a new one begins. */
  boolean isNew(int row) {
    return grows() && row == shown.count();
  }

  /** Takes over how many rows the book has now. */
  void reload() {
    shown.reload();
    fireTableDataChanged();
  }

  /** Returns which rows of the book are shown; who changes that says {@link #reload}. */
  RowsShown shown() {
    return shown;
  }

  @Override
  public int getRowCount() {
    return grows() ? shown.count() + 1 : shown.count();
  }

  @Override
  public int getColumnCount() {
    return columns.size();
  }

  @Override
  public String getColumnName(int at) {
    return table.columns().get(at).heading(book.system());
  }

  @Override
  public Object getValueAt(int row, int at) {
    return looks.look(table.columns().get(at), shown.bookRow(row)).text();
  }

  @Override
  public boolean isCellEditable(int row, int at) {
    return EntryTable.typeable(book, table.columns().get(at));
  }
}
