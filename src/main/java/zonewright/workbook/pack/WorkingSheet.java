package zonewright.workbook.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.poi.ss.util.WorkbookUtil;
import zonewright.budget.ZoneBudget;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Place;
import zonewright.sheet.Working;
import zonewright.trade.Sheets;
import zonewright.uncertainty.CellSpan;
import zonewright.uncertainty.HowSure;
import zonewright.uncertainty.SureWords;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.CellText;

/** The derivation of one zone, step by step, in symbols and in numbers. */
final class WorkingSheet implements PackSheet {
  private static final int LONGEST_NAME = 20;

  /** The sheet Guide has the longer ones whole; here the steps are to be followed. */
  private static final int LONGEST_FORMULA = 600;

  private static final List<Column> RESULTS =
      List.of(
          Demand.RUN_TIME,
          CycleAndSoak.CYCLES,
          CycleAndSoak.CYCLE_MINUTES,
          CycleAndSoak.SOAK,
          ZoneBudget.VOLUME_PER_WEEK,
          ZoneBudget.VOLUME_PER_YEAR);

  @Override
  public String word() {
    return "working";
  }

  @Override
  public String title() {
    return "Working";
  }

  @Override
  public String about() {
    return "How one zone's run time, cycles and volumes come about, in symbols and in numbers.";
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

  /** Returns the title of the page for a zone, which tells the zone when the file is read again. */
  static String titleFor(Book book, int zone) {
    String name =
        book.entry(Facts.ZONE_NAME.reference(), zone) instanceof Entry.Words words
            ? words.text()
            : "row " + (zone + 1);
    String safe = WorkbookUtil.createSafeSheetName("Working " + name, '-');
    return safe.substring(0, Math.min(safe.length(), "Working ".length() + LONGEST_NAME)).strip();
  }

  @Override
  public void write(PackBook book) {
    Book sheets = book.design().book();
    int zone = book.zone();
    List<Working> start = new ArrayList<>();
    List<Working> steps = new ArrayList<>();
    Derivation.of(sheets, RESULTS, zone).stream()
        .map(Derivation.Step::working)
        .forEach(each -> (each.symbols().isEmpty() ? start : steps).add(each));
    Page page = book.page(titleFor(sheets, zone), false, 5, 34, 20, 46);
    page.title(
        "How " + sheets.cellName(Facts.ZONE_NAME.reference(), zone).row() + " comes about",
        "Each step in symbols, then with its numbers, as they were when this was written; the sheets Site, Months and Zones hold"
            + " the same as live formulas.");
    page.band("What it starts from");
    for (Working each : start) {
      if (!(each.outcome() instanceof Outcome.Blank)) {
        page.words(1, each.column().name(), CellStyleName.NAME)
            .words(2, each.shown(), CellStyleName.PLAIN)
            .words(3, each.column().meaning(), CellStyleName.SMALL)
            .next();
      }
    }
    page.next().band("Step by step");
    for (int i = 0; i < steps.size(); i++) {
      step(page, i + 1, steps.get(i));
    }
    spans(page, sheets, zone);
  }

  /** Where a range was typed below a result, says what it lies between. */
  private static void spans(Page page, Book sheets, int zone) {
    List<CellSpan> cells =
        RESULTS.stream()
            .flatMap(column -> CellSpan.of(sheets, new Place(column.reference(), zone)).stream())
            .toList();
    if (cells.isEmpty()) {
      return;
    }
    SureWords words =
        new SureWords(
            HowSure.of(
                sheets.snapshot(),
                cells.stream().map(CellSpan::column).collect(Collectors.toSet()),
                () -> false,
                done -> {}));
    page.next().band("How sure it is");
    for (CellSpan cell : cells) {
      page.words(1, cell.column().name(), CellStyleName.NAME).next();
      page.across(1, words.cell(cell), CellStyleName.PLAIN);
    }
  }

  private static void step(Page page, int number, Working step) {
    page.words(0, number + ".", CellStyleName.NAME)
        .words(1, step.column().name(), CellStyleName.NAME)
        .words(2, CellText.shortened(step.shown(), 400), CellStyleName.TOTAL)
        .words(3, step.origin(), CellStyleName.SMALL)
        .next();
    List<String> equations = step.equations();
    for (String equation : equations.subList(0, equations.size() - 1)) {
      page.across(1, "= " + CellText.shortened(equation, LONGEST_FORMULA), CellStyleName.PLAIN);
    }
    for (String note : step.notes()) {
      page.across(1, note, CellStyleName.SMALL);
    }
    for (Working.Input rest : step.rests()) {
      page.across(1, "Rests on " + rest.told(), CellStyleName.SMALL);
    }
    for (String source : step.sources()) {
      page.across(1, "Source: " + source, CellStyleName.SMALL);
    }
  }
}
