package zonewright.workbook.pack;

import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.util.CellRangeAddress;
import zonewright.budget.LocalRule;
import zonewright.budget.Ordinance;
import zonewright.budget.SiteBudget;
import zonewright.budget.WaterSense;
import zonewright.budget.ZoneBudget;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.Charts;

/** The water budget: the baseline by zone, program and site, and the allowances it is held to. */
final class BudgetSheet implements PackSheet {
  private static final int MOST_ZONES = 500;
  private static final int MOST_BARS = 60;

  private static final List<Column> ZONE =
      List.of(
          Emitters.AREA,
          ZoneBudget.VOLUME_PER_WATERING_DAY,
          ZoneBudget.VOLUME_PER_WEEK,
          ZoneBudget.VOLUME_PEAK_MONTH,
          ZoneBudget.VOLUME_PER_YEAR,
          ZoneBudget.SHARE);

  private static final List<Optional<Column>> SITE =
      List.of(
          Optional.of(SiteBudget.TOTAL_AREA),
          Optional.empty(),
          Optional.of(SiteBudget.SITE_WEEK),
          Optional.of(SiteBudget.SITE_PEAK_MONTH),
          Optional.of(SiteBudget.SITE_YEAR));

  private static final List<Optional<Column>> PROGRAM =
      List.of(
          Optional.empty(),
          Optional.empty(),
          Optional.of(SiteBudget.PROGRAM_WEEK),
          Optional.of(SiteBudget.PROGRAM_PEAK_MONTH),
          Optional.of(SiteBudget.PROGRAM_YEAR));

  private static final List<Column> ALLOWANCES =
      List.of(
          WaterSense.MONTH_ET,
          WaterSense.MONTH_RAIN,
          WaterSense.ALLOWANCE,
          WaterSense.SITE_REQUIRED,
          WaterSense.LEFT_OVER,
          Ordinance.APPLIES,
          Ordinance.MAXIMUM,
          Ordinance.SITE_ESTIMATED_USE,
          Ordinance.LEFT_OVER,
          Ordinance.MEAN_FACTOR,
          LocalRule.LIMIT,
          LocalRule.LEFT_OVER);

  @Override
  public String word() {
    return "budget";
  }

  @Override
  public String title() {
    return "Budget";
  }

  @Override
  public String about() {
    return "The water budget by zone, program and site, with the allowances and a chart of shares.";
  }

  @Override
  public Audience audience() {
    return Audience.CLIENT;
  }

  @Override
  public Optional<String> lacks(Design design) {
    return design.book().rows(Sheets.ZONES) == 0
        ? Optional.of("The design has no zones yet.")
        : Optional.empty();
  }

  @Override
  public void write(PackBook book) {
    UnitSystem system = book.design().book().system();
    Page page = book.page(title(), true, 11, 36, 14, 17, 15, 17, 17, 11);
    page.title(
            "Water budget",
            "The baseline at 100 percent: the peak month's run times. Budgets are design aids; the local authority's form and rule"
                + " decide.")
        .restingOnClimate();
    String[] headings = new String[ZONE.size() + 2];
    headings[0] = "Zone";
    headings[1] = "Where";
    for (int i = 0; i < ZONE.size(); i++) {
      headings[i + 2] = ZONE.get(i).heading(system);
    }
    page.headings(headings).repeated();
    int first = page.row();
    int all = book.design().book().rows(Sheets.ZONES);
    int zones = Math.min(MOST_ZONES, all);
    for (int zone = 0; zone < zones; zone++) {
      page.live(0, Facts.ZONE_NAME, zone, CellStyleName.NAME)
          .live(1, Facts.ZONE_PLACE, zone, CellStyleName.TABLE);
      for (int i = 0; i < ZONE.size(); i++) {
        page.live(i + 2, ZONE.get(i), zone, CellStyleName.CALCULATED);
      }
      page.next();
    }
    int last = page.row() - 1;
    if (zones < all) {
      page.across(
          "The first %s of %s zones; the sheet Zones has them all.".formatted(zones, all),
          CellStyleName.SMALL);
    }
    total(page, "Site", "all zones", SITE, 0);
    page.next().band("Programs");
    for (int row = 0; row < book.design().book().rows(Sheets.PROGRAMS); row++) {
      page.live(0, SiteBudget.PROGRAM, row, CellStyleName.NAME).words(1, "", CellStyleName.TABLE);
      amounts(page, PROGRAM, row, CellStyleName.CALCULATED);
      page.next();
    }
    page.next().breakHere().band("Allowances");
    for (Column column : ALLOWANCES) {
      page.words(0, "", CellStyleName.NAME)
          .words(1, column.name(), CellStyleName.NAME)
          .live(2, column, 0, CellStyleName.TOTAL);
      String unit =
          column.content() == Column.Content.NUMBER ? column.kind().unit(system).symbol() : "";
      page.words(3, unit, CellStyleName.SMALL).across(4, column.meaning(), CellStyleName.SMALL);
    }
    chart(page, first, Math.min(last, first + MOST_BARS - 1));
  }

  private static void total(
      Page page, String name, String where, List<Optional<Column>> columns, int row) {
    page.words(0, name, CellStyleName.TOTAL).words(1, where, CellStyleName.TOTAL);
    amounts(page, columns, row, CellStyleName.TOTAL);
    page.words(7, "", CellStyleName.TOTAL).next();
  }

  private static void amounts(
      Page page, List<Optional<Column>> columns, int row, CellStyleName look) {
    for (int i = 0; i < columns.size(); i++) {
      int at = i + 2;
      columns
          .get(i)
          .ifPresentOrElse(
              column -> page.live(at, column, row, look), () -> page.words(at, "", look));
    }
  }

  private static void chart(Page page, int first, int last) {
    page.next().breakHere();
    int top = page.row();
    int rows = Math.max(12, (last - first + 1) * 4 / 3 + 5);
    Charts.lyingBars(
        page.sheet(),
        new Charts.Place(0, top, 8, top + rows),
        "Share of the site's water by zone",
        new CellRangeAddress(first, last, 0, 0),
        new Charts.Series(
            ZoneBudget.SHARE.name(), new CellRangeAddress(first, last, 7, 7), "2E7D6B"));
    for (int i = 0; i <= rows; i++) {
      page.next();
    }
  }
}
