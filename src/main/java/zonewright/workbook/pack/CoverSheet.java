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

  /** Rows of a table's sheet, counted from 1: below its headings, and as many as can be opened. */
  private static final int FIRST_ROW = 3;

  private static final int LAST_ROW = 20_000;

  private static final List<String> USE =
      List.of(
          "Tinted cells are for typing. What is typed under “…, yours” is used in place of the usual value, which is back when the"
              + " cell is blank. Other usual values may be typed over; such a cell is tinted then.",
          "What nobody typed into has no column here, and formulas leave it out. Type it in Zonewright, or add a column under its"
              + " heading from the sheet Guide, which counts once Zonewright has opened and saved the file.",
          "White cells are formulas one can read. A grey #N/A lacks something or rests on something that is wrong; the column"
              + " Missing names it. A blank never counts as zero.",
          "What is not looked at first, and the cells in between, stand behind the signs + beside the rows and above the"
              + " columns.",
          "Type a new zone below the last one. A program that does not make the table longer by itself leaves it out of the sums"
              + " until Zonewright has opened and saved the file; the line “Zones below the table” above counts those. Rows may be"
              + " sorted and filtered, and columns on view moved.",
          "This is the design file itself: Zonewright opens it again, takes what is typed, and calculates everything anew. Pages"
              + " made for reading are protected without a password; the tables are not.");

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
    below(page, book);
    page.next().band("What it comes to");
    for (Column result : RESULTS) {
      if (!counts(design.book(), result)) {
        continue;
      }
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
    page.next().band("How to use this workbook");
    USE.forEach(sentence -> page.across(sentence, CellStyleName.PLAIN));
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

  /** An allowance counts where its rule was chosen. */
  private static boolean counts(Book book, Column result) {
    if (result.equals(LocalRule.LEFT_OVER)) {
      return !Double.isNaN(book.number(result.reference(), 0));
    }
    Column chosen =
        result.equals(WaterSense.LEFT_OVER)
            ? WaterSense.APPLIES
            : result.equals(Ordinance.LEFT_OVER) ? Ordinance.APPLIES : null;
    return chosen == null
        || book.outcome(chosen.reference(), 0).equals(new Outcome.Words(Ordinance.YES));
  }

  /** Says how many zones were typed below a table that did not grow with them. */
  private static void below(Page page, PackBook pack) {
    TableDefinition zones = pack.design().book().schema().table(Sheets.ZONES);
    String all = pack.live().all(Facts.ZONE_NAME);
    String column = pack.live().letters(Facts.ZONE_NAME);
    page.words(0, "Zones below the table", CellStyleName.NAME)
        .formula(
            1,
            "COUNTA('%s'!$%s$%s:$%s$%s)-COUNTA(%s)"
                .formatted(zones.title(), column, FIRST_ROW, column, LAST_ROW, all),
            0,
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
