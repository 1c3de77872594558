package zonewright.workbook;

import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.FontFormatting;
import org.apache.poi.ss.usermodel.PatternFormatting;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;
import zonewright.formula.SpreadsheetText;
import zonewright.sheet.Column;
import zonewright.workbook.kit.Styles;

/** Looks that follow from what stands in a cell: typed over a default, or no number. */
final class Highlights {
  private static final String TYPED_OVER = "FFD98A";
  private static final String TYPED_OVER_INK = "5A3B00";
  private static final String FAINT_INK = "8B938F";

  private Highlights() {}

  /** Adds what suits the column to its cells. */
  static void add(XSSFSheet sheet, Column column, int firstRow, int lastRow, int position) {
    String cell = new CellReference(firstRow, position, false, false).formatAsString();
    XSSFSheetConditionalFormatting formats = sheet.getSheetConditionalFormatting();
    CellRangeAddress[] cells = {new CellRangeAddress(firstRow, lastRow, position, position)};
    if (column.role() == Column.Role.DEFAULTED) {
      ConditionalFormattingRule rule =
          formats.createConditionalFormattingRule(
              "AND(%s<>\"\",NOT(%s))".formatted(cell, SpreadsheetText.isFormula(cell)));
      FontFormatting font = rule.createFontFormatting();
      font.setFontStyle(false, true);
      font.setFontColor(Styles.colour(TYPED_OVER_INK));
      PatternFormatting fill = rule.createPatternFormatting();
      fill.setFillBackgroundColor(Styles.colour(TYPED_OVER));
      fill.setFillPattern(PatternFormatting.SOLID_FOREGROUND);
      formats.addConditionalFormatting(cells, rule);
    }
    if (column.formula().isPresent() && column.content() == Column.Content.NUMBER) {
      ConditionalFormattingRule rule =
          formats.createConditionalFormattingRule("ISTEXT(" + cell + ")");
      FontFormatting font = rule.createFontFormatting();
      font.setFontStyle(true, false);
      font.setFontColor(Styles.colour(FAINT_INK));
      formats.addConditionalFormatting(cells, rule);
    }
  }
}
