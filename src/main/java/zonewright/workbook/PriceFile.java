package zonewright.workbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.estimate.Parts;
import zonewright.estimate.PriceBook;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.sheet.ListText;
import zonewright.trade.Sheets;
import zonewright.units.DecimalSign;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.CellText;
import zonewright.workbook.kit.PageSetup;
import zonewright.workbook.kit.Styles;

/**
 * A price book as a workbook of one sheet, to keep beside the designs and to send to suppliers.
 * Prices are read from such a workbook, from any other with a heading “Item”, and from a design.
 */
public final class PriceFile {
  private static final String TITLE = "Prices";
  private static final int ROWS_SEARCHED = 20;
  private static final int MOST_CELLS_A_ROW = 200;
  private static final int NARROWEST = 9;
  private static final int WIDEST = 44;

  private PriceFile() {}

  /** Says whether a file is to be a workbook, by its ending. */
  public static boolean isWorkbook(Path file) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx");
  }

  /**
   * Writes the price book of a design, as a workbook or, by its ending, as comma-separated text.
   *
   * @throws DesignFileException with a sentence that says what to do, when it cannot be written
   */
  public static void write(Book book, Path file) throws DesignFileException {
    if (isWorkbook(file)) {
      workbook(book, file);
    } else {
      byte[] text = new PriceBook(book).text().getBytes(StandardCharsets.UTF_8);
      SafeSave.replace(file, stream -> stream.write(text));
    }
  }

  /** A workbook: a heading for each column a person types into, a row an item. */
  private static void workbook(Book book, Path file) throws DesignFileException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Styles styles = Styles.of(workbook);
      XSSFSheet sheet = workbook.createSheet(TITLE);
      List<Column> columns = PriceBook.columns();
      XSSFRow head = sheet.createRow(0);
      head.setHeightInPoints(28);
      for (int at = 0; at < columns.size(); at++) {
        XSSFCell cell = head.createCell(at);
        cell.setCellValue(columns.get(at).heading(book.system()));
        cell.setCellStyle(styles.of(CellStyleName.INPUT_HEADING));
        sheet.setColumnWidth(at, 256 * width(book, columns.get(at)));
      }
      for (int row = 0; row < book.rows(Sheets.PARTS); row++) {
        item(book, row, columns, sheet, styles);
      }
      sheet.createFreezePane(1, 1);
      PageSetup.set(sheet, TITLE, book.system(), true, columns.size());
      sheet.setRepeatingRows(CellRangeAddress.valueOf("1:1"));
      SafeSave.replace(file, workbook::write);
    } catch (CellText.TooLong | IOException problem) {
      throw new DesignFileException(
          "%s was not saved: %s".formatted(file, problem.getMessage()), problem);
    }
  }

  private static int width(Book book, Column column) {
    int width = NARROWEST;
    for (String word : column.heading(book.system()).split(" ", -1)) {
      width = Math.max(width, word.length() + 3);
    }
    for (int row = 0; row < book.rows(Sheets.PARTS); row++) {
      if (book.entry(column.reference(), row) instanceof Entry.Words words) {
        width = Math.max(width, words.text().length() + 2);
      }
    }
    return Math.min(WIDEST, width);
  }

  private static void item(
      Book book, int row, List<Column> columns, XSSFSheet sheet, Styles styles) {
    List<Entry> entries =
        columns.stream().map(column -> book.entry(column.reference(), row)).toList();
    if (entries.stream().allMatch(Entry.BLANK::equals)) {
      return;
    }
    XSSFRow line = sheet.createRow(sheet.getLastRowNum() + 1);
    for (int at = 0; at < columns.size(); at++) {
      Column column = columns.get(at);
      XSSFCell cell = line.createCell(at);
      boolean words = column.content() != Column.Content.NUMBER;
      cell.setCellStyle(
          words
              ? styles.of(CellStyleName.INPUT_WORDS)
              : styles.of(CellStyleName.INPUT, Styles.format(column, book.system())));
      if (entries.get(at) instanceof Entry.Figure figure) {
        cell.setCellValue(figure.value());
      } else if (!entries.get(at).equals(Entry.BLANK)) {
        String text = Entries.typed(column, entries.get(at));
        cell.setCellValue(CellText.encoded(text));
        if (CellText.looksLikeFormula(text)) {
          cell.setCellStyle(styles.literal(CellStyleName.INPUT_WORDS));
        }
      }
    }
  }

  /**
   * Reads the lines of a price book for {@link PriceBook#edit(ListText)}: of a design its own, of
   * another workbook the first sheet with a heading “Item”.
   *
   * @throws DesignFileException with a sentence that says why, when the file cannot be read
   */
  public static ListText read(Path file) throws DesignFileException {
    return WorkbookOpening.with(
        file,
        Progress.UNWATCHED,
        source ->
            ListText.ofCells(
                source
                        .workbook()
                        .getProperties()
                        .getCustomProperties()
                        .contains(DesignWorkbook.MARK)
                    ? ofDesign(DesignReader.read(source, file.toString()))
                    : lines(whole(source, priced(source.workbook())))));
  }

  /** Of a sheet so long that it is read row by row, the workbook holds but the beginning. */
  private static XSSFSheet whole(WorkbookSource source, XSSFSheet sheet)
      throws DesignFileException {
    if (source.longSheets().containsKey(sheet.getSheetName())) {
      throw new DesignFileException(
          "The sheet “%s” is too long for a price book; copy the items you need into a workbook of their own."
              .formatted(sheet.getSheetName()));
    }
    return sheet;
  }

  private static List<List<String>> ofDesign(DesignFile.Opened opened) {
    return new PriceBook(opened.design().book()).lines();
  }

  private static XSSFSheet priced(XSSFWorkbook workbook) {
    for (int at = 0; at < workbook.getNumberOfSheets(); at++) {
      XSSFSheet sheet = workbook.getSheetAt(at);
      for (int row = 0; row < ROWS_SEARCHED; row++) {
        if (line(sheet.getRow(row)).stream()
            .anyMatch(text -> text.strip().equalsIgnoreCase(Parts.ITEM_NAME.name()))) {
          return sheet;
        }
      }
    }
    return workbook.getSheetAt(0);
  }

  private static List<List<String>> lines(XSSFSheet sheet) {
    List<List<String>> lines = new ArrayList<>();
    for (int row = 0; row <= sheet.getLastRowNum(); row++) {
      lines.add(line(sheet.getRow(row)));
    }
    return lines;
  }

  private static List<String> line(XSSFRow row) {
    List<String> cells = new ArrayList<>();
    for (int at = 0; row != null && at < Math.min(row.getLastCellNum(), MOST_CELLS_A_ROW); at++) {
      cells.add(row.getCell(at) == null ? "" : typed(row.getCell(at)));
    }
    return cells;
  }

  /** What a person would type to get the cell; of a formula, what it last came to. */
  private static String typed(XSSFCell cell) {
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    return switch (type) {
      case NUMERIC ->
          cell.getCellStyle().getDataFormatString().contains("%")
              ? QuantityText.typed(cell.getNumericCellValue(), QuantityKind.SHARE)
              : DecimalSign.unmistakable(cell.getNumericCellValue());
      case STRING -> cell.getStringCellValue();
      case BOOLEAN -> cell.getBooleanCellValue() ? "TRUE" : "FALSE";
      case ERROR -> cell.getErrorCellString();
      default -> "";
    };
  }
}
