package zonewright.desk.sheets;

import zonewright.desk.part.OpenDesign;
import zonewright.sheet.Place;

/** Goes to cells and back. */
public final class Wayfinder {
  private final LinkHistory trail = new LinkHistory();
  private final OpenDesign open;
  private final SheetDeck deck;
  private final Runnable arrived;

  /** Makes one; {@code arrived} is told when a person is somewhere else. */
  public Wayfinder(OpenDesign open, SheetDeck deck, Runnable arrived) {
    this.open = open;
    this.deck = deck;
    this.arrived = arrived;
  }

  /** Forgets where a person came from. */
  public void startAnew() {
    trail.clear();
  }

  /** Goes to a cell and remembers from where. */
  public void jump(Place place) {
    deck.current().filter(current -> !current.equals(place)).ifPresent(trail::leaves);
    deck.goTo(place);
    arrived.run();
  }

  /** Goes to a cell with the keyboard in it. */
  public void goTo(Place place) {
    jump(place);
    deck.focusTarget().requestFocusInWindow();
  }

  /** Goes back to the cell that the last jump led away from. */
  public void back() {
    trail.back(open::holds).ifPresent(deck::goTo);
    arrived.run();
  }

  public boolean mayGoBack() {
    return !trail.isEmpty();
  }
}
