package zonewright.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Proves that the numbers asked of the spreadsheet program are its own, not the file's. */
class SpreadsheetProgramTest {
  private static final double WRONG = 999.25;
  private static final List<String> HEADINGS =
      List.of("Zone", "Zone flow (gpm)", "Area (ft²)", "Precipitation rate (in/h)", "Remark");

  @TempDir Path folder;
  private Path workbook;

  @BeforeEach
  void writeTwoZones() throws IOException {
    workbook = folder.resolve("zones.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream file = Files.newOutputStream(workbook)) {
      XSSFSheet sheet = book.createSheet("Zones");
      XSSFRow headings = sheet.createRow(0);
      for (int column = 0; column < HEADINGS.size(); column++) {
        headings.createCell(column).setCellValue(HEADINGS.get(column));
      }
      writeInputs(sheet.createRow(1), "front lawn", 9.6, 1444);
      writeInputs(sheet.createRow(2), "back lawn", 12.0, 900);
      XSSFTable table = sheet.createTable(new AreaReference("A1:E3", SpreadsheetVersion.EXCEL2007));
      table.setName("Zones");
      table.setDisplayName("Zones");
      for (int row = 1; row <= 2; row++) {
        sheet
            .getRow(row)
            .createCell(3)
            .setCellFormula(
                "96.25*Zones[[#This Row],[Zone flow (gpm)]]/Zones[[#This Row],[Area (ft²)]]");
        sheet
            .getRow(row)
            .createCell(4)
            .setCellFormula(
                "IF(Zones[[#This Row],[Precipitation rate (in/h)]]>1,\"fast\",\"slow\")");
      }
      sheet.createRow(4).createCell(3).setCellFormula("SUM(Zones[Zone flow (gpm)])");
      book.write(file);
    }
  }

  private static void writeInputs(Row row, String zone, double flow, double area) {
    row.createCell(0).setCellValue(zone);
    row.createCell(1).setCellValue(flow);
    row.createCell(2).setCellValue(area);
  }

  @Test
  void wrongResultsInTheFileAreReplacedByTheProgramsOwn() throws IOException {
    SpreadsheetProgram.require();
    Path planted = folder.resolve("planted.xlsx");
    assertThat(CachedResults.plant(WRONG, workbook, planted)).isEqualTo(5);
    assertThat(number(planted, 1, 3)).isEqualTo(WRONG);

    assertRight(SpreadsheetProgram.recalculate(planted, folder.resolve("answer")));
    assertThat(number(planted, 1, 3)).as("the file asked about is not changed").isEqualTo(WRONG);
  }

  @Test
  void formulasWithoutAnyResultAreCalculated() throws IOException {
    SpreadsheetProgram.require();
    Path stripped = folder.resolve("stripped.xlsx");
    assertThat(CachedResults.strip(workbook, stripped)).isEqualTo(5);

    assertRight(SpreadsheetProgram.recalculate(stripped, folder.resolve("answer")));
  }

  // Sources: Ohio State University Extension bulletin 912, step 11: 9.6 gpm over 1444 ft² is 0.64
  // in/h, printed to two digits. Second zone derived: 96.25 × 12 ÷ 900.
  private static void assertRight(Path answer) throws IOException {
    assertThat(number(answer, 1, 3)).isCloseTo(0.64, within(0.005));
    assertThat(number(answer, 2, 3)).isCloseTo(96.25 * 12 / 900, within(1e-12));
    assertThat(number(answer, 4, 3)).isCloseTo(21.6, within(1e-12));
    assertThat(text(answer, 1, 4)).isEqualTo("slow");
    assertThat(text(answer, 2, 4)).isEqualTo("fast");
  }

  @Test
  void strippingRemovesOnlyResults() throws IOException {
    Path planted = folder.resolve("planted.xlsx");
    Path stripped = folder.resolve("stripped.xlsx");
    CachedResults.plant(WRONG, workbook, planted);
    CachedResults.strip(planted, stripped);
    try (XSSFWorkbook before = new XSSFWorkbook(Files.newInputStream(planted));
        XSSFWorkbook after = new XSSFWorkbook(Files.newInputStream(stripped))) {
      assertThat(after.getTable("Zones").getCellReferences().formatAsString()).isEqualTo("A1:E3");
      for (Row row : before.getSheet("Zones")) {
        for (Cell cell : row) {
          Cell same =
              after.getSheet("Zones").getRow(row.getRowNum()).getCell(cell.getColumnIndex());
          assertThat(same.getCellType()).isEqualTo(cell.getCellType());
          assertThat(same.toString()).isEqualTo(cell.toString());
          if (cell.getCellType() == CellType.FORMULA) {
            assertThat(cell.getNumericCellValue()).isEqualTo(WRONG);
            assertThat(same.getNumericCellValue()).as("no result reads as 0").isZero();
          }
        }
      }
    }
  }

  @Test
  void aWorkbookComesOutOnPaper() throws IOException {
    SpreadsheetProgram.require();
    Path pages = SpreadsheetProgram.print(workbook, folder.resolve("paper"));
    assertThat(pages).hasFileName("zones.pdf");
    byte[] start = new byte[5];
    System.arraycopy(Files.readAllBytes(pages), 0, start, 0, start.length);
    assertThat(new String(start, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
  }

  @Test
  void whatTheProgramCannotOpenIsSaidInPlainWords() throws IOException {
    SpreadsheetProgram.require();
    Path broken = folder.resolve("broken.xlsx");
    byte[] whole = Files.readAllBytes(workbook);
    Files.write(broken, Arrays.copyOf(whole, whole.length / 2));
    assertThatThrownBy(() -> SpreadsheetProgram.recalculate(broken, folder))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("broken.xlsx");
    assertThatThrownBy(() -> SpreadsheetProgram.recalculate(folder.resolve("none.xlsx"), folder))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("none.xlsx");
  }

  private static double number(Path file, int row, int column) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
      return book.getSheet("Zones").getRow(row).getCell(column).getNumericCellValue();
    }
  }

  private static String text(Path file, int row, int column) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
      return book.getSheet("Zones").getRow(row).getCell(column).getStringCellValue();
    }
  }
}
