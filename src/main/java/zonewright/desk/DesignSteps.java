package zonewright.desk;

import java.util.List;
import zonewright.formula.Reference;
import zonewright.sheet.Place;
import zonewright.sheet.TableDefinition;
import zonewright.units.UnitSystem;

/** The steps a person takes in the design from menus and buttons, rather than in a cell. */
final class DesignSteps {
  private final OpenDesign open;
  private final SheetDeck deck;
  private final Runnable moved;

  /**
   * Makes the steps.
   *
   * @param moved what shows where the person is after a step that led elsewhere
   */
  DesignSteps(OpenDesign open, SheetDeck deck, Runnable moved) {
    this.open = open;
    this.deck = deck;
    this.moved = moved;
  }

  /** Takes the last edit back. */
  void undo() {
    deck.front().finishTyping();
    open.book().undo();
  }

  /** Does again what was taken back. */
  void redo() {
    open.book().redo();
  }

  /** Says whether rows can be added to the sheet at the front. */
  boolean mayAddRows() {
    return open.book().blueprint().table(deck.frontTable()).rows()
        instanceof TableDefinition.Rows.Free;
  }

  /** Puts a new row below the one the person is at and goes there. */
  void newRow() {
    String table = deck.frontTable();
    if (!mayAddRows()) {
      return;
    }
    deck.front().finishTyping();
    int rows = open.book().rows(table);
    int at = deck.current().map(place -> place.row() + 1).orElse(rows);
    open.book().perform(open.design().edits().inserted(table, at, 1));
    Reference first = open.book().blueprint().table(table).columns().get(0).reference();
    deck.goTo(new Place(first, at));
    moved.run();
  }

  /** Keeps the whole design in the other unit system. */
  void switchUnits() {
    deck.front().finishTyping();
    UnitSystem other = open.book().system() == UnitSystem.US ? UnitSystem.SI : UnitSystem.US;
    open.book().perform(open.design().edits().switched(other));
  }

  /** Returns what a person calls a row of the sheet at the front. */
  String frontRowWord() {
    return mayAddRows() ? open.book().blueprint().table(deck.frontTable()).rowWord() : "row";
  }

  /** Gives a cell its default again. */
  void backToDefault(Place place) {
    open.book()
        .perform(open.design().edits().cleared(List.of(place.column()), List.of(place.row())));
  }
}
