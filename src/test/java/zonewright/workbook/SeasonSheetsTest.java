package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.design.Design;
import zonewright.nights.NightsPlan;
import zonewright.season.SeasonReading;
import zonewright.units.UnitSystem;
import zonewright.water.Controller;
import zonewright.water.WateringPattern;
import zonewright.workbook.pack.PackOrder;
import zonewright.workbook.pack.PackSheets;

/** The sheets of a season: their formulas, calculated anew, give what the program found. */
class SeasonSheetsTest {
  @TempDir Path folder;

  /** Zones of each kind: by weekdays, odd dates, every few days, and a controller that divides. */
  @ParameterizedTest
  @CsvSource({
    "11, nights of the site, starts programs at set times, SI",
    "4, odd dates, starts each zone by itself, US",
    "7, every few days, starts each zone by itself, SI",
    "9, nights of the site, 'starts programs, cycle and soak by station', US"
  })
  void formulasGiveWhatTheProgramFound(
      String zone, String pattern, String controller, UnitSystem system) throws Exception {
    Design design = Designs.demo(system);
    int row = Integer.parseInt(zone) - 1;
    Designs.type(design, Controller.KIND, 0, controller);
    Designs.type(design, WateringPattern.PATTERN, row, pattern);
    if (pattern.equals(WateringPattern.INTERVAL)) {
      Designs.type(design, WateringPattern.EVERY, row, "3");
    }
    NightsPlan plan = design.nights().plan().orElseThrow();
    assertThat(SeasonReading.proposed(design.book(), plan).zones())
        .anyMatch(each -> each.name().equals(zone));
    Path file = folder.resolve("season.xlsx");
    DesignFile.write(
        design,
        file,
        new PackOrder(
            List.of(
                PackSheets.named("season").orElseThrow(),
                PackSheets.named("checkbook").orElseThrow()),
            false,
            Optional.of(zone)),
        Optional.empty());
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
      XSSFSheet sheet = book.getSheet("Season");
      assertThat(sheet.getRow(0).getCell(0).getStringCellValue()).contains("zone " + zone);
      List<Cell> formulas = formulas(sheet);
      assertThat(formulas).hasSizeGreaterThan(365 * 15);
      holds(book, formulas);
      holds(book, formulas(book.getSheet("Checkbook answers")));
    }
  }

  private static List<Cell> formulas(XSSFSheet sheet) {
    List<Cell> all = new ArrayList<>();
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (cell.getCellType() == CellType.FORMULA
            && cell.getCachedFormulaResultType() == CellType.NUMERIC) {
          all.add(cell);
        }
      }
    }
    // Cells that show the design are held by other tests; here they are what they show.
    all.stream().filter(cell -> cell.getCellFormula().contains("[")).forEach(Cell::removeFormula);
    all.stream()
        .filter(cell -> cell.getCellType() == CellType.FORMULA)
        .filter(cell -> cell.getCellFormula().contains("ISNUMBER"))
        .forEach(Cell::removeFormula);
    all.removeIf(cell -> cell.getCellType() != CellType.FORMULA);
    // The days first: sums over all of them would begin a chain as deep as the year is long.
    all.sort(Comparator.comparing((Cell cell) -> cell.getRowIndex() < 60));
    return all;
  }

  private static void holds(XSSFWorkbook book, List<Cell> formulas) {
    FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
    for (Cell cell : formulas) {
      double shown = cell.getNumericCellValue();
      double calculated = evaluator.evaluate(cell).getNumberValue();
      assertThat(calculated)
          .as("%s!%s %s", cell.getSheet().getSheetName(), cell.getAddress(), cell.getCellFormula())
          .isEqualTo(shown, within(1e-9 * Math.max(1, Math.abs(shown))));
    }
  }
}
