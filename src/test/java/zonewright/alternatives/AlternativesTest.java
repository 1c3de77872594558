package zonewright.alternatives;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.emitters.Emitters;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.RandomEdits;
import zonewright.sheet.Row;
import zonewright.testing.Counts;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** What happens to a design and its alternatives as one works on them. */
class AlternativesTest {
  private Book book;

  @BeforeEach
  void open() {
    book = Demo.libraryGarden(UnitSystem.US).book();
  }

  private Alternatives alternatives() {
    return new Alternatives(book);
  }

  private AlternativeEdits edits() {
    return new AlternativeEdits(alternatives());
  }

  private void type(Column column, int row, String text) {
    book.perform(new Edits(book).typed(column.reference(), row, text));
  }

  private double area(int row) {
    return book.number(Emitters.AREA.reference(), row);
  }

  /** Takes away what says which alternatives there are. */
  private static BookSnapshot plain(BookSnapshot all) {
    Map<String, List<Row>> tables = new java.util.HashMap<>(all.tables());
    tables.remove(Sheets.ALTERNATIVES);
    tables.remove(Sheets.CHANGES);
    return new BookSnapshot(all.system(), tables);
  }

  @Test
  void whatIsTypedIntoAnAlternativeIsItsOwn() {
    double before = area(2);
    book.perform(edits().copied("Less turf"));
    type(Emitters.AREA, 2, "400 ft2");
    assertThat(alternatives().inHand()).contains("Less turf");
    assertThat(alternatives().changes("Less turf"))
        .singleElement()
        .extracting(Change::where, Change::value)
        .containsExactly("Zones, 3, Area", "400 ft²");
    book.perform(edits().worked(Optional.empty()));
    assertThat(area(2)).isEqualTo(before);
    book.perform(edits().worked(Optional.of("Less turf")));
    assertThat(area(2)).isEqualTo(400);
  }

  @Test
  void whatIsTypedIntoTheDesignHoldsForAllButWhereTheyDiffer() {
    book.perform(edits().copied("Less turf"));
    type(Emitters.AREA, 2, "400 ft2");
    book.perform(edits().worked(Optional.empty()));
    type(Emitters.AREA, 2, "1000 ft2");
    type(Emitters.AREA, 3, "777 ft2");
    book.perform(edits().worked(Optional.of("Less turf")));
    assertThat(area(2)).isEqualTo(400);
    assertThat(area(3)).isEqualTo(777);
    book.perform(edits().worked(Optional.empty()));
    assertThat(area(2)).isEqualTo(1000);
  }

  @Test
  void eachIsOneStepToTakeBack() {
    BookSnapshot start = book.snapshot();
    book.perform(edits().copied("A"));
    type(Emitters.AREA, 0, "1 ft2");
    book.perform(edits().copied("B"));
    type(Emitters.AREA, 1, "2 ft2");
    book.perform(edits().worked(Optional.of("A")));
    book.perform(edits().taken("B", Optional.of("As it was")));
    book.perform(edits().removed("As it was"));
    for (int step = 0; step < 7; step++) {
      book.undo();
    }
    assertThat(book.journal().toUndo()).isEmpty();
    assertThat(book.snapshot().sameEntries(start)).isTrue();
  }

  @Test
  void theOneTakenIsTheDesignAndTheOthersStayWhatTheyAre() {
    book.perform(edits().copied("A"));
    type(Emitters.AREA, 0, "111 ft2");
    book.perform(edits().worked(Optional.empty()));
    book.perform(edits().copied("B"));
    type(Emitters.AREA, 1, "222 ft2");
    BookSnapshot a = plain(alternatives().of("A"));
    BookSnapshot b = plain(alternatives().of("B"));
    BookSnapshot design = plain(alternatives().design());
    book.perform(edits().taken("B", Optional.of("First idea")));
    assertThat(alternatives().inHand()).isEmpty();
    assertThat(alternatives().names()).containsExactly("A", "First idea");
    assertThat(plain(book.snapshot()).sameEntries(b)).isTrue();
    assertThat(plain(alternatives().of("A")).sameEntries(a)).isTrue();
    assertThat(plain(alternatives().of("First idea")).sameEntries(design)).isTrue();
  }

  @Test
  void rowsComeAndGoWithAnAlternative() {
    int zones = book.rows(Sheets.ZONES);
    book.perform(edits().copied("Two more"));
    book.perform(new Edits(book).duplicated(Sheets.ZONES, List.of(0, 1)));
    book.perform(new Edits(book).removed(Sheets.ZONES, List.of(5)));
    BookSnapshot made = plain(book.snapshot());
    book.perform(edits().worked(Optional.empty()));
    assertThat(book.rows(Sheets.ZONES)).isEqualTo(zones);
    book.perform(edits().worked(Optional.of("Two more")));
    assertThat(plain(book.snapshot()).sameEntries(made)).isTrue();
  }

