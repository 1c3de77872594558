package zonewright.workbook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCol;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTSheetFormatPr;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.sheet.TableDefinition;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.ExcelTable;
import zonewright.workbook.kit.PageSetup;
import zonewright.workbook.kit.SheetColumn;
import zonewright.workbook.kit.Styles;
import zonewright.workbook.kit.WorkbookLayout;

/** A table with many rows as a sheet: bands, headings, and a row for each row. */
final class TableSheet {
  private static final int BAND_ROW = 0;
  private static final int HEADING_ROW = 1;
  static final int FIRST_ROW = 2;

  private static final int NARROWEST = 11;
  private static final int WIDEST = 34;
  private static final int ROWS_MEASURED = 200;
  private static final float LINE_POINTS = 12.5f;
  private static final float WORDS_POINTS = 13.2f;

  private final XSSFWorkbook workbook;
  private final Book book;
  private final Styles styles;
  private final CellWriter cells;
  private final WorkbookLayout layout;
  private final Validations validations;
  private final LaterRows later;

  TableSheet(
      XSSFWorkbook workbook,
      Book book,
      Styles styles,
      WorkbookLayout layout,
      Validations validations,
      LaterRows later) {
    this.later = later;
    this.workbook = workbook;
    this.book = book;
    this.styles = styles;
    this.layout = layout;
    this.cells = new CellWriter(book, styles);
    this.validations = validations;
  }

  /** Puts notes on cells, and colours into those that are there already. */
  private void remarks(XSSFSheet sheet, TableDefinition table, Map<SheetColumn, Integer> places) {
    CellRemarks remarks = new CellRemarks(SheetCells.of(sheet));
    for (int row = 0; row < book.rows(table.id()); row++) {
      int place = FIRST_ROW + row;
      Row held = book.contents().row(table.id(), row);
      for (String on : held.remarks().keySet()) {
        Optional<Column> column = table.column(on);
        Map<Integer, SheetColumn> by =
            column.isPresent() ? CellRemarks.cells(places, column.get()) : Map.of();
        if (by.isEmpty()) {
          continue;
        }
        if (sheet.getRow(place) != null) {
          remarks.renew(place, by, held.remark(on), cells);
        } else {
          remarks.note(place, by.keySet().iterator().next(), held.remark(on).note());
        }
      }
    }
  }

  /** Returns the sheet's last row; a table without rows has one with nothing in it. */
  static int lastRow(Book book, TableDefinition table) {
    return FIRST_ROW + Math.max(1, book.rows(table.id())) - 1;
  }

