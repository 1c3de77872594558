package zonewright.workbook.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.TableDefinition;
import zonewright.workbook.kit.Styles;
import zonewright.workbook.kit.WorkbookLayout;

/**
 * The workbook as a sheet of the pack sees it: the design, the looks, and new pages. In a client's
 * copy the design is what goes to the client of the office's.
 */
public final class PackBook {
  private final Design design;
  private final Design office;
  private final List<TableDefinition> tables;
  private final Styles styles;
  private final WorkbookLayout layout;
  private final Function<String, XSSFSheet> maker;
  private final int zone;
  private final List<XSSFSheet> made = new ArrayList<>();

  /**
   * Prepares for one workbook.
   *
   * @param office the design as the office has it
   * @param tables the design's own tables that stand in the workbook
   * @param zone the zone whose derivation is shown, counted from 0
   * @param maker makes a sheet of a title that is free
   */
  public PackBook(
      Design design,
      Design office,
      List<TableDefinition> tables,
      Styles styles,
      WorkbookLayout layout,
      int zone,
      Function<String, XSSFSheet> maker) {
    this.design = design;
    this.office = office;
    this.tables = List.copyOf(tables);
    this.styles = styles;
    this.layout = layout;
    this.zone = zone;
    this.maker = maker;
  }

  /** Returns the design. */
  public Design design() {
    return design;
  }

  /** Returns the design as the office has it: prices and savings are in this one only. */
  Design office() {
    return office;
  }

  /** Says whether the workbook goes to a client. */
  boolean forClient() {
    return design != office;
  }

  /** Returns the design's own tables that stand in the workbook. */
  List<TableDefinition> tables() {
    return tables;
  }

  /** Says whether a column stands in the workbook, so that formulas may refer to it. */
  boolean holds(Column column) {
    return tables.stream().anyMatch(table -> table.id().equals(column.reference().table()));
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
