package zonewright.workbook.pack;

import java.util.List;
import zonewright.workbook.kit.CellStyleName;

/** How to use the workbook. */
final class AboutSheet implements PackSheet {
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
          "This workbook is the design file: Zonewright opens it again, takes what is typed, and calculates everything anew.");

  @Override
  public String word() {
    return "about";
  }

  @Override
  public String title() {
    return "About";
  }

  @Override
  public String about() {
    return "How to use the workbook.";
  }

  @Override
  public Audience audience() {
    return Audience.CLIENT;
  }

  @Override
  public boolean standing() {
    return true;
  }

  @Override
  public void write(PackBook book) {
    Page page = book.page(title(), false, 104);
    page.title(
        "About this workbook",
        "Landscape irrigation, zone by zone. Designed with Zonewright, in "
            + book.design().book().system().words()
            + ".");
    page.band("How to use it");
    USE.forEach(sentence -> page.across(sentence, CellStyleName.PLAIN));
  }
}
