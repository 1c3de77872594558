package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import zonewright.design.Design;
import zonewright.spreadsheet.CachedResults;
import zonewright.spreadsheet.SpreadsheetProgram;
import zonewright.units.UnitSystem;
import zonewright.workbook.pack.PackOrder;
import zonewright.workbook.pack.PackSheets;

/** An independent spreadsheet program gets from the pack's formulas what the pack shows. */
class PackFormulasTest {
  private static final double TOLERANCE = 1e-9;

  @TempDir Path folder;

  static Stream<Design> designs() {
    return Stream.of(
        Designs.demo(UnitSystem.US),
        Designs.overridden(UnitSystem.SI),
        Designs.empty(UnitSystem.US));
  }

  @ParameterizedTest
  @MethodSource("designs")
  void everyFormulaOfThePackGivesWhatItShows(Design design)
      throws DesignFileException, IOException {
    SpreadsheetProgram.require();
    Path file = folder.resolve("pack.xlsx");
    Path stripped = folder.resolve("stripped.xlsx");
    DesignFile.write(design, file, PackOrder.of(PackSheets.all()), Optional.empty());
    CachedResults.strip(file, stripped);
    Path answer = SpreadsheetProgram.recalculate(stripped, folder);
    List<String> wrong = new ArrayList<>();
    try (XSSFWorkbook ours = new XSSFWorkbook(Files.newInputStream(file));
        XSSFWorkbook theirs = new XSSFWorkbook(Files.newInputStream(answer))) {
      for (String title : MadeSheets.in(ours)) {
        compare(ours.getSheet(title), theirs.getSheet(title), wrong);
      }
    }
    assertThat(wrong).isEmpty();
  }

  private static void compare(XSSFSheet ours, XSSFSheet theirs, List<String> wrong) {
    for (Row row : ours) {
      for (Cell cell : row) {
        if (cell.getCellType() == CellType.FORMULA) {
          String shown = shown(cell);
          Cell answer = theirs.getRow(row.getRowNum()).getCell(cell.getColumnIndex());
          String got = answer == null ? "" : shown(answer);
          if (!alike(shown, got)) {
            wrong.add(
                "%s!%s shows “%s”, recalculated “%s”"
                    .formatted(ours.getSheetName(), cell.getAddress(), shown, got));
          }
        }
      }
    }
  }

  private static String shown(Cell cell) {
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    return switch (type) {
      case NUMERIC -> Double.toString(cell.getNumericCellValue());
      case STRING -> cell.getStringCellValue();
      case ERROR -> "an error";
      case BLANK -> "";
      default -> cell.toString();
    };
  }

  private static boolean alike(String one, String other) {
    if (one.equals(other)) {
      return !one.equals("an error");
    }
    try {
      double first = Double.parseDouble(one);
      double second = Double.parseDouble(other);
      return Math.abs(first - second) <= TOLERANCE * Math.abs(first);
    } catch (NumberFormatException words) {
      // Where a number is lacking both say so, each with its own reason.
      return !one.matches("-?[\\d.].*")
          && !other.matches("-?[\\d.].*")
          && !other.equals("an error");
    }
  }
}
