package zonewright.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Items of which a person types how many. */
class CountedByHandTest {
  private final Design design = Design.blank(UnitSystem.US);
  private final Book book = design.book();

  private void type(Column column, String text) {
    book.perform(design.edits().typed(column.reference(), 0, text));
  }

  private void item() {
    book.perform(design.edits().inserted(Sheets.PARTS, 0, 1));
    type(Parts.ITEM_NAME, "Boulder");
    type(Parts.PRICE, "41.20");
  }

  private List<Finding> withoutQuantity() {
    return design.findings().stream()
        .filter(finding -> finding.line().contains("has no quantity"))
        .toList();
  }

  /** 7 × 41.20 = 288.40. */
  @Test
  void aCountAloneIsEnough() {
    item();
    type(Parts.COUNT, "7");
    assertThat(book.number(BuildUp.TOTAL.reference(), 0)).isCloseTo(288.40, within(1e-9));
    assertThat(withoutQuantity()).isEmpty();
    for (Column column : Parts.columns()) {
      assertThat(book.outcome(column.reference(), 0).lacks()).as(column.name()).isFalse();
    }
  }

  @Test
  void withoutACountTheFindingSaysWhatToDoAndDoesIt() {
    item();
    assertThat(book.outcome(Parts.COUNT.reference(), 0)).isInstanceOf(Outcome.Missing.class);
    assertThat(book.outcome(BuildUp.DIRECT.reference(), 0).sentence())
        .contains("item Boulder, Counted by")
        .doesNotContain("Emitter");
    Finding finding = withoutQuantity().get(0);
    assertThat(finding.line()).contains("type the count").contains("choose what it is counted by");
    book.perform(
        finding.remedy().orElseThrow().edit(book, Parts.COUNT.reference(), 0).orElseThrow());
    assertThat(withoutQuantity()).isEmpty();
    assertThat(book.number(BuildUp.TOTAL.reference(), 0)).isZero();
  }
}
