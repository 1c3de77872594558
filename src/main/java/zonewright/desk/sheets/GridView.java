package zonewright.desk.sheets;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntFunction;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import zonewright.desk.grid.Arrangement;
import zonewright.desk.grid.CellPlace;
import zonewright.desk.grid.GridAction;
import zonewright.desk.grid.PrintedGrid;
import zonewright.desk.grid.SheetGrid;
import zonewright.sheet.Book;
import zonewright.sheet.Place;
import zonewright.sheet.Severity;

/** A sheet with many rows. */
public final class GridView implements SheetView {
  private final SheetGrid grid;
  private final JTable table;

  /**
   * Shows a table of a book.
   *
   * @param first which columns it shows, given how many usually stay in view
   * @param selected is told of every change of the selection
   */
  public GridView(Book book, String id, IntFunction<Arrangement> first, Runnable selected) {
    grid = new SheetGrid(book, id, first);
    table = grid.table();
    prepare(table, id, selected);
  }

  /** Names a table for those who look for it, listens to it, and keeps it from taking some keys. */
  public static void prepare(JTable table, String id, Runnable selected) {
    table.setName("grid " + id);
    table.getSelectionModel().addListSelectionListener(event -> selected.run());
    table.getColumnModel().getSelectionModel().addListSelectionListener(event -> selected.run());
    for (String meantForTheWindow :
        List.of("F1", "F6", "F8", "F9", "alt LEFT", "ctrl Z", "ctrl Y", "ctrl shift Z")) {
      table
          .getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
          .put(KeyStroke.getKeyStroke(meantForTheWindow), "none");
    }
  }

  /** Returns the same place as the window knows it. */
  public static Place place(CellPlace place) {
    return new Place(place.column(), place.row());
  }

  /** Takes over what is being typed in a table. */
  public static void finishTyping(JTable table) {
    if (table.isEditing()) {
      table.getCellEditor().stopCellEditing();
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
    return grid.place().map(GridView::place);
  }

  @Override
  public List<Place> selected() {
    List<Place> places = new ArrayList<>();
    for (int row : table.getSelectedRows()) {
      for (int at : table.getSelectedColumns()) {
        places.add(new Place(grid.columnAt(at), grid.bookRow(row)));
      }
    }
    return places;
  }

  @Override
  public void onRefused(Consumer<Place> who) {
    grid.onRefused(place -> who.accept(place(place)));
  }

  @Override
  public void onOwnColumn(Runnable who) {
    grid.onOwnColumn(who);
  }

  @Override
  public Optional<SheetGrid> grid() {
    return Optional.of(grid);
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
    grid.setFlags(place -> flags.apply(place(place)));
    grid.repaint();
  }

  @Override
  public void onFact(Function<Place, String> facts) {
    grid.setFacts(place -> facts.apply(place(place)));
  }

  @Override
  public PrintedGrid paper() {
    return grid.paper();
  }

  @Override
  public void finishTyping() {
    finishTyping(table);
  }
}
