package zonewright.workbook.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import zonewright.budget.MonthlyVolume;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.plants.Plants;
import zonewright.retrofit.AsFound;
import zonewright.retrofit.Difference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;
import zonewright.workbook.kit.CellStyleName;

/** The zones as found and as proposed side by side, with what changes set off. */
final class RetrofitSheet implements PackSheet {
  private static final List<Column> COMPARED =
      List.of(
          Plants.PLANT,
          Emitters.EMITTER,
          Emitters.EMITTER_COUNT,
          Emitters.ZONE_FLOW,
          Emitters.DISTRIBUTION_UNIFORMITY,
          MonthlyVolume.YEAR);

  @Override
  public String word() {
    return "retrofit";
  }

  @Override
  public String title() {
    return "Retrofit";
  }

  @Override
  public String about() {
    return "The zones as found and as proposed side by side, what changes set off.";
  }

  @Override
  public Audience audience() {
    return Audience.CLIENT;
  }

  @Override
  public Optional<String> lacks(Design design) {
    return design.book().rows(Sheets.FOUND) == 0
        ? Optional.of("The sheet Found holds no zones.")
        : Optional.empty();
  }

  @Override
  public void write(PackBook pack) {
    Page page = pack.page(title(), true, 8, 22, 34, 34, 10, 11, 12, 14, 15);
    Book book = pack.design().book();
    page.title(
            "As found and as proposed: " + pack.project(),
            "Two lines a zone: as found, and as proposed. Bold: what changes.")
        .restingOnClimate();
    List<String> headings = new ArrayList<>(List.of("Zone", "Where"));
    COMPARED.forEach(column -> headings.add(column.heading(book.system())));
    headings.add("");
    page.headings(headings.toArray(String[]::new)).repeated();
    List<Integer> reached = new ArrayList<>();
    for (int row = 0; row < book.rows(Sheets.FOUND); row++) {
      if (!book.counts(Sheets.FOUND, row)) {
        continue;
      }
      int zone = zone(book, row);
      found(page, pack, row, zone < 0 ? "taken out of use" : "as found");
      if (zone >= 0) {
        proposed(page, pack, zone, row);
        reached.add(zone);
      }
    }
    for (int zone = 0; zone < book.rows(Sheets.ZONES); zone++) {
      if (book.counts(Sheets.ZONES, zone) && !reached.contains(zone)) {
        proposed(page, pack, zone, -1);
      }
    }
  }

  private static int zone(Book book, int row) {
    double position = book.number(AsFound.BECOMES.reference(), row);
    return Double.isNaN(position) ? -1 : (int) position;
  }

  private static Column there(Book book, Column column) {
    return book.schema().column(AsFound.of(column));
  }

  private static void found(Page page, PackBook pack, int row, String state) {
    Book book = pack.design().book();
    page.live(0, there(book, Facts.ZONE_NAME), row, CellStyleName.PLAIN)
        .live(1, there(book, Facts.ZONE_PLACE), row, CellStyleName.PLAIN);
    for (int at = 0; at < COMPARED.size(); at++) {
      page.live(at + 2, there(book, COMPARED.get(at)), row, CellStyleName.TABLE);
    }
    page.words(COMPARED.size() + 2, state, CellStyleName.SMALL).next();
  }

  private static void proposed(Page page, PackBook pack, int zone, int row) {
    Book book = pack.design().book();
    page.live(0, Facts.ZONE_NAME, zone, CellStyleName.PLAIN)
        .live(1, Facts.ZONE_PLACE, zone, CellStyleName.PLAIN);
    for (int at = 0; at < COMPARED.size(); at++) {
      Column column = COMPARED.get(at);
      boolean changed = row < 0 || changed(book, column, zone, row);
      page.live(at + 2, column, zone, changed ? CellStyleName.NAME : CellStyleName.TABLE);
    }
    page.words(COMPARED.size() + 2, state(book, zone), CellStyleName.SMALL).next();
  }

  private static String state(Book book, int zone) {
    return book.outcome(Difference.STATE.reference(), zone) instanceof Outcome.Words words
        ? words.text().equals(Difference.NEW) ? Difference.NEW : "proposed"
        : "proposed";
  }

  private static boolean changed(Book book, Column column, int zone, int row) {
    Reference found = AsFound.of(column);
    if (column.content() == Column.Content.NUMBER) {
      return Double.compare(book.number(column.reference(), zone), book.number(found, row)) != 0;
    }
    return !Objects.equals(words(book, column.reference(), zone), words(book, found, row));
  }

  private static String words(Book book, Reference column, int row) {
    return book.entry(column, row) instanceof Entry.Words words ? words.text() : "";
  }
}
