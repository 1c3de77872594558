package zonewright.workbook.kit;

import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTableColumn;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTableStyleInfo;

/** A range of cells made into a named table with filters, whose formulas new rows take over. */
public final class ExcelTable {
  private final CTTable table;

  private ExcelTable(CTTable table) {
    this.table = table;
  }

  /**
   * Makes the table from cells that are written already, headings included.
   *
   * @param number a number no other table of the workbook has, from 1
   */
  public static ExcelTable make(
      XSSFSheet sheet, String name, int number, int headingRow, int lastRow, int columns) {
    AreaReference area =
        new AreaReference(
            new CellReference(headingRow, 0),
            new CellReference(lastRow, columns - 1),
            SpreadsheetVersion.EXCEL2007);
    XSSFTable made = sheet.createTable(area);
    made.setName(name);
    made.setDisplayName(name);
    CTTable table = made.getCTTable();
    table.setId(number);
    table.addNewAutoFilter().setRef(area.formatAsString());
    CTTableStyleInfo style = table.addNewTableStyleInfo();
    style.setName("TableStyleLight1");
    style.setShowRowStripes(false);
    style.setShowColumnStripes(false);
    style.setShowFirstColumn(false);
    style.setShowLastColumn(false);
    made.updateHeaders();
    return new ExcelTable(table);
  }

  /** Says which formula a new row gets in a column. */
  public void calculates(int position, String formula) {
    CTTableColumn column = table.getTableColumns().getTableColumnArray(position);
    column.addNewCalculatedColumnFormula().setStringValue(formula);
  }
}
