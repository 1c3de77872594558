package zonewright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static zonewright.trade.Sheets.PARTS;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.design.Design;
import zonewright.estimate.BuildUp;
import zonewright.estimate.JobFacts;
import zonewright.estimate.Parts;
import zonewright.estimate.PriceBook;
import zonewright.retrofit.AsFound;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.ListText;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Price books as suppliers send them. All of them are invented. */
class PriceListsTest {
  private final Book book = Design.blank(UnitSystem.US).book();

  private ListMatch match(String text) throws Exception {
    ListMatch match = new ListMatch(book, PARTS, PriceLists.of(ListText.of(text, "book"), "book"));
    match.guess();
    return match;
  }

  private ListMatch.Taken take(String text) throws Exception {
    ListMatch.Taken taken = match(text).taken();
    book.perform(taken.edit());
    return taken;
  }

  private double price(int row) {
    return book.number(Parts.PRICE.reference(), row);
  }

  private String words(Column column, int row) {
    return book.entry(column.reference(), row) instanceof Entry.Words words ? words.text() : "";
  }

  @Test
  void headingsOfASupplierBelowATitleGoWhereTheyBelong() throws Exception {
    ListMatch.Taken taken =
        take(
            """
            Price list spring
            Valid to June
            Item No.\tDescription\tVendor\tUOM\tUnit price\tQty
            V-100\tValve 1 in\tHill Supply\teach\t$41.20\t14
            W-18\tWire\tHill Supply\tft\t$0.3275\t1,250.0
            """);
    assertThat(taken.notes()).isEmpty();
    assertThat(taken.changes())
        .containsExactly(
            "0 items to change, 2 items to add, 0 items as they are.",
            "Valve 1 in: new",
            "Wire: new");
    assertThat(words(Parts.SKU, 0)).isEqualTo("V-100");
    assertThat(words(Parts.SUPPLIER, 1)).isEqualTo("Hill Supply");
    assertThat(words(Parts.UNIT, 1)).isEqualTo("ft");
    assertThat(price(0)).isEqualTo(41.2);
    // 14 × 41.20 + 1250 × 0.3275 = 576.80 + 409.38, counted by hand.
    assertThat(book.number(BuildUp.MATERIAL.reference(), 0)).isCloseTo(986.18, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "$41.20|41.2",
        "41.20 USD|41.2",
        "USD 1,041.20|1041.2",
        "-$5.00|-5",
        "41.20 / ea|41.2",
        "0.3275 per ft|0.3275",
        "€ 41.20|41.2"
      })
  void amountsOfMoneyAreReadWithTheirCurrency(String cell, double value) throws Exception {
    ListMatch match = match("Item;Price\nValve;" + cell + "\n");
    assertThat(match.entry(1, 0)).isEqualTo(new Entry.Figure(value));
  }

  @Test
  void pricesInAnotherCurrencyThanTheJobsSaySo() throws Exception {
    book.perform(new Edits(book).typed(JobFacts.CURRENCY.reference(), 0, "USD"));
    ListMatch.Taken taken =
        take("Item;Price\nValve;€ 41,20\nPump;USD 125,00\nWire;CHF 0,30\nPipe;2,00\n");
    assertThat(taken.notes())
        .containsExactly(
            "Prices are in EUR: type on the sheet Currencies what one EUR is worth in USD.",
            "Prices are in CHF: type on the sheet Currencies what one CHF is worth in USD.");
    assertThat(List.of(0, 1, 2, 3))
        .extracting(row -> words(Parts.PRICE_IN, row))
        .containsExactly("EUR", "", "CHF", "");
    assertThat(book.choices(Parts.PRICE_IN)).containsExactly("EUR", "CHF");
    take("Item,Price,Currency\nValve,45.50,usd\nPipe,1.50,eur\n");
    assertThat(List.of(0, 3))
        .extracting(row -> words(Parts.PRICE_IN, row))
        .containsExactly("", "EUR");
    assertThat(price(0)).isEqualTo(45.5);
    assertThat(book.choices(Parts.PRICE_IN)).containsExactly("EUR", "CHF");
    take("Item,Price\nPipe,1.75\n");
    assertThat(words(Parts.PRICE_IN, 3)).as("a list that names no currency").isEqualTo("EUR");
  }

