package zonewright.workbook;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.sheet.Book;

/** The cover: what the workbook is, how to use it, and what to be careful with. */
final class AboutSheet {
  private static final int WIDTH = 110;

  private static final List<String> USE =
      List.of(
          "Deeply tinted cells are typed. Pale cells in italics are defaults that follow from your choices; type over one and it"
              + " turns strong. To get a default back, copy the cell above or below, or clear the cell and open the file in"
              + " Zonewright.",
          "White cells are calculated by formulas you can read. A grey “needs …” tells which cells to fill first; a blank is"
              + " never taken for zero.",
          "Add a zone by typing below the last row of the table on the sheet Zones; the formulas follow. Rows may be sorted"
              + " and filtered, and columns moved.",
          "Sheets with tables to type in are not protected, because protection would keep tables from growing. The other"
              + " sheets are protected without a password.",
          "This workbook is the design file: Zonewright opens it again, takes what is typed, and calculates everything anew."
              + " Sheets and columns of your own are not kept when Zonewright saves it.");

  private static final List<String> CAUTIONS =
      List.of(
          "Drinking water: every irrigation supply needs the backflow protection the local water supplier and plumbing code ask"
              + " for, installed and tested by those licensed to do it.",
          "Mains wiring is work for a licensed electrician, low-voltage valve wiring included where local rules say so.",
          "Before digging, have buried gas, power, water and telephone lines located and marked, and keep trenches safe to"
              + " stand in.",
          "Pipes under pressure can burst or throw fittings: close the supply and let the pressure out before opening"
              + " anything.",
          "Recycled water must be marked, kept apart from drinking water, and used only where and when rules allow it.",
          "Where it freezes, the system must be drained or blown out before winter, at a pressure and with care for eyes and"
              + " ears.",
          "Results are an aid to a designer. Local codes, water rules and licensed practice decide; check the result on the"
              + " ground.");

  private final XSSFWorkbook workbook;
  private final Styles styles;

  AboutSheet(XSSFWorkbook workbook, Styles styles) {
    this.workbook = workbook;
    this.styles = styles;
  }

  /** Writes the cover into a new sheet, to be the first. */
  XSSFSheet write(Book book, String project) {
    XSSFSheet sheet = workbook.createSheet("About");
    sheet.setColumnWidth(0, 3 * 256);
    sheet.setColumnWidth(1, WIDTH * 256);
    sheet.setDisplayGridlines(false);
    int at = 1;
    at = line(sheet, at, project, Look.TITLE, 26);
    at =
        line(
            sheet,
            at,
            "Landscape irrigation, zone by zone. Designed with Zonewright, in "
                + book.system().words()
                + ".",
            Look.SMALL,
            15);
    at = part(sheet, at + 1, "How to use this workbook", USE, Look.PLAIN);
    part(sheet, at + 1, "Take care", CAUTIONS, Look.CAUTION);
    Paper.set(sheet, project, book.system(), false, 1);
    return sheet;
  }

  private int part(XSSFSheet sheet, int at, String title, List<String> sentences, Look look) {
    int next = line(sheet, at, title, Look.BAND, 18);
    for (String sentence : sentences) {
      next = line(sheet, next, sentence, look, 13.5f * (1 + sentence.length() / 124) + 5);
    }
    return next;
  }

  private int line(XSSFSheet sheet, int at, String words, Look look, float height) {
    XSSFRow row = sheet.createRow(at);
    row.setHeightInPoints(height);
    XSSFCell cell = row.createCell(1);
    cell.setCellStyle(styles.of(look));
    cell.setCellValue(CellText.encoded(words));
    return at + 1;
  }
}
