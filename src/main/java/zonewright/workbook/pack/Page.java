package zonewright.workbook.pack;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import zonewright.climate.Climate;
import zonewright.formula.SpreadsheetText;
import zonewright.sheet.Column;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.CellText;
import zonewright.workbook.kit.PageSetup;
import zonewright.workbook.kit.Protection;
import zonewright.workbook.kit.Styles;

/**
 * A sheet that is filled from top to bottom. Columns are counted from 0; {@link #row} is the row
 * the next call writes into, and {@link #next} goes on to the one below.
 */
public final class Page {
  /** How many letters of small type go into the width of one letter of the usual size. */
  private static final double SMALL_LETTERS = 1.36;

  private static final double USUAL_LETTERS = 1.1;
  private static final float USUAL_LINE = 13.2f;
  private static final float SMALL_LINE = 11.2f;

  private final PackBook book;
  private final XSSFSheet sheet;
  private final Styles styles;
  private final int[] widths;
  private int row;

  Page(PackBook book, XSSFSheet sheet, Styles styles, boolean wide, int... widths) {
    this.book = book;
    this.sheet = sheet;
    this.styles = styles;
    this.widths = widths.clone();
    for (int i = 0; i < widths.length; i++) {
      sheet.setColumnWidth(i, widths[i] * 256);
    }
    sheet.setDisplayGridlines(false);
    PageSetup.set(sheet, book.project(), system(), wide, widths.length);
    Protection.on(sheet);
  }

  private UnitSystem system() {
    return book.design().book().system();
  }

  /** Returns the sheet, for what this class does not do. */
  public XSSFSheet sheet() {
    return sheet;
  }

  /** Returns the place of the next call, counted from 0. */
  public int row() {
    return row;
  }

  /** Goes on to the row below. */
  public Page next() {
    row++;
    return this;
  }

  /** Returns how a cell of the present row is called in formulas, such as {@code $B5}. */
  public String cell(int column) {
    return new CellReference(row, column, false, true).formatAsString();
  }

  /** Writes the title of the page and a line below it, and goes on. */
  public Page title(String words, String below) {
    words(0, words, CellStyleName.TITLE);
    height(26);
    next();
    if (!below.isEmpty()) {
      across(below, CellStyleName.SMALL);
    }
    return next();
  }

  /**
   * Says below the title, live, where the reference evapotranspiration comes from on which the
   * figures of the page rest.
   */
  public Page restingOnClimate() {
    row--;
    String now = book.live().result(Climate.ORIGIN, 0).words();
    String before = "Origin of the reference ET all this rests on: ";
    formula(
        0,
        SpreadsheetText.quoted(before) + "&" + book.live().all(Climate.ORIGIN),
        before + now,
        CellStyleName.SMALL);
    sheet.addMergedRegion(new CellRangeAddress(row, row, 0, widths.length - 1));
    return next().next();
  }

  /** Writes the title of a part over the whole width and goes on. */
  public Page band(String words) {
    for (int i = 0; i < widths.length; i++) {
      words(i, i == 0 ? words : "", CellStyleName.BAND);
    }
    height(18);
    return next();
  }

  /** Writes the headings of columns and goes on. */
  public Page headings(String... words) {
    int lines = 1;
    for (int i = 0; i < words.length; i++) {
      words(i, words[i], CellStyleName.HEADING);
      lines = Math.max(lines, lines(words[i], widths[i], USUAL_LETTERS));
    }
    height(lines * 12.5f + 6);
    return next();
  }

  /** Says that the row above comes again on every page when printed. */
  public Page repeated() {
    sheet.setRepeatingRows(new CellRangeAddress(row - 1, row - 1, -1, -1));
    sheet.createFreezePane(0, row);
    return this;
  }

  /** Writes a sentence or more over the whole width, as high as it needs, and goes on. */
  public Page across(String words, CellStyleName look) {
    return across(0, words, look);
  }

  /** Writes a sentence or more from a column to the right edge and goes on. */
  public Page across(int from, String words, CellStyleName look) {
    int width = 0;
    for (int i = from; i < widths.length; i++) {
      width += widths[i];
      cellAt(i).setCellStyle(styles.of(look));
    }
    put(from, words, look);
    if (from < widths.length - 1) {
      sheet.addMergedRegion(new CellRangeAddress(row, row, from, widths.length - 1));
    }
    fit(words, width, look);
    return next();
  }

  /** Writes words into a column; never a formula. */
  public Page words(int column, String words, CellStyleName look) {
    put(column, words, look);
    if (look.wrapped() && column < widths.length && !look.heading()) {
      fit(words, widths[column], look);
    }
    return this;
  }

  private void put(int column, String words, CellStyleName look) {
    XSSFCell cell = cellAt(column);
    cell.setCellStyle(CellText.looksLikeFormula(words) ? styles.literal(look) : styles.of(look));
    if (!words.isEmpty()) {
      cell.setCellValue(CellText.encoded(words));
    }
  }

  /** Lets a cell of words reach to the right edge, as high as it needs. */
  public Page reaching(int from, String words, CellStyleName look) {
    int width = 0;
    for (int i = from; i < widths.length; i++) {
      width += widths[i];
    }
    sheet.addMergedRegion(new CellRangeAddress(row, row, from, widths.length - 1));
    fit(words, width, look);
    return this;
  }

