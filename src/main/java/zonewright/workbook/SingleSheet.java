package zonewright.workbook;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.workbook.kit.ColumnFormulas;
import zonewright.workbook.kit.Look;
import zonewright.workbook.kit.Paper;
import zonewright.workbook.kit.Styles;
import zonewright.workbook.kit.WorkbookNames;

/** A one-row table as a sheet: a line for each column, its cell known by a name. */
final class SingleSheet {
  /** What stands over the columns of the sheet; reading looks for the first three. */
  static final String ITEM = "Item";

  static final String VALUE = "Value";
  static final String UNIT = "Unit";

  /** The line that says in which units the whole workbook is. */
  static final String UNITS_LINE = "Units";

  private static final String[] HEADINGS = {ITEM, VALUE, UNIT, "What it means", "Where from"};

  /** Names are bold and set in a little: they take more than a figure's width a letter. */
  private static final int ROOM_FOR_BOLD = 6;

  private static final int[] WIDTHS = {27, 38, 9, 62, 58};
  private static final int VALUE_LETTERS_A_LINE = 36;
  private static final int SMALL_LETTERS_A_WIDTH = 80;

  private final XSSFWorkbook workbook;
  private final Book book;
  private final Styles styles;
  private final CellWriter cells;
  private final Validations validations;

  SingleSheet(
      XSSFWorkbook workbook,
      Book book,
      Styles styles,
      ColumnFormulas formulas,
      Validations validations) {
    this.workbook = workbook;
    this.book = book;
    this.styles = styles;
    this.cells = new CellWriter(book, formulas, styles);
    this.validations = validations;
  }

  /** Writes the table into a new sheet. */
  XSSFSheet write(TableDefinition table, String project, boolean saysUnits) {
    XSSFSheet sheet = workbook.createSheet(table.title());
    headings(sheet);
    int longest = table.columns().stream().mapToInt(c -> c.name().length()).max().orElse(0);
    sheet.setColumnWidth(0, Math.max(WIDTHS[0], longest + ROOM_FOR_BOLD) * 256);
    int at = 1;
    if (saysUnits) {
      at = units(sheet, at);
    }
    Map<Column, Integer> lines = new HashMap<>();
    String band = "";
    for (Column column : table.columns()) {
      if (!column.band().equals(band)) {
        band = column.band();
        at = band(sheet, at, band);
      }
      line(sheet.createRow(at), table, column);
      lines.put(column, at);
      if (column.takesEntries()) {
        validations.add(sheet, column, at, at, 1);
      }
      Highlights.add(sheet, column, at, at, 1);
      at++;
    }
    new RuleMarks(book.blueprint(), book.system()).single(sheet, table, lines, 1);
    sheet.createFreezePane(1, 1);
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    sheet.setTabColor(Styles.colour(Look.INPUT_HEADING.fill()));
    Paper.set(sheet, project, book.system(), true, 1, HEADINGS.length);
    return sheet;
  }

  private void headings(XSSFSheet sheet) {
    XSSFRow row = sheet.createRow(0);
    row.setHeightInPoints(20);
    for (int i = 0; i < HEADINGS.length; i++) {
      XSSFCell cell = row.createCell(i);
      cell.setCellValue(HEADINGS[i]);
      cell.setCellStyle(styles.of(i == 1 ? Look.INPUT_HEADING : Look.HEADING));
      sheet.setColumnWidth(i, WIDTHS[i] * 256);
    }
  }

  private int units(XSSFSheet sheet, int at) {
    XSSFRow row = sheet.createRow(at);
    small(row, 0, UNITS_LINE, Look.NAME);
    small(row, 1, book.system().words(), Look.CALCULATED);
    small(row, 2, "", Look.SMALL);
    String words =
        "All numbers of this workbook are in these units. Change them in Zonewright, which converts every number.";
    small(row, 3, words, Look.SMALL);
    row.setHeightInPoints(height(words, ""));
    return at + 1;
  }

  private int band(XSSFSheet sheet, int at, String band) {
    XSSFRow row = sheet.createRow(at);
    for (int i = 0; i < HEADINGS.length; i++) {
      small(row, i, i == 0 ? band : "", Look.BAND);
    }
    return at + 1;
  }

  private void line(XSSFRow row, TableDefinition table, Column column) {
    small(row, 0, column.name(), Look.NAME);
    cells.write(row, 1, column, 0);
    boolean number = column.content() == Column.Content.NUMBER;
    String unit = number ? column.kind().unit(book.system()).symbol() : "";
    small(row, 2, unit, Look.SMALL);
    small(row, 3, column.meaning(), Look.SMALL);
    small(row, 4, column.source(), Look.SMALL);
    row.setHeightInPoints(
        Math.max(height(column.meaning(), column.source()), height(row.getCell(1))));
    XSSFName name = workbook.createName();
    name.setNameName(WorkbookNames.defined(table, column));
    name.setRefersToFormula("'%s'!$B$%s".formatted(table.title(), row.getRowNum() + 1));
  }

  private static float height(XSSFCell value) {
    boolean words = value.getCellType() == CellType.STRING;
    int letters = words ? value.getStringCellValue().length() : 0;
    return 5 + 13 * (1 + letters / VALUE_LETTERS_A_LINE);
  }

  private static float height(String one, String other) {
    int longest = Math.max(one.length(), other.length());
    int lines = 1 + Math.max(0, longest - 1) / SMALL_LETTERS_A_WIDTH;
    return Math.max(17, lines * 11.5f + 4);
  }

  private void small(XSSFRow row, int position, String words, Look look) {
    XSSFCell cell = row.createCell(position);
    cell.setCellStyle(styles.of(look));
    if (!words.isEmpty()) {
      cell.setCellValue(words);
    }
  }
}
