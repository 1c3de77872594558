package zonewright.savings;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.climate.Climate;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edits;
import zonewright.testing.Cents;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Bills by tiers, added up by hand. */
class TiersTest {
  private static Design billed(String metered, String other) {
    return billed(metered, other, 0);
  }

  private static Design billed(String metered, String other, int more) {
    Design design = Design.blank(UnitSystem.SI);
    for (int row = 0; row < more; row++) {
      int at = Rates.TIERS.size() + row;
      design.book().perform(design.edits().inserted(Sheets.RATES, at, 1));
      type(design, Rates.TIER, at, "More " + (row + 1));
    }
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

  /** 12 m³: 15.80 of water, and 2.00 for each m³ of sewer, or for six tenths of it. */
  @Test
  void sewerIsChargedOnThePartThatReturns() {
    Design design = billed("12 m3", "0 m3");
    type(design, Rates.SEWER_CHARGED, 0, "yes");
    Book book = design.book();
    assertThat(Cents.of(book.number(Use.COST_BEFORE.reference(), 5))).isEqualByComparingTo("39.80");
    type(design, Rates.SEWER_SHARE, 0, "60 %");
    assertThat(Cents.of(book.number(Use.COST_BEFORE.reference(), 5))).isEqualByComparingTo("30.20");
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
    assertThat(Cents.of(book.number(Use.COST_BEFORE.reference(), 5))).isEqualByComparingTo(cost);
  }

  /** 12 × 18.50 before, 12 × 11.20 with the smaller meter; 15.80 of June by the tiers each time. */
  @Test
  void fixedChargesAreOnEveryBillAndASmallerMeterSavesSome() {
    Design design = billed("12 m3", "0");
    for (int month = 0; month < 12; month++) {
      type(design, Use.METERED, month, month == 5 ? "12 m3" : "0");
    }
    double saved = design.book().number(Savings.WATER_SAVING.reference(), 0);
    assertThat(bill(design, Savings.BILL_BEFORE)).isEqualByComparingTo("15.80");
    type(design, Savings.FIXED_BEFORE, 0, "18.50");
    assertThat(bill(design, Savings.BILL_BEFORE)).isEqualByComparingTo("237.80");
    assertThat(bill(design, Savings.BILL_AFTER))
        .as("the same meter, unless typed")
        .isEqualByComparingTo("222.00");
    assertThat(design.book().number(Savings.WATER_SAVING.reference(), 0)).isEqualTo(saved);
    type(design, Savings.FIXED_AFTER, 0, "11.20");
    assertThat(bill(design, Savings.BILL_AFTER)).isEqualByComparingTo("134.40");
    assertThat(bill(design, Savings.WATER_SAVING)).isEqualByComparingTo("103.40");
  }

  private static BigDecimal bill(Design design, Column column) {
    return Cents.of(design.book().number(column.reference(), 0));
  }

  @Test
  void irrigationStandsOnTopOfOtherUse() {
    Book book = billed("40 m3", "8 m3").book();
    assertThat(Cents.of(book.number(Use.COST_OTHER.reference(), 5))).isEqualByComparingTo("9.60");
  }

  @Test
  void sewerCountsOnlyWhereItIsCharged() {
    Design design = billed("12 m3", "0");
    type(design, Rates.SEWER_CHARGED, 0, "yes");
    assertThat(Cents.of(design.book().number(Use.COST_BEFORE.reference(), 5)))
        .isEqualByComparingTo("39.80");
  }

  /** 12 tiers of 1 m³, the dearer the higher: 1 + 2 + … + 12 = 78, and 13 for each beyond. */
  @Test
  void tiersCanBeAddedAndStandInAnyOrder() {
    Design design = billed("0", "0");
    Edits edits = design.edits();
    for (Column column : List.of(Rates.UP_TO, Rates.WATER_PRICE, Rates.SEWER_PRICE)) {
      for (int row = 0; row < 3; row++) {
        type(design, column, row, "");
      }
    }
    design
        .book()
        .perform(edits.inserted(Sheets.RATES, Rates.TIERS.size(), 13 - Rates.TIERS.size()));
    for (int row = 0; row < 13; row++) {
      int tier = 13 - row;
      type(design, Rates.TIER, row, "Block " + tier);
      type(design, Rates.UP_TO, row, tier == 13 ? "" : Integer.toString(tier));
      type(design, Rates.WATER_PRICE, row, Integer.toString(tier));
    }
    for (String[] each : new String[][] {{"4.5", "12.50"}, {"12", "78.00"}, {"15", "117.00"}}) {
      type(design, Use.METERED, 5, each[0] + " m3");
      assertThat(Cents.of(design.book().number(Use.COST_BEFORE.reference(), 5)))
          .as(each[0])
          .isEqualByComparingTo(each[1]);
    }
    assertThat(sentences(design)).noneMatch(line -> line.contains("tier"));
  }

  /** Against bills added up unit by unit, as a clerk would. */
  @Property(tries = 100)
  void everyBillIsTheSumOfItsUnits(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 1, max = 30) Integer> widths,
      @ForAll @Size(7) List<@IntRange(min = 0, max = 900) Integer> cents,
      @ForAll @IntRange(min = 0, max = 200) int units) {
    int rows = 6;
    Design design = billed(units + " m3", "0", rows - Rates.TIERS.size());
    List<Integer> ends = new ArrayList<>();
    for (int tier = 0; tier < rows; tier++) {
      boolean last = tier >= widths.size() - 1;
      ends.add((tier == 0 ? 0 : ends.get(tier - 1)) + (last ? 1000 : widths.get(tier)));
      boolean there = tier < widths.size();
      type(design, Rates.UP_TO, tier, last ? "" : ends.get(tier).toString());
      type(design, Rates.WATER_PRICE, tier, there ? Double.toString(cents.get(tier) / 100.0) : "");
      type(design, Rates.SEWER_PRICE, tier, "");
    }
    int expected = 0;
    for (int unit = 0; unit < units; unit++) {
      int tier = 0;
      while (ends.get(tier) <= unit) {
        tier++;
      }
      expected += cents.get(tier);
    }
    assertThat(Cents.of(design.book().number(Use.COST_BEFORE.reference(), 5)))
        .isEqualByComparingTo(BigDecimal.valueOf(expected, 2));
  }

