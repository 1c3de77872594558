package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.climate.Climate;
import zonewright.climate.RecordedWeather;
import zonewright.climate.WeatherSite;
import zonewright.design.Design;
import zonewright.design.WeatherTaken;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.TableDefinition;
import zonewright.units.UnitSystem;
import zonewright.weather.HowFar;
import zonewright.weather.WeatherChoices;
import zonewright.weather.WeatherFile;
import zonewright.weather.WeatherProblem;
import zonewright.weather.YearsOfWeather;
import zonewright.workbook.DesignFile;
import zonewright.workbook.DesignFileException;

/** A weather file from the command line into a design that opens without it. Invented weather. */
class WeatherCommandTest {
  @TempDir Path folder;

  /** Twelve years whose every day of July asks 5 mm and a tenth more each year; other days 2 mm. */
  private Path twelveYears() throws IOException {
    StringBuilder text = new StringBuilder("Date,ET (mm),Rain (mm)\n");
    for (LocalDate day = LocalDate.of(2001, 1, 1); day.getYear() < 2013; day = day.plusDays(1)) {
      double depth = day.getMonthValue() == 7 ? 5 + (day.getYear() - 2001) / 10.0 : 2;
      text.append(
          String.format(Locale.ROOT, "%s,%.1f,%s%n", day, depth, day.getDayOfMonth() == 9 ? 3 : 0));
    }
    return Files.writeString(folder.resolve("station.csv"), text, StandardCharsets.UTF_8);
  }

  @Test
  void aReportIsPrintedAndADesignWritten() throws IOException, DesignFileException {
    Path design = folder.resolve("garden.xlsx");
    Path days = folder.resolve("et.csv");
    CommandRun run =
        CommandRun.of(
            "weather",
            twelveYears().toString(),
            "--units",
            "si",
            "--into",
            design.toString(),
            "--days",
            days.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(ExitCode.FINE);
    assertThat(run.out())
        .contains("4,383 days from 2001-01-01 to 2012-12-31; none is missing.")
        .contains("4,383 days as the file gives it")
        .contains("reference ET for the 8 years of 10");
    // mean of 5.0 to 6.1 over 31 days
    assertThat(run.out()).containsPattern("July +12 +172\\.0");
    assertThat(Files.readString(days)).contains("2001-07-01,5.00,0.00,\"as the file gives it\"");
    Files.delete(folder.resolve("station.csv"));
    Design read = DesignFile.read(design).design();
    // the 8-in-10 July of twelve stands at 0.8 × 13 = 10.4th: 5.9 and 0.4 of a tenth
    assertThat(read.book().outcome(Climate.REFERENCE_ET.reference(), 6).number())
        .isCloseTo(31 * 5.94, within(0.01));
    assertThat(read.book().entry(RecordedWeather.ORIGIN.reference(), 0))
        .isEqualTo(
            new Entry.Words(
                "station.csv, 2001-01-01 to 2012-12-31, evapotranspiration as the file gives it"));
  }

  @Test
  void theDaysAreASheetOfValuesWhereThePathSaysSo() throws IOException {
    Path days = folder.resolve("days.xlsx");
    CommandRun run = CommandRun.of("weather", twelveYears().toString(), "--days", days.toString());
    assertThat(run.err()).isEmpty();
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(days))) {
      XSSFSheet sheet = workbook.getSheet("Days");
      assertThat(sheet.getLastRowNum()).isEqualTo(4383);
      assertThat(sheet.getRow(0).getCell(1).getStringCellValue()).isEqualTo("Reference ET (in)");
      XSSFRow july = sheet.getRow(1 + 181);
      assertThat(july.getCell(0).getLocalDateTimeCellValue().toLocalDate())
          .isEqualTo(LocalDate.of(2001, 7, 1));
      // an inch is 25.4 mm by definition
      assertThat(july.getCell(1).getNumericCellValue()).isCloseTo(5 / 25.4, within(1e-9));
      assertThat(july.getCell(4).getStringCellValue()).isEqualTo("as the file gives it");
      for (var row : sheet) {
        row.forEach(cell -> assertThat(cell.getCellType()).isNotEqualTo(CellType.FORMULA));
      }
    }
    assertThat(CommandRun.of("weather", twelveYears().toString(), "--days", days.toString()).code())
        .as("a file that is there is not replaced unasked")
        .isNotEqualTo(ExitCode.FINE);
  }

  @Test
  void whatIsTakenIsOneEditThatUndoTakesBackExactly() throws IOException, WeatherProblem {
    Design design = Design.blank(UnitSystem.US);
    design.book().perform(design.edits().typed(Climate.REFERENCE_ET.reference(), 6, "7.7"));
    List<Entry> before = entries(design.book());
    YearsOfWeather years =
        new YearsOfWeather(
            WeatherFile.open(twelveYears()).read(WeatherChoices.USUAL, HowFar.UNWATCHED));
    design.book().perform(WeatherTaken.edit(design.book(), years, RecordedWeather.NINE_OF_TEN));
    assertThat(design.book().entry(WeatherSite.ET_METHOD.reference(), 0))
        .isEqualTo(new Entry.Words(WeatherSite.RECORD));
    // 0.9 × 13 = 11.7th of twelve: 6.0 and 0.7 of a tenth, in inches
    assertThat(design.book().outcome(Climate.REFERENCE_ET.reference(), 6).number())
        .isCloseTo(31 * 6.07 / 25.4, within(0.0002));
    design.book().undo();
    assertThat(design.book().entry(Climate.REFERENCE_ET.reference(), 6))
        .isEqualTo(new Entry.Figure(7.7));
    assertThat(entries(design.book())).isEqualTo(before);
  }

  private static List<Entry> entries(Book book) {
    List<Entry> entries = new ArrayList<>();
    for (TableDefinition table : book.schema().tables()) {
      for (Column column : table.columns()) {
        for (int row = 0; row < book.rows(table.id()); row++) {
          entries.add(book.entry(column.reference(), row));
        }
      }
    }
    return entries;
  }

  @Test
  void whatTheHeadingsLeaveOpenIsSaidOnTheLine() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("hi.csv"), "Date,Hi,Lo\n2020-07-01,90,60\n2020-07-02,91,60\n");
    CommandRun open = CommandRun.of("weather", file.toString());
    assertThat(open.code()).isEqualTo(ExitCode.FILE);
    assertThat(open.err()).contains("No columns hold the highest and the lowest temperature");
    CommandRun said =
        CommandRun.of(
            "weather",
            file.toString(),
            "--match=Hi=highest temperature",
            "--unit=Hi=°F",
            "--match=Lo=lowest temperature",
            "--unit=Lo=°F",
            "--latitude=38.5",
            "--elevation=18");
    assertThat(said.err()).isEqualTo("");
    assertThat(said.out()).contains("2 days Hargreaves, from temperatures alone");
    CommandRun wrong = CommandRun.of("weather", file.toString(), "--match=Hi=heat");
    assertThat(wrong.code()).isEqualTo(ExitCode.USAGE);
    assertThat(wrong.err()).contains("“heat” is nothing a weather file holds");
  }
}
