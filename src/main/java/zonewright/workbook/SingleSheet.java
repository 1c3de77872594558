package zonewright.workbook;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellRangeAddress;
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
import zonewright.workbook.kit.PageSetup;
import zonewright.workbook.kit.SheetColumn;
import zonewright.workbook.kit.Styles;
import zonewright.workbook.kit.WorkbookLayout;
import zonewright.workbook.kit.WorkbookNames;

/** A one-row table as a sheet: a line for each column, its cell known by a name. */
final class SingleSheet {
  /** What stands over the columns of the sheet; reading looks for the first four. */
  static final String ITEM = "Item";

  static final String YOURS = "Yours";
  static final String USED = "Used";
  static final String UNIT = "Unit";

  /** The line that says in which units the whole workbook is. */
  static final String UNITS_LINE = "Units";

  /** How deep in the groups of lines stand those not looked at first, and what is in between. */
  private static final short NOT_AT_FIRST = 1;

  private static final short BETWEEN = 2;

  static final int YOURS_AT = 1;
  static final int USED_AT = 2;

  /** Where a figure comes from stands behind a sign that opens it. */
  private static final int SOURCE_AT = 5;

  private static final String[] HEADINGS = {ITEM, YOURS, USED, UNIT, "What it means", "Where from"};

  /** Names are bold and set in a little: they take more than a figure's width a letter. */
  private static final int ROOM_FOR_BOLD = 6;

  private static final int[] WIDTHS = {27, 20, 20, 9, 80, 58};
  private static final int VALUE_LETTERS_A_LINE = 18;
  private static final int SMALL_LETTERS_A_WIDTH = 104;

  private final XSSFWorkbook workbook;
  private final Book book;
  private final Styles styles;
  private final CellWriter cells;
  private final WorkbookLayout layout;
  private final Validations validations;