  /** Writes a number in a format such as {@link Styles#format}. */
  public Page number(int column, double value, String format, CellStyleName look) {
    XSSFCell cell = cellAt(column);
    cell.setCellStyle(styles.of(look, format));
    cell.setCellValue(value);
    return this;
  }

  /**
   * Writes a formula, without equals sign, with the number it gives now.
   *
   * @param result what other programs show before they calculate; not-a-number for none
   */
  public Page formula(
      int column, String formula, double result, String format, CellStyleName look) {
    XSSFCell cell = cellAt(column);
    cell.setCellStyle(styles.of(look, format));
    cell.setCellFormula(formula);
    if (!Double.isNaN(result)) {
      cell.setCellValue(result);
    }
    return this;
  }

  /** Writes a formula, without equals sign, with the words it gives now. */
  public Page formula(int column, String formula, String result, CellStyleName look) {
    XSSFCell cell = cellAt(column);
    cell.setCellStyle(styles.of(look));
    cell.setCellFormula(formula);
    cell.setCellValue(CellText.encoded(result));
    return this;
  }

  /** Shows a cell of the design live: a formula that refers to it, in its own number format. */
  public Page live(int column, Column shown, int of, CellStyleName look) {
    return live(column, shown, of, book.live().at(shown, of), look);
  }

  /**
   * Shows a cell of the office's design: live where its table stands in the workbook, otherwise as
   * the value it has.
   */
  Page ofOffice(int column, Column shown, int of, CellStyleName look) {
    if (book.holds(shown)) {
      return live(column, shown, of, look);
    }
    put(column, shown, Live.result(book.office().book(), shown, of), look);
    return this;
  }

  private void put(int column, Column shown, Live.Result result, CellStyleName look) {
    XSSFCell cell = cellAt(column);
    Column held = book.office().book().schema().column(shown.reference());
    cell.setCellStyle(styles.of(look, Styles.format(held, system())));
    if (Double.isNaN(result.number())) {
      cell.setCellValue(CellText.encoded(result.words()));
    } else {
      cell.setCellValue(result.number());
    }
  }

  /**
   * Shows a cell of the design live in the row whose name stands in a cell of the page.
   *
   * @param nameCell where the name stands, such as {@link #cell}
   */
  public Page liveByName(int column, Column shown, int of, String nameCell, CellStyleName look) {
    return live(column, shown, of, book.live().ofRowNamed(shown, nameCell), look);
  }

  /** Shows what stands in a cell of the design, found by a text of one's own. */
  Page live(int column, Column shown, int of, String reference, CellStyleName look) {
    boolean number = shown.content() == Column.Content.NUMBER;
    XSSFCell cell = cellAt(column);
    // A reference to an empty cell counts as 0 elsewhere; as words it stays empty.
    if (book.live().has(shown)) {
      cell.setCellFormula(
          number
              ? "IF(ISNUMBER(%1$s),%1$s,\"–\")".formatted(reference)
              : "IFERROR(%s&\"\",\"–\")".formatted(reference));
    }
    put(column, shown, book.live().result(shown, of), look);
    return this;
  }

  /** Makes the present row at least as high as this, in points. */
  public Page height(float points) {
    XSSFRow present = rowAt();
    if (present.getHeightInPoints() < points || !present.getCTRow().isSetHt()) {
      present.setHeightInPoints(points);
    }
    return this;
  }

  /** Leaves all from the present row on out of what is printed. */
  public Page printedToHere() {
    int index = sheet.getWorkbook().getSheetIndex(sheet);
    sheet.getWorkbook().setPrintArea(index, 0, widths.length - 1, 0, row - 1);
    return this;
  }

  /** Makes all of it fit on one page of paper. */
  public Page onOnePage() {
    sheet.getPrintSetup().setFitHeight((short) 1);
    return this;
  }

  /** Starts a new page on paper above the present row. */
  public Page breakHere() {
    if (row > 0) {
      sheet.setRowBreak(row - 1);
    }
    return this;
  }

  private void fit(String words, int width, CellStyleName look) {
    boolean small = look == CellStyleName.SMALL;
    int lines = lines(words, width, small ? SMALL_LETTERS : USUAL_LETTERS);
    height(lines * (small ? SMALL_LINE : USUAL_LINE) + 5);
  }

  private static int lines(String words, int width, double letters) {
    int lines = 0;
    for (String part : words.split("\n", -1)) {
      int used = 0;
      lines++;
      for (String word : part.split(" ", -1)) {
        if (used > 0 && used + 1 + word.length() > (width - 2) * letters) {
          lines++;
          used = 0;
        }
        used += (used > 0 ? 1 : 0) + word.length();
      }
    }
    return lines;
  }

  private XSSFRow rowAt() {
    XSSFRow present = sheet.getRow(row);
    return present == null ? sheet.createRow(row) : present;
  }

  private XSSFCell cellAt(int column) {
    XSSFCell cell = rowAt().getCell(column);
    return cell == null ? rowAt().createCell(column) : cell;
  }
}