  @Test
  void aTierWithoutAnEndSaysSoAndOneNotUsedToo() {
    Book book = billed("12 m3", "0").book();
    assertThat(shown(book, Rates.END, 1)).isEqualTo("25");
    assertThat(shown(book, Rates.START, 2)).isEqualTo("25");
    assertThat(shown(book, Rates.END, 2)).isEqualTo("no end");
    assertThat(shown(billed("12 m3", "0", 1).book(), Rates.START, 3)).isEqualTo("not used");
    assertThat(shown(book, Rates.TO_END, 2)).isEqualTo("0.00");
  }

  private static String shown(Book book, Column column, int row) {
    return book.shown(column.reference(), book.outcome(column.reference(), row));
  }

  @Test
  void tiersThatMeetAndTiersWithoutAPriceAreTold() {
    Design design = billed("12 m3", "0");
    assertThat(sentences(design)).noneMatch(line -> line.contains("tier"));
    type(design, Rates.UP_TO, 1, "10");
    assertThat(sentences(design)).anyMatch(line -> line.contains("so does another tier"));
    type(design, Rates.UP_TO, 1, "");
    assertThat(sentences(design)).anyMatch(line -> line.contains("so does another tier"));
    type(design, Rates.UP_TO, 1, "25");
    type(design, Rates.WATER_PRICE, 2, "");
    assertThat(sentences(design)).anyMatch(line -> line.contains("has no water price"));
    type(design, Rates.SEWER_PRICE, 2, "");
    assertThat(sentences(design))
        .anyMatch(line -> line.contains("is the last tier and ends at 25"))
        .noneMatch(line -> line.contains("has no water price"));
  }

  private static List<String> sentences(Design design) {
    return design.findings().stream().map(Finding::line).toList();
  }
}
