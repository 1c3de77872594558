package zonewright.recovery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.design.OwnColumnRows;
import zonewright.design.OwnColumns;
import zonewright.emitters.Emitters;
import zonewright.formula.Reference;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** What a crash left, held against a design that went on without it. */
class LeftWorkTest {
  private static Set<Integer> all(LeftWork work) {
    return IntStream.range(0, work.items().size()).boxed().collect(Collectors.toSet());
  }

  private static Design demo() {
    return Demo.libraryGarden(UnitSystem.US);
  }

  private static void type(Design design, int row, String area) {
    design.book().perform(design.edits().typed(Emitters.AREA.reference(), row, area));
  }

  @Property(tries = 40)
  void whateverWasTypedComesBackToTheBitAndUndoTakesItOut(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 30) int edits) {
    BookSnapshot read = demo().book().snapshot();
    Design typing = Design.of(read);
    TypingSteps steps = new TypingSteps(typing, seed);
    for (int i = 0; i < edits; i++) {
      steps.next();
    }
    BookSnapshot left = typing.book().snapshot();
    Design open = Design.of(read);
    LeftWork work = new LeftWork(open.book(), read, Optional.of(read), left);
    assertThat(work.clashes()).isFalse();
    open.book().perform(work.taken(all(work)));
    assertThat(open.book().snapshot().sameEntries(left)).isTrue();
    assertThat(new LeftWork(open.book(), read, Optional.of(read), left).items())
        .as("nothing is left to take")
        .isEmpty();
    open.book().undo();
    assertThat(open.book().snapshot().sameEntries(read)).isTrue();
    open.book().redo();
    assertThat(open.book().snapshot().sameEntries(left)).isTrue();
  }

  @Property(tries = 40)
  void anyMomentOfABookLeadsToAnyOtherAndBack(@ForAll long one, @ForAll long other) {
    Design here = demo();
    Design there = Demo.libraryGarden(UnitSystem.SI);
    TypingSteps steps = new TypingSteps(here, one);
    TypingSteps others = new TypingSteps(there, other);
    for (int i = 0; i < 12; i++) {
      steps.next();
      others.next();
    }
    BookSnapshot before = here.book().snapshot();
    here.book().perform(here.edits().becoming("another moment", there.book().snapshot()));
    assertThat(here.book().snapshot().sameEntries(there.book().snapshot())).isTrue();
    here.book().undo();
    assertThat(here.book().snapshot().sameEntries(before)).isTrue();
  }

  @Test
  void whatTheDesignGotOtherwiseStaysAndAClashIsKnown() {
    BookSnapshot base = demo().book().snapshot();
    Design crashed = Design.of(base);
    type(crashed, 0, "777");
    type(crashed, 1, "888");
    crashed.book().perform(crashed.edits().removed(Sheets.ZONES, 5, 1));
    crashed.book().perform(crashed.edits().inserted(Sheets.ZONES, 3, 1));
    crashed.book().perform(crashed.edits().typed(Facts.ZONE_NAME.reference(), 3, "The new border"));
    Design later = Design.of(base);
    type(later, 0, "5000");
    type(later, 2, "6000");

    LeftWork work =
        new LeftWork(
            later.book(), later.book().snapshot(), Optional.of(base), crashed.book().snapshot());
    assertThat(
            work.items().stream()
                .map(item -> item.clashes() + " " + item.now() + " → " + item.left()))
        .contains("true 5000 → 777", "false is there → taken out", "false  → added")
        .hasSize(4);
    String gone = later.book().cellName(Emitters.AREA.reference(), 5).inWords();
    later.book().perform(work.taken(all(work)));
    assertThat(later.book().entry(Emitters.AREA.reference(), 0)).isEqualTo(new Entry.Figure(777));
    assertThat(later.book().entry(Emitters.AREA.reference(), 2)).isEqualTo(new Entry.Figure(6000));
    assertThat(later.book().entry(Facts.ZONE_NAME.reference(), 3))
        .isEqualTo(new Entry.Words("The new border"));
    assertThat(
            IntStream.range(0, later.book().rows(Sheets.ZONES))
                .mapToObj(row -> later.book().cellName(Emitters.AREA.reference(), row).inWords()))
        .hasSize(12)
        .doesNotContain(gone);
  }

  @Test
  void aRowThatTheFileLostIsOfferedOnlyWhereSomethingWasTypedIntoIt() {
    BookSnapshot base = demo().book().snapshot();
    Design crashed = Design.of(base);
    type(crashed, 0, "777");
    Design later = Design.of(base);
    later.book().perform(later.edits().removed(Sheets.ZONES, 0, 2));
    LeftWork work =
        new LeftWork(
            later.book(), later.book().snapshot(), Optional.of(base), crashed.book().snapshot());
    assertThat(work.items()).hasSize(1);
    assertThat(work.items().get(0).now()).isEqualTo("not there");
    later.book().perform(work.taken(all(work)));
    assertThat(later.book().rows(Sheets.ZONES)).isEqualTo(11);
    assertThat(later.book().entry(Emitters.AREA.reference(), 0)).isEqualTo(new Entry.Figure(777));
  }

  @Test
  void aNoteOnAColumnOfOnesOwnIsInTheRecordAndOfferedByItsName() {
    Design crashed = demo();
    BookSnapshot base = crashed.book().snapshot();
    OwnColumnRows.add(crashed, "Half of it", "Zones", "area", "Area / 2");
    Reference own = OwnColumns.of(crashed.book()).column(0).orElseThrow().reference();
    crashed.book().perform(crashed.edits().noted(own, 2, "half is enough"));
    Rebuilt record = new Rebuilt(crashed.book().declared());
    BookSnapshot nothing = new BookSnapshot(UnitSystem.US, Map.of());
    UnsavedChange.lines(crashed.book().declared(), nothing, base).forEach(record::take);
    BookSnapshot after = crashed.book().snapshot();
    UnsavedChange.lines(crashed.book().declared(), base, after).forEach(record::take);
    assertThat(record.snapshot().orElseThrow().sameEntries(after)).isTrue();
    Design later = Design.of(base);
    type(later, 0, "5000");
    LeftWork work =
        new LeftWork(later.book(), base, Optional.of(base), record.snapshot().orElseThrow());
    assertThat(work.items())
        .extracting(LeftWork.Item::column, LeftWork.Item::left)
        .contains(tuple("note on Half of it (ft²)", "half is enough"));
    later.book().perform(work.taken(all(work)));
    assertThat(later.book().remark(own, 2).note()).isEqualTo("half is enough");
  }
}
