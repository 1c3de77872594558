package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import zonewright.emitters.Emitters;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Edits;
import zonewright.sheet.Remark;
import zonewright.sheet.Tint;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.Demand;

/** Notes and colours belong to their rows, and no number follows from them. */
class RemarksTest {
  private final Book book = Demo.libraryGarden(UnitSystem.US).book();
  private final Edits edits = new Edits(book);

  private Remark area(int row) {
    return book.remark(Emitters.AREA.reference(), row);
  }

  @Test
  void theyGoWithTheirRowsAndEveryStepIsTakenBack() {
    BookSnapshot before = book.snapshot();
    book.perform(edits.noted(Emitters.AREA.reference(), 2, "  paced, not taped \n"));
    book.perform(edits.tinted(List.of(Emitters.AREA.reference()), List.of(2, 3), Tint.BLUE));
    Remark wanted = new Remark("paced, not taped", Tint.BLUE);
    assertThat(area(2)).isEqualTo(wanted);
    int zones = book.rows(Sheets.ZONES);
    List<Integer> back = IntStream.range(0, zones).map(i -> zones - 1 - i).boxed().toList();
    book.perform(edits.reordered(Sheets.ZONES, "other way round", back));
    assertThat(area(zones - 3)).isEqualTo(wanted);
    book.perform(edits.removed(Sheets.ZONES, zones - 3, 1));
    assertThat(area(zones - 3).note()).isEmpty();
    book.undo();
    assertThat(area(zones - 3)).isEqualTo(wanted);
    book.perform(edits.duplicated(Sheets.ZONES, List.of(zones - 3)));
    assertThat(area(zones - 2)).isEqualTo(wanted);
    while (book.journal().toUndo().isPresent()) {
      book.undo();
    }
    assertThat(book.snapshot().sameEntries(before)).isTrue();
  }

  @Test
  void whatStandsAlongsideARowKeepsItsOwn() {
    String beside = book.schema().alongside(Sheets.ZONES).get(0).id();
    var column = book.schema().table(beside).columns().get(1).reference();
    book.perform(edits.noted(column, 4, "ask"));
    book.perform(edits.removed(Sheets.ZONES, 4, 1));
    book.undo();
    assertThat(book.remark(column, 4).note()).isEqualTo("ask");
  }

  @Test
  void noNumberChangesAndTheSameNoteAgainIsNoEdit() {
    double minutes = book.number(Demand.RUN_TIME.reference(), 0);
    int last = book.rows(Sheets.ZONES) - 1;
    book.perform(edits.noted(Demand.RUN_TIME.reference(), last, "why?"));
    assertThat(book.number(Demand.RUN_TIME.reference(), 0)).isEqualTo(minutes);
    book.perform(edits.noted(Demand.RUN_TIME.reference(), last, "why?"));
    assertThat(book.journal().toUndo().orElseThrow().name()).startsWith("note on ");
    book.undo();
    assertThat(book.journal().toUndo()).isEmpty();
  }
}
