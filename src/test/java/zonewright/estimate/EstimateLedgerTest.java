package zonewright.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static zonewright.trade.Sheets.CREWS;
import static zonewright.trade.Sheets.CURRENCIES;
import static zonewright.trade.Sheets.EXTRAS;
import static zonewright.trade.Sheets.PARTS;
import static zonewright.trade.Sheets.SECTIONS;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import zonewright.design.Design;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.testing.Cents;
import zonewright.units.UnitSystem;

/** The estimate comes to the same amounts as a ledger kept in decimal money. */
class EstimateLedgerTest {
  /** The typed estimate of a ledger. */
  static Design typed(Ledger ledger, UnitSystem system) {
    Design design = Design.blank(system);
    Edits edits = design.edits();
    design.book().perform(edits.inserted(PARTS, 0, ledger.items.size()));
    if (!ledger.extras.isEmpty()) {
      design.book().perform(edits.inserted(EXTRAS, 0, ledger.extras.size()));
    }
    List<Edit> parts = new ArrayList<>();
    design.book().perform(edits.inserted(CREWS, 0, ledger.crews.size()));
    for (int row = 0; row < ledger.crews.size(); row++) {
      Ledger.Crew crew = ledger.crews.get(row);
      parts.add(edits.typed(Crews.CREW_NAME.reference(), row, "crew " + row));
      parts.add(edits.typed(Crews.LEADERS.reference(), row, Integer.toString(crew.leaders())));
      parts.add(edits.typed(Crews.LEADER_RATE.reference(), row, crew.leaderRate().toPlainString()));
      parts.add(edits.typed(Crews.WORKERS.reference(), row, Integer.toString(crew.workers())));
      parts.add(edits.typed(Crews.WORKER_RATE.reference(), row, crew.workerRate().toPlainString()));
    }
    for (Column markup :
        List.of(Markups.MATERIAL, Markups.LABOUR, Markups.EQUIPMENT, Markups.SUBCONTRACT)) {
      String kind = markup.reference().column().replace("-markup", "");
      if (ledger.markups.containsKey(kind)) {
        parts.add(edits.typed(markup.reference(), 0, ledger.markups.get(kind) + " %"));
      }
    }
    for (int row = 0; row < ledger.items.size(); row++) {
      Ledger.Item item = ledger.items.get(row);
      parts.add(edits.typed(Parts.COUNT.reference(), row, item.count().toPlainString()));
      parts.add(edits.typed(Parts.AMOUNT.reference(), row, item.amount().toPlainString()));
      parts.add(edits.typed(Parts.WASTE.reference(), row, item.wastePercent() + " %"));
      parts.add(edits.typed(Parts.PACK.reference(), row, item.pack().toPlainString()));
      parts.add(edits.typed(Parts.PRICE.reference(), row, item.price().toPlainString()));
      parts.add(edits.typed(Parts.HOURS_EACH.reference(), row, item.hoursEach() + " h"));
      if (item.abroad()) {
        parts.add(edits.typed(Parts.PRICE_IN.reference(), row, "chf"));
      }
      if (item.crew() >= 0) {
        parts.add(edits.typed(Parts.CREW.reference(), row, "crew " + item.crew()));
      }
      if (!item.taxed()) {
        parts.add(edits.typed(Parts.TAXABLE.reference(), row, Parts.UNTAXED));
      }
      String section = Counted.SECTIONS.get(row % Counted.SECTIONS.size());
      parts.add(edits.typed(Parts.SECTION.reference(), row, section));
    }
    for (int row = 0; row < ledger.extras.size(); row++) {
      Ledger.Extra extra = ledger.extras.get(row);
      parts.add(edits.typed(Extras.KIND.reference(), row, extra.kind()));
      parts.add(edits.typed(Extras.AMOUNT.reference(), row, extra.amount().toPlainString()));
      parts.add(edits.typed(Extras.INCLUDED.reference(), row, extra.included()));
    }
    design.book().perform(edits.inserted(CURRENCIES, 0, 1));
    parts.add(edits.typed(Currencies.CODE.reference(), 0, "CHF"));
    parts.add(edits.typed(Currencies.WORTH.reference(), 0, ledger.worth.toPlainString()));
    parts.add(edits.typed(JobFacts.CURRENCY.reference(), 0, ledger.currency));
    parts.add(edits.typed(JobFacts.LABOUR_RATE.reference(), 0, ledger.rate.toPlainString()));
    parts.add(edits.typed(JobFacts.OVERHEAD_SHARE.reference(), 0, ledger.overhead + " %"));
    parts.add(edits.typed(JobFacts.PROFIT_SHARE.reference(), 0, ledger.profit + " %"));
    parts.add(edits.typed(JobFacts.CONTINGENCY_SHARE.reference(), 0, ledger.contingency + " %"));
    parts.add(edits.typed(JobFacts.TAX_SHARE.reference(), 0, ledger.tax + " %"));
    parts.add(edits.typed(JobFacts.TAX_ON.reference(), 0, ledger.taxOn));
    design.book().perform(new Edit.Several("ledger", parts));
    return design;
  }

