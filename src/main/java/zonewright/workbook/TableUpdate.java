package zonewright.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCol;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTableColumn;
import zonewright.design.SheetsInUse;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Row;
import zonewright.sheet.TableDefinition;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.ExcelTable;
import zonewright.workbook.kit.PageSetup;
import zonewright.workbook.kit.SheetColumn;
import zonewright.workbook.kit.Styles;
import zonewright.workbook.kit.WorkbookLayout;

/**
 * Brings a table in a person's own file up to date where it stands: columns stay in the person's
 * order, and rows keep what the person wrote beside ours.
 */
final class TableUpdate {
  private final Book book;
  private final WorkbookLayout layout;
  private final TableDefinition table;
  private final List<SheetColumn> columns;
  private final CellWriter cells;
  private final Styles styles;
  private final Reformat reformat;
  private final TableReading.Area area;
  private final XSSFSheet sheet;
  private final Map<SheetColumn, Integer> places = new LinkedHashMap<>();
  private final List<Integer> leftOver;
  private final int first;
  private final int rowsBefore;
  private int lastColumn;
  private int last;

  /**
   * Prepares for one table.
   *
   * @param reading the table as it stands in the file
   */
  TableUpdate(
      Book book,
      WorkbookLayout layout,
      TableDefinition table,
      CellWriter cells,
      Styles styles,
      Reformat reformat,
      TableReading reading) {
    this.book = book;
    this.layout = layout;
    this.table = table;
    this.columns = layout.columns(table);
    this.cells = cells;
    this.styles = styles;
    this.reformat = reformat;
    this.area = reading.area();
    this.sheet = area.sheet();
    int lines = reading.lineCount();
    for (SheetColumn column : columns) {
      reading.position(column).ifPresent(position -> places.put(column, position));
    }
    this.leftOver = new ArrayList<>(reading.leftOver());
    this.first = area.heading() + 1;
    this.rowsBefore = Math.max(1, Math.max(lines, area.last() - area.heading()));
    this.lastColumn = area.lastColumn();
    this.last = first + rowsBefore - 1;
  }

  /** Takes our own formulas out, so that whoever moves cells sees a person's formulas only. */
  void clearOurs() {
    CellRemarks remarks = new CellRemarks(SheetCells.of(sheet));
    for (int row = first; row <= last; row++) {
      XSSFRow target = sheet.getRow(row);
      for (Map.Entry<SheetColumn, Integer> place : places.entrySet()) {
        if (place.getKey().formula().isPresent()) {
          clear(target, place.getValue());
        }
      }
      for (int position : leftOver) {
        clear(target, position);
        remarks.clear(row, position);
      }
    }
  }

  private static void clear(XSSFRow row, int position) {
    XSSFCell cell = row == null ? null : row.getCell(position);
    if (cell != null) {
      CellWriter.empty(cell);
    }
  }

  /** A sheet that was empty has the widths of its headings only. */
  private void widen() {
    places.forEach(
        (column, position) ->
            sheet.setColumnWidth(
                position,
                Math.max(sheet.getColumnWidth(position), TableSheet.width(book, column) * 256)));
  }

  /**
   * Writes what the design holds.
   *
   * @param kept in which row of the sheet each row of the design stood
   * @return in which row of the sheet each row of the design stands now
   */
  Map<Long, Integer> write(Map<Long, Integer> kept) {
    Map<Long, Integer> now = new HashMap<>();
    List<Row> rows = book.contents().rows(table.id());
    if (table.rows() instanceof TableDefinition.Rows.Named) {
      int below = last;
      for (Row row : rows) {
        Integer there = kept.get(row.id());
        now.put(row.id(), there == null ? ++below : there);
      }
      last = below;
    } else {
      arrange(rows, kept);
      for (int i = 0; i < rows.size(); i++) {
        now.put(rows.get(i).id(), first + i);
      }
      last = first + Math.max(1, rows.size()) - 1;
    }
    missingColumns();
    headings();
    if (kept.isEmpty()) {
      widen();
    }
    for (int i = 0; i < rows.size(); i++) {
      fill(now.get(rows.get(i).id()), i);
    }
    if (rows.isEmpty()) {
      fill(first, 0);
    }
    remark(rows, now);
    return now;
  }

  private void remark(List<Row> rows, Map<Long, Integer> now) {
    CellRemarks remarks = new CellRemarks(SheetCells.of(sheet));
    for (Column column : table.columns()) {
      Map<Integer, SheetColumn> by = CellRemarks.cells(places, column);
      for (Row row : by.isEmpty() ? List.<Row>of() : rows) {
        remarks.renew(now.get(row.id()), by, row.remark(column.reference().column()), cells);
      }
    }
  }

  private void arrange(List<Row> rows, Map<Long, Integer> kept) {
    List<Integer> sources = new ArrayList<>();
    rows.forEach(row -> sources.add(kept.getOrDefault(row.id(), -1)));
    boolean same = sources.size() == rowsBefore;
    for (int i = 0; i < sources.size() && same; i++) {
      same = sources.get(i) == first + i;
    }
    if (!same) {
      new RowArrangement(sheet, first, rowsBefore, ownFormulas()).to(sources);
    }
  }

  /** A person's own columns whose formula a new row takes over. */
  private Set<Integer> ownFormulas() {
    Set<Integer> columns = new HashSet<>();
    area.made()
        .ifPresent(
            made -> {
              List<CTTableColumn> all = made.getCTTable().getTableColumns().getTableColumnList();
              for (int i = 0; i < all.size(); i++) {
                if (all.get(i).isSetCalculatedColumnFormula()
                    && !places.containsValue(area.firstColumn() + i)) {
                  columns.add(area.firstColumn() + i);
                }
              }
            });
    return columns;
  }

