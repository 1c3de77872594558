package zonewright.workbook;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.formula.PrintedText;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.CellText;
import zonewright.workbook.kit.PageSetup;
import zonewright.workbook.kit.Styles;
import zonewright.workbook.kit.WorkbookLayout;

/** Every column explained: what it means, how it is calculated, and where that comes from. */
final class GuideSheet {
  static final String TITLE = "Guide";

  private static final List<String> HEADINGS =
      List.of(
          "Sheet", "Column", "Cells are", "What it means", "How it is calculated", "Where from");
  private static final int[] WIDTHS = {12, 44, 13, 52, 52, 52};
  private static final int LETTERS_A_WIDTH = 72;

  private final XSSFWorkbook workbook;
  private final Styles styles;

  GuideSheet(XSSFWorkbook workbook, Styles styles) {
    this.workbook = workbook;
    this.styles = styles;
  }

  /**
   * Writes the guide to what stands of some tables into a new sheet, and to what could be typed
   * into them.
   */
  XSSFSheet write(List<TableDefinition> tables, WorkbookLayout layout, String project) {
    UnitSystem system = layout.system();
    XSSFSheet sheet = workbook.createSheet(TITLE);
    XSSFRow top = sheet.createRow(0);
    top.setHeightInPoints(20);
    for (int i = 0; i < HEADINGS.size(); i++) {
      XSSFCell cell = top.createCell(i);
      cell.setCellValue(HEADINGS.get(i));
      cell.setCellStyle(styles.of(CellStyleName.HEADING));
      sheet.setColumnWidth(i, WIDTHS[i] * 256);
    }
    int at = 1;
    for (TableDefinition table : tables) {
      for (Column column : table.columns()) {
        boolean here = layout.has(column) || (layout.has(table) && column.takesEntries());
        if (here) {
          line(sheet.createRow(at++), table, column, layout);
        }
      }
    }
    sheet.createFreezePane(2, 1);
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    PageSetup.set(sheet, project, system, true, HEADINGS.size());
    return sheet;
  }

  private void line(XSSFRow row, TableDefinition table, Column column, WorkbookLayout layout) {
    String role =
        switch (column.role()) {
          case INPUT -> "typed";
          case DEFAULTED -> "default";
          case CALCULATED -> "calculated";
        };
    String formula = column.usualWord().or(() -> column.formula().map(PrintedText::of)).orElse("");
    List<String> texts =
        List.of(
            table.title(),
            column.heading(layout.system()),
            layout.has(column) ? role : role + ", not in this workbook",
            column.meaning(),
            formula,
            column.source());
    int longest = 0;
    for (int i = 0; i < texts.size(); i++) {
      XSSFCell cell = row.createCell(i);
      cell.setCellStyle(styles.of(i == 1 ? CellStyleName.NAME : CellStyleName.SMALL));
      cell.setCellValue(CellText.encoded(texts.get(i)));
      longest = i > 2 ? Math.max(longest, texts.get(i).length()) : longest;
    }
    int lines = 1 + Math.max(0, longest - 1) / LETTERS_A_WIDTH;
    row.setHeightInPoints(Math.max(16, lines * 11.5f + 4));
  }
}
