package zonewright.workbook.kit;

import org.apache.poi.ss.usermodel.Footer;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import zonewright.units.UnitSystem;

/** How a sheet comes out on paper. */
public final class Paper {
  private Paper() {}

  /**
   * Sets a sheet up for printing.
   *
   * @param project what the project is called
   * @param pagesWide over how many pages its columns go
   */
  public static void set(
      XSSFSheet sheet, String project, UnitSystem system, boolean landscape, int pagesWide) {
    PrintSetup setup = sheet.getPrintSetup();
    boolean large = pagesWide > 1;
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
}
