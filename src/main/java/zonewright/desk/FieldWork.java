package zonewright.desk;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import zonewright.desk.grid.GridClipboard;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.UserAction;
import zonewright.desk.sheets.SheetDeck;
import zonewright.fieldwork.CanGrid;
import zonewright.fieldwork.Cans;
import zonewright.fieldwork.TestUse;
import zonewright.fieldwork.Tuning;
import zonewright.fieldwork.TuningAdvice;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.sheet.Place;
import zonewright.trade.Sheets;

/** What the menu of the field does to the design, each in one step that can be taken back. */
final class FieldWork {
  private final OpenDesign open;
  private final SheetDeck deck;
  private final MessageBar messages;

  FieldWork(OpenDesign open, SheetDeck deck, MessageBar messages) {
    this.open = open;
    this.deck = deck;
    this.messages = messages;
  }

  /** Fills the menu. */
  void fill(JMenu menu) {
    menu.add(action("Paste cans from a grid", this::pasteCans));
    menu.add(action("Let the zone go by this test", this::useTest));
    menu.add(action("No longer go by this test", this::dropTest));
    menu.addSeparator();
    menu.add(action("Take the advice of the tuning log", this::takeAdvice));
  }

  private JMenuItem action(String name, Runnable work) {
    return new UserAction(name, deck.typed(work)).item();
  }

  private Book book() {
    return open.book();
  }

  /** The test the person is at: its row, or that of the selected can's test; -1 for none. */
  private int test() {
    Optional<Place> place = deck.front().current();
    if (place.isEmpty()) {
      return -1;
    }
    String table = place.get().column().table();
    int row = place.get().row();
    if (table.equals(Sheets.TESTS)) {
      return row < book().rows(Sheets.TESTS) ? row : -1;
    }
    if (!table.equals(Sheets.CANS) || row >= book().rows(Sheets.CANS)) {
      return -1;
    }
    double test = book().number(Cans.TEST.reference(), row);
    return Double.isNaN(test) || test >= book().rows(Sheets.TESTS) ? -1 : (int) test;
  }

  private void problem(String sentence) {
    messages.problem(sentence, List.of());
  }

  private void perform(Optional<Edit> edit, String otherwise) {
    edit.ifPresentOrElse(book()::perform, () -> problem(otherwise));
  }

  /** Makes the test the person is at the source of its zone's rate and uniformity. */
  private void useTest() {
    int test = test();
    if (test < 0) {
      problem("Select the test to go by in the sheet Tests first.");
      return;
    }
    perform(
        TestUse.use(book(), test),
        "The test names no zone of the design, or has no result yet: it needs cans, and the minutes run.");
  }

  /** Lets the zone of the test the person is at go by its usual rate and uniformity again. */
  private void dropTest() {
    int test = test();
    if (test < 0) {
      problem("Select the test in the sheet Tests first.");
      return;
    }
    perform(TestUse.drop(book(), test), "The test is not in use.");
  }

  /** Makes cans of the test the person is at out of a grid of volumes on the clipboard. */
  private void pasteCans() {
    int test = test();
    if (test < 0) {
      problem("Select the test whose cans these are in the sheet Tests first.");
      return;
    }
    perform(
        CanGrid.pasted(book(), test, GridClipboard.take()),
        "There is no grid of numbers to paste. Copy the catches as they stood, the far row on top; leave a cell empty where there"
            + " was no can.");
  }

  /** Sets what the tuning log advises. */
  private void takeAdvice() {
    TuningAdvice advice = TuningAdvice.on(Tuning.state(book()));
    Optional<Edit> edit = Tuning.applied(book(), advice, LocalDate.now(ZoneId.systemDefault()));
    edit.ifPresent(book()::perform);
    String sentence = advice.sentence() + " " + String.join(" ", advice.reasons());
    if (edit.isPresent()) {
      messages.tell("Done: " + advice.sentence(), advice.reasons());
    } else {
      problem(sentence);
    }
  }
}
