package zonewright.workbook.pack;

import java.util.List;
import java.util.Optional;
import zonewright.design.Design;
import zonewright.estimate.BuildUp;
import zonewright.estimate.Extras;
import zonewright.estimate.JobFacts;
import zonewright.estimate.Parts;
import zonewright.estimate.Sections;
import zonewright.estimate.ZoneCosts;
import zonewright.handover.Proposal;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.CellStyleName;

/** The estimate for the office: every item, every step from cost to price, by section and zone. */
final class EstimateSheet implements PackSheet {
  private static final List<Column> STEPS =
      List.of(
          BuildUp.MATERIAL,
          BuildUp.LABOUR,
          BuildUp.EQUIPMENT,
          BuildUp.SUBCONTRACT,
          BuildUp.ALLOWANCES,
          BuildUp.ALTERNATES,
          BuildUp.DIRECT,
          BuildUp.OVERHEAD,
          BuildUp.PROFIT,
          BuildUp.CONTINGENCY,
          BuildUp.NET_PRICE,
          BuildUp.TAX,
          BuildUp.TOTAL);

  @Override
  public String word() {
    return "estimate";
  }

  @Override
  public String title() {
    return "Estimate details";
  }

  @Override
  public String about() {
    return "Every item with quantity, price and hours, the steps to the price, and cost by section and zone.";
  }

  @Override
  public Audience audience() {
    return Audience.OFFICE;
  }

  @Override
  public Optional<String> lacks(Design design) {
    return Proposal.lacking(design.book());
  }

  @Override
  public void write(PackBook pack) {
    Page page = pack.page(title(), true, 40, 18, 12, 12, 12, 12, 13, 13, 13);
    Book book = pack.design().book();
    UnitSystem system = book.system();
    page.title("Estimate: " + pack.project(), "For the office only; before overhead unless said.");
    page.band("From cost to price");
    page.words(0, JobFacts.LABOUR_RATE.heading(system), CellStyleName.NAME)
        .live(1, JobFacts.LABOUR_RATE, 0, CellStyleName.PLAIN)
        .next();
    page.words(0, BuildUp.HOURS.heading(system), CellStyleName.NAME)
        .live(1, BuildUp.HOURS, 0, CellStyleName.PLAIN)
        .next();
    for (Column step : STEPS) {
      page.words(0, step.name(), CellStyleName.NAME).live(1, step, 0, CellStyleName.CALCULATED);
      share(page, step);
      page.next();
    }
    items(page.next(), book);
    extras(page.next(), book);
    sections(page.next(), book);
    zones(page.next(), book);
  }

  private static void share(Page page, Column step) {
    Column share =
        step.equals(BuildUp.OVERHEAD)
            ? JobFacts.OVERHEAD_SHARE
            : step.equals(BuildUp.PROFIT)
                ? JobFacts.PROFIT_SHARE
                : step.equals(BuildUp.CONTINGENCY)
                    ? JobFacts.CONTINGENCY_SHARE
                    : step.equals(BuildUp.TAX) ? JobFacts.TAX_SHARE : null;
    if (share != null) {
      page.live(2, share, 0, CellStyleName.SMALL);
    }
    if (step.equals(BuildUp.TAX)) {
      page.live(3, JobFacts.TAX_ON, 0, CellStyleName.SMALL);
    }
  }

  private static void items(Page page, Book book) {
    page.band("Items");
    List<Column> columns =
        List.of(
            Parts.ITEM_NAME,
            Parts.SECTION,
            Parts.COUNT,
            Parts.INSTALLED,
            Parts.BOUGHT,
            Parts.PRICE,
            Parts.MATERIAL,
            Parts.HOURS,
            Parts.LABOUR);
    table(page, book, columns, Sheets.PARTS, Parts.BOUGHT);
  }

  private static void extras(Page page, Book book) {
    if (book.rows(Sheets.EXTRAS) > 0) {
      page.band("Extras");
      table(
          page,
          book,
          List.of(Extras.LABEL, Extras.KIND, Extras.AMOUNT, Extras.COUNTS, BuildUp.ALTERNATE_PRICE),
          Sheets.EXTRAS,
          Extras.AMOUNT);
    }
  }

  private static void sections(Page page, Book book) {
    page.band("By section");
    table(
        page,
        book,
        List.of(
            Sections.SECTION,
            Sections.MATERIAL,
            Sections.HOURS,
            Sections.LABOUR,
            Sections.COST_OF_SECTION),
        Sheets.SECTIONS,
        Sections.COST_OF_SECTION);
  }

  private static void zones(Page page, Book book) {
    page.band("By zone");
    table(page, book, ZoneCosts.printed(), Sheets.TAKEOFF, ZoneCosts.COST_OF_ZONE);
    page.words(0, ZoneCosts.NOT_ALLOTTED.name(), CellStyleName.NAME)
        .live(1, ZoneCosts.NOT_ALLOTTED, 0, CellStyleName.CALCULATED)
        .next();
    page.across(ZoneCosts.NOT_ALLOTTED.meaning(), CellStyleName.SMALL);
  }

  private static void table(
      Page page, Book book, List<Column> columns, String table, Column counts) {
    page.headings(
        columns.stream().map(column -> column.heading(book.system())).toArray(String[]::new));
    for (int row = 0; row < book.rows(table); row++) {
      double number = book.number(counts.reference(), row);
      if (!book.counts(table, row) || number == 0) {
        continue;
      }
      for (int at = 0; at < columns.size(); at++) {
        CellStyleName look = at == 0 ? CellStyleName.PLAIN : CellStyleName.TABLE;
        page.live(at, columns.get(at), row, look);
      }
      page.next();
    }
  }
}
