package zonewright.workbook.pack;

import java.util.List;
import java.util.Optional;
import zonewright.design.Caution;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.design.Finding;
import zonewright.design.ForClient;
import zonewright.estimate.BuildUp;
import zonewright.estimate.Extras;
import zonewright.estimate.JobFacts;
import zonewright.estimate.Money;
import zonewright.formula.Outcome;
import zonewright.savings.Cases;
import zonewright.savings.Savings;
import zonewright.savings.Use;
import zonewright.savings.Worth;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;
import zonewright.workbook.kit.CellStyleName;

/** The proposal to the owner: the price, what is in it, what may be chosen, and what it saves. */
final class ProposalSheet implements PackSheet {
  private static final List<Column> SAVINGS =
      List.of(
          Use.BASIS,
          Savings.YEAR_BEFORE,
          Savings.YEAR_AFTER,
          Savings.SAVED_VOLUME,
          Savings.SAVED_SHARE,
          Savings.WATER_SAVING,
          Savings.ENERGY_SAVING,
          Savings.UPKEEP,
          Savings.REBATE,
          Savings.NET_COST,
          Savings.WATER_RISE,
          Savings.DISCOUNT,
          Savings.LIFE);

  @Override
  public String word() {
    return "proposal";
  }

  @Override
  public String title() {
    return "Proposal";
  }

  @Override
  public String about() {
    return "The price to the owner, what is in it, alternates, and what it saves.";
  }

  @Override
  public Audience audience() {
    return Audience.CLIENT;
  }

  @Override
  public Optional<String> lacks(Design design) {
    return lacking(design.book());
  }

  /** Says why nothing can be printed of the estimate, if so. */
  static Optional<String> lacking(Book book) {
    if (book.rows(Sheets.PARTS) == 0 && book.rows(Sheets.EXTRAS) == 0) {
      return Optional.of("There are no items and no extras to price yet.");
    }
    return Double.isNaN(book.number(BuildUp.TOTAL.reference(), 0))
        ? Optional.of(
            "The price cannot be added up: "
                + book.outcome(BuildUp.TOTAL.reference(), 0).sentence()
                + ".")
        : Optional.empty();
  }

  @Override
  public void write(PackBook pack) {
    Page page = pack.page(title(), false, 42, 22, 18, 22);
    Book book = pack.office().book();
    String currency =
        book.entry(JobFacts.CURRENCY.reference(), 0) instanceof Entry.Words words
            ? "All money in " + words.text() + "."
            : "";
    page.title("Proposal: " + pack.project(), currency);
    for (Column fact : List.of(Facts.LOCATION, Facts.PREPARED_BY)) {
      String said =
          book.entry(fact.reference(), 0) instanceof Entry.Words words ? words.text() : "";
      page.words(0, fact.name(), CellStyleName.NAME)
          .live(1, fact, 0, CellStyleName.PLAIN)
          .reaching(1, said, CellStyleName.PLAIN)
          .next();
    }
    price(page.next(), book);
    alternates(page, book);
    if (book.rows(Sheets.FOUND) > 0) {
      savings(page.next(), pack);
      page.sheet().setRowBreak(page.row());
    }
    terms(page.next());
  }

  private static void price(Page page, Book book) {
    page.band("The price");
    if (taxOnThePrice(book)) {
      page.words(0, "The work as described, before tax", CellStyleName.NAME)
          .ofOffice(1, BuildUp.NET_PRICE, 0, CellStyleName.CALCULATED)
          .next();
      page.words(0, "Tax", CellStyleName.NAME)
          .ofOffice(1, BuildUp.TAX, 0, CellStyleName.CALCULATED)
          .next();
    }
    page.words(0, taxOnThePrice(book) ? "Price" : "Price, tax included", CellStyleName.NAME)
        .ofOffice(1, BuildUp.TOTAL, 0, CellStyleName.CALCULATED)
        .words(2, Money.text(book, BuildUp.TOTAL, 0), CellStyleName.SMALL)
        .next();
    if (book.number(BuildUp.ALLOWANCES.reference(), 0) != 0) {
      page.words(0, "In it, allowances", CellStyleName.NAME)
          .ofOffice(1, BuildUp.ALLOWANCES_PRICE, 0, CellStyleName.CALCULATED)
          .next();
      page.across(
          "Allowances are sums set aside for what is not settled; what is really spent is charged instead.",
          CellStyleName.SMALL);
    }
  }

  /** Tax on material, beside its rate, would tell what the material costs: it is not shown. */
  private static boolean taxOnThePrice(Book book) {
    return book.outcome(JobFacts.TAX_ON.reference(), 0) instanceof Outcome.Words words
        && words.text().equals(JobFacts.ON_PRICE);
  }

  private static void alternates(Page page, Book book) {
    boolean some = false;
    for (int row = 0; row < book.rows(Sheets.EXTRAS); row++) {
      boolean alternate =
          book.entry(Extras.KIND.reference(), row) instanceof Entry.Words kind
              && kind.text().equalsIgnoreCase(Extras.ALTERNATE);
      if (!alternate) {
        continue;
      }
      if (!some) {
        page.next().band("Alternates, to choose");
        page.headings("Alternate", "Adds to the price", "Taken now");
        some = true;
      }
      boolean taken = book.number(Extras.COUNTS.reference(), row) != 0;
      page.ofOffice(0, Extras.LABEL, row, CellStyleName.PLAIN)
          .ofOffice(1, BuildUp.ALTERNATE_PRICE, row, CellStyleName.CALCULATED)
          .words(2, taken ? "yes" : "no", CellStyleName.PLAIN)
          .next();
    }
  }

  private static void savings(Page page, PackBook pack) {
    page.band("What it saves");
    for (Column column : SAVINGS) {
      if (column.equals(Savings.UPKEEP) && pack.office().book().number(column.reference(), 0) == 0) {
        continue;
      }
      page.words(0, column.heading(pack.design().book().system()), CellStyleName.NAME)
          .ofOffice(1, column, 0, CellStyleName.CALCULATED)
          .next();
    }
    page.next().headings("If things turn out …", "Low", "As expected", "High");
    for (Column column :
        List.of(
            Cases.ACHIEVED,
            Cases.RISE,
            Worth.FIRST_YEAR,
            Worth.PAYBACK,
            Worth.NET_PRESENT_VALUE,
            Worth.RATE_OF_RETURN)) {
      page.words(0, column.name(), CellStyleName.NAME);
      for (int at = 0; at < Cases.NAMES.size(); at++) {
        page.ofOffice(at + 1, column, at, CellStyleName.CALCULATED);
      }
      page.next();
    }
    for (Finding finding : ForClient.findingsOfSavings(pack.office())) {
      page.across(finding.where() + " " + finding.sentence() + ".", CellStyleName.PLAIN);
    }
    page.across(
        "Savings are a forecast from equations, published climate and what was typed. Weather, use and"
            + " rates will differ. Rebates are paid by the program's own rules and only if they are kept.",
        CellStyleName.SMALL);
  }

  private static void terms(Page page) {
    page.band("Take care");
    page.across(
        "This price is made from a takeoff of the design and stands for the work described there. Permits,"
            + " local codes and licensed practice decide what may be done and by whom.",
        CellStyleName.CAUTION);
    for (Caution caution : Caution.all().subList(0, 4)) {
      page.across(caution.topic() + ". " + caution.sentences(), CellStyleName.CAUTION);
    }
  }
}
