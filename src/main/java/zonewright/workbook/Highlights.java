package zonewright.workbook;

import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.FontFormatting;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;
import zonewright.workbook.kit.Styles;

/** Lets cells without a number stand back. */
final class Highlights {
  private static final String FAINT_INK = "B4BAB7";

  private Highlights() {}

  /** Greys the errors in the first so many columns of some rows. */
  static void add(XSSFSheet sheet, int firstRow, int lastRow, int columns) {
    add(sheet, new CellRangeAddress(firstRow, lastRow, 0, columns - 1));
  }

  /** Greys the errors in some cells. */
  static void add(XSSFSheet sheet, CellRangeAddress cells) {
    String first =
        new CellReference(cells.getFirstRow(), cells.getFirstColumn(), false, false)
            .formatAsString();
    XSSFSheetConditionalFormatting formats = sheet.getSheetConditionalFormatting();
    ConditionalFormattingRule rule =
        formats.createConditionalFormattingRule("ISERROR(" + first + ")");
    FontFormatting font = rule.createFontFormatting();
    font.setFontStyle(true, false);
    font.setFontColor(Styles.colour(FAINT_INK));
    formats.addConditionalFormatting(new CellRangeAddress[] {cells}, rule);
  }
}
