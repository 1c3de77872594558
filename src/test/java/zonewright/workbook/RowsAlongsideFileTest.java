package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import zonewright.sheet.Book;
import zonewright.sheet.Entry;
import zonewright.spreadsheet.SpreadsheetProgram;
import zonewright.units.UnitSystem;

/** Rows alongside others, found by name and counted where: in a spreadsheet as in the engine. */
class RowsAlongsideFileTest {
  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void anotherProgramCalculatesTheSame(UnitSystem system) throws IOException {
    SpreadsheetProgram.require();
    Path file = folder.resolve("small.xlsx");
    Book book = SmallBook.book(system);
    SmallWorkbook.write(book, file);
    Path answer = SmallWorkbook.recalculated(file, folder);
    assertThat(SmallWorkbook.differences(book, answer)).isEmpty();
  }

  @Test
  void aRowStaysBesideItsNameWhenSomebodySortsOrRenames() throws IOException {
    SpreadsheetProgram.require();
    Path file = folder.resolve("small.xlsx");
    SmallWorkbook.write(SmallBook.book(UnitSystem.SI), file);
    Path sorted = folder.resolve("sorted.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file));
        OutputStream stream = Files.newOutputStream(sorted)) {
      XSSFSheet cups = book.getSheet("Cups");
      for (int column = 0; column < cups.getRow(1).getLastCellNum(); column++) {
        XSSFCell first = cups.getRow(TableSheet.FIRST_ROW).getCell(column);
        XSSFCell third = cups.getRow(TableSheet.FIRST_ROW + 2).getCell(column);
        if (first.getCellType() == CellType.NUMERIC) {
          double held = first.getNumericCellValue();
          first.setCellValue(third.getNumericCellValue());
          third.setCellValue(held);
        } else if (first.getCellType() == CellType.STRING) {
          String held = first.getStringCellValue();
          first.setCellValue(third.getStringCellValue());
          third.setCellValue(held);
        }
      }
      cups.getRow(TableSheet.FIRST_ROW + 3).getCell(0).setCellValue("renamed");
      book.write(stream);
    }
    Path answer = SmallWorkbook.recalculated(sorted, folder);
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(answer))) {
      assertThat(number(book, "Extras", 0, "doubled (mL)")).as("cup 1 caught 10").isEqualTo(20);
      assertThat(number(book, "Extras", 2, "doubled (mL)")).as("cup 3 caught 30.5").isEqualTo(61);
      assertThat(number(book, "Extras", 3, "doubled (mL)")).as("cup 4, renamed").isEqualTo(80);
      assertThat(number(book, "Further", 2, "side by side")).isEqualTo(2);
      assertThat(number(book, "Cups", 0, "from beside (mL)"))
          .as("cup 3 stands first")
          .isEqualTo(91.5);
    }
  }

  private static double number(XSSFWorkbook book, String sheet, int row, String heading) {
    XSSFRow headings = book.getSheet(sheet).getRow(TableSheet.FIRST_ROW - 1);
    int column = 0;
    while (!headings.getCell(column).getStringCellValue().equals(heading)) {
      column++;
    }
    return book.getSheet(sheet)
        .getRow(TableSheet.FIRST_ROW + row)
        .getCell(column)
        .getNumericCellValue();
  }

  @Test
  void linesGoToTheRowsOfTheirNamesThenToTheirPlaces() {
    List<TableReading.Line> lines =
        List.of(line(2, "b"), line(3, "a"), line(4, "was c"), line(5, "gone"), line(6, "gone too"));
    AlongsideMatch match = new AlongsideMatch(lines, List.of("a", "b", "c"), List.of());
    assertThat(match.places()).isEqualTo(Map.of(2, 1, 3, 0, 4, 2));
    assertThat(match.notes("Extras").values())
        .containsExactly(
            "“was c” was taken for “c”, which stands in the same row of its table",
            "“gone” is no row of Extras any more; it was left",
            "“gone too” is no row of Extras any more; it was left");
  }

  @Test
  void linesOfOneNameGoToTheirPlaces() {
    List<TableReading.Line> lines = List.of(line(2, "twin"), line(3, "twin"), line(4, ""));
    AlongsideMatch match = new AlongsideMatch(lines, List.of("twin", "twin", ""), List.of());
    assertThat(match.places()).isEqualTo(Map.of(2, 0, 3, 1, 4, 2));
    assertThat(match.notes("Extras")).isEmpty();
  }

  private static TableReading.Line line(int row, String name) {
    return new TableReading.Line(
        row, Double.NaN, List.of(Entry.words(name), new Entry.Figure(row)), Map.of());
  }
}
