package zonewright.workbook;

import java.util.Locale;
import java.util.OptionalDouble;
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
 * @param dated whether the number is shown as a date or time; {@code text} is then what is shown
 */
record SheetCell(
    String sheet, int row, int column, CellType type, double number, String text, boolean dated) {

  /** Returns the cell; null where nothing stands in it. */
  static SheetCell of(XSSFCell cell) {
    if (cell == null) {
      return null;
    }
    return switch (cell.getCellType()) {
      case NUMERIC -> of(cell, cell.getNumericCellValue());
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
        ? cell.getNumericCellValue()
        : Double.NaN;
  }

  private static SheetCell of(XSSFCell cell, double number) {
    boolean dated = dated(cell.getCellStyle(), number);
    return new SheetCell(
        cell.getSheet().getSheetName(),
        cell.getRowIndex(),
        cell.getColumnIndex(),
        CellType.NUMERIC,
        number,
        dated ? date(cell.getCellStyle(), number) : "",
        dated);
  }

  private static SheetCell of(XSSFCell cell, CellType type, double number, String text) {
    return new SheetCell(
        cell.getSheet().getSheetName(),
        cell.getRowIndex(),
        cell.getColumnIndex(),
        type,
        number,
        text,
        false);
  }

  /** Says whether a number in this style is shown as a date or time. */
  static boolean dated(XSSFCellStyle style, double number) {
    return DateUtil.isValidExcelDate(number)
        && DateUtil.isADateFormat(style.getDataFormat(), style.getDataFormatString());
  }

  /** Returns how a date or time is shown. */
  static String date(XSSFCellStyle style, double number) {
    return new DataFormatter(Locale.ROOT)
        .formatRawCellContents(number, style.getDataFormat(), style.getDataFormatString());
  }

  /** Returns what stands in the cell, in words. */
  String words() {
    return type == CellType.NUMERIC && !dated ? QuantityText.exact(number) : text;
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