  private void missingColumns() {
    for (SheetColumn column : columns) {
      if (column.role().closed() && !places.containsKey(column) && !leftOver.isEmpty()) {
        places.put(column, leftOver.remove(0));
      }
    }
    for (int i = 0; i < leftOver.size(); i++) {
      sheet
          .getRow(area.heading())
          .getCell(leftOver.get(i))
          .setCellValue(TableReading.NOT_USED + (i + 1));
      sheet.setColumnHidden(leftOver.get(i), true);
    }
    List<SheetColumn> missing =
        columns.stream().filter(column -> !places.containsKey(column)).toList();
    if (missing.isEmpty()) {
      return;
    }
    if (occupied(lastColumn + 1, lastColumn + missing.size())) {
      sheet.shiftColumns(lastColumn + 1, widest(), missing.size());
    }
    for (SheetColumn column : missing) {
      places.put(column, ++lastColumn);
      sheet.setColumnWidth(lastColumn, TableSheet.width(book, column) * 256);
      if (layout.open(table, column)) {
        comesOnView(lastColumn);
      } else {
        TableSheet.close(sheet, column, lastColumn);
      }
    }
  }

  /** A column that was closed is opened when somebody typed into it. */
  private void open() {
    places.forEach(
        (column, position) -> {
          CTCol there = sheet.getColumnHelper().getColumn(position, true);
          if (there != null && there.getOutlineLevel() > 0 && layout.open(table, column)) {
            there.setOutlineLevel((short) 0);
            there.setHidden(false);
            comesOnView(position);
          }
        });
  }

  /** It is printed too, and a sheet that was hidden since nothing stood on it is shown. */
  private void comesOnView(int position) {
    PageSetup.reach(sheet, position);
    if (SheetsInUse.uses(book, table)) {
      sheet.getWorkbook().setSheetHidden(sheet.getWorkbook().getSheetIndex(sheet), false);
    }
  }

  private boolean occupied(int from, int to) {
    for (org.apache.poi.ss.usermodel.Row row : sheet) {
      for (int column = from; column <= to; column++) {
        if (!SheetCell.empty(SheetCell.of((XSSFCell) row.getCell(column)))) {
          return true;
        }
      }
    }
    return false;
  }

  private int widest() {
    int widest = lastColumn + 1;
    for (org.apache.poi.ss.usermodel.Row row : sheet) {
      widest = Math.max(widest, row.getLastCellNum() - 1);
    }
    return widest;
  }

  private void headings() {
    XSSFRow row = sheet.getRow(area.heading());
    places.forEach(
        (column, position) -> {
          String heading = column.heading();
          XSSFCell cell = row.getCell(position);
          if (cell == null) {
            cell = row.createCell(position);
            cell.setCellStyle(
                styles.of(
                    column.role() == SheetColumn.Role.TYPED
                        ? CellStyleName.INPUT_HEADING
                        : CellStyleName.HEADING));
          }
          if (!heading.equalsIgnoreCase(cell.getStringCellValue())) {
            cell.setCellValue(heading);
          }
        });
  }

  private void fill(int at, int row) {
    XSSFRow target = sheet.getRow(at) == null ? sheet.createRow(at) : sheet.getRow(at);
    for (SheetColumn column : columns) {
      int position = places.get(column);
      XSSFCell cell = target.getCell(position);
      if (cell == null) {
        cells.write(target, position, table, column, row);
      } else {
        column.column().ifPresent(of -> reformat.cell(cell, of));
        cells.renew(cell, table, column, row);
      }
    }
  }

  /** Makes table, formulas of new rows and looks fit the cells again. */
  void finish(int number) {
    open();
    int totals = area.made().map(XSSFTable::getTotalsRowCount).orElse(0);
    AreaReference whole =
        new AreaReference(
            new CellReference(area.heading(), area.firstColumn()),
            new CellReference(last + totals, lastColumn),
            SpreadsheetVersion.EXCEL2007);
    if (area.made().isPresent()) {
      XSSFTable made = area.made().get();
      made.setArea(whole);
      made.updateHeaders();
    } else {
      XSSFTable made =
          ExcelTable.make(
              sheet, table.title(), number, area.heading(), last, area.firstColumn(), lastColumn);
      made.updateHeaders();
    }
    XSSFTable made =
        sheet.getTables().stream()
            .filter(each -> each.getStartRowIndex() == area.heading())
            .findFirst()
            .orElseThrow();
    leftOver.forEach(position -> calculates(made, position, Optional.empty()));
    places.forEach((column, position) -> calculates(made, position, column.formula()));
    new RuleMarks(book, layout).rows(sheet, table, places, first, last);
  }

  private void calculates(XSSFTable made, int position, Optional<String> formula) {
    CTTableColumn column =
        made.getCTTable().getTableColumns().getTableColumnArray(position - area.firstColumn());
    if (column.isSetCalculatedColumnFormula()) {
      column.unsetCalculatedColumnFormula();
    }
    formula.ifPresent(text -> column.addNewCalculatedColumnFormula().setStringValue(text));
  }

  /** Renews the lists and ranges that cells of the table keep to. */
  void validate(Validations validations) {
    for (SheetColumn column : columns) {
      if (layout.takesTyping(table, column)) {
        validations.renew(sheet, column.column().get(), first, last, places.get(column));
      }
    }
  }

  /** Returns the cells that hold the names of the rows. */
  String nameCells() {
    return Validations.cells(
        sheet.getSheetName(), places.get(layout.shown(table.columns().get(0))), first, last);
  }
}
