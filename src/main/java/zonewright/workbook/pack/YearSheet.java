package zonewright.workbook.pack;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import zonewright.budget.SiteBudget;
import zonewright.budget.YearBalance;
import zonewright.climate.Climate;
import zonewright.climate.Rain;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.Charts;

/** The year month by month: what the site needs, the rain on it, and the allowance. */
final class YearSheet implements PackSheet {
  private static final String NEED_COLOUR = "2E7D6B";
  private static final String RAIN_COLOUR = "8FB8DE";
  private static final String ALLOWANCE_COLOUR = "B8661B";
  private static final int CHART_ROWS = 17;

  private static final List<Column> COLUMNS =
      List.of(
          Climate.REFERENCE_ET,
          Rain.MONTH_RAIN,
          Rain.EFFECTIVE,
          SiteBudget.PERCENT,
          SiteBudget.MONTH_VOLUME,
          YearBalance.FROM_RAIN,
          YearBalance.ALLOWED);

  @Override
  public String word() {
    return "year";
  }

  @Override
  public String title() {
    return "Year";
  }

  @Override
  public String about() {
    return "The year month by month, as a table and as a chart: need, rain and allowance.";
  }

  @Override
  public Audience audience() {
    return Audience.CLIENT;
  }

  @Override
  public void write(PackBook book) {
    UnitSystem system = book.design().book().system();
    Page page = book.page(title(), true, 14, 15, 13, 15, 15, 16, 16, 18);
    page.onOnePage();
    page.title("The year, month by month", book.project()).restingOnClimate();
    String[] headings = new String[COLUMNS.size() + 1];
    headings[0] = "Month";
    for (int i = 0; i < COLUMNS.size(); i++) {
      headings[i + 1] = COLUMNS.get(i).heading(system);
    }
    page.headings(headings);
    int first = page.row();
    int months = book.design().book().rows(Sheets.MONTHS);
    for (int month = 0; month < months; month++) {
      page.live(0, Climate.MONTH, month, CellStyleName.NAME);
      for (int i = 0; i < COLUMNS.size(); i++) {
        page.live(i + 1, COLUMNS.get(i), month, CellStyleName.CALCULATED);
      }
      page.next();
    }
    int last = page.row() - 1;
    page.next();
    int top = page.row();
    Charts.barsAndLines(
        page.sheet(),
        new Charts.Place(0, top, COLUMNS.size() + 1, top + CHART_ROWS),
        "Water of the year",
        SiteBudget.MONTH_VOLUME.kind().unit(system).symbol(),
        new CellRangeAddress(first, last, 0, 0),
        List.of(
            series("Need of the site", SiteBudget.MONTH_VOLUME, NEED_COLOUR, first, last),
            series("Need met by rain", YearBalance.FROM_RAIN, RAIN_COLOUR, first, last)),
        List.of(
            series("Part of the allowance", YearBalance.ALLOWED, ALLOWANCE_COLOUR, first, last)));
    for (int i = 0; i <= CHART_ROWS; i++) {
      page.next();
    }
    page.across("Need of the site: " + SiteBudget.MONTH_VOLUME.meaning(), CellStyleName.SMALL);
    page.across("Need met by rain: " + YearBalance.FROM_RAIN.meaning(), CellStyleName.SMALL);
    page.across("Part of the allowance: " + YearBalance.ALLOWED.meaning(), CellStyleName.SMALL);
  }

  private static Charts.Series series(
      String name, Column column, String colour, int first, int last) {
    int at = COLUMNS.indexOf(column) + 1;
    return new Charts.Series(name, new CellRangeAddress(first, last, at, at), colour);
  }
}
