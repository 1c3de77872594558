package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import zonewright.emitters.Emitters;
import zonewright.formula.Reference;
import zonewright.plants.Plants;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;
import zonewright.water.SiteRules;

class RemediesTest {
  private final Design design = Demo.libraryGarden(UnitSystem.US);
  private final Book book = design.book();

  private void type(Column column, int row, String text) {
    book.perform(design.edits().typed(column.reference(), row, text));
  }

  private Optional<Finding> finding(Column column, int row) {
    return design.findings().stream()
        .filter(found -> found.column().equals(column.reference()) && found.row() == row)
        .filter(found -> found.remedy().isPresent())
        .findFirst();
  }

  /** Carries a remedy out, and holds it to going away with its finding and coming back by undo. */
  private void mends(Column column, int row) {
    Finding found = finding(column, row).orElseThrow();
    BookSnapshot before = book.snapshot();
    book.perform(found.mend(book).orElseThrow());
    assertThat(
            design.findings().stream()
                .filter(other -> other.sentence().equals(found.sentence()))
                .filter(other -> other.column().equals(found.column()))
                .filter(other -> other.row() == row))
        .isEmpty();
    assertThat(book.journal().toUndo().orElseThrow().name())
        .isEqualTo("“" + found.remedy().orElseThrow().name() + "”");
    book.undo();
    assertThat(book.snapshot().sameEntries(before)).isTrue();
    assertThat(finding(column, row)).contains(found);
    book.redo();
  }

  private double number(Reference column, int row) {
    return book.number(column, row);
  }

  @Test
  void aWordThatIsAlmostInTheListIsPutRight() {
    type(Soils.SOIL_TYPE, 2, "clay lome");
    mends(Soils.SOIL_TYPE, 2);
    assertThat(book.entry(Soils.SOIL_TYPE.reference(), 2)).isEqualTo(new Entry.Words("clay loam"));
  }

  @Test
  void whatCannotStandOverADefaultGivesWayToIt() {
    type(Plants.ROOT_DEPTH, 1, "deep");
    mends(Plants.ROOT_DEPTH, 1);
    assertThat(book.entry(Plants.ROOT_DEPTH.reference(), 1)).isEqualTo(Entry.BLANK);
  }

  @Test
  void theSecondOfOneNameGetsAnother() {
    type(Facts.ZONE_NAME, 3, "2");
    mends(Facts.ZONE_NAME, 3);
    assertThat(book.entry(Facts.ZONE_NAME.reference(), 3)).isEqualTo(new Entry.Words("2 (2)"));
  }

  @Test
  void aZoneThatDriesOutIsAllowedTheDaysItNeeds() {
    mends(Demand.WATERING_DAYS, 11);
    assertThat(number(SiteRules.DAYS_ALLOWED.reference(), 0)).isEqualTo(7);
  }

  @Test
  void moreDaysBringTheCyclesDownToWhatTheControllerStarts() {
    mends(CycleAndSoak.CYCLES, 10);
    assertThat(number(CycleAndSoak.CYCLES.reference(), 10)).isLessThanOrEqualTo(4);
    assertThat(number(Demand.WATERING_DAYS.reference(), 10)).isBetween(2.0, 5.0);
  }

  @Test
  void noDaysAreOfferedWhereNoneWouldDo() {
    type(SiteRules.DAYS_ALLOWED, 0, "1");
    Finding found = finding(CycleAndSoak.CYCLES, 10).orElseThrow();
    assertThat(found.mend(book)).isEmpty();
  }

  @Test
  void aZoneThatDrawsTooMuchIsSplitAndNothingOfItIsLost() {
    type(SiteRules.AVAILABLE_FLOW, 0, "12 gpm");
    double area = number(Emitters.AREA.reference(), 0);
    double flow = number(Emitters.ZONE_FLOW.reference(), 0);
    int zones = book.rows(Sheets.ZONES);
    assertThat(flow).isGreaterThan(3 * 12);
    mends(Emitters.ZONE_FLOW, 0);
    int parts = book.rows(Sheets.ZONES) - zones + 1;
    assertThat(parts).isEqualTo(4);
    double areas = 0;
    double flows = 0;
    for (int part = 0; part < parts; part++) {
      areas += number(Emitters.AREA.reference(), part);
      flows += number(Emitters.ZONE_FLOW.reference(), part);
      assertThat(number(Emitters.ZONE_FLOW.reference(), part)).isLessThanOrEqualTo(12);
    }
    assertThat(areas).isEqualTo(area);
    assertThat(flows).isCloseTo(flow, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(
            List.of(0, 1, 2, 3).stream()
                .map(part -> book.cellName(Emitters.AREA.reference(), part).row()))
        .doesNotHaveDuplicates();
  }
}
