package zonewright.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static zonewright.trade.Sheets.PARTS;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.design.Sample;
import zonewright.sheet.Book;
import zonewright.sheet.Entry;
import zonewright.sheet.ListText;
import zonewright.units.DecimalSign;
import zonewright.units.UnitSystem;

/** Price books out of a design and into another. */
class PriceBookTest {
  private static Book read(String text) throws PriceBook.Unreadable {
    Book book = Design.blank(UnitSystem.US).book();
    book.perform(new PriceBook(book).edit(text));
    return book;
  }

  @Test
  void whatIsWrittenReadsBackTheSame() throws PriceBook.Unreadable {
    String text = new PriceBook(Sample.CAMPUS_RETROFIT.design(UnitSystem.US).book()).text();
    assertThat(new PriceBook(read(text)).text()).isEqualTo(text);
    assertThat(text).startsWith("Item,Section,Sold by,Price,Price in,Labour hours each (h),");
  }

  @Test
  void wordsThatLookLikeFormulasAreHarmlessOutsideAndWholeInside() throws PriceBook.Unreadable {
    Book book = read("Item,Price\r\n'=cmd|' /C calc'!A0,2\r\n@home tap,3\r\n");
    assertThat(book.entry(Parts.ITEM_NAME.reference(), 0))
        .isEqualTo(new Entry.Words("=cmd|' /C calc'!A0"));
    String text = new PriceBook(book).text();
    assertThat(text).contains("'=cmd|").contains("'@home tap");
    assertThat(new PriceBook(read(text)).text()).isEqualTo(text);
  }

  @Test
  void itemsKnownAreChangedOthersAddedAndUndoTakesItBack() throws PriceBook.Unreadable {
    Book book = read("Item,Price,Supplier note\nValve,20,old\nBox,9,\n");
    book.perform(new PriceBook(book).edit("\uFEFFItem;Price\nvalve;21.5\nWire;0.2\n"));
    assertThat(book.rows(PARTS)).isEqualTo(3);
    assertThat(book.number(Parts.PRICE.reference(), 0)).isEqualTo(21.5);
    assertThat(book.entry(Parts.NOTE.reference(), 0)).isEqualTo(new Entry.Words("old"));
    book.undo();
    assertThat(book.rows(PARTS)).isEqualTo(2);
    assertThat(book.number(Parts.PRICE.reference(), 0)).isEqualTo(20);
  }

  /** 1,250 h became 1250: a thousand times too much, silently. */
  @Test
  void aDecimalCommaIsReadAsListsReadIt() throws PriceBook.Unreadable {
    Book book = read("Item;Price;Labour hours each\nValve;21,50;1,250\nPump;1.250,00;2\n");
    assertThat(book.number(Parts.HOURS_EACH.reference(), 0)).isEqualTo(1.25);
    assertThat(book.number(Parts.PRICE.reference(), 0)).isEqualTo(21.5);
    assertThat(book.number(Parts.PRICE.reference(), 1)).isEqualTo(1250);
  }

  @Test
  void aNumberThatCanBeReadTwoWaysIsAskedNotTaken() throws Exception {
    String text = "Item;Labour hours each\nValve;1,250\n";
    assertThatThrownBy(() -> read(text))
        .isInstanceOf(PriceBook.Unreadable.class)
        .hasMessageContaining("Line 2, Labour hours each: “1,250” can be read two ways")
        .hasMessageContaining("write 1250 or 1.250");
    Book book = Design.blank(UnitSystem.US).book();
    ListText list = ListText.of(text, "prices").with(Optional.of(DecimalSign.COMMA));
    book.perform(new PriceBook(book).edit(list));
    assertThat(book.number(Parts.HOURS_EACH.reference(), 0)).isEqualTo(1.25);
  }

  @Test
  void aBarePercentIsPercentHoweverSmall() throws PriceBook.Unreadable {
    Book book = read("Item,Waste\nValve,1\nPipe,0.5\nWire,5 %\n");
    assertThat(book.number(Parts.WASTE.reference(), 0)).isEqualTo(0.01);
    assertThat(book.number(Parts.WASTE.reference(), 1)).isEqualTo(0.005);
    assertThat(book.number(Parts.WASTE.reference(), 2)).isEqualTo(0.05);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Item,Prize\\nValve,2|did you mean “Price”",
        "Price\\n2|no column “Item”",
        "Item,Price\\n,2|Line 2 has no item name",
        "Item,Price\\nValve,about two|Line 2, Price",
        "Item,Price\\n\\nValve,\"2|quotation mark in line 3",
        "''|empty"
      })
  void whatCannotBeReadIsRefusedWithWhereAndWhy(String text, String sentence) {
    assertThatThrownBy(() -> read(text.replace("\\n", "\n")))
        .isInstanceOf(PriceBook.Unreadable.class)
        .hasMessageContaining(sentence);
  }

  @Test
  void anItemWithoutPriceAndHoursWithoutRateAreFindings() throws PriceBook.Unreadable {
    Design design = Sample.CAMPUS_RETROFIT.design(UnitSystem.US);
    assertThat(design.findings()).extracting(Finding::line).noneMatch(l -> l.contains("no price"));
    design.book().perform(design.edits().typed(Parts.PRICE.reference(), 1, ""));
    design.book().perform(design.edits().typed(JobFacts.LABOUR_RATE.reference(), 0, ""));
    assertThat(design.findings())
        .extracting(Finding::line)
        .anyMatch(line -> line.contains("has no price, and 1 of it are needed"))
        .anyMatch(line -> line.contains("an hour has no price"));
  }

  @Test
  void aDesignThatIsNotPricedHearsNothingOfPrices() {
    assertThat(Design.blank(UnitSystem.US).findings())
        .extracting(finding -> finding.column().table())
        .doesNotContain(
            "parts",
            "extras",
            "estimate",
            "counts",
            "takeoff",
            "found",
            "use",
            "rates",
            "rebates",
            "savings",
            "cases",
            "years");
    assertThat(Sample.LIBRARY_GARDEN.design(UnitSystem.SI).findings())
        .extracting(finding -> finding.column().table())
        .doesNotContain(
            "parts",
            "extras",
            "estimate",
            "counts",
            "takeoff",
            "found",
            "use",
            "rates",
            "rebates",
            "savings",
            "cases",
            "years");
  }
}
