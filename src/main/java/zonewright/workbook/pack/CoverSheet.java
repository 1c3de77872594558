package zonewright.workbook.pack;

import java.util.List;
import java.util.stream.IntStream;
import zonewright.budget.LocalRule;
import zonewright.budget.Ordinance;
import zonewright.budget.SiteBudget;
import zonewright.budget.WaterSense;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.design.Caution;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.design.Finding;
import zonewright.design.ForClient;
import zonewright.design.SheetsInUse;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Severity;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.CellText;
import zonewright.workbook.kit.WorkbookNames;

/** The cover: what the project is, what it comes to, what to look at, and what to be careful of. */
final class CoverSheet implements PackSheet {
  private static final int MOST_FINDINGS = 40;

  private static final List<Column> FACTS =
      List.of(Facts.LOCATION, Facts.PREPARED_BY, Climate.PLACE, Peak.MONTH);

  private static final List<Column> RESULTS =
      List.of(
          SiteBudget.TOTAL_AREA,
          Peak.REFERENCE_ET,
          SiteBudget.SITE_WEEK,
          SiteBudget.SITE_PEAK_MONTH,
          SiteBudget.SITE_YEAR,
          WaterSense.LEFT_OVER,
          Ordinance.LEFT_OVER,
          LocalRule.LEFT_OVER);

  @Override
  public String word() {
    return "cover";
  }

  @Override
  public String title() {
    return "Cover";
  }

  @Override
  public String about() {
    return "What the project is, what it comes to, findings and cautions.";
  }

  @Override
  public Audience audience() {
    return Audience.CLIENT;
  }

  @Override
  public boolean standing() {
    return true;
  }

  @Override
  public boolean leads() {
    return true;
  }

  @Override
  public void write(PackBook book) {
    Page page = book.page(title(), false, 34, 18, 10, 44);
    Design design = book.design();
    UnitSystem system = design.book().system();
    page.title(book.project(), "Landscape irrigation, zone by zone, in " + system.words() + ".");
    page.band("The project");
    for (Column fact : FACTS) {
      page.words(0, fact.name(), CellStyleName.NAME)
          .live(1, fact, 0, CellStyleName.PLAIN)
          .reaching(1, book.live().result(fact, 0).words(), CellStyleName.PLAIN)
          .next();
    }
    page.words(0, "Zones", CellStyleName.NAME)
        .formula(
            1,
            "COUNTA(" + book.live().all(Facts.ZONE_NAME) + ")",
            design.book().rows(Sheets.ZONES),
            "General",
            CellStyleName.PLAIN)
        .next();
    lacking(page, book);
    page.next().band("What it comes to");
    for (Column result : RESULTS) {
      page.words(0, result.name(), CellStyleName.NAME)
          .live(1, result, 0, CellStyleName.CALCULATED)
          .words(2, result.kind().unit(system).symbol(), CellStyleName.SMALL)
          .words(3, result.meaning(), CellStyleName.SMALL)
          .next();
    }
    page.next();
    if (book.forClient()) {
      known(page, ForClient.findings(book.office()));
    } else {
      findings(page, design.findings());
    }
    page.next().band("Where things are");
    for (TableDefinition table : book.tables()) {
      if (SheetsInUse.uses(design.book(), table)) {
        page.formula(0, link(table.title()), table.title(), CellStyleName.NAME)
            .across(
                1, table.about().isEmpty() ? table.title() : table.about(), CellStyleName.SMALL);
      }
    }
    page.next().band("Take care");
    for (Caution caution : Caution.all()) {
      page.words(0, caution.topic(), CellStyleName.CAUTION)
          .across(1, caution.sentences(), CellStyleName.CAUTION);
    }
  }

  /** Says how many zones lack something they cannot be calculated without. */
  private static void lacking(Page page, PackBook pack) {
    Book book = pack.design().book();
    TableDefinition zones = book.schema().table(Sheets.ZONES);
    List<Column> needed = zones.columns().stream().filter(zones::needs).toList();
    long lacking =
        IntStream.range(0, book.rows(zones.id()))
            .filter(row -> book.counts(zones.id(), row))
            .filter(
                row ->
                    needed.stream()
                        .map(column -> book.outcome(column.reference(), row))
                        .anyMatch(
                            outcome ->
                                !(outcome instanceof Outcome.Amount)
                                    && !(outcome instanceof Outcome.Words)))
            .count();
    page.words(0, "Zones that lack something", CellStyleName.NAME)
        .formula(
            1,
            "COUNTIF(%s[%s],\"?*\")".formatted(zones.title(), WorkbookNames.MISSING),
            (double) lacking,
            "General",
            CellStyleName.PLAIN)
        .next();
  }

  private static String link(String title) {
    return "HYPERLINK(\"#%1$s!A1\",\"%1$s\")".formatted(title);
  }

  /** What a client should know; what a designer could do about it is for the designer. */
  private static void known(Page page, List<Finding> findings) {
    if (!findings.isEmpty()) {
      page.band("What to know about it");
    }
    for (Finding finding : findings) {
      page.words(0, where(finding), CellStyleName.PLAIN)
          .across(1, finding.sentence(), CellStyleName.PLAIN);
    }
  }

  private static void findings(Page page, List<Finding> findings) {
    page.band("Findings when this was written");
    if (findings.isEmpty()) {
      page.across("Nothing is wrong, missing or to be looked at.", CellStyleName.PLAIN);
    }
    for (Finding finding : findings.subList(0, Math.min(MOST_FINDINGS, findings.size()))) {
      CellStyleName look =
          finding.severity() == Severity.NOTE ? CellStyleName.PLAIN : CellStyleName.CAUTION;
      String cure = finding.cure().isEmpty() ? "" : ". To do: " + finding.cure();
      page.words(0, where(finding) + " (" + finding.severity().word() + ")", look)
          .across(1, CellText.shortened(finding.sentence() + cure, 600), look);
    }
    if (findings.size() > MOST_FINDINGS) {
      page.across(
          "And %s more; the program lists them all.".formatted(findings.size() - MOST_FINDINGS),
          CellStyleName.PLAIN);
    }
  }

  private static String where(Finding finding) {
    String place = finding.where().isEmpty() ? finding.column().name() : finding.where();
    String plain = place.endsWith(":") ? place.substring(0, place.length() - 1) : place;
    return CellText.shortened(plain, 40);
  }
}