  /** A design may declare columns otherwise than the program does; they are the same columns. */
  @Test
  void priceBooksAreReadInAJobWithoutDecimalsAsInAnyOther() throws Exception {
    book.perform(new Edits(book).typed(JobFacts.CURRENCY.reference(), 0, "JPY"));
    take("Item;Price\nValve;€ 41,20\nWire;12,50\n");
    assertThat(List.of(price(0), price(1))).containsExactly(41.2, 12.5);
    assertThat(words(Parts.PRICE_IN, 0)).isEqualTo("EUR");
    Book other = Design.blank(UnitSystem.US).book();
    other.perform(new Edits(other).typed(JobFacts.CURRENCY.reference(), 0, "KWD"));
    other.perform(new PriceBook(other).edit(new PriceBook(book).text()));
    assertThat(other.number(Parts.PRICE.reference(), 1)).isEqualTo(12.5);
  }

  @Test
  void aJobWithoutACurrencyTakesPricesAsItsMoneyAndIsTold() throws Exception {
    ListMatch.Taken taken = take("Item;Price\nValve;€ 41,20\n");
    assertThat(words(Parts.PRICE_IN, 0)).isEmpty();
    assertThat(taken.notes())
        .containsExactly(
            "Prices are in EUR, and no currency is named on the sheet Estimate: they are taken as money of the job.");
  }

  @Test
  void aDecimalCommaIsReadAsListsReadIt() throws Exception {
    take("Item;Price\nValve;€ 41,20\nPump;1.250,00 €\n");
    assertThat(price(0)).isEqualTo(41.2);
    assertThat(price(1)).isEqualTo(1250);
  }

  @Test
  void aBlankPriceErasesNone() throws Exception {
    take("Item,SKU,Price,Supplier note\nValve,V1,20,soon\nBox,B1,9,\nPipe,P1,2,\n");
    ListMatch.Taken taken =
        take("SKU,Description,Price\nV1,Valve,\nB1,Box,9.50\nP1,Pipe,on request\nX1,Drain,3\n");
    assertThat(price(0)).isEqualTo(20);
    assertThat(words(Parts.NOTE, 0)).isEqualTo("soon");
    assertThat(price(1)).isEqualTo(9.5);
    assertThat(price(2)).as("what cannot be read erases nothing either").isEqualTo(2);
    assertThat(taken.changes())
        .containsExactly(
            "1 item to change, 1 item to add, 2 items as they are.",
            "Box, Price: 9 → 9.5",
            "Drain: new");
    assertThat(taken.notes())
        .singleElement()
        .asString()
        .contains("Line 4, Price", "what stood here stays");
    book.undo();
    assertThat(book.rows(PARTS)).isEqualTo(3);
    assertThat(price(1)).isEqualTo(9);
  }

  /** Two sizes of one name are two items where their numbers differ. */
  @Test
  void anItemIsKnownByItsNumberFirst() throws Exception {
    take("Item,SKU,Price\nElbow,E1,1\nTee,,2\n");
    take("Item,SKU,Price\nElbow long,E1,1.10\nElbow,E2,1.50\ntee,T1,2.20\n");
    assertThat(book.rows(PARTS)).isEqualTo(3);
    assertThat(words(Parts.ITEM_NAME, 0)).isEqualTo("Elbow long");
    assertThat(price(1)).isEqualTo(2.2);
    assertThat(words(Parts.SKU, 1)).isEqualTo("T1");
    assertThat(price(2)).isEqualTo(1.5);
  }

  @Test
  void zonesAsFoundComeFromAListWithTheirMinutes() throws Exception {
    ListMatch found =
        new ListMatch(
            book,
            Sheets.FOUND,
            ForeignList.of(
                "Station;Sq ft;Heads;Minutes per week\n1;900;8;75\n2;1200;11;90\n"
                    .getBytes(StandardCharsets.UTF_8),
                "walk.csv"));
    found.guess();
    assertThat(found.unmatched()).isEmpty();
    book.perform(found.taken().edit());
    assertThat(book.rows(Sheets.FOUND)).isEqualTo(2);
    assertThat(book.number(AsFound.PRESENT_MINUTES.reference(), 1)).isEqualTo(90);
    assertThat(found.target(0)).map(Column::name).isEqualTo(Optional.of("Zone"));
    assertThat(List.of(found.target(2).orElseThrow().name())).containsExactly("Emitters");
  }
}
