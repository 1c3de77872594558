package zonewright.workbook.kit;

import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Protection without a password: what is calculated cannot be overwritten by a slip. */
public final class Protection {
  private Protection() {}

  /** Protects a sheet; formats, filters and sorting stay free. */
  public static void on(XSSFSheet sheet) {
    sheet.enableLocking();
    sheet.lockFormatCells(false);
    sheet.lockFormatColumns(false);
    sheet.lockFormatRows(false);
    sheet.lockAutoFilter(false);
    sheet.lockSort(false);
    sheet.lockSelectLockedCells(false);
    sheet.lockSelectUnlockedCells(false);
  }
}
