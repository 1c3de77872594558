package zonewright.workbook;

import java.util.Iterator;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * From which day a workbook counts its dates: some programs count from the first day of 1904.
 *
 * <p>Source: ECMA-376 part 1, 18.2.28 (date1904) and 18.17.4.1: the day that is 1 in the one system
 * is 1,463 in the other.
 */
final class DateSystem {
  private static final double DAYS = 1462;

  private DateSystem() {}

  /**
   * Lets a workbook count from 1900, each date staying the day it is shown as; a time of the day
   * alone is the same in both.
   *
   * @return whether it counted otherwise
   */
  static boolean usual(XSSFWorkbook workbook) {
    if (!workbook.isDate1904()) {
      return false;
    }
    workbook.getCTWorkbook().getWorkbookPr().setDate1904(false);
    for (Sheet sheet : workbook) {
      for (Row row : sheet) {
        for (Iterator<Cell> cells = row.cellIterator(); cells.hasNext(); ) {
          move((XSSFCell) cells.next());
        }
      }
    }
    return true;
  }

  private static void move(XSSFCell cell) {
    if (cell.getCellType() == CellType.NUMERIC) {
      double number = SheetCell.number(cell.getRawValue());
      if (SheetCell.format(cell.getCellStyle(), number) == SheetCell.Format.DATED) {
        cell.setCellValue(usual(number));
      }
    }
  }

  /** Returns what a date counted from 1904 is, counted from 1900. */
  static double usual(double number) {
    return number < 1 ? number : number + DAYS;
  }
}
