package zonewright.desk;

import java.awt.Component;
import java.util.List;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.JComponent;
import zonewright.sheet.Place;

/** One sheet as the window sees it. */
interface SheetView {
  /** Something a person can do to the selected cells or rows. */
  enum Deed {
    CUT,
    COPY,
    PASTE,
    CLEAR,
    FILL_DOWN,
    INSERT,
    DUPLICATE,
    DELETE,
    MOVE_UP,
    MOVE_DOWN,
    FIND
  }

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

  /** Returns how a deed is done here; none where it makes no sense. */
  Optional<Action> action(Deed deed);

  /** Ends typing in a cell and takes over what was typed. */
  void finishTyping();
}
