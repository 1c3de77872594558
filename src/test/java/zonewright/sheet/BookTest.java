package zonewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import zonewright.formula.Outcome;
import zonewright.units.UnitSystem;

/** What a person sees happen in a book. */
class BookTest {
  private Book book;
  private final List<Changes> heard = new ArrayList<>();

  @BeforeEach
  void open() {
    book = Ledger.book();
    book.listen(heard::add);
  }

  private Edits edits() {
    return new Edits(book);
  }

  private void type(Column column, int row, String text) {
    book.perform(edits().typed(column.reference(), row, text));
  }

  private double number(Column column, int row) {
    return book.number(column.reference(), row);
  }

  private Outcome outcome(Column column, int row) {
    return book.outcome(column.reference(), row);
  }

  @Test
  void sumsFollowWhatIsTyped() {
    assertThat(number(Ledger.TOTAL, 0)).isEqualTo(7);
    assertThat(number(Ledger.GROUP_TOTAL, 1)).isEqualTo(6);
    type(Ledger.LENGTH, 1, "36 in");
    assertThat(number(Ledger.TOTAL, 0)).isEqualTo(8);
    assertThat(number(Ledger.GROUP_TOTAL, 0)).isEqualTo(1);
    assertThat(number(Ledger.GROUP_TOTAL, 1)).isEqualTo(7);
  }

  @Test
  void aBlankIsNotZeroAndIsNamedAllTheWayUp() {
    type(Ledger.LENGTH, 1, "");
    assertThat(outcome(Ledger.LENGTH, 1)).isEqualTo(new Outcome.Blank());
    assertThat(outcome(Ledger.BOTH, 1).sentence()).isEqualTo("needs thing two, Length");
    assertThat(outcome(Ledger.GROUP_TOTAL, 1).sentence()).isEqualTo("needs thing two, Length");
    assertThat(outcome(Ledger.TOTAL, 0).sentence()).isEqualTo("needs thing two, Length");
    assertThat(number(Ledger.GROUP_TOTAL, 0)).isEqualTo(1);
    assertThat(number(Ledger.TOTAL, 0)).isNaN();
  }

  @Test
  void aRefusedEntryCarriesItsReasonToWhateverDependsOnIt() {
    type(Ledger.LENGTH, 2, "12 gpm");
    String reason =
        "thing three, Length: “12 gpm”: the unit “gpm” is none of a length; write for example 15 ft or 4.5 m";
    assertThat(outcome(Ledger.LENGTH, 2).sentence()).isEqualTo(reason);
    assertThat(outcome(Ledger.BOTH, 2).sentence()).isEqualTo(reason);
    assertThat(outcome(Ledger.GROUP_TOTAL, 1).sentence()).isEqualTo(reason);
    assertThat(outcome(Ledger.TOTAL, 0).sentence()).isEqualTo(reason);
    assertThat(book.entry(Ledger.LENGTH.reference(), 2))
        .isInstanceOfSatisfying(
            Entry.Unreadable.class, kept -> assertThat(kept.text()).isEqualTo("12 gpm"));
  }

  @Test
  void aNumberOutOfRangeIsRefusedWithTheRange() {
    type(Ledger.LENGTH, 0, "0");
    assertThat(outcome(Ledger.BOTH, 0).sentence())
        .isEqualTo(
            "thing one, Length: 0 ft is out of range; it must be above 0 ft and at most 100 ft");
  }

  @Test
  void aSomethingWrongCountsBeforeSomethingMissing() {
    type(Ledger.LENGTH, 1, "");
    type(Ledger.SPARE, 1, "soon");
    assertThat(outcome(Ledger.BOTH, 1)).isInstanceOf(Outcome.Refused.class);
  }

  @Test
  void aDefaultGivesWayToWhatIsTypedAndComesBackWhenCleared() {
    assertThat(number(Ledger.SPARE, 0)).isEqualTo(2);
    type(Ledger.SPARE, 0, "5");
    assertThat(number(Ledger.BOTH, 0)).isEqualTo(6);
    assertThat(book.working(Ledger.SPARE.reference(), 0).origin())
        .isEqualTo("typed over the default");
    type(Ledger.SPARE, 0, "");
    assertThat(number(Ledger.BOTH, 0)).isEqualTo(3);
    assertThat(book.working(Ledger.SPARE.reference(), 0).origin()).isEqualTo("default");
  }

  @Test
  void aBadEntryOverADefaultDoesNotFallBackToTheDefault() {
    type(Ledger.SPARE, 0, "lots");
    assertThat(number(Ledger.SPARE, 0)).isNaN();
    assertThat(number(Ledger.BOTH, 0)).isNaN();
  }