  @Test
  void onlyNamesThatTellItApartAreTaken() {
    book.perform(edits().copied("Drip"));
    assertThat(alternatives().refused(" "))
        .contains("An alternative needs a name, such as “Drip in the beds”.");
    assertThat(alternatives().refused("drip"))
        .contains("There is an alternative “Drip” already; choose another name.");
    assertThat(alternatives().refused("the design")).isPresent();
    assertThat(alternatives().refused("Spray")).isEmpty();
  }

  @Test
  void anAlternativeIsChosenNamedAndTakenOutOnItsSheetAsWell() {
    book.perform(edits().copied("A"));
    type(Emitters.AREA, 0, "111 ft2");
    type(AlternativeSheets.IN_HAND, 0, "");
    assertThat(area(0)).isNotEqualTo(111);
    type(AlternativeSheets.NAME, 0, "Renamed");
    type(AlternativeSheets.IN_HAND, 0, "yes");
    assertThat(area(0)).isEqualTo(111);
    book.perform(edits().copied("B"));
    type(Emitters.AREA, 0, "222 ft2");
    type(AlternativeSheets.IN_HAND, 0, "yes");
    assertThat(area(0)).isEqualTo(111);
    assertThat(alternatives().inHand()).contains("Renamed");
    type(AlternativeSheets.IN_HAND, 1, "yes");
    assertThat(area(0)).isEqualTo(222);
    book.perform(edits().removed("B"));
    type(AlternativeSheets.IN_HAND, 0, "yes");
    type(AlternativeSheets.NAME, 0, "Again");
    assertThat(alternatives().inHand()).contains("Again");
    book.perform(new Edits(book).removed(Sheets.ALTERNATIVES, 0, 1));
    assertThat(area(0)).isNotEqualTo(111);
    assertThat(alternatives().names()).isEmpty();
    assertThat(book.rows(Sheets.CHANGES)).isZero();
  }

  @Test
  void aChangeThatMeansNothingAnyMoreIsToldAndTheRestIsDone() {
    book.perform(edits().copied("A"));
    type(Emitters.AREA, 0, "111 ft2");
    type(Emitters.AREA, 1, "222 ft2");
    book.perform(edits().worked(Optional.empty()));
    book.perform(new Edits(book).removed(Sheets.ZONES, 0, 1));
    assertThat(alternatives().problems())
        .containsExactly(Map.entry(0, "there is no zone “1” in the design"));
    book.perform(edits().worked(Optional.of("A")));
    assertThat(area(0)).isEqualTo(222);
  }

  @Test
  void otherUnitsLeaveAlternativesAsTheyAre() {
    book.perform(edits().copied("A"));
    type(Emitters.AREA, 0, "=40*25");
    book.perform(edits().worked(Optional.empty()));
    book.perform(new Edits(book).switched(UnitSystem.SI));
    book.perform(edits().worked(Optional.of("A")));
    assertThat(area(0)).isCloseTo(92.90304, org.assertj.core.data.Offset.offset(1e-9));
    book.perform(new Edits(book).switched(UnitSystem.US));
    book.perform(edits().worked(Optional.empty()));
    assertThat(book.wording().exactly(Emitters.AREA, area(0))).endsWith(" ft²");
    assertThat(alternatives().problems()).isEmpty();
  }

  /** Whatever is done to an alternative, the design comes back as it was, and so does the other. */
  @Test
  void whateverIsDoneToOneTheOtherIsAsItWas() {
    int count = Counts.of(12, 400);
    for (int seed = 0; seed < count; seed++) {
      open();
      Random random = new Random(seed);
      RandomEdits any = new RandomEdits(book, random);
      BookSnapshot start = plain(book.snapshot());
      book.perform(edits().copied("A"));
      for (int i = 0; i < 12; i++) {
        perform(any.next());
      }
      BookSnapshot made = plain(book.snapshot());
      assertThat(alternatives().problems()).as("seed " + seed).isEmpty();
      assertThat(plain(alternatives().design()).sameEntries(start)).as("design " + seed).isTrue();
      book.perform(edits().worked(Optional.empty()));
      assertThat(plain(book.snapshot()).sameEntries(start)).as("seed " + seed).isTrue();
      book.perform(edits().worked(Optional.of("A")));
      assertThat(plain(book.snapshot()).sameEntries(made)).as("again " + seed).isTrue();
      while (book.journal().toUndo().isPresent()) {
        book.undo();
      }
      assertThat(plain(book.snapshot()).sameEntries(start)).as("undone " + seed).isTrue();
    }
  }

  /** Performs an edit that is none of order, units or the alternatives themselves. */
  private void perform(Edit edit) {
    BookSnapshot then = book.after(edit);
    boolean about =
        !then.rows(Sheets.ALTERNATIVES).equals(book.snapshot().rows(Sheets.ALTERNATIVES))
            || !then.rows(Sheets.CHANGES).equals(book.snapshot().rows(Sheets.CHANGES));
    int compared = book.position(AlternativeSheets.COMPARED.reference());
    about |=
        !then.rows(Sheets.SITE)
            .get(0)
            .entry(compared)
            .equals(book.entry(AlternativeSheets.COMPARED.reference(), 0));
    boolean order = edit instanceof Edit.Reorder || then.system() != book.system();
    if (!about && !order) {
      book.perform(edit);
    }
  }
}
