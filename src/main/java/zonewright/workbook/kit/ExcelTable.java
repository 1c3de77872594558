package zonewright.workbook.kit;

import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTableColumn;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTableColumns;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTableStyleInfo;

/** A range of cells made into a named table with filters, whose formulas new rows take over. */
public final class ExcelTable {
  /** How the format has a line break in the name of a column. */
  private static final String LINE_BREAK_IN_A_HEADING = "_x000a_";

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
    return new ExcelTable(
        make(sheet, name, number, headingRow, lastRow, 0, columns - 1).getCTTable());
  }

  /**
   * Makes the table from cells that are written already, headings included.
   *
   * @param number a number no other table of the workbook has, from 1
   */
  public static XSSFTable make(
      XSSFSheet sheet,
      String name,
      int number,
      int headingRow,
      int lastRow,
      int firstColumn,
      int lastColumn) {
    AreaReference area =
        new AreaReference(
            new CellReference(headingRow, firstColumn),
            new CellReference(lastRow, lastColumn),
            SpreadsheetVersion.EXCEL2007);
    XSSFTable made = sheet.createTable(null);
    made.setName(name);
    made.setDisplayName(name);
    CTTable table = made.getCTTable();
    table.setId(number);
    table.setRef(area.formatAsString());
    table.addNewAutoFilter().setRef(area.formatAsString());
    name(table.addNewTableColumns(), sheet.getRow(headingRow), firstColumn, lastColumn);
    CTTableStyleInfo style = table.addNewTableStyleInfo();
    style.setName("TableStyleLight1");
    style.setShowRowStripes(false);
    style.setShowColumnStripes(false);
    style.setShowFirstColumn(false);
    style.setShowLastColumn(false);
    return made;
  }

  /** The library's own way to add columns counts them all again for each one. */
  private static void name(CTTableColumns columns, XSSFRow headings, int first, int last) {
    columns.setCount(last - first + 1L);
    for (int position = first; position <= last; position++) {
      CTTableColumn column = columns.addNewTableColumn();
      column.setId(position - first + 1L);
      column.setName(
          headings.getCell(position).getStringCellValue().replace("\n", LINE_BREAK_IN_A_HEADING));
    }
  }

  /** Says which formula a new row gets in a column. */
  public void calculates(int position, String formula) {
    CTTableColumn column = table.getTableColumns().getTableColumnArray(position);
    column.addNewCalculatedColumnFormula().setStringValue(formula);
  }
}