  /** Writes the table into a new sheet. */
  XSSFSheet write(TableDefinition table, int number, String project) {
    XSSFSheet sheet = workbook.createSheet(table.title());
    List<SheetColumn> columns = layout.columns(table);
    Map<SheetColumn, Integer> at = new LinkedHashMap<>();
    columns.forEach(column -> at.put(column, at.size()));
    int last = lastRow(book, table);
    bands(sheet, columns);
    headings(sheet, columns);
    if (later.waits(book.rows(table.id()))) {
      later.add(sheet, table, columns, book, cells);
    } else {
      for (int row = FIRST_ROW; row <= last; row++) {
        XSSFRow target = sheet.createRow(row);
        for (int position = 0; position < columns.size(); position++) {
          cells.write(target, position, table, columns.get(position), row - FIRST_ROW);
        }
        fit(sheet, target, columns, row - FIRST_ROW);
      }
    }
    remarks(sheet, table, at);
    for (SheetColumn column : columns) {
      if (layout.takesTyping(table, column)) {
        validations.add(sheet, column.column().get(), FIRST_ROW, last, at.get(column));
      }
    }
    Highlights.add(sheet, FIRST_ROW, last, columns.size());
    new RuleMarks(book, layout).rows(sheet, table, at, FIRST_ROW, last);
    ExcelTable made =
        ExcelTable.make(sheet, table.title(), number, HEADING_ROW, last, columns.size());
    for (SheetColumn column : columns) {
      column.formula().ifPresent(formula -> made.calculates(at.get(column), formula));
    }
    List<Integer> open =
        IntStream.range(0, columns.size())
            .filter(position -> layout.open(table, columns.get(position)))
            .boxed()
            .toList();
    for (SheetColumn column : columns) {
      if (!layout.open(table, column)) {
        close(sheet, column, at.get(column));
      }
    }
    sheet.createFreezePane(1, FIRST_ROW);
    sheet.setRepeatingRows(new CellRangeAddress(BAND_ROW, HEADING_ROW, -1, -1));
    sheet.setTabColor(Styles.colour(CellStyleName.HEADING.fill()));
    int printed = open.isEmpty() ? 1 : open.get(open.size() - 1) + 1;
    if (PageSetup.set(sheet, project, book.system(), true, printed) > 1) {
      sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, 0));
    }
    return sheet;
  }

  /**
   * Closes a column that is not on view, with those beside it; what is calculated in between is a
   * group within: said in the format's own terms, for the library's way of grouping names all
   * columns a sheet can have.
   *
   * <p>Source: ECMA-376 part 1, 18.3.1.13 (col).
   */
  static void close(XSSFSheet sheet, SheetColumn column, int position) {
    short level = (short) (column.role().closed() ? 2 : 1);
    CTCol there = sheet.getColumnHelper().getColumn(position, true);
    there.setOutlineLevel(level);
    there.setHidden(true);
    CTSheetFormatPr format = sheet.getCTWorksheet().getSheetFormatPr();
    format.setOutlineLevelCol((short) Math.max(format.getOutlineLevelCol(), level));
  }

  private void bands(XSSFSheet sheet, List<SheetColumn> columns) {
    XSSFRow row = sheet.createRow(BAND_ROW);
    row.setHeightInPoints(16);
    int start = 0;
    for (int position = 0; position < columns.size(); position++) {
      XSSFCell cell = row.createCell(position);
      cell.setCellStyle(styles.of(CellStyleName.BAND));
      String band = band(columns.get(position));
      boolean ends =
          position + 1 == columns.size() || !band(columns.get(position + 1)).equals(band);
      if (ends) {
        row.getCell(start).setCellValue(band);
        if (position > start) {
          sheet.addMergedRegion(new CellRangeAddress(BAND_ROW, BAND_ROW, start, position));
        }
        start = position + 1;
      }
    }
  }

  /** Makes a row as high as its longest words need. */
  private void fit(XSSFSheet sheet, XSSFRow row, List<SheetColumn> columns, int of) {
    int most = 1;
    for (int position = 0; position < columns.size(); position++) {
      SheetColumn column = columns.get(position);
      if (column.role() == SheetColumn.Role.TYPED
          && book.rows(column.column().get().reference().table()) > of
          && book.entry(column.column().get().reference(), of) instanceof Entry.Words words) {
        int room = sheet.getColumnWidth(position) / 256 - 2;
        most = Math.max(most, lines(words.text(), room));
      }
    }
    if (most > 1) {
      row.setHeightInPoints(most * WORDS_POINTS + 3);
    }
  }

  private static String band(SheetColumn column) {
    return column.role().closed() || column.role() == SheetColumn.Role.MISSING
        ? column.role() == SheetColumn.Role.MISSING ? "" : "In between"
        : column.column().map(Column::band).orElse("");
  }

  private void headings(XSSFSheet sheet, List<SheetColumn> columns) {
    XSSFRow row = sheet.createRow(HEADING_ROW);
    int lines = 1;
    for (int position = 0; position < columns.size(); position++) {
      SheetColumn column = columns.get(position);
      XSSFCell cell = row.createCell(position);
      cell.setCellValue(column.heading());
      boolean typed = column.role() == SheetColumn.Role.TYPED;
      cell.setCellStyle(styles.of(typed ? CellStyleName.INPUT_HEADING : CellStyleName.HEADING));
      int width = width(book, column);
      sheet.setColumnWidth(position, width * 256);
      lines = Math.max(lines, lines(column.heading(), width - 1));
    }
    row.setHeightInPoints(lines * LINE_POINTS + 4);
  }

  /** Returns how many letters wide a column of a sheet should be. */
  static int width(Book book, SheetColumn column) {
    boolean shows =
        column.role() == SheetColumn.Role.VALUE || column.role() == SheetColumn.Role.TYPED;
    int width = NARROWEST;
    for (String word : column.heading().split(" ", -1)) {
      width = Math.max(width, word.length() + 3);
    }
    return shows ? width(book, column.column().orElseThrow(), width) : Math.min(WIDEST, width);
  }

  private static int width(Book book, Column column, int narrowest) {
    int width = narrowest;
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
