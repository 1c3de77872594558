package zonewright.workbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.climate.Climate;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;
import zonewright.weather.DailyRecord;
import zonewright.weather.DayNote;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.CellText;
import zonewright.workbook.kit.PageSetup;
import zonewright.workbook.kit.Styles;

/**
 * The days of a weather file with the evapotranspiration of each, as values, in a file of their own
 * for whoever wants them: thirty years are eleven thousand rows, which no design needs.
 */
public final class DaysFile {
  private static final String TITLE = "Days";
  private static final int[] WIDTHS = {12, 16, 10, 12, 60};

  private DaysFile() {}

  /**
   * Writes the days, as a workbook in a unit system or, by the ending of the name, as
   * comma-separated text in millimetres.
   *
   * @throws DesignFileException with a sentence that says what to do, when it cannot be written
   */
  public static void write(DailyRecord record, UnitSystem system, Path file)
      throws DesignFileException {
    if (PriceFile.isWorkbook(file)) {
      workbook(record, system, file);
    } else {
      byte[] text = text(record).getBytes(StandardCharsets.UTF_8);
      SafeSave.replace(file, stream -> stream.write(text));
    }
  }

  private static String text(DailyRecord record) {
    StringBuilder text = new StringBuilder("Date,Reference ET (mm),Rain (mm),How\n");
    for (int day = 0; day < record.size(); day++) {
      text.append(record.date(day)).append(',');
      text.append(plain(record.evapotranspiration(day))).append(',');
      text.append(plain(record.rain(day))).append(",\"");
      text.append(DayNote.inWords(record.notes(day))).append("\"\n");
    }
    return text.toString();
  }

  private static String plain(double value) {
    return Double.isNaN(value) ? "" : String.format(Locale.ROOT, "%.2f", value);
  }

  private static void workbook(DailyRecord record, UnitSystem system, Path file)
      throws DesignFileException {
    Unit depth = Climate.REFERENCE_ET.kind().unit(system);
    Unit warmth = system == UnitSystem.US ? Units.FAHRENHEIT : Units.CELSIUS;
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Styles styles = Styles.of(workbook);
      XSSFSheet sheet = workbook.createSheet(TITLE);
      List<String> headings =
          List.of(
              "Date",
              "Reference ET (" + depth.symbol() + ")",
              "Rain (" + depth.symbol() + ")",
              "Lowest (" + warmth.symbol() + ")",
              "How the ET came about");
      XSSFRow head = sheet.createRow(0);
      for (int at = 0; at < headings.size(); at++) {
        XSSFCell cell = head.createCell(at);
        cell.setCellValue(headings.get(at));
        cell.setCellStyle(styles.of(CellStyleName.HEADING));
        sheet.setColumnWidth(at, 256 * WIDTHS[at]);
      }
      String places = system == UnitSystem.US ? "0.000" : "0.00";
      for (int day = 0; day < record.size(); day++) {
        XSSFRow row = sheet.createRow(day + 1);
        XSSFCell date = row.createCell(0);
        date.setCellValue((double) (record.date(day).toEpochDay() - EPOCH));
        date.setCellStyle(styles.of(CellStyleName.CALCULATED, "yyyy\\-mm\\-dd"));
        number(row, 1, record.evapotranspiration(day), Units.MILLIMETRE, depth, places, styles);
        number(row, 2, record.rain(day), Units.MILLIMETRE, depth, places, styles);
        number(row, 3, record.lowest(day), Units.CELSIUS, warmth, "0.0", styles);
        XSSFCell how = row.createCell(4);
        how.setCellValue(CellText.encoded(DayNote.inWords(record.notes(day))));
        how.setCellStyle(styles.of(CellStyleName.CALCULATED));
      }
      sheet.createFreezePane(1, 1);
      PageSetup.set(sheet, TITLE, system, true, headings.size());
      sheet.setRepeatingRows(CellRangeAddress.valueOf("1:1"));
      SafeSave.replace(file, workbook::write);
    } catch (IOException problem) {
      throw new DesignFileException(
          "%s was not saved: %s".formatted(file, problem.getMessage()), problem);
    }
  }

  /** The day from which spreadsheets count. */
  private static final long EPOCH = LocalDate.of(1899, 12, 30).toEpochDay();

  private static void number(
      XSSFRow row, int at, double value, Unit from, Unit to, String format, Styles styles) {
    XSSFCell cell = row.createCell(at);
    cell.setCellStyle(styles.of(CellStyleName.CALCULATED, format));
    if (!Double.isNaN(value)) {
      cell.setCellValue(from.convert(value, to));
    }
  }
}
