package zonewright.workbook.pack;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import zonewright.budget.MonthlyVolume;
import zonewright.climate.Climate;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.nights.NightsPlan;
import zonewright.nights.ZoneStarts;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.water.MonthlySchedule;
import zonewright.workbook.kit.CellStyleName;

/**
 * A zone a line: where it is, its days and start times, and its minutes, cycles, soak and water of
 * the month shown. Minutes and water follow the month chosen on the sheet Site; days and times are
 * what was keyed in, written from the timetable.
 */
final class MonthZonesSheet implements PackSheet {
  /** Where the number stands by which a line finds its zone. */
  private static final int ROW = 10;

  /** What is shown live; days and start times stand after the first two. */
  private static final List<Column> COLUMNS =
      List.of(
          Facts.ZONE_NAME,
          Facts.ZONE_PLACE,
          MonthlySchedule.RUN_TIME,
          MonthlySchedule.CYCLES,
          MonthlySchedule.CYCLE_MINUTES,
          MonthlySchedule.SOAK,
          MonthlySchedule.PERCENT,
          MonthlyVolume.OF_THE_MONTH);

  @Override
  public String word() {
    return "month-zones";
  }

  @Override
  public String title() {
    return "Month by zone";
  }

  @Override
  public String about() {
    return "Each zone in a line: where it is, its days and start times, minutes, cycles, soak and water of the month shown.";
  }

  @Override
  public Audience audience() {
    return Audience.CLIENT;
  }

  @Override
  public Optional<String> lacks(Design design) {
    return new TimetableSheet().lacks(design);
  }

  @Override
  public void write(PackBook pack) {
    Book book = pack.design().book();
    Optional<NightsPlan> plan = pack.design().nights().plan();
    Map<Integer, ZoneStarts> starts = plan.map(ZoneStarts::of).orElse(Map.of());
    Page page = pack.page(title(), true, 12, 30, 18, 24, 12, 9, 12, 12, 12, 14, 7);
    page.title(
            "Each zone in the month shown",
            "Minutes, cycles, soak and water follow the month chosen on the sheet Site. Days and start times are keyed in once and hold in every month: they are"
                + " values; the sheet Timetable tells whether they are still right.")
        .restingOnClimate();
    int shown = (int) book.number(MonthlySchedule.MONTH_NUMBER.reference(), 0);
    String month =
        "INDEX(%s,%s)"
            .formatted(
                pack.live().all(Climate.MONTH), pack.live().at(MonthlySchedule.MONTH_NUMBER, 0));
    page.words(0, "Month", CellStyleName.NAME)
        .live(1, Climate.MONTH, Math.max(0, shown - 1), month, CellStyleName.CALCULATED)
        .next();
    page.next()
        .headings(
            "Zone",
            "Where",
            "Days",
            "Start times",
            MonthlySchedule.RUN_TIME.heading(book.system()),
            MonthlySchedule.CYCLES.name(),
            MonthlySchedule.CYCLE_MINUTES.heading(book.system()),
            MonthlySchedule.SOAK.heading(book.system()),
            MonthlySchedule.PERCENT.name(),
            MonthlyVolume.OF_THE_MONTH.heading(book.system()),
            "Row");
    for (int row = 0; row < book.rows(Sheets.ZONES); row++) {
      ZoneStarts own = starts.getOrDefault(row, ZoneStarts.NEVER);
      page.number(ROW, Live.identity(book, Facts.ZONE_NAME, row), "0", CellStyleName.SMALL)
          .words(2, own.days(), CellStyleName.PLAIN)
          .words(3, own.starts(), CellStyleName.PLAIN);
      for (int i = 0; i < COLUMNS.size(); i++) {
        live(page, pack.live(), i < 2 ? i : i + 2, COLUMNS.get(i), row);
      }
      page.next();
    }
  }

  /** A cell of the zone's row wherever that is put: its number stays with it. */
  private static void live(Page page, Live live, int place, Column column, int row) {
    String cell =
        live.identified(column) ? live.ofIdentity(column, page.cell(ROW)) : live.at(column, row);
    boolean words = column.content() == Column.Content.WORDS;
    page.live(place, column, row, cell, words ? CellStyleName.PLAIN : CellStyleName.CALCULATED);
  }
}
