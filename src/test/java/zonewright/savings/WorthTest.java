package zonewright.savings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import zonewright.climate.Climate;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.design.Sample;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.formula.RateOfReturn;
import zonewright.retrofit.AsFound;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** What a job is worth, against printed tables and examples. */
class WorthTest {
  private static final int EXPECTED = 1;

  /** A job whose only saving is upkeep: the same sum each year, as in textbooks. */
  private static Book levelSavings(String cost, String yearly, String discount, String life) {
    Design design = Design.blank(UnitSystem.US);
    type(design, Climate.PLACE, "CIMIS zone 8");
    type(design, Rates.BILLED_BY, Rates.CUBIC_METRE);
    type(design, Savings.COST, cost);
    type(design, Savings.UPKEEP, yearly);
    type(design, Savings.DISCOUNT, discount);
    type(design, Savings.LIFE, life);
    return design.book();
  }

  private static void type(Design design, Column column, String text) {
    design.book().perform(design.edits().typed(column.reference(), 0, text));
  }

  private static double expected(Book book, Column column) {
    return book.number(column.reference(), EXPECTED);
  }

  /**
   * A printed table of compound interest factors (discrete cash flow, 0.25 %, found in a public
   * document store; worth: a table of a textbook, read in a copy): 20 payments of 1 are worth
   * 19.4845 at the start, and 1 at the start is 20 payments of 0.05132.
   */
  @Test
  void aPrintedTableOfCompoundInterestGivesTheSamePresentValue() {
    Book book = levelSavings("0", "100", "0.25 %", "20");
    assertThat(expected(book, Worth.NET_PRESENT_VALUE)).isCloseTo(1948.45, offset(0.01));
    Book paid = levelSavings("1948.45", "100", "3 %", "20");
    assertThat(expected(paid, Worth.RATE_OF_RETURN)).isCloseTo(0.0025, offset(1e-6));
  }

  @Test
  void paybackIsCostOverWhatAYearSaves() {
    Book book = levelSavings("4500", "900", "3 %", "15");
    assertThat(expected(book, Worth.PAYBACK))
        .as("project cost ÷ yearly savings: U.S. EPA, WaterSense at Work (2012), equation 1-1")
        .isEqualTo(5);
    assertThat(expected(book, Worth.PAID_BACK)).isEqualTo(5);
    Book never = levelSavings("4500", "0", "3 %", "15");
    assertThat(never.outcome(Worth.PAYBACK.reference(), EXPECTED))
        .isInstanceOf(Outcome.NotApplicable.class);
    assertThat(never.outcome(Worth.RATE_OF_RETURN.reference(), EXPECTED))
        .isInstanceOf(Outcome.NotApplicable.class);
  }

  @Test
  void rebatesAboveTheCostLeaveNothingToPayBack() {
    Design design = Design.blank(UnitSystem.US);
    Book book = design.book();
    type(design, Climate.PLACE, "CIMIS zone 8");
    type(design, Rates.BILLED_BY, Rates.CUBIC_METRE);
    type(design, Savings.COST, "1000");
    type(design, Savings.UPKEEP, "50");
    book.perform(design.edits().inserted(Sheets.REBATES, 0, 1));
    type(design, Rebates.LABEL, "Whole valve");
    type(design, Rebates.COUNT, "1");
    type(design, Rebates.EACH, "999");
    assertThat(expected(book, Worth.PAYBACK)).isEqualTo(1 / 50.0);
    for (String rebate : List.of("1000", "2587")) {
      type(design, Rebates.EACH, rebate);
      for (Column column : List.of(Worth.PAYBACK, Worth.RATE_OF_RETURN)) {
        assertThat(book.outcome(column.reference(), EXPECTED))
            .as("%s", column)
            .isInstanceOf(Outcome.NotApplicable.class)
            .extracting(Outcome::sentence)
            .asString()
            .contains("Rebates cover the whole cost");
      }
      assertThat(book.outcome(Worth.EXPECTED_PAYBACK.reference(), 0))
          .isInstanceOf(Outcome.NotApplicable.class);
    }
  }

  /** What is lost counts less where only a part of it comes true. */
  @Test
  void theCaseLowMayBeatTheCaseHighAndThatIsSaid() {
    Book gains = levelSavings("4500", "900", "3 %", "15");
    assertThat(gains.number(Worth.FIRST_YEAR.reference(), 0)).isEqualTo(900);
    Design design = Sample.CAMPUS_RETROFIT.design(UnitSystem.US);
    assertThat(lines(design)).noneMatch(line -> line.contains("the case low counts less"));
    for (int row = 0; row < design.book().rows(Sheets.FOUND); row++) {
      design
          .book()
          .perform(
              design.edits().typed(AsFound.of(Emitters.DISTRIBUTION_UNIFORMITY), row, "100 %"));
    }
    Book book = design.book();
    assertThat(book.number(Savings.WATER_SAVING.reference(), 0)).isNegative();
    assertThat(book.number(Worth.FIRST_YEAR.reference(), 0))
        .isGreaterThan(book.number(Worth.FIRST_YEAR.reference(), 2));
    assertThat(lines(design)).anyMatch(line -> line.contains("the case low counts less"));
  }

  private static List<String> lines(Design design) {
    return design.findings().stream().map(Finding::line).toList();
  }

  @Property(tries = 200)
  void atTheRateOfReturnTheCashIsWorthNothing(
      @ForAll @DoubleRange(min = 1, max = 1e6) double cost,
      @ForAll @DoubleRange(min = 0.5, max = 1e5) double yearly,
      @ForAll @IntRange(min = 1, max = 30) int life) {
    List<Double> cash = new java.util.ArrayList<>(List.of(-cost));
    for (int year = 1; year <= life; year++) {
      cash.add(yearly);
    }
    double rate = rate(cash);
    if (!Double.isNaN(rate)) {
      assertThat(presentValue(rate, cash)).isCloseTo(0, offset(1e-6 * cost + 1e-6));
      assertThat(rate).isLessThan(yearly / cost + 1e-9);
    }
  }

  @Test
  void cashThatTurnsMoreThanOnceOrNeverHasNoRate() {
    assertThat(rate(List.of(-100.0, 230.0, -132.0))).isNaN();
    assertThat(rate(List.of(100.0, 20.0))).isNaN();
    assertThat(rate(List.of(-100.0, 0.0))).isNaN();
  }

  private static double rate(List<Double> cash) {
    return RateOfReturn.of(cash.size(), cash::get);
  }

  private static double presentValue(double rate, List<Double> cash) {
    double value = 0;
    for (int year = 0; year < cash.size(); year++) {
      value += cash.get(year) / Math.pow(1 + rate, year);
    }
    return value;
  }
}
