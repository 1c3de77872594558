package zonewright.desk;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.List;
import javax.swing.SwingUtilities;
import zonewright.sheet.Place;

/** Goes to cells and back, and leads the keyboard through the parts of the window. */
final class Wayfinder {
  private final Trail trail = new Trail();
  private final OpenDesign open;
  private final SheetDeck deck;
  private final Runnable arrived;

  /** Makes one; {@code arrived} is told when a person is somewhere else. */
  Wayfinder(OpenDesign open, SheetDeck deck, Runnable arrived) {
    this.open = open;
    this.deck = deck;
    this.arrived = arrived;
  }

  /** Forgets where a person came from. */
  void startAnew() {
    trail.clear();
  }

  /** Goes to a cell and remembers from where. */
  void jump(Place place) {
    deck.current().filter(current -> !current.equals(place)).ifPresent(trail::leaves);
    deck.goTo(place);
    arrived.run();
  }

  /** Goes to a cell with the keyboard in it. */
  void goTo(Place place) {
    jump(place);
    deck.focusTarget().requestFocusInWindow();
  }

  /** Goes back to the cell that the last jump led away from. */
  void back() {
    trail.back(open::holds).ifPresent(deck::goTo);
    arrived.run();
  }

  boolean mayGoBack() {
    return !trail.isEmpty();
  }

  /** A part of the window, and what takes the keyboard in it. */
  interface Part {
    Component component();

    Component focusTarget();
  }

  /** Returns a part of the window. */
  static Part part(Component component, java.util.function.Supplier<Component> target) {
    return new Part() {
      @Override
      public Component component() {
        return component;
      }

      @Override
      public Component focusTarget() {
        return target.get();
      }
    };
  }

  /** Gives the keyboard to the part after the one that has it, of those that are seen. */
  static void next(List<Part> parts) {
    List<Part> seen = parts.stream().filter(part -> part.component().isShowing()).toList();
    int at = 0;
    for (int i = 0; i < seen.size(); i++) {
      if (has(seen.get(i).component())) {
        at = i + 1;
      }
    }
    seen.get(at % seen.size()).focusTarget().requestFocusInWindow();
  }

  /** Says whether the keyboard is in a part of the window. */
  static boolean has(Component part) {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    return owner != null && SwingUtilities.isDescendingFrom(owner, part);
  }
}
