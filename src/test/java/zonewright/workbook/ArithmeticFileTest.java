package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.sheet.Entry;
import zonewright.units.UnitSystem;

/** Arithmetic typed into a cell stands in the workbook as a formula and comes back. */
class ArithmeticFileTest {
  @TempDir Path folder;

  @Test
  void itIsWrittenAsTheFormulaAndReadAsTyped() throws DesignFileException, IOException {
    Design design = Designs.demo(UnitSystem.US);
    Designs.type(design, Emitters.AREA, 0, "=35*40");
    Designs.type(design, Emitters.DISTRIBUTION_UNIFORMITY, 0, "=130/2");
    Path file = folder.resolve("garden.xlsx");
    DesignFile.write(design, file);
    Set<String> formulas = new HashSet<>();
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      for (Row row : workbook.getSheet("Zones")) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.FORMULA) {
            formulas.add(cell.getCellFormula());
          }
        }
      }
    }
    assertThat(formulas).contains("35*40", "(130/2)%");
    DesignFile.Opened opened = DesignFile.read(file);
    assertThat(opened.report().notes()).isEmpty();
    assertThat(opened.design().book().entry(Emitters.AREA.reference(), 0))
        .isEqualTo(new Entry.Figure(1400, "=35*40"));
    assertThat(opened.design().book().entry(Emitters.DISTRIBUTION_UNIFORMITY.reference(), 0))
        .isEqualTo(new Entry.Figure(0.65, "=130/2"));
  }
}
