package zonewright.workbook.kit;

import org.apache.poi.ss.usermodel.Footer;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.units.UnitSystem;

/** How a sheet comes out on paper. */
public final class Paper {
  /** What goes on a sheet across is printed on large paper where it has more letters than this. */
  private static final int LETTERS_ON_USUAL_PAPER = 215;

  private Paper() {}

  /**
   * Sets a sheet up for printing.
   *
   * @param project what the project is called
   * @param pagesWide over how many pages its columns go
   * @param columns how many columns are printed, with as many rows as there will be; their widths
   *     are set already
   */
  public static void set(
      XSSFSheet sheet,
      String project,
      UnitSystem system,
      boolean landscape,
      int pagesWide,
      int columns) {
    area(sheet, columns);
    PrintSetup setup = sheet.getPrintSetup();
    boolean large =
        pagesWide > 1 || (landscape && letters(sheet, columns) > LETTERS_ON_USUAL_PAPER);
    short letter = large ? PrintSetup.TABLOID_PAPERSIZE : PrintSetup.LETTER_PAPERSIZE;
    short metric = large ? PrintSetup.A3_PAPERSIZE : PrintSetup.A4_PAPERSIZE;
    setup.setPaperSize(system == UnitSystem.US ? letter : metric);
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
  }

  /** Whole columns, so that rows added later come out too. */
  private static void area(XSSFSheet sheet, int columns) {
    XSSFWorkbook workbook = sheet.getWorkbook();
    workbook.setPrintArea(
        workbook.getSheetIndex(sheet), "$A:$" + CellReference.convertNumToColString(columns - 1));
  }

  private static int letters(XSSFSheet sheet, int columns) {
    int letters = 0;
    for (int i = 0; i < columns; i++) {
      letters += sheet.getColumnWidth(i) / 256;
    }
    return letters;
  }
}
