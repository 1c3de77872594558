package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.awt.FontMetrics;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.TableDefinition;

/** The lines of a one-row table; only their values can be gone to. */
final class RecordTable extends EntryTable {
  private final transient RecordModel model;
  private final transient RecordPainter words = new RecordPainter();

  RecordTable(RecordModel model, Book book, CellLooks looks) {
    super(model, book, looks);
    this.model = model;
    setDefaultRenderer(Object.class, new CellPainter());
    setTableHeader(null);
    setAutoResizeMode(JTable.AUTO_RESIZE_LAST_COLUMN);
    getAccessibleContext().setAccessibleName(model.table().title());
    getAccessibleContext()
        .setAccessibleDescription("One line for each fact. Type to replace, F2 to edit.");
    fitColumns();
  }

  /** Returns the table whose one row it shows. */
  TableDefinition table() {
    return model.table();
  }

  /** Returns the line of a column; -1 where it has none. */
  int lineOf(Reference column) {
    return model.lineOf(column);
  }

  /** Shows other lines; the one a person is at stays selected where it is still there. */
  void takeLines(List<FormQuestion> questions) {
    if (isEditing()) {
      getCellEditor().cancelCellEditing();
    }
    int at = leadRow();
    Optional<Column> lead = at < 0 ? Optional.empty() : model.line(at).column();
    model.take(model.table().id(), questions);
    model.fireTableDataChanged();
    int now = lead.map(Column::reference).map(this::lineOf).orElse(-1);
    if (now >= 0) {
      changeSelection(now, RecordModel.VALUE, false, false);
    } else {
      selectFirst();
    }
  }

  /** Gives every column the width its content asks for; meanings take the rest. */
  final void fitColumns() {
    FontMetrics metrics = getFontMetrics(getFont());
    int digit = metrics.charWidth('0');
    int name = widest(RecordModel.NAME, metrics, digit * 40);
    int value = Math.max(digit * 30, widest(RecordModel.VALUE, metrics, digit * 56));
    int unit = Math.max(digit * 7, widest(RecordModel.UNIT, metrics, digit * 14));
    width(RecordModel.NAME, name + UIScale.scale(36));
    width(RecordModel.VALUE, value + UIScale.scale(30));
    width(RecordModel.UNIT, unit + UIScale.scale(20));
    getColumnModel().getColumn(RecordModel.MEANING).setPreferredWidth(UIScale.scale(300));
  }

  private int widest(int column, FontMetrics metrics, int most) {
    return IntStream.range(0, model.getRowCount())
        .map(row -> metrics.stringWidth(String.valueOf(model.getValueAt(row, column))))
        .map(width -> Math.min(most, width))
        .max()
        .orElse(0);
  }

  private void width(int column, int width) {
    TableColumn wanted = getColumnModel().getColumn(column);
    wanted.setMinWidth(0);
    wanted.setMaxWidth(width);
    wanted.setPreferredWidth(width);
    wanted.setMinWidth(width);
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
  String label(int row, int column) {
    return row < 0 ? "" : declared(row, column).map(Column::name).orElse("");
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
    declared(row, column).ifPresent(found -> enter(found.reference(), text));
  }

  private void enter(Reference reference, String text) {
    Edit first = edits().typed(reference, 0, text);
    List<Edit> all = new ArrayList<>();
    for (int at = 0; at < book().rows(reference.table()); at++) {
      all.add(edits().typed(reference, at, text));
    }
    book().perform(all.size() == 1 ? first : new Edit.Several(first.name(), all));
  }

  @Override
  public TableCellRenderer getCellRenderer(int row, int column) {
    return declared(row, column).isPresent() ? super.getCellRenderer(row, column) : words;
  }

  private int firstValue() {
    int row = 0;
    while (row < getRowCount() && model.line(row).column().isEmpty()) {
      row++;
    }
    return row;
  }

  /** Selects the first value without scrolling to it. */
  void selectFirst() {
    for (int row = 0; row < getRowCount(); row++) {
      if (model.line(row).column().isPresent()) {
        getSelectionModel().setSelectionInterval(row, row);
        getColumnModel()
            .getSelectionModel()
            .setSelectionInterval(RecordModel.VALUE, RecordModel.VALUE);
        return;
      }
    }
  }

  /** Goes to the value of a line; past the name of a group. */
  @Override
  public void changeSelection(int row, int column, boolean toggle, boolean extend) {
    int step = row < leadRow() || (column < RecordModel.VALUE && row == leadRow()) ? -1 : 1;
    int to = row;
    while (to >= 0 && to < getRowCount() && model.line(to).column().isEmpty()) {
      to += step;
    }
    if (to < 0) {
      to = firstValue();
    }
    if (to >= 0 && to < getRowCount()) {
      boolean first = to > 0 && model.line(to - 1).column().isEmpty();
      scrollRectToVisible(getCellRect(first ? to - 1 : to, RecordModel.VALUE, false));
      super.changeSelection(to, RecordModel.VALUE, toggle, extend);
    }
  }

  @Override
  public String getToolTipText(MouseEvent event) {
    int row = rowAtPoint(event.getPoint());
    boolean beside = columnAtPoint(event.getPoint()) != RecordModel.VALUE;
    return row >= 0 && beside
        ? model.line(row).column().map(column -> ColumnTip.of(column, book().system())).orElse(null)
        : super.getToolTipText(event);
  }
}