  SingleSheet(
      XSSFWorkbook workbook,
      Book book,
      Styles styles,
      WorkbookLayout layout,
      Validations validations) {
    this.workbook = workbook;
    this.book = book;
    this.styles = styles;
    this.layout = layout;
    this.cells = new CellWriter(book, styles);
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
      if (!layout.has(column)) {
        continue;
      }
      if (!column.band().equals(band)) {
        band = column.band();
        boolean any =
            table.columns().stream()
                .anyMatch(each -> each.band().equals(column.band()) && opens(table, each));
        at = band(sheet, at, band, any);
      }
      lines.put(column, at);
      at = lines(sheet, at, table, column);
    }
    remarks(sheet, table, lines);
    Highlights.add(sheet, new CellRangeAddress(1, at, USED_AT, USED_AT));
    new RuleMarks(book, layout).single(sheet, table, lines, USED_AT);
    sheet.createFreezePane(1, 1);
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    sheet.setTabColor(Styles.colour(CellStyleName.INPUT_HEADING.fill()));
    sheet.setColumnHidden(SOURCE_AT, true);
    sheet.getColumnHelper().getColumn(SOURCE_AT, false).setOutlineLevel((short) 1);
    sheet.getCTWorksheet().getSheetFormatPr().setOutlineLevelCol((short) 1);
    sheet.getCTWorksheet().getSheetFormatPr().setOutlineLevelRow(BETWEEN);
    sheet.setRowSumsBelow(false);
    PageSetup.set(sheet, project, book.system(), true, HEADINGS.length);
    return sheet;
  }

  private void remarks(XSSFSheet sheet, TableDefinition table, Map<Column, Integer> lines) {
    Map<SheetColumn, Integer> places = new LinkedHashMap<>();
    layout
        .columns(table)
        .forEach(
            line -> places.put(line, line.role() == SheetColumn.Role.TYPED ? YOURS_AT : USED_AT));
    new CellRemarks(SheetCells.of(sheet)).renew(book, places, lines, cells);
  }

  private void headings(XSSFSheet sheet) {
    XSSFRow row = sheet.createRow(0);
    row.setHeightInPoints(20);
    for (int i = 0; i < HEADINGS.length; i++) {
      XSSFCell cell = row.createCell(i);
      cell.setCellValue(HEADINGS[i]);
      cell.setCellStyle(
          styles.of(i == YOURS_AT ? CellStyleName.INPUT_HEADING : CellStyleName.HEADING));
      sheet.setColumnWidth(i, WIDTHS[i] * 256);
    }
  }

  private int units(XSSFSheet sheet, int at) {
    XSSFRow row = sheet.createRow(at);
    small(row, 0, UNITS_LINE, CellStyleName.NAME);
    small(row, USED_AT, book.system().words(), CellStyleName.CALCULATED);
    small(row, 3, "", CellStyleName.SMALL);
    String words =
        "All numbers of this workbook are in these units. Change them in Zonewright, which converts every number.";
    small(row, 4, words, CellStyleName.SMALL);
    row.setHeightInPoints(height(words));
    return at + 1;
  }

  private boolean opens(TableDefinition table, Column column) {
    return layout.columns(table).stream()
        .anyMatch(line -> line.column().equals(Optional.of(column)) && layout.open(table, line));
  }

  /** Puts a line behind the sign beside the one above it. */
  private static void close(XSSFRow row, short level) {
    row.setZeroHeight(true);
    row.getCTRow().setOutlineLevel(level);
  }

  private int band(XSSFSheet sheet, int at, String band, boolean open) {
    XSSFRow row = sheet.createRow(at);
    if (!open) {
      close(row, NOT_AT_FIRST);
    }
    for (int i = 0; i < HEADINGS.length; i++) {
      small(row, i, i == 0 ? band : "", CellStyleName.BAND);
    }
    return at + 1;
  }

  /** Writes the line of a column and, closed, those of what is calculated in between. */
  private int lines(XSSFSheet sheet, int first, TableDefinition table, Column column) {
    XSSFRow row = sheet.createRow(first);
    small(row, 0, column.name(), CellStyleName.NAME);
    boolean number = column.content() == Column.Content.NUMBER;
    small(row, 3, number ? column.kind().unit(book.system()).symbol() : "", CellStyleName.SMALL);
    small(row, 4, column.meaning(), CellStyleName.SMALL);
    small(row, 5, column.source(), CellStyleName.SMALL);
    int next = first + 1;
    float height = height(column.meaning());
    for (SheetColumn line : layout.columns(table)) {
      if (!line.column().equals(Optional.of(column))) {
        continue;
      }
      if (line.role().closed()) {
        XSSFRow between = sheet.createRow(next++);
        small(between, 0, line.heading(), CellStyleName.SMALL);
        cells.write(between, USED_AT, table, line, 0);
        close(between, BETWEEN);
        name(table, line.heading(), between.getRowNum(), USED_AT);
      } else {
        boolean typed = line.role() == SheetColumn.Role.TYPED;
        int position = typed ? YOURS_AT : USED_AT;
        cells.write(row, position, table, line, 0);
        height = Math.max(height, height(row.getCell(position)));
        if (typed) {
          validations.add(sheet, column, first, first, YOURS_AT);
          name(table, column.name() + " typed", first, YOURS_AT);
        }
      }
    }
    name(table, column.name(), first, row.getCell(USED_AT) == null ? YOURS_AT : USED_AT);
    row.setHeightInPoints(height);
    if (!opens(table, column)) {
      close(row, NOT_AT_FIRST);
    }
    return next;
  }

  private void name(TableDefinition table, String line, int row, int position) {
    XSSFName name = workbook.createName();
    name.setNameName(WorkbookNames.defined(table, line));
    name.setRefersToFormula(
        "'%s'!%s"
            .formatted(
                table.title(), new CellReference(row, position, true, true).formatAsString()));
  }

  private static float height(XSSFCell value) {
    boolean words = value.getCellType() == CellType.STRING;
    int letters = words ? value.getStringCellValue().length() : 0;
    return 5 + 13 * (1 + letters / VALUE_LETTERS_A_LINE);
  }

  private static float height(String meaning) {
    int lines = 1 + Math.max(0, meaning.length() - 1) / SMALL_LETTERS_A_WIDTH;
    return Math.max(17, lines * 11.5f + 4);
  }

  private void small(XSSFRow row, int position, String words, CellStyleName look) {
    XSSFCell cell = row.createCell(position);
    cell.setCellStyle(styles.of(look));
    if (!words.isEmpty()) {
      cell.setCellValue(words);
    }
  }
}
