package zonewright.desk;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import zonewright.desk.grid.GridAction;
import zonewright.desk.grid.SheetGrid;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Place;
import zonewright.sheet.Severity;

/** A sheet with many rows. */
final class GridView implements SheetView {
  private final SheetGrid grid;
  private final JTable table;
  private final List<Column> columns;

  /** Shows a table of a book; {@code selected} is told of every change of the selection. */
  GridView(Book book, String id, Runnable selected) {
    grid = new SheetGrid(book, id);
    table = grid.table();
    columns = book.blueprint().table(id).columns();
    table.setName("grid " + id);
    table.getAccessibleContext().setAccessibleName(book.blueprint().table(id).title());
    table.getSelectionModel().addListSelectionListener(event -> selected.run());
    table.getColumnModel().getSelectionModel().addListSelectionListener(event -> selected.run());
    leaveToTheWindow(table, "F1", "F6", "F8", "alt LEFT");
  }

  /** Keeps a component from taking keys that mean something to the whole window. */
  static void leaveToTheWindow(JComponent component, String... keys) {
    for (String key : keys) {
      component
          .getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
          .put(KeyStroke.getKeyStroke(key), "none");
    }
  }

  @Override
  public JComponent component() {
    return grid;
  }

  @Override
  public Component focusTarget() {
    return table;
  }

  @Override
  public Optional<Place> current() {
    return grid.place().map(place -> new Place(place.column(), place.row()));
  }

  @Override
  public List<Place> selected() {
    List<Place> places = new ArrayList<>();
    for (int row : table.getSelectedRows()) {
      for (int at : table.getSelectedColumns()) {
        Column column = columns.get(table.convertColumnIndexToModel(at));
        places.add(new Place(column.reference(), table.convertRowIndexToModel(row)));
      }
    }
    return places;
  }

  @Override
  public void goTo(Place place) {
    grid.goTo(place.column(), place.row());
  }

  @Override
  public Action action(GridAction which) {
    return grid.action(which);
  }

  @Override
  public void flag(Function<Place, Optional<Severity>> flags) {
    grid.setFlags(place -> flags.apply(new Place(place.column(), place.row())));
    grid.repaint();
  }

  @Override
  public void finishTyping() {
    if (table.isEditing()) {
      table.getCellEditor().stopCellEditing();
    }
  }
}
