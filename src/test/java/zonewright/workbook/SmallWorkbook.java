package zonewright.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.spreadsheet.CachedResults;
import zonewright.spreadsheet.SpreadsheetProgram;
import zonewright.workbook.kit.SheetColumn;
import zonewright.workbook.kit.Styles;
import zonewright.workbook.kit.WorkbookLayout;

/** A book of tables written as the sheets of a design are, and what another program makes of it. */
final class SmallWorkbook {
  private SmallWorkbook() {}

  static void write(Book book, Path file) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream stream = Files.newOutputStream(file)) {
      workbook.setCellFormulaValidation(false);
      WorkbookLayout layout = WorkbookLayout.of(book);
      Validations validations = new Validations(book.schema(), book.system(), Map.of());
      TableSheet sheets =
          new TableSheet(
              workbook,
              book,
              Styles.of(workbook),
              layout,
              validations,
              new LaterRows(Integer.MAX_VALUE));
      int number = 0;
      for (TableDefinition table : book.schema().tables()) {
        sheets.write(table, ++number, "Small");
      }
      new LimitsSheet(workbook, Styles.of(workbook)).write(layout, "Small");
      workbook.write(stream);
    }
  }

  /** Returns the file as an independent program calculates it. */
  static Path recalculated(Path file, Path folder) throws IOException {
    Path stripped = folder.resolve("stripped.xlsx");
    CachedResults.strip(file, stripped);
    return SpreadsheetProgram.recalculate(stripped, folder);
  }

  /** Returns where the other program's numbers are not the engine's. */
  static List<String> differences(Book book, Path answer) throws IOException {
    List<String> wrong = new ArrayList<>();
    try (XSSFWorkbook theirs = new XSSFWorkbook(Files.newInputStream(answer))) {
      WorkbookLayout layout = WorkbookLayout.of(book);
      for (TableDefinition table : book.schema().tables()) {
        List<SheetColumn> columns = layout.columns(table);
        for (int position = 0; position < columns.size(); position++) {
          Column column = columns.get(position).column().orElse(null);
          boolean value = columns.get(position).role() == SheetColumn.Role.VALUE;
          for (int row = 0; value && row < book.rows(table.id()); row++) {
            XSSFCell cell =
                theirs.getSheet(table.title()).getRow(TableSheet.FIRST_ROW + row).getCell(position);
            if (column.formula().isPresent()) {
              judge(book, column, row, cell, wrong);
            }
          }
        }
      }
    }
    return wrong;
  }

  private static void judge(Book book, Column column, int row, XSSFCell cell, List<String> wrong) {
    double ours = book.number(column.reference(), row);
    boolean number =
        cell != null
            && cell.getCellType() == CellType.FORMULA
            && cell.getCachedFormulaResultType() == CellType.NUMERIC;
    double got = number ? cell.getNumericCellValue() : Double.NaN;
    boolean same =
        Double.isNaN(ours) ? Double.isNaN(got) : Math.abs(got - ours) <= 1e-12 * Math.abs(ours);
    if (!same) {
      wrong.add(
          "%s row %s: %s, engine %s: %s"
              .formatted(column, row, cell == null ? "gone" : cell.toString(), got, ours));
    }
  }
}
