package zonewright.workbook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.TableDefinition;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.ColumnFormulas;
import zonewright.workbook.kit.ExcelTable;
import zonewright.workbook.kit.Look;
import zonewright.workbook.kit.Paper;
import zonewright.workbook.kit.Styles;
import zonewright.workbook.kit.WorkbookNames;

/** A table with many rows as a sheet: bands, headings, and a row for each row. */
final class TableSheet {
  private static final int BAND_ROW = 0;
  private static final int HEADING_ROW = 1;
  static final int FIRST_ROW = 2;

  private static final int NARROWEST = 11;
  private static final int WIDEST = 34;
  private static final int COLUMNS_A_PAGE = 26;
  private static final int ROWS_MEASURED = 200;
  private static final float LINE_POINTS = 12.5f;

  private final XSSFWorkbook workbook;
  private final Book book;
  private final Styles styles;
  private final CellWriter cells;
  private final ColumnFormulas formulas;
  private final Validations validations;
  private final LaterRows later;

  TableSheet(
      XSSFWorkbook workbook,
      Book book,
      Styles styles,
      ColumnFormulas formulas,
      Validations validations,
      LaterRows later) {
    this.later = later;
    this.workbook = workbook;
    this.book = book;
    this.styles = styles;
    this.formulas = formulas;
    this.cells = new CellWriter(book, formulas, styles);
    this.validations = validations;
  }

  /** Returns the sheet's last row; a table without rows has one with nothing in it. */
  static int lastRow(Book book, TableDefinition table) {
    return FIRST_ROW + Math.max(1, book.rows(table.id())) - 1;
  }

