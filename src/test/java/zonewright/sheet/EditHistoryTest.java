package zonewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What counts as unsaved. */
class EditHistoryTest {
  private final Book book = Ledger.book();
  private final EditHistory journal = book.journal();

  private void type(String text) {
    book.perform(new Edits(book).typed(Ledger.LENGTH.reference(), 0, text));
  }

  @Test
  void aNewBookHasNothingToSave() {
    assertThat(journal.unsaved()).isFalse();
    assertThat(journal.toUndo()).isEmpty();
  }

  @Test
  void anEditIsUnsavedUntilItIsSavedOrTakenBack() {
    type("5");
    assertThat(journal.unsaved()).isTrue();
    book.undo();
    assertThat(journal.unsaved()).isFalse();
    book.redo();
    assertThat(journal.unsaved()).isTrue();
    journal.saved();
    assertThat(journal.unsaved()).isFalse();
  }

  @Test
  void takingBackWhatWasSavedIsUnsavedAndDoingItAgainIsNot() {
    type("5");
    type("6");
    journal.saved();
    book.undo();
    assertThat(journal.unsaved()).isTrue();
    book.redo();
    assertThat(journal.unsaved()).isFalse();
  }

  @Test
  void asManyEditsAsWereSavedAreStillUnsavedWhenTheyAreOthers() {
    type("5");
    journal.saved();
    book.undo();
    type("6");
    assertThat(journal.unsaved()).isTrue();
    book.undo();
    assertThat(journal.unsaved()).isTrue();
  }

  @Test
  void aNewEditDropsWhatHadBeenTakenBack() {
    type("5");
    book.undo();
    type("6");
    assertThat(journal.toRedo()).isEmpty();
    assertThat(book.number(Ledger.LENGTH.reference(), 0)).isEqualTo(6);
  }

  @Test
  void undoAndRedoWithNothingToDoChangeNothing() {
    book.undo();
    book.redo();
    assertThat(book.number(Ledger.TOTAL.reference(), 0)).isEqualTo(7);
    assertThat(journal.unsaved()).isFalse();
  }

  @Test
  void editsAreNamedForTheMenu() {
    type("5");
    assertThat(journal.toUndo().orElseThrow().name()).isEqualTo("typing into thing one, Length");
  }
}
