package zonewright.workbook;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.SheetColumn;
import zonewright.workbook.kit.Styles;
import zonewright.workbook.kit.WorkbookLayout;
import zonewright.workbook.kit.WorkbookNames;

/** Brings a one-row table in a person's own file up to date where its lines stand. */
final class SingleUpdate {
  private final XSSFWorkbook workbook;
  private final Book book;
  private final WorkbookLayout layout;
  private final TableDefinition table;
  private final CellWriter cells;
  private final Styles styles;
  private final Reformat reformat;
  private final SingleReading reading;
  private final XSSFSheet sheet;

  SingleUpdate(
      Book book,
      TableDefinition table,
      WorkbookLayout layout,
      CellWriter cells,
      Styles styles,
      Reformat reformat,
      XSSFSheet sheet) {
    this.workbook = sheet.getWorkbook();
    this.book = book;
    this.layout = layout;
    this.table = table;
    this.cells = cells;
    this.styles = styles;
    this.reformat = reformat;
    this.reading = new SingleReading(sheet);
    this.sheet = sheet;
  }

  /** Takes our own formulas out, so that whoever moves cells sees a person's formulas only. */
  void clearOurs() {
    for (SheetColumn line : layout.columns(table)) {
      XSSFCell cell = line.formula().isEmpty() ? null : cell(line);
      if (cell != null) {
        CellWriter.empty(cell);
      }
    }
  }

  /** Takes the lines of columns of one's own out that are gone; what stands beside them stays. */
  void takeOut(Set<String> columns) {
    CellRemarks remarks = new CellRemarks(SheetCells.of(sheet));
    for (String column : columns) {
      takeOut(column, remarks);
      for (int step = 1; takeOut(column + " step " + step, remarks); step++) {
        // each long formula stands in as many lines as it took
      }
    }
  }

  private boolean takeOut(String line, CellRemarks remarks) {
    Optional<Integer> row = reading.line(line);
    for (int position :
        List.of(
            reading.itemColumn(),
            reading.yoursColumn(),
            reading.usedColumn(),
            reading.unitColumn())) {
      XSSFCell cell =
          row.isEmpty() || position < 0 ? null : sheet.getRow(row.get()).getCell(position);
      if (cell != null) {
        remarks.clear(row.get(), position);
        sheet.getRow(row.get()).removeCell(cell);
      }
    }
    XSSFName name = workbook.getName(WorkbookNames.defined(table, line));
    if (row.isPresent() && name != null) {
      workbook.removeName(name);
    }
    return row.isPresent();
  }

  private String item(SheetColumn line) {
    return line.role().closed() ? line.heading() : line.column().orElseThrow().name();
  }

  private int position(SheetColumn line) {
    return line.role() == SheetColumn.Role.TYPED ? reading.yoursColumn() : reading.usedColumn();
  }

  private XSSFCell cell(SheetColumn line) {
    return reading
        .line(item(line))
        .map(row -> sheet.getRow(row).getCell(position(line)))
        .orElse(null);
  }

  /** Writes what the design holds; lines that are gone come back below the last. */
  void write(Validations validations) {
    reading
        .line(SingleSheet.UNITS_LINE)
        .ifPresent(
            row ->
                text(row, reading.usedColumn(), book.system().words(), CellStyleName.CALCULATED));
    Map<Column, Integer> lines = new HashMap<>();
    Map<String, Integer> added = new HashMap<>();
    for (SheetColumn line : layout.columns(table)) {
      int row =
          reading.line(item(line)).orElseGet(() -> added.computeIfAbsent(item(line), this::line));
      put(line, row);
      Column column = line.column().orElseThrow();
      if (line.role().closed()) {
        name(line.heading(), row, reading.usedColumn());
        continue;
      }
      lines.put(column, row);
      if (column.content() == Column.Content.NUMBER && reading.unitColumn() >= 0) {
        String unit = column.kind().unit(book.system()).symbol();
        text(row, reading.unitColumn(), unit, CellStyleName.SMALL);
      }
      if (line.role() == SheetColumn.Role.TYPED) {
        validations.renew(sheet, column, row, row, reading.yoursColumn());
        name(column.name() + " typed", row, reading.yoursColumn());
      }
      if (line.equals(layout.shown(column))) {
        name(column.name(), row, position(line));
      }
    }
    Map<SheetColumn, Integer> places = new LinkedHashMap<>();
    layout.columns(table).forEach(line -> places.put(line, position(line)));
    new CellRemarks(SheetCells.of(sheet)).renew(book, places, lines, cells);
    new RuleMarks(book, layout).single(sheet, table, lines, reading.usedColumn());
  }

  private void put(SheetColumn line, int row) {
    int position = position(line);
    XSSFCell cell = sheet.getRow(row).getCell(position);
    if (cell == null) {
      cells.write(sheet.getRow(row), position, table, line, 0);
    } else {
      reformat.cell(cell, line.column().orElseThrow());
      cells.renew(cell, table, line, 0);
    }
  }

  private int line(String item) {
    int row = sheet.getLastRowNum() + 1;
    sheet.createRow(row);
    text(row, reading.itemColumn(), item, CellStyleName.NAME);
    return row;
  }

  private void text(int at, int position, String words, CellStyleName look) {
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

  private void name(String line, int row, int position) {
    String wanted = WorkbookNames.defined(table, line);
    XSSFName name = workbook.getName(wanted);
    if (name == null) {
      name = workbook.createName();
      name.setNameName(wanted);
    }
    name.setRefersToFormula(
        "'%s'!%s"
            .formatted(
                sheet.getSheetName().replace("'", "''"),
                new CellReference(row, position, true, true).formatAsString()));
  }
}
