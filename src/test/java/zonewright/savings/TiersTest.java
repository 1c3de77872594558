package zonewright.savings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.climate.Climate;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.estimate.Money;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.units.UnitSystem;

/** Bills by tiers, added up by hand. */
class TiersTest {
  private static Design billed(String metered, String other) {
    Design design = Design.blank(UnitSystem.SI);
    type(design, Climate.PLACE, 0, "CIMIS zone 8");
    type(design, Rates.BILLED_BY, 0, Rates.CUBIC_METRE);
    type(design, Use.BASIS, 0, Use.BY_METER);
    type(design, Rates.UP_TO, 0, "10");
    type(design, Rates.UP_TO, 1, "25");
    type(design, Rates.WATER_PRICE, 0, "1.20");
    type(design, Rates.WATER_PRICE, 1, "1.90");
    type(design, Rates.WATER_PRICE, 2, "3.35");
    type(design, Rates.SEWER_PRICE, 0, "2");
    type(design, Rates.SEWER_PRICE, 1, "2");
    type(design, Rates.SEWER_PRICE, 2, "2");
    type(design, Use.METERED, 5, metered);
    type(design, Use.OTHER, 5, other);
    return design;
  }

  private static void type(Design design, Column column, int row, String text) {
    design.book().perform(design.edits().typed(column.reference(), row, text));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 0.00",
    "10, 0, 12.00", // all in the first tier
    "12, 0, 15.80", // 12.00 + 2 × 1.90
    "25, 0, 40.50", // 12.00 + 15 × 1.90
    "40, 0, 90.75", // 40.50 + 15 × 3.35
    "40, 8, 90.75" // the same water in all; 8 of it are not irrigation
  })
  void eachUnitCostsWhatItsTierSays(String metered, String other, String cost) {
    Book book = billed(metered + " m3", other + " m3").book();
    assertThat(Money.of(book.number(Use.COST_BEFORE.reference(), 5))).isEqualByComparingTo(cost);
  }

  @Test
  void irrigationStandsOnTopOfOtherUse() {
    Book book = billed("40 m3", "8 m3").book();
    assertThat(Money.of(book.number(Use.COST_OTHER.reference(), 5))).isEqualByComparingTo("9.60");
  }

  @Test
  void sewerCountsOnlyWhereItIsCharged() {
    Design design = billed("12 m3", "0");
    type(design, Rates.SEWER_CHARGED, 0, "yes");
    assertThat(Money.of(design.book().number(Use.COST_BEFORE.reference(), 5)))
        .isEqualByComparingTo("39.80");
  }

  @Test
  void tiersOutOfOrderAndTiersWithoutAPriceAreTold() {
    Design design = billed("12 m3", "0");
    assertThat(sentences(design)).noneMatch(line -> line.contains("tier"));
    type(design, Rates.UP_TO, 1, "9");
    assertThat(sentences(design)).anyMatch(line -> line.contains("not beyond the tier before"));
    type(design, Rates.UP_TO, 1, "25");
    type(design, Rates.WATER_PRICE, 2, "");
    assertThat(sentences(design)).anyMatch(line -> line.contains("has no water price"));
  }

  private static List<String> sentences(Design design) {
    return design.findings().stream().map(Finding::line).toList();
  }
}