  @Test
  void aRowCountsInSumsOnceAnythingIsEntered() {
    book.perform(edits().inserted("things", 3, 1));
    type(Ledger.LENGTH, 3, "10");
    type(Ledger.IN_GROUP, 3, "A");
    assertThat(number(Ledger.TOTAL, 0)).isEqualTo(17);
    type(Ledger.NAME, 3, "");
    assertThat(number(Ledger.TOTAL, 0)).isEqualTo(17);
    assertThat(number(Ledger.GROUP_TOTAL, 0)).isEqualTo(11);
    type(Ledger.IN_GROUP, 3, "");
    type(Ledger.LENGTH, 3, "");
    assertThat(number(Ledger.TOTAL, 0)).isEqualTo(7);
    type(Ledger.NAME, 3, "four");
    assertThat(outcome(Ledger.TOTAL, 0).sentence()).isEqualTo("needs thing four, Length");
  }

  @Test
  void renamingAGroupLinksTheThingsThatNameIt() {
    type(Ledger.GROUP, 0, "North");
    assertThat(outcome(Ledger.IN_GROUP, 0).sentence()).contains("“A” is not in the list");
    assertThat(number(Ledger.GROUP_TOTAL, 0)).isZero();
    type(Ledger.GROUP, 1, "a");
    assertThat(number(Ledger.GROUP_TOTAL, 1)).isEqualTo(1);
    assertThat(outcome(Ledger.IN_GROUP, 1).sentence()).contains("“B” is not in the list");
    type(Ledger.GROUP, 0, "B");
    assertThat(number(Ledger.GROUP_TOTAL, 0)).isEqualTo(6);
    book.undo();
    book.undo();
    book.undo();
    assertThat(number(Ledger.GROUP_TOTAL, 0)).isEqualTo(1);
    assertThat(number(Ledger.GROUP_TOTAL, 1)).isEqualTo(6);
  }

  @Test
  void onlyWhatAnEditReachesIsToldAsChanged() {
    type(Ledger.LENGTH, 1, "3");
    assertThat(heard).hasSize(1);
    Changes changes = heard.get(0);
    assertThat(changes.everything()).isFalse();
    assertThat(changes.cells().keySet())
        .containsExactlyInAnyOrder(
            Ledger.LENGTH.reference(),
            Ledger.SPARE.reference(),
            Ledger.BOTH.reference(),
            Ledger.GROUP_TOTAL.reference(),
            Ledger.TOTAL.reference());
    changes
        .cells()
        .forEach((column, rows) -> assertThat(rows.cardinality()).as("%s", column).isEqualTo(1));
  }

  @Test
  void recalculationStopsWhereTheNumbersComeOutTheSame() {
    type(Ledger.SPARE, 0, "2");
    assertThat(heard.get(0).cells()).containsOnlyKeys(Ledger.SPARE.reference());
  }

  @Test
  void aPasteInsideTheRowsIsAnEditOfCellsAndOnePastTheEndAddsRows() {
    List<zonewright.formula.Reference> columns =
        List.of(Ledger.NAME.reference(), Ledger.IN_GROUP.reference(), Ledger.LENGTH.reference());
    book.perform(edits().pasted("things", columns, 2, 2, List.of(List.of("9"))));
    assertThat(heard.get(0).everything()).isFalse();
    assertThat(number(Ledger.TOTAL, 0)).isEqualTo(12);
    book.perform(
        edits()
            .pasted(
                "things",
                columns,
                2,
                0,
                List.of(List.of("three", "A", "10"), List.of("four", "B", "20"))));
    assertThat(book.rows("things")).isEqualTo(4);
    assertThat(number(Ledger.TOTAL, 0)).isEqualTo(33);
    book.undo();
    assertThat(book.rows("things")).isEqualTo(3);
    assertThat(number(Ledger.TOTAL, 0)).isEqualTo(12);
  }

  @Test
  void anEditThatChangesNothingIsNotNoted() {
    type(Ledger.LENGTH, 0, "1 ft");
    type(Ledger.BOTH, 0, "5");
    book.perform(
        edits().pasted("things", List.of(Ledger.LENGTH.reference()), 0, 0, List.of(List.of("1"))));
    book.perform(edits().switched(UnitSystem.US));
    book.perform(edits().inserted("things", 0, 0));
    assertThat(book.journal().toUndo()).isEmpty();
    assertThat(heard).isEmpty();
  }

  @Test
  void identicalThingsInOtherUnitsAreTheSameAmounts() {
    book.perform(edits().switched(UnitSystem.SI));
    assertThat(number(Ledger.TOTAL, 0)).isCloseTo(2.1336, offset(1e-14));
    assertThat(book.entry(Ledger.LENGTH.reference(), 1)).isEqualTo(new Entry.Figure(0.6096));
    book.undo();
    assertThat(book.entry(Ledger.LENGTH.reference(), 1)).isEqualTo(new Entry.Figure(2));
  }

  @Test
  void aTableWithoutRowsAddsUpToNothing() {
    book.perform(edits().removed("things", 0, 3));
    assertThat(number(Ledger.TOTAL, 0)).isZero();
    assertThat(number(Ledger.GROUP_TOTAL, 0)).isZero();
  }
}