  private static BigDecimal money(Ledger ledger, Book book, Column column, int row) {
    double number = book.number(column.reference(), row);
    BigDecimal money = ledger.money(number);
    assertThat(number)
        .as("%s is whole amounts of %s", column, ledger.currency)
        .isCloseTo(money.doubleValue(), org.assertj.core.data.Offset.offset(1e-6));
    return money;
  }

  private static BigDecimal cents(Book book, Column column) {
    return Cents.of(book.number(column.reference(), 0));
  }

  @Property(tries = 300)
  void everyAmountIsTheLedgersInAnyCurrency(@ForAll long seed) {
    Ledger ledger = new Ledger(seed);
    Book book = typed(ledger, UnitSystem.US).book();
    for (int row = 0; row < ledger.items.size(); row++) {
      Ledger.Item item = ledger.items.get(row);
      assertThat(money(ledger, book, Parts.MATERIAL, row))
          .isEqualByComparingTo(item.material(ledger));
      assertThat(money(ledger, book, Parts.LABOUR, row)).isEqualByComparingTo(item.labour(ledger));
    }
    assertThat(money(ledger, book, BuildUp.MATERIAL, 0)).isEqualByComparingTo(ledger.material());
    assertThat(money(ledger, book, BuildUp.LABOUR, 0)).isEqualByComparingTo(ledger.labour());
    assertThat(money(ledger, book, BuildUp.DIRECT, 0)).isEqualByComparingTo(ledger.direct());
    assertThat(money(ledger, book, BuildUp.OVERHEAD, 0))
        .isEqualByComparingTo(ledger.overheadAmount());
    assertThat(money(ledger, book, BuildUp.PROFIT, 0)).isEqualByComparingTo(ledger.profitAmount());
    assertThat(money(ledger, book, BuildUp.CONTINGENCY, 0))
        .isEqualByComparingTo(ledger.contingencyAmount());
    assertThat(money(ledger, book, BuildUp.NET_PRICE, 0)).isEqualByComparingTo(ledger.netPrice());
    assertThat(money(ledger, book, BuildUp.TAX, 0)).isEqualByComparingTo(ledger.taxAmount());
    assertThat(money(ledger, book, BuildUp.TOTAL, 0)).isEqualByComparingTo(ledger.total());
  }

  @Property(tries = 100)
  void totalsAreTheSumOfTheirParts(@ForAll long seed) {
    Ledger ledger = new Ledger(seed);
    Book book = typed(ledger, UnitSystem.SI).book();
    BigDecimal sections = BigDecimal.ZERO;
    for (int row = 0; row < book.rows(SECTIONS); row++) {
      sections = sections.add(money(ledger, book, Sections.COST_OF_SECTION, row));
    }
    BigDecimal lines = BigDecimal.ZERO;
    for (int row = 0; row < book.rows(PARTS); row++) {
      lines = lines.add(money(ledger, book, Parts.LINE, row));
    }
    BigDecimal items =
        money(ledger, book, BuildUp.MATERIAL, 0).add(money(ledger, book, BuildUp.LABOUR, 0));
    assertThat(lines).isEqualByComparingTo(items);
    assertThat(sections).isEqualByComparingTo(items);
    assertThat(
            money(ledger, book, BuildUp.DIRECT, 0)
                .add(money(ledger, book, BuildUp.OVERHEAD, 0))
                .add(money(ledger, book, BuildUp.PROFIT, 0))
                .add(money(ledger, book, BuildUp.CONTINGENCY, 0))
                .subtract(money(ledger, book, BuildUp.TAX_INCLUDED, 0))
                .add(money(ledger, book, BuildUp.TAX, 0)))
        .isEqualByComparingTo(money(ledger, book, BuildUp.TOTAL, 0));
  }

  /**
   * Value added tax in a price that includes it: a sixth at 20 %, an eleventh at 10 % (the VAT
   * fraction of the United Kingdom's VAT guide, Notice 700, and Australia's rule for GST; from
   * memory).
   */
  @Example
  void taxInAPriceIsTheTaxFractionOfIt() {
    Design design = Design.blank(UnitSystem.SI);
    Book book = design.book();
    book.perform(design.edits().inserted(EXTRAS, 0, 1));
    book.perform(design.edits().typed(Extras.KIND.reference(), 0, Extras.SUBCONTRACT));
    book.perform(design.edits().typed(Extras.AMOUNT.reference(), 0, "1320.00"));
    book.perform(design.edits().typed(JobFacts.TAX_ON.reference(), 0, JobFacts.IN_PRICES));
    book.perform(design.edits().typed(JobFacts.TAX_SHARE.reference(), 0, "20 %"));
    assertThat(cents(book, BuildUp.TAX)).isEqualByComparingTo("220.00");
    assertThat(cents(book, BuildUp.NET_PRICE)).isEqualByComparingTo("1100.00");
    assertThat(cents(book, BuildUp.TOTAL)).isEqualByComparingTo("1320.00");
    book.perform(design.edits().typed(JobFacts.TAX_SHARE.reference(), 0, "10 %"));
    assertThat(cents(book, BuildUp.TAX)).isEqualByComparingTo("120.00");
  }
}
