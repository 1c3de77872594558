package zonewright.desk.sheets;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.Pictogram;
import zonewright.desk.part.UserAction;
import zonewright.formula.Reference;
import zonewright.sheet.Edit;
import zonewright.sheet.EditHistory;
import zonewright.sheet.EditPlace;
import zonewright.sheet.Place;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** The steps a person takes in the design from menus and buttons, rather than in a cell. */
public final class DesignSteps {
  private final OpenDesign open;
  private final SheetDeck deck;
  private final Runnable moved;
  private final Consumer<String> said;
  private final UserAction undo =
      new UserAction("Undo", this::takeBack).keys("ctrl Z").drawn(Pictogram.UNDO);
  private final UserAction redo =
      new UserAction("Redo", this::doAgain).keys("ctrl Y").drawn(Pictogram.REDO);
  private final UserAction units =
      new UserAction("Switch units", this::switchUnits).drawn(Pictogram.UNITS);
  private final UserAction newRow =
      new UserAction("New row", this::addRow).drawn(Pictogram.ADD_ROW);

  /**
   * Makes the steps.
   *
   * @param moved what shows where the person is after a step that led elsewhere
   * @param said is told what was taken back or done again
   */
  public DesignSteps(OpenDesign open, SheetDeck deck, Runnable moved, Consumer<String> said) {
    this.said = said;
    this.open = open;
    this.deck = deck;
    this.moved = moved;
  }

  /** Returns what takes the last edit back. */
  public UserAction undo() {
    return undo;
  }

  /** Returns what does again what was taken back. */
  public UserAction redo() {
    return redo;
  }

  /** Returns what keeps the whole design in the other unit system. */
  public UserAction units() {
    return units;
  }

  /** Returns what puts a new row below the one the person is at and goes there. */
  public UserAction newRow() {
    return newRow;
  }

  /** Brings names and what can be done up to date. */
  public void refresh() {
    EditHistory journal = open.book().journal();
    named(undo, "Undo", "Ctrl+Z", journal.toUndo());
    named(redo, "Redo", "Ctrl+Y", journal.toRedo());
    units.rename("Switch to " + otherUnits().words());
    units.tip("Keep the whole design in " + otherUnits().words() + "; can be undone");
    String word = frontRowWord();
    newRow.rename("New " + word);
    newRow.tip("Put a new " + word + " below the one selected");
    newRow.setEnabled(mayAddRows());
  }

  private static void named(UserAction action, String verb, String keys, Optional<Edit> edit) {
    action.setEnabled(edit.isPresent());
    action.rename(edit.map(found -> verb + " " + found.name()).orElse(verb));
    action.tip(action.getValue(Action.NAME) + " (" + keys + ")");
  }

  private UnitSystem otherUnits() {
    return open.book().system() == UnitSystem.US ? UnitSystem.SI : UnitSystem.US;
  }

  private void takeBack() {
    deck.front().finishTyping();
    Optional<Edit> edit = open.book().journal().toUndo();
    open.book().undo();
    edit.ifPresent(found -> shown("Taken back: ", found.name(), found.inverse()));
  }

  private void doAgain() {
    deck.front().finishTyping();
    Optional<Edit> edit = open.book().journal().toRedo();
    open.book().redo();
    edit.ifPresent(found -> shown("Done again: ", found.name(), found));
  }

  /** Goes to where something was taken back or done again, and says what. */
  private void shown(String what, String name, Edit done) {
    EditPlace.of(open.book(), done)
        // a column of one's own comes or goes where a person looks at it, not where it is defined
        .filter(place -> !place.column().table().equals(Sheets.OWN_COLUMNS))
        .ifPresent(deck::goTo);
    said.accept(what + name);
    moved.run();
  }

  private boolean mayAddRows() {
    return open.book().schema().table(deck.frontTable()).rows()
        instanceof TableDefinition.Rows.Free;
  }

  private void addRow() {
    String table = deck.frontTable();
    if (!mayAddRows()) {
      return;
    }
    deck.front().finishTyping();
    int rows = open.book().rows(table);
    int at = deck.current().map(place -> place.row() + 1).orElse(rows);
    open.book().perform(open.design().edits().inserted(table, at, 1));
    Reference first = open.book().schema().table(table).columns().get(0).reference();
    deck.goTo(new Place(first, at));
    moved.run();
  }

  private void switchUnits() {
    deck.front().finishTyping();
    open.book().perform(open.design().edits().switched(otherUnits()));
  }

  private String frontRowWord() {
    return mayAddRows() ? open.book().schema().table(deck.frontTable()).rowWord() : "row";
  }

  /** Gives a cell its default again. */
  public void backToDefault(Place place) {
    open.book()
        .perform(open.design().edits().cleared(List.of(place.column()), List.of(place.row())));
  }
}
