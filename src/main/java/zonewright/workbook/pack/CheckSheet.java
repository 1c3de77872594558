package zonewright.workbook.pack;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.formula.Outcome;
import zonewright.formula.SpreadsheetText;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.Working;
import zonewright.trade.Sheets;
import zonewright.water.Demand;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.CellText;

/** One zone's run time, step by step with a link to each cell, for whoever checks the design. */
final class CheckSheet implements PackSheet {
  private static final int LONGEST_EQUATION = 300;

  @Override
  public String word() {
    return "check";
  }

  @Override
  public String title() {
    return "How to check";
  }

  @Override
  public String about() {
    return "One zone's run time followed cell by cell, for whoever checks the design.";
  }

  @Override
  public Audience audience() {
    return Audience.OFFICE;
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
  public Optional<String> lacks(Design design) {
    return zone(design.book()).isPresent()
        ? Optional.empty()
        : Optional.of("No zone has a run time yet.");
  }

  private static OptionalInt zone(Book book) {
    return IntStream.range(0, book.rows(Sheets.ZONES))
        .filter(row -> book.number(Demand.RUN_TIME.reference(), row) > 0)
        .findFirst();
  }

  @Override
  public void write(PackBook pack) {
    Book book = pack.design().book();
    Page page = pack.page(title(), false, 5, 28, 18, 9, 58);
    OptionalInt zone = zone(book);
    if (zone.isEmpty()) {
      page.title("How to check this design", lacks(pack.design()).orElse(""));
      return;
    }
    String name = Live.result(book, Facts.ZONE_NAME, zone.getAsInt()).words();
    page.title(
        "How to check this design: the run time of zone " + name,
        "From the top down each line is worked out from those above it. A name leads to the very cell: its formula is the equation"
            + " beside it. Columns in closed groups there check what was typed and look words up; they are opened by the sign +"
            + " above the columns.");
    page.headings("", "Step", "Now", "Unit", "What it is, or how it is worked out").repeated();
    int number = 0;
    for (Derivation.Step step : Derivation.of(book, List.of(Demand.RUN_TIME), zone.getAsInt())) {
      if (!(step.working().outcome() instanceof Outcome.Blank)) {
        step(page, pack, step, ++number);
      }
    }
    page.next()
        .across(
            1,
            "Every zone has the same formulas in the same columns: what holds for this one is checked in another by the same cells"
                + " of its row. Sums over zones leave out no row; a zone that lacks something is named in the column Missing and"
                + " leaves the sums without a number.",
            CellStyleName.PLAIN);
  }

  private static void step(Page page, PackBook pack, Derivation.Step step, int number) {
    Working working = step.working();
    Column column = working.column();
    int row = step.row();
    TableDefinition table = pack.design().book().schema().table(column.reference().table());
    String equation =
        working.symbols().isEmpty() || column.content() != Column.Content.NUMBER
            ? column.meaning()
            : "= " + pack.design().book().equationTaken(column.reference(), row);
    page.words(0, number + ".", CellStyleName.NAME);
    if (pack.live().has(column)) {
      page.formula(1, link(pack, column, row), column.name(), CellStyleName.NAME);
    } else {
      page.words(1, column.name(), CellStyleName.NAME);
    }
    page.live(2, column, row, CellStyleName.CALCULATED)
        .words(3, column.kind().unit(pack.design().book().system()).symbol(), CellStyleName.SMALL)
        .words(
            4,
            CellText.shortened(equation, LONGEST_EQUATION) + " (sheet " + table.title() + ")",
            CellStyleName.PLAIN)
        .next();
  }

  /** Leads to the cell where it stands when somebody follows it, moved or not. */
  private static String link(PackBook pack, Column column, int row) {
    return "HYPERLINK(\"#\"&CELL(\"address\",%s),%s)"
        .formatted(pack.live().at(column, row), SpreadsheetText.quoted(column.name()));
  }
}
