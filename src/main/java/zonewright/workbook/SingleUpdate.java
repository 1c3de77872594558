package zonewright.workbook;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.workbook.kit.Look;
import zonewright.workbook.kit.Styles;
import zonewright.workbook.kit.WorkbookNames;

/** Brings a one-row table in a person's own file up to date where its lines stand. */
final class SingleUpdate {
  private final XSSFWorkbook workbook;
  private final Book book;
  private final TableDefinition table;
  private final CellWriter cells;
  private final Styles styles;
  private final Reformat reformat;
  private final SingleReading reading;
  private final XSSFSheet sheet;

  SingleUpdate(
      Book book,
      TableDefinition table,
      CellWriter cells,
      Styles styles,
      Reformat reformat,
      XSSFSheet sheet) {
    this.workbook = sheet.getWorkbook();
    this.book = book;
    this.table = table;
    this.cells = cells;
    this.styles = styles;
    this.reformat = reformat;
    this.reading = new SingleReading(sheet);
    this.sheet = sheet;
  }

  /** Takes our own formulas out, so that whoever moves cells sees a person's formulas only. */
  void clearOurs() {
    for (Column column : table.columns()) {
      if (column.formula().isPresent()) {
        reading.cell(column).ifPresent(CellWriter::empty);
      }
    }
  }

  /** Writes what the design holds; lines that are gone come back below the last. */
  void write(Validations validations) {
    reading
        .line(SingleSheet.UNITS_LINE)
        .ifPresent(row -> text(row, reading.valueColumn(), book.system().words(), Look.CALCULATED));
    Map<Column, Integer> lines = new HashMap<>();
    for (Column column : table.columns()) {
      int row = reading.line(column.name()).orElseGet(() -> line(column));
      lines.put(column, row);
      XSSFCell cell = sheet.getRow(row).getCell(reading.valueColumn());
      if (cell == null) {
        cells.write(sheet.getRow(row), reading.valueColumn(), column, 0);
        cell = sheet.getRow(row).getCell(reading.valueColumn());
      } else {
        reformat.cell(cell, column);
        cells.renew(cell, column, 0);
      }
      if (column.content() == Column.Content.NUMBER && reading.unitColumn() >= 0) {
        String unit = column.kind().unit(book.system()).symbol();
        text(row, reading.unitColumn(), unit, Look.SMALL);
      }
      if (column.takesEntries()) {
        validations.renew(sheet, column, row, row, reading.valueColumn());
      }
      name(column, cell);
    }
    new RuleMarks(book.blueprint(), book.system())
        .single(sheet, table, lines, reading.valueColumn());
  }

  private int line(Column column) {
    int row = sheet.getLastRowNum() + 1;
    sheet.createRow(row);
    text(row, reading.itemColumn(), column.name(), Look.NAME);
    Highlights.add(sheet, column, row, row, reading.valueColumn());
    return row;
  }

  private void text(int at, int position, String words, Look look) {
    XSSFRow row = sheet.getRow(at);
    XSSFCell cell = row.getCell(position);
    if (cell == null) {
      cell = row.createCell(position);
      cell.setCellStyle(styles.of(look));
    }
    boolean there =
        cell.getCellType() == org.apache.poi.ss.usermodel.CellType.STRING
            && cell.getStringCellValue().equals(words);
    if (!there) {
      CellWriter.empty(cell);
      if (!words.isEmpty()) {
        cell.setCellValue(words);
      }
    }
  }

  private void name(Column column, XSSFCell cell) {
    String wanted = WorkbookNames.defined(table, column);
    XSSFName name = workbook.getName(wanted);
    if (name == null) {
      name = workbook.createName();
      name.setNameName(wanted);
    }
    name.setRefersToFormula(
        "'%s'!$%s$%s"
            .formatted(
                sheet.getSheetName().replace("'", "''"),
                org.apache.poi.ss.util.CellReference.convertNumToColString(cell.getColumnIndex()),
                cell.getRowIndex() + 1));
  }
}
