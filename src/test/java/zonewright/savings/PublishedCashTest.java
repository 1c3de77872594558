package zonewright.savings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import zonewright.design.Design;
import zonewright.formula.RateOfReturn;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edits;
import zonewright.units.UnitSystem;

/**
 * The sheets Years and Cases, given the cash of published examples, come to the printed values. The
 * examples are of the documentation of spreadsheet functions, whose NPV and IRR OpenDocument 1.2
 * part 2 defines: read there (verified), worth an arithmetic check to a cent.
 */
class PublishedCashTest {
  private static final int EXPECTED = 1;
  private static final Column CASH = Years.CASH_OF_CASE.get(EXPECTED);

  private static Book book(String discount, double... cash) {
    Book blank = Design.blank(UnitSystem.US).book();
    Book book = new Book(blank.schema().withInputs(Set.of(CASH.reference())), UnitSystem.US);
    Edits edits = new Edits(book);
    for (int year = 0; year < Years.NAMES.size(); year++) {
      String number = year < cash.length ? Double.toString(cash[year]) : "0";
      book.perform(edits.typed(CASH.reference(), year, number));
      book.perform(edits.typed(Years.POSITION.reference(), year, Integer.toString(year)));
    }
    book.perform(edits.typed(Savings.DISCOUNT.reference(), 0, discount));
    book.perform(edits.typed(Savings.COST.reference(), 0, Double.toString(Math.max(1, -cash[0]))));
    return book;
  }

  private static double value(String discount, double... cash) {
    return book(discount, cash).number(Worth.NET_PRESENT_VALUE.reference(), EXPECTED);
  }

  @Test
  void presentValuesAreThePrintedOnesToTheCent() {
    assertThat(value("10 %", 0, 500, 1500, 4000, 10_000))
        .as("500, 1,500, 4,000 and 10,000 at the ends of four years: 11529.60863329007")
        .isCloseTo(11_529.608_633_290_07, offset(1e-9));
    assertThat(value("6.5 %", 0, -10_000, 3000, 3400, 7700))
        .as("−10,000, 3,000, 3,400 and 7,700 at the ends of four years: 2,055.38")
        .isCloseTo(2055.38, offset(0.005));
    assertThat(value("10 %", 0, -1000, 500, 500, 500))
        .as("−1,000 and three times 500 at the ends of four years: 221.29635953828267")
        .isCloseTo(221.296_359_538_282_67, offset(1e-9));
  }

  /**
   * Two machines of 9,000, of a public page of questions and answers (worth: an example, checked
   * here by hand): at 15 % they are worth −312.57 and 614.53. The rate of return is where that is
   * nothing.
   */
  @Test
  void aPublishedExampleOfUnevenCashHasTheSamePresentValue() {
    assertThat(value("15 %", -9000, 5000, 4000, 2000)).isCloseTo(-312.57, offset(0.01));
    assertThat(value("15 %", -9000, 1000, 2000, 11_000)).isCloseTo(614.531, offset(0.001));
    double rate =
        book("15 %", -9000, 5000, 4000, 2000).number(Worth.RATE_OF_RETURN.reference(), EXPECTED);
    assertThat(rate).as("worth less than nothing at 15 %").isLessThan(0.15);
    assertThat(value(rate * 100 + " %", -9000, 5000, 4000, 2000)).isCloseTo(0, offset(0.01));
  }

  @Test
  void ratesOfReturnAreThePrintedOnes() {
    assertThat(
            book("5 %", -70_000, 12_000, 15_000, 18_000, 21_000, 26_000)
                .number(Worth.RATE_OF_RETURN.reference(), EXPECTED))
        .as("five years: 8.7 %")
        .isCloseTo(0.087, offset(0.0005));
    List<Double> fourYears = List.of(-70_000.0, 12_000.0, 15_000.0, 18_000.0, 21_000.0);
    assertThat(RateOfReturn.of(fourYears.size(), fourYears::get))
        .as("four years: −2.1 %")
        .isCloseTo(-0.021, offset(0.0005));
    List<Double> twoYears = List.of(-70_000.0, 12_000.0, 15_000.0);
    assertThat(RateOfReturn.of(twoYears.size(), twoYears::get))
        .as("two years: −44.4 %")
        .isCloseTo(-0.444, offset(0.0005));
  }

  @Test
  void atThePrintedRateOfReturnThePresentValueIsNearNothing() {
    double[] cash = {-70_000, 12_000, 15_000, 18_000, 21_000, 26_000};
    double rate = book("5 %", cash).number(Worth.RATE_OF_RETURN.reference(), EXPECTED);
    assertThat(value(rate * 100 + " %", cash)).isCloseTo(0, offset(0.01));
  }
}
