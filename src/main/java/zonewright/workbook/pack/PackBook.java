package zonewright.workbook.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.sheet.Entry;
import zonewright.workbook.kit.WorkbookLayout;
import zonewright.workbook.kit.Styles;

/** The workbook as a sheet of the pack sees it: the design, the looks, and new pages. */
public final class PackBook {
  private final Design design;
  private final Styles styles;
  private final WorkbookLayout layout;
  private final Function<String, XSSFSheet> maker;
  private final int zone;
  private final List<XSSFSheet> made = new ArrayList<>();

  /**
   * Prepares for one workbook.
   *
   * @param zone the zone whose derivation is shown, counted from 0
   * @param maker makes a sheet of a title that is free
   */
  public PackBook(
      Design design,
      Styles styles,
      WorkbookLayout layout,
      int zone,
      Function<String, XSSFSheet> maker) {
    this.design = design;
    this.styles = styles;
    this.layout = layout;
    this.zone = zone;
    this.maker = maker;
  }

  /** Returns the design. */
  public Design design() {
    return design;
  }

  /** Returns the zone whose derivation is shown, counted from 0. */
  public int zone() {
    return zone;
  }

  /** Returns what the project is called, or words that say it has no name. */
  public String project() {
    return design.book().entry(Facts.PROJECT_NAME.reference(), 0) instanceof Entry.Words words
        ? words.text()
        : "Irrigation design without a name";
  }

  /** Returns the texts by which formulas refer to the cells of the design. */
  public Live live() {
    return new Live(design.book(), layout);
  }

  /**
   * Opens a page: a new sheet, protected without a password, on upright or wide paper, one page
   * wide.
   *
   * @param widths the widths of its columns in letters, from the left
   */
  public Page page(String title, boolean wide, int... widths) {
    XSSFSheet sheet = maker.apply(title);
    made.add(sheet);
    return new Page(this, sheet, styles, wide, widths);
  }

  /** Returns the sheets made so far. */
  public List<XSSFSheet> made() {
    return List.copyOf(made);
  }
}
