package zonewright.desk;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.table.AbstractTableModel;
import zonewright.design.Design;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entries;
import zonewright.sheet.Place;

final class PlainSheet implements SheetView {
  private final JTable table;
  private final List<Column> columns;
  private final Book book;

  PlainSheet(Design design, String id, Runnable selected) {
    book = design.book();
    columns = book.blueprint().table(id).columns();
    AbstractTableModel model =
        new AbstractTableModel() {
          @Override
          public int getRowCount() {
            return book.rows(id);
          }

          @Override
          public int getColumnCount() {
            return columns.size();
          }

          @Override
          public String getColumnName(int column) {
            return columns.get(column).heading(book.system());
          }

          @Override
          public Object getValueAt(int row, int column) {
            Column c = columns.get(column);
            return book.shown(c.reference(), book.outcome(c.reference(), row));
          }

          @Override
          public boolean isCellEditable(int row, int column) {
            return columns.get(column).takesEntries();
          }

          @Override
          public void setValueAt(Object value, int row, int column) {
            book.perform(
                design.edits().typed(columns.get(column).reference(), row, String.valueOf(value)));
          }
        };
    table = new JTable(model);
    table.setName("grid " + id);
    table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
    table.setCellSelectionEnabled(true);
    table.getSelectionModel().addListSelectionListener(e -> selected.run());
    table.getColumnModel().getSelectionModel().addListSelectionListener(e -> selected.run());
    book.listen(c -> model.fireTableDataChanged());
    assert Entries.typed(columns.get(0), zonewright.sheet.Entry.BLANK).isEmpty();
  }

  @Override
  public JComponent component() {
    return new JScrollPane(table);
  }

  @Override
  public Component focusTarget() {
    return table;
  }

  @Override
  public Optional<Place> current() {
    int row = table.getSelectionModel().getLeadSelectionIndex();
    int column = table.getColumnModel().getSelectionModel().getLeadSelectionIndex();
    return row < 0 || column < 0 || row >= table.getRowCount()
        ? Optional.empty()
        : Optional.of(new Place(columns.get(column).reference(), row));
  }

  @Override
  public List<Place> selected() {
    List<Place> all = new ArrayList<>();
    for (int row : table.getSelectedRows()) {
      for (int column : table.getSelectedColumns()) {
        all.add(new Place(columns.get(column).reference(), row));
      }
    }
    return all;
  }

  @Override
  public void goTo(Place place) {
    int column = book.position(place.column());
    table.changeSelection(place.row(), column, false, false);
  }

  @Override
  public Optional<Action> action(Deed deed) {
    return Optional.empty();
  }

  @Override
  public void finishTyping() {
    if (table.isEditing()) {
      table.getCellEditor().stopCellEditing();
    }
  }
}
