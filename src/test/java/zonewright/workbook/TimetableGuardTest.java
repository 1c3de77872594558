package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.design.Design;
import zonewright.nights.SiteNights;
import zonewright.spreadsheet.SpreadsheetProgram;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.workbook.pack.PackOrder;
import zonewright.workbook.pack.PackSheet;
import zonewright.workbook.pack.PackSheets;

/** A workbook tells by itself, in another program, whether its timetable is still right. */
class TimetableGuardTest {
  private static final int FEW = 4;

  @TempDir Path folder;

  private Path pack() {
    return WrittenOnce.copy(
        "some of the demo with its timetable",
        folder.resolve("pack.xlsx"),
        file -> {
          List<PackSheet> sheets =
              PackSheets.all().stream().filter(sheet -> sheet.word().equals("timetable")).toList();
          PackOrder order = PackOrder.of(sheets);
          Design design = Designs.demo(UnitSystem.US);
          int zones = Designs.zones(design);
          design.book().perform(design.edits().removed(Sheets.ZONES, FEW, zones - FEW));
          Designs.type(design, SiteNights.START_WISH, 0, "9:30 pm");
          DesignFile.write(design, file, order, Optional.empty());
        });
  }

  private static String guard(Path file) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      for (Row row : workbook.getSheet("Timetable")) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.FORMULA
              && cell.getCachedFormulaResultType() == CellType.STRING
              && cell.getStringCellValue().matches("(Yes|No): .*")) {
            return cell.getStringCellValue();
          }
        }
      }
    }
    return "there is no guard";
  }

  private static Cell cell(XSSFSheet sheet, String heading, int row) {
    for (Row headings : sheet) {
      for (Cell cell : headings) {
        if (cell.getCellType() == CellType.STRING && cell.getStringCellValue().equals(heading)) {
          Row target = sheet.getRow(headings.getRowNum() + row);
          return target.getCell(cell.getColumnIndex()) == null
              ? target.createCell(cell.getColumnIndex())
              : target.getCell(cell.getColumnIndex());
        }
      }
    }
    throw new IllegalArgumentException("there is no heading " + heading);
  }

  private Path changed(String sheet, String heading, int row, String value)
      throws DesignFileException, IOException {
    Path other = folder.resolve("changed.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(pack()));
        OutputStream out = Files.newOutputStream(other)) {
      Cell cell = cell(workbook.getSheet(sheet), heading, row);
      cell.setBlank();
      if (value.matches("[\\d.]+")) {
        cell.setCellValue(Double.parseDouble(value));
      } else {
        cell.setCellValue(value);
      }
      workbook.write(out);
    }
    return SpreadsheetProgram.recalculate(other, folder);
  }

  @Test
  void asWrittenItIsRight() throws DesignFileException, IOException {
    SpreadsheetProgram.require();
    assertThat(guard(SpreadsheetProgram.recalculate(pack(), folder))).startsWith("Yes: ");
  }

  @ParameterizedTest
  @CsvSource({
    "Zones, Area (ft²), 3, 2500",
    "Zones, Program, 2, B",
    "ZoneNights, Waters on, 1, odd dates",
    "Nights, Window closes, 4, 0.2",
    "Nights, Watered, 1, no",
    "Programs, Start no earlier than, 1, 0.95"
  })
  void whatItDependsOnMakesItOlder(String sheet, String heading, int row, String value)
      throws DesignFileException, IOException {
    SpreadsheetProgram.require();
    assertThat(guard(changed(sheet, heading, row, value)))
        .startsWith("No: the timetable is older than the zones.");
  }

  @Test
  void aNoteOnAZoneDoesNot() throws DesignFileException, IOException {
    SpreadsheetProgram.require();
    assertThat(guard(changed("Zones", "Note", 1, "has a new gate"))).startsWith("Yes: ");
  }
}