  /** Writes the table into a new sheet. */
  XSSFSheet write(TableDefinition table, int number, String project) {
    XSSFSheet sheet = workbook.createSheet(table.title());
    List<Column> columns = table.columns();
    int last = lastRow(book, table);
    bands(sheet, columns);
    headings(sheet, table);
    if (later.waits(book.rows(table.id()))) {
      waiting(sheet, table);
    } else {
      for (int row = FIRST_ROW; row <= last; row++) {
        XSSFRow target = sheet.createRow(row);
        for (int position = 0; position < columns.size(); position++) {
          cells.write(target, position, columns.get(position), row - FIRST_ROW);
        }
      }
    }
    for (int position = 0; position < columns.size(); position++) {
      Column column = columns.get(position);
      if (table.takesEntries(column)) {
        validations.add(sheet, column, FIRST_ROW, last, position);
      }
      Highlights.add(sheet, column, FIRST_ROW, last, position);
    }
    Map<Column, Integer> at = new HashMap<>();
    columns.forEach(column -> at.put(column, at.size()));
    new RuleMarks(book.blueprint(), book.system()).rows(sheet, table, at, FIRST_ROW, last);
    if (table.other().isPresent()) {
      places(sheet, table, last);
    }
    int width = sheet.getRow(HEADING_ROW).getLastCellNum();
    ExcelTable made = ExcelTable.make(sheet, table.title(), number, HEADING_ROW, last, width);
    for (int position = 0; position < columns.size(); position++) {
      Column column = columns.get(position);
      if (column.formula().isPresent()) {
        made.calculates(position, formulas.text(column));
      }
    }
    if (table.other().isPresent()) {
      made.calculates(columns.size(), formulas.place(table));
    }
    sheet.createFreezePane(1, FIRST_ROW);
    sheet.setRepeatingRows(new CellRangeAddress(BAND_ROW, HEADING_ROW, -1, -1));
    sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, 0));
    boolean empty = book.rows(table.id()) == 0;
    int pages = empty ? 1 : (columns.size() + COLUMNS_A_PAGE - 1) / COLUMNS_A_PAGE;
    sheet.setTabColor(Styles.colour(Look.HEADING.fill()));
    Paper.set(sheet, project, book.system(), true, pages, columns.size());
    return sheet;
  }

  private void waiting(XSSFSheet sheet, TableDefinition table) {
    later.add(
        sheet,
        table.columns(),
        table.other().map(any -> formulas.place(table)),
        placeStyle().getIndex(),
        book.rows(table.id()),
        cells);
  }

  private XSSFCellStyle placeStyle() {
    return styles.of(Look.CALCULATED, "0");
  }

  /** The column that says beside which row of the other table each row stands. */
  private void places(XSSFSheet sheet, TableDefinition table, int last) {
    int position = table.columns().size();
    XSSFCell heading = sheet.getRow(HEADING_ROW).createCell(position);
    heading.setCellValue(WorkbookNames.placeHeading(book.blueprint(), table));
    heading.setCellStyle(styles.of(Look.HEADING));
    for (int row = FIRST_ROW; row <= last && sheet.getRow(row) != null; row++) {
      XSSFCell cell = sheet.getRow(row).createCell(position);
      cell.setCellStyle(placeStyle());
      cell.setCellFormula(formulas.place(table));
      cell.setCellValue(row - FIRST_ROW + 1);
    }
  }

  private void bands(XSSFSheet sheet, List<Column> columns) {
    XSSFRow row = sheet.createRow(BAND_ROW);
    row.setHeightInPoints(16);
    int start = 0;
    for (int position = 0; position < columns.size(); position++) {
      XSSFCell cell = row.createCell(position);
      cell.setCellStyle(styles.of(Look.BAND));
      String band = columns.get(position).band();
      boolean ends =
          position + 1 == columns.size() || !columns.get(position + 1).band().equals(band);
      if (ends) {
        row.getCell(start).setCellValue(band);
        if (position > start) {
          sheet.addMergedRegion(new CellRangeAddress(BAND_ROW, BAND_ROW, start, position));
        }
        start = position + 1;
      }
    }
  }

  private void headings(XSSFSheet sheet, TableDefinition table) {
    List<Column> columns = table.columns();
    XSSFRow row = sheet.createRow(HEADING_ROW);
    UnitSystem system = book.system();
    int lines = 1;
    for (int position = 0; position < columns.size(); position++) {
      Column column = columns.get(position);
      String heading = column.heading(system);
      XSSFCell cell = row.createCell(position);
      cell.setCellValue(heading);
      cell.setCellStyle(styles.of(table.takesEntries(column) ? Look.INPUT_HEADING : Look.HEADING));
      int width = width(book, column);
      sheet.setColumnWidth(position, width * 256);
      lines = Math.max(lines, lines(heading, width - 1));
    }
    row.setHeightInPoints(lines * LINE_POINTS + 4);
  }

  /** Returns how many letters wide a column should be. */
  static int width(Book book, Column column) {
    String heading = column.heading(book.system());
    int width = NARROWEST;
    for (String word : heading.split(" ", -1)) {
      width = Math.max(width, word.length() + 3);
    }
    String table = column.reference().table();
    if (column.content() == Column.Content.NUMBER) {
      for (int row = 0; row < Math.min(ROWS_MEASURED, book.rows(table)); row++) {
        double value = book.number(column.reference(), row);
        if (!Double.isNaN(value)) {
          String shown = column.shown(value, book.system());
          width = Math.max(width, shown.length() + 2);
        }
      }
    } else {
      for (int row = 0; row < book.rows(table); row++) {
        if (column.takesEntries()
            && book.entry(column.reference(), row) instanceof Entry.Words words) {
          width = Math.max(width, words.text().length() + 3);
        }
      }
    }
    return Math.min(WIDEST, width);
  }

  /** Returns on how many lines words go that break between words only. */
  private static int lines(String words, int width) {
    int lines = 1;
    int used = 0;
    for (String word : words.split(" ", -1)) {
      if (used > 0 && used + 1 + word.length() > width) {
        lines++;
        used = 0;
      }
      used += (used > 0 ? 1 : 0) + word.length();
    }
    return lines;
  }
}
