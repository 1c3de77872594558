package zonewright.workbook;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import zonewright.units.QuantityText;

/**
 * A cell as it stands in a file; one in which nothing stands is none.
 *
 * @param sheet the sheet's name
 * @param row the row, counted from 0
 * @param column the column, counted from 0
 * @param type what was typed: a number, words, a truth value, an error, or a formula
 * @param number the number, or the one the file shows beside a formula; else not a number
 * @param text the words, {@code TRUE} or {@code FALSE}, the error's sign, or the formula
 * @param format how the number is shown; {@code text} is then what is shown of a date
 */
record SheetCell(
    String sheet, int row, int column, CellType type, double number, String text, Format format) {
  /** How a number is shown. */
  enum Format {
    PLAIN,
    /** In hundredths, with the sign %: the number itself is the ratio. */
    PERCENT,
    /** As a date or a time. */
    DATED
  }

  private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"|\\\\.");

  /** A number as files keep it: no letters of programming languages. */
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,9})?");

  /** Returns the cell; null where nothing stands in it. */
  static SheetCell of(XSSFCell cell) {
    if (cell == null) {
      return null;
    }
    return switch (cell.getCellType()) {
      case NUMERIC -> of(cell, cell.getRawValue());
      case STRING -> of(cell, CellType.STRING, Double.NaN, cell.getStringCellValue());
      case BOOLEAN ->
          of(cell, CellType.BOOLEAN, Double.NaN, cell.getBooleanCellValue() ? "TRUE" : "FALSE");
      case ERROR ->
          of(
              cell,
              CellType.ERROR,
              Double.NaN,
              FormulaError.forInt(cell.getErrorCellValue()).getString());
      case FORMULA -> of(cell, CellType.FORMULA, shown(cell), cell.getCellFormula());
      default -> null;
    };
  }

  private static double shown(XSSFCell cell) {
    return cell.getCachedFormulaResultType() == CellType.NUMERIC && cell.getCTCell().isSetV()
        ? number(cell.getRawValue())
        : Double.NaN;
  }

  private static SheetCell of(XSSFCell cell, String raw) {
    double number = number(raw);
    if (Double.isNaN(number)) {
      return of(cell, CellType.STRING, number, raw.strip());
    }
    Format format = format(cell.getCellStyle(), number);
    String shown = format == Format.DATED ? date(cell.getCellStyle(), number) : "";
    return of(cell, CellType.NUMERIC, number, shown);
  }

  /** Returns the number a file's text stands for; not a number where it stands for none. */
  static double number(String raw) {
    String text = raw.strip();
    double number = NUMBER.matcher(text).matches() ? Double.parseDouble(text) : Double.NaN;
    return Double.isInfinite(number) ? Double.NaN : number;
  }

  private static SheetCell of(XSSFCell cell, CellType type, double number, String text) {
    return new SheetCell(
        cell.getSheet().getSheetName(),
        cell.getRowIndex(),
        cell.getColumnIndex(),
        type,
        number,
        text,
        format(cell.getCellStyle(), number));
  }

  /** Returns how a number in this style is shown. */
  static Format format(XSSFCellStyle style, double number) {
    return dated(style, number) ? Format.DATED : percent(style) ? Format.PERCENT : Format.PLAIN;
  }

  /** Says whether numbers in this style are shown in hundredths. */
  static boolean percent(XSSFCellStyle style) {
    // A sign in quotation marks, or after a stroke, stands there as a letter does.
    String format = style.getDataFormatString();
    return format != null && QUOTED.matcher(format).replaceAll("").contains("%");
  }

  /** Says whether a number in this style is shown as a date or time. */
  private static boolean dated(XSSFCellStyle style, double number) {
    return DateUtil.isValidExcelDate(number)
        && DateUtil.isADateFormat(style.getDataFormat(), style.getDataFormatString());
  }

  /** Returns how a date or time is shown. */
  static String date(XSSFCellStyle style, double number) {
    return new DataFormatter(Locale.ROOT)
        .formatRawCellContents(number, style.getDataFormat(), style.getDataFormatString());
  }

  /** Says whether the number is shown as a date or time. */
  boolean dated() {
    return format == Format.DATED;
  }

  /** Returns what stands in the cell, in words. */
  String words() {
    return type == CellType.NUMERIC && !dated() ? QuantityText.exact(number) : text;
  }

  /** Returns the number the file shows beside a formula. */
  OptionalDouble shown() {
    return type == CellType.FORMULA && !Double.isNaN(number)
        ? OptionalDouble.of(number)
        : OptionalDouble.empty();
  }

  /** Says whether nothing was typed into a cell and nothing is calculated in it. */
  static boolean empty(SheetCell cell) {
    return cell == null || (cell.type() == CellType.STRING && cell.text().isBlank());
  }

  /** Says whether something was typed into a cell, which a formula is not. */
  static boolean typed(SheetCell cell) {
    return !empty(cell) && cell.type() != CellType.FORMULA;
  }
}
