package zonewright.workbook.pack;

import java.util.List;
import zonewright.design.Facts;
import zonewright.formula.Outcome;
import zonewright.handover.ControllerFacts;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.workbook.kit.CellStyleName;

/** The facts of each zone that a weather-based controller asks for, live from the design. */
final class ControllerFactsSheet implements PackSheet {
  @Override
  public String word() {
    return "controller-facts";
  }

  @Override
  public String title() {
    return "Controller facts";
  }

  @Override
  public String about() {
    return "What a weather-based controller asks zone by zone, live.";
  }

  @Override
  public Audience audience() {
    return Audience.CLIENT;
  }

  @Override
  public void write(PackBook book) {
    Page page = book.page(title(), true, 12, 34, 14, 14, 14, 22, 14, 14, 12);
    page.title(
            "For a weather-based controller",
            "Key in either these facts or the minutes of the program cards, never both.")
        .restingOnClimate();
    table(book, page, "Plants and soil", ControllerFacts.plantsAndSoil());
    table(book, page.next(), "Water", ControllerFacts.water());
  }

  private static void table(PackBook book, Page page, String head, List<Column> columns) {
    Book design = book.design().book();
    page.band(head);
    String[] headings = new String[columns.size() + 1];
    headings[0] = "Zone";
    for (int i = 0; i < columns.size(); i++) {
      headings[i + 1] = columns.get(i).heading(design.system());
    }
    page.headings(headings);
    for (int row = 0; row < design.rows(Sheets.ZONES); row++) {
      if (!(design.outcome(Facts.ZONE_NAME.reference(), row) instanceof Outcome.Words name)) {
        continue;
      }
      page.words(0, name.text(), CellStyleName.NAME);
      for (int i = 0; i < columns.size(); i++) {
        page.liveByName(i + 1, columns.get(i), row, page.cell(0), CellStyleName.CALCULATED);
      }
      page.next();
    }
  }
}
