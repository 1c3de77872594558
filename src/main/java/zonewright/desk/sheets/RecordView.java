package zonewright.desk.sheets;

import java.awt.Component;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.Action;
import javax.swing.JComponent;
import zonewright.desk.grid.GridAction;
import zonewright.desk.grid.PrintedGrid;
import zonewright.desk.grid.RecordGrid;
import zonewright.desk.grid.SheetGrid;
import zonewright.sheet.Book;
import zonewright.sheet.Place;
import zonewright.sheet.Severity;

/** A sheet with one row, shown as a form. */
public final class RecordView implements SheetView {
  private final RecordGrid grid;

  /** Shows a table of a book; {@code selected} is told of every change of the selection. */
  public RecordView(Book book, String id, Runnable selected) {
    grid = new RecordGrid(book, id);
    GridView.prepare(grid.table(), id, selected);
  }

  @Override
  public JComponent component() {
    return grid;
  }

  @Override
  public Component focusTarget() {
    return grid.table();
  }

  @Override
  public Optional<Place> current() {
    return grid.place().map(GridView::place);
  }

  @Override
  public List<Place> selected() {
    return grid.selected().stream().map(GridView::place).toList();
  }

  @Override
  public void onRefused(Consumer<Place> who) {
    grid.onRefused(place -> who.accept(GridView.place(place)));
  }

  @Override
  public void onOwnColumn(Runnable who) {
    grid.onOwnColumn(who);
  }

  @Override
  public Optional<SheetGrid> grid() {
    return Optional.empty();
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
    grid.setFlags(place -> flags.apply(GridView.place(place)));
    grid.repaint();
  }

  @Override
  public void onFact(Function<Place, String> facts) {
    grid.setFacts(place -> facts.apply(GridView.place(place)));
  }

  @Override
  public PrintedGrid paper() {
    return grid.paper();
  }

  @Override
  public void finishTyping() {
    GridView.finishTyping(grid.table());
  }
}
