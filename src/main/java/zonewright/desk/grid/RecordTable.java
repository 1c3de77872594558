package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.awt.FontMetrics;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;
import zonewright.sheet.Book;
import zonewright.sheet.Column;

/** The lines of a one-row table; only their values can be gone to. */
final class RecordTable extends EntryTable {
  private final transient RecordModel model;
  private final transient RecordPainter words = new RecordPainter();

  RecordTable(RecordModel model, Book book, CellLooks looks) {
    super(model, book, looks);
    this.model = model;
    setTableHeader(null);
    setAutoResizeMode(JTable.AUTO_RESIZE_LAST_COLUMN);
    getAccessibleContext().setAccessibleName(model.table().title());
    getAccessibleContext()
        .setAccessibleDescription("One line for each fact. Type to replace, F2 to edit.");
    fitColumns();
  }

  RecordModel lines() {
    return model;
  }

  void fitColumns() {
    FontMetrics metrics = getFontMetrics(getFont());
    width(RecordModel.NAME, widest(RecordModel.NAME, metrics) + UIScale.scale(36));
    getColumnModel().getColumn(RecordModel.MEANING).setPreferredWidth(UIScale.scale(1200));
    width(
        RecordModel.VALUE,
        Math.max(metrics.charWidth('0') * 26, widest(RecordModel.VALUE, metrics))
            + UIScale.scale(30));
    width(
        RecordModel.UNIT,
        Math.max(metrics.charWidth('0') * 6, widest(RecordModel.UNIT, metrics))
            + UIScale.scale(20));
  }

  private int widest(int column, FontMetrics metrics) {
    int most = metrics.charWidth('0') * 40;
    return IntStream.range(0, model.getRowCount())
        .map(row -> metrics.stringWidth(String.valueOf(model.getValueAt(row, column))))
        .map(width -> Math.min(most, width))
        .max()
        .orElse(0);
  }

  private void width(int column, int width) {
    getColumnModel().getColumn(column).setPreferredWidth(width);
    getColumnModel().getColumn(column).setMaxWidth(width);
  }

  @Override
  Optional<Column> declared(int row, int column) {
    return column == RecordModel.VALUE && row >= 0 ? model.line(row).column() : Optional.empty();
  }

  @Override
  int bookRow(int row) {
    return 0;
  }

  @Override
  boolean lastOfGroup(int column) {
    return false;
  }

  @Override
  String hint(int row, int column) {
    return "";
  }

  @Override
  boolean wrapsTab() {
    return true;
  }

  @Override
  void enter(int row, int column, String text) {
    declared(row, column)
        .ifPresent(found -> book().perform(edits().typed(found.reference(), 0, text)));
  }

  @Override
  public TableCellRenderer getCellRenderer(int row, int column) {
    return declared(row, column).isPresent() ? super.getCellRenderer(row, column) : words;
  }

  /** Goes to the value of a line; past the name of a group. */
  @Override
  public void changeSelection(int row, int column, boolean toggle, boolean extend) {
    int step = row < leadRow() || (column < RecordModel.VALUE && row == leadRow()) ? -1 : 1;
    int to = row;
    while (to >= 0 && to < getRowCount() && model.line(to).column().isEmpty()) {
      to += step;
    }
    if (to >= 0 && to < getRowCount()) {
      super.changeSelection(to, RecordModel.VALUE, toggle, extend);
    }
  }
}
