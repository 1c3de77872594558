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
import zonewright.desk.grid.SheetGrid;
import zonewright.sheet.Place;
import zonewright.sheet.Severity;

/** One sheet as the window sees it. */
public interface SheetView {
  /** Returns what is put into the window. */
  JComponent component();

  /** Returns what takes the keyboard. */
  Component focusTarget();

  /** Returns the cell the person is at. */
  Optional<Place> current();

  /** Returns all selected cells. */
  List<Place> selected();

  /** Goes to a cell of this sheet. */
  void goTo(Place place);

  /** Returns how something is done here; disabled where it makes no sense. */
  Action action(GridAction which);

  /** Sets who says which cells have a finding, and how grave it is. */
  void flag(Function<Place, Optional<Severity>> flags);

  /** Sets who says what else is known of a cell, in a sentence. */
  void onFact(Function<Place, String> facts);

  /** Sets who says why nothing is typed into a cell, and what can be done instead. */
  void onRefused(Consumer<Place> who);

  /** Sets who lets a person define a column of their own here. */
  void onOwnColumn(Runnable who);

  /** Returns the grid of a sheet with many rows; none of a form. */
  Optional<SheetGrid> grid();

  /** Returns what is shown, as it goes on paper. */
  PrintedGrid paper();

  /** Ends typing in a cell and takes over what was typed. */
  void finishTyping();
}
