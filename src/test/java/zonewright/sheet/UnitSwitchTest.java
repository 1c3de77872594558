package zonewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

class UnitSwitchTest {
  private final Design design = Design.blank(UnitSystem.US);
  private final Book book = design.book();

  UnitSwitchTest() {
    book.perform(design.edits().inserted(Sheets.ZONES, 0, 2));
    flow(0, "0.53 gph");
    flow(1, "0.7 gph");
  }

  private void flow(int row, String text) {
    book.perform(design.edits().typed(Emitters.EMITTER_FLOW.reference(), row, text));
  }

  private Entry flow(int row) {
    return book.entry(Emitters.EMITTER_FLOW.reference(), row);
  }

  @Test
  void aNumberWithoutAnEndComesBackExactlyFromTheOtherUnits() {
    Entry first = flow(0);
    Entry second = flow(1);
    book.perform(design.edits().switched(UnitSystem.SI));
    book.perform(design.edits().moved(Sheets.ZONES, List.of(0), 1, false));
    book.perform(design.edits().switched(UnitSystem.US));

    assertThat(flow(1)).isEqualTo(first);
    assertThat(flow(0)).isEqualTo(second);
  }

  @Test
  void aNumberTypedBetweenTwoSwitchesIsConvertedAndNotPutBack() {
    book.perform(design.edits().switched(UnitSystem.SI));
    flow(0, "45.424941408 L/min");
    book.perform(design.edits().switched(UnitSystem.US));

    assertThat(flow(0)).isEqualTo(new Entry.Figure(12));
  }
}
