package zonewright.workbook.pack;

import zonewright.budget.SiteBudget;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.handover.PeakOrigin;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.CellStyleName;

/** The peak climate value and the percents to compare a controller with, live from the design. */
final class MonthPercentsSheet implements PackSheet {
  @Override
  public String word() {
    return "month-percents";
  }

  @Override
  public String title() {
    return "Month percents";
  }

  @Override
  public String about() {
    return "The peak climate value, where it comes from, and the percents of the months.";
  }

  @Override
  public Audience audience() {
    return Audience.CLIENT;
  }

  @Override
  public void write(PackBook book) {
    Page page = book.page(title(), false, 26, 16, 20, 26);
    UnitSystem system = book.design().book().system();
    page.title(
        "Peak climate value and months",
        "The baseline is made for the peak month; a weather-based controller scales it by the weather.");
    page.words(0, "Peak climate value", CellStyleName.NAME)
        .live(1, Peak.REFERENCE_ET, 0, CellStyleName.CALCULATED)
        .words(2, Peak.REFERENCE_ET.kind().unit(system).symbol(), CellStyleName.SMALL)
        .next();
    page.across("When this was written: " + PeakOrigin.of(book.design()), CellStyleName.SMALL);
    page.next()
        .headings(
            "Month",
            "Percent",
            SiteBudget.MONTH_VOLUME.heading(system),
            Climate.DAILY_REFERENCE_ET.heading(system));
    for (int row = 0; row < book.design().book().rows(Sheets.MONTHS); row++) {
      page.live(0, Climate.MONTH, row, CellStyleName.NAME)
          .live(1, SiteBudget.PERCENT, row, CellStyleName.CALCULATED)
          .live(2, SiteBudget.MONTH_VOLUME, row, CellStyleName.CALCULATED)
          .live(3, Climate.DAILY_REFERENCE_ET, row, CellStyleName.CALCULATED)
          .next();
    }
    page.next()
        .across(
            "Compare the controller with these after its first days. Should it or its sensor fail, set the minutes of the cards to the"
                + " percent of the month by hand. A percent changes minutes only; where days change too, work the schedule out anew.",
            CellStyleName.PLAIN);
  }
}
