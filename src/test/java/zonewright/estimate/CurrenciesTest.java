package zonewright.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static zonewright.trade.Sheets.CURRENCIES;
import static zonewright.trade.Sheets.ESTIMATE;
import static zonewright.trade.Sheets.PARTS;
import static zonewright.trade.Sheets.SECTIONS;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.design.Design;
import zonewright.design.Sample;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Edits;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;

/** Money in the currency of the place, and prices in another. */
class CurrenciesTest {
  private final Book book = Design.blank(UnitSystem.SI).book();

  private void type(Column column, String text) {
    book.perform(new Edits(book).typed(column.reference(), 0, text));
  }

  private String shown(Column column) {
    return Money.text(book, column, 0);
  }

  private void item(String price, String count) {
    book.perform(new Edits(book).inserted(PARTS, 0, 1));
    type(Parts.ITEM_NAME, "Valve");
    type(Parts.PRICE, price);
    type(Parts.COUNT, count);
    type(Parts.HOURS_EACH, "0");
  }

  /** Minor units of ISO 4217, from memory; a name that is no code, and gold, have two decimals. */
  @ParameterizedTest
  @CsvSource({
    "USD, 2",
    "eur, 2",
    "JPY, 0",
    "KRW, 0",
    "CLP, 0",
    "ISK, 0",
    "KWD, 3",
    "BHD, 3",
    "TND, 3",
    "Dollars, 2",
    "XAU, 2"
  })
  void smallestAmountsAreThoseOfTheStandard(String currency, int decimals) {
    assertThat(Money.decimals(currency)).isEqualTo(decimals);
  }

  @Test
  void amountsAreRoundedToTheSmallestAmountAndShownSo() {
    item("12.3456", "3");
    assertThat(shown(BuildUp.TOTAL)).as("3 × 12.3456 = 37.0368").isEqualTo("37.04");
    type(JobFacts.CURRENCY, "JPY");
    assertThat(shown(BuildUp.TOTAL)).isEqualTo("37 JPY");
    type(Parts.PRICE, "12.5");
    assertThat(shown(BuildUp.TOTAL)).as("half goes up").isEqualTo("38 JPY");
    type(JobFacts.CURRENCY, "kwd");
    type(Parts.PRICE, "12.3456");
    assertThat(shown(BuildUp.TOTAL)).isEqualTo("37.037 kwd");
    book.undo();
    book.undo();
    assertThat(shown(BuildUp.TOTAL)).isEqualTo("38 JPY");
  }

  @Test
  void everyAmountOfAPricedJobIsWholeWhereTheCurrencyHasNoDecimals() {
    Book job = Sample.CAMPUS_RETROFIT.design(UnitSystem.US).book();
    BookSnapshot before = job.snapshot();
    double total = job.number(BuildUp.TOTAL.reference(), 0);
    job.perform(new Edits(job).typed(JobFacts.CURRENCY.reference(), 0, "CLP"));
    job.schema().tables().stream()
        .filter(table -> Set.of(ESTIMATE, PARTS, SECTIONS).contains(table.id()))
        .flatMap(table -> table.columns().stream())
        .filter(column -> column.kind() == QuantityKind.MONEY && !column.takesEntries())
        // a step on the way to the overhead, which is rounded
        .filter(column -> !column.name().startsWith("More by"))
        .forEach(
            column -> {
              for (int row = 0; row < job.rows(column.reference().table()); row++) {
                double amount = job.number(column.reference(), row);
                assertThat(amount).as("%s, row %s", column, row).isEqualTo(Math.rint(amount));
              }
              assertThat(column.decimals(UnitSystem.US)).as("%s", column).isZero();
            });
    job.undo();
    assertThat(job.snapshot().sameEntries(before)).isTrue();
    assertThat(job.number(BuildUp.TOTAL.reference(), 0)).isEqualTo(total);
  }

  /** 3 × 10.00 at 1.0875 is 32.625: 32.63. */
  @Test
  void aPriceInAnotherCurrencyIsWorthWhatItsRateSays() {
    type(JobFacts.CURRENCY, "USD");
    item("10", "3");
    book.perform(new Edits(book).inserted(CURRENCIES, 0, 1));
    type(Currencies.CODE, "EUR");
    type(Parts.PRICE_IN, "EUR");
    assertThat(book.outcome(Parts.MATERIAL.reference(), 0)).isInstanceOf(Outcome.Missing.class);
    assertThat(book.outcome(Parts.MATERIAL.reference(), 0).sentence()).contains("Worth");
    type(Currencies.WORTH, "1.0875");
    assertThat(shown(Parts.MATERIAL)).isEqualTo("32.63 USD");
    type(Parts.PRICE_IN, "");
    assertThat(shown(Parts.MATERIAL)).isEqualTo("30.00 USD");
  }
}
