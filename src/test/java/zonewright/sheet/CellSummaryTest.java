package zonewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

class CellSummaryTest {
  private final Design design = Design.blank(UnitSystem.US);
  private final Book book = design.book();

  CellSummaryTest() {
    book.perform(design.edits().inserted(Sheets.ZONES, 0, 4));
    type(Emitters.AREA, 0, "900");
    type(Emitters.AREA, 1, "300");
    type(Emitters.AREA, 3, "1500");
    type(Soils.SLOPE, 0, "5");
  }

  private void type(Column column, int row, String text) {
    book.perform(design.edits().typed(column.reference(), row, text));
  }

  private static List<Place> rows(Column column) {
    return IntStream.range(0, 4).mapToObj(row -> new Place(column.reference(), row)).toList();
  }

  @Test
  void addsUpTheNumbersAndLeavesBlanksOut() {
    CellSummary summary = CellSummary.of(book, rows(Emitters.AREA));

    assertThat(summary.cells()).isEqualTo(4);
    assertThat(summary.numbers()).isEqualTo(3);
    CellSummary.Amounts amounts = summary.amounts().orElseThrow();
    assertThat(amounts.sum()).isEqualTo(2700);
    assertThat(amounts.mean()).isEqualTo(900);
    assertThat(amounts.least()).isEqualTo(300);
    assertThat(amounts.greatest()).isEqualTo(1500);
    assertThat(CellSummary.shown(book, amounts, amounts.sum())).isEqualTo("2,700 ft²");
  }

  @Test
  void doesNotAddWhatIsOfDifferentKinds() {
    List<Place> mixed =
        Stream.concat(rows(Emitters.AREA).stream(), rows(Soils.SLOPE).stream()).toList();

    CellSummary summary = CellSummary.of(book, mixed);

    assertThat(summary.numbers()).isEqualTo(4);
    assertThat(summary.amounts()).isEmpty();
  }

  @Test
  void wordsAreNoNumbersEvenWhereTheyLookLikeOne() {
    CellSummary summary = CellSummary.of(book, rows(Facts.ZONE_NAME));

    assertThat(summary.cells()).isEqualTo(4);
    assertThat(summary.numbers()).isZero();
    assertThat(summary.amounts()).isEmpty();
  }
}
