package zonewright.workbook.kit;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Footer;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.units.UnitSystem;

/** How a sheet comes out on paper. */
public final class PageSetup {
  /** So many letters of the usual width go across a page: 7 of 96 parts of an inch each. */
  private static final int LETTERS_ACROSS = 105;

  private static final int LETTERS_ACROSS_LANDSCAPE = 140;

  /** Letters of 10 point stay 8 point large. */
  private static final double SMALLEST_PART = 0.8;

  /** Whole columns from the first one on. */
  private static final Pattern OURS = Pattern.compile(".*!\\$A:\\$([A-Z]+)");

  private PageSetup() {}

  /**
   * Sets a sheet up for printing on paper of the usual size, over as many pages as it takes for its
   * letters to stay at least {@value #SMALLEST_PART} of their size.
   *
   * @param project what the project is called
   * @param columns how many columns are printed, with as many rows as there will be; their widths
   *     are set already, and those that are hidden take no room
   * @return over how many pages the columns go
   */
  public static int set(
      XSSFSheet sheet, String project, UnitSystem system, boolean landscape, int columns) {
    area(sheet, columns);
    PrintSetup setup = sheet.getPrintSetup();
    int pagesWide = pagesWide(sheet, landscape, columns);
    setup.setPaperSize(
        system == UnitSystem.US ? PrintSetup.LETTER_PAPERSIZE : PrintSetup.A4_PAPERSIZE);
    setup.setLandscape(landscape);
    setup.setFitWidth((short) pagesWide);
    setup.setFitHeight((short) 0);
    sheet.setFitToPage(true);
    sheet.setHorizontallyCenter(true);
    sheet.setMargin(PageMargin.LEFT, 0.4);
    sheet.setMargin(PageMargin.RIGHT, 0.4);
    sheet.setMargin(PageMargin.TOP, 0.7);
    sheet.setMargin(PageMargin.BOTTOM, 0.6);
    String name = project.replace("&", "&&");
    sheet.getHeader().setLeft("&9" + (name.matches("\\d.*") ? " " : "") + name);
    sheet.getHeader().setRight("&9&A");
    Footer footer = sheet.getFooter();
    footer.setLeft("&8Zonewright");
    footer.setRight("&8Page &P of &N");
    return pagesWide;
  }

  /** Whole columns, so that rows added later come out too. */
  private static void area(XSSFSheet sheet, int columns) {
    XSSFWorkbook workbook = sheet.getWorkbook();
    workbook.setPrintArea(
        workbook.getSheetIndex(sheet), "$A:$" + CellReference.convertNumToColString(columns - 1));
  }

  /**
   * Has a column that came later printed too, over more pages if letters would be too small. What a
   * person set to be printed stays.
   *
   * @param at where it stands, counted from 0
   */
  public static void reach(XSSFSheet sheet, int at) {
    String area = sheet.getWorkbook().getPrintArea(sheet.getWorkbook().getSheetIndex(sheet));
    Matcher ours = OURS.matcher(area == null ? "" : area);
    if (ours.matches() && CellReference.convertColStringToIndex(ours.group(1)) < at) {
      area(sheet, at + 1);
      PrintSetup setup = sheet.getPrintSetup();
      int pagesWide = pagesWide(sheet, setup.getLandscape(), at + 1);
      // None at all means as many pages as it takes.
      if (setup.getFitWidth() > 0 && setup.getFitWidth() < pagesWide) {
        setup.setFitWidth((short) pagesWide);
      }
    }
  }

  private static int pagesWide(XSSFSheet sheet, boolean landscape, int columns) {
    double room = (landscape ? LETTERS_ACROSS_LANDSCAPE : LETTERS_ACROSS) / SMALLEST_PART;
    return Math.max(1, (int) Math.ceil(letters(sheet, columns) / room));
  }

  private static int letters(XSSFSheet sheet, int columns) {
    int letters = 0;
    for (int i = 0; i < columns; i++) {
      letters += sheet.isColumnHidden(i) ? 0 : sheet.getColumnWidth(i) / 256;
    }
    return letters;
  }
}
