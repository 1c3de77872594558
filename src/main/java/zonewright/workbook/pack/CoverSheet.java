package zonewright.workbook.pack;

import java.util.List;
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
import zonewright.sheet.Column;
import zonewright.sheet.Severity;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.CellText;

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
    page.next().band("Take care");
    for (Caution caution : Caution.all()) {
      page.words(0, caution.topic(), CellStyleName.CAUTION)
          .across(1, caution.sentences(), CellStyleName.CAUTION);
    }
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
