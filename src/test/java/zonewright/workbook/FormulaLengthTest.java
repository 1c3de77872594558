package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import zonewright.design.Demo;
import zonewright.units.UnitSystem;

/** Formulas stay within what spreadsheets take. */
class FormulaLengthTest {
  /** The most letters of a formula: ECMA-376 (Office Open XML), part 1, 18.3.1.40. */
  private static final int MOST_LETTERS = 8192;

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void noFormulaIsLongerThanASpreadsheetTakes(UnitSystem system)
      throws DesignFileException, IOException {
    Path file = folder.resolve("garden.xlsx");
    DesignFile.write(Demo.libraryGarden(system), file);
    int formulas = 0;
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              formulas++;
              assertThat(cell.getCellFormula().length())
                  .as("%s %s", sheet.getSheetName(), cell.getAddress())
                  .isLessThanOrEqualTo(MOST_LETTERS);
            }
          }
        }
      }
    }
    assertThat(formulas).isGreaterThan(1000);
  }
}
