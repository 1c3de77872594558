package zonewright.workbook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Date;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.design.ForClient;
import zonewright.design.IrrigationSheets;
import zonewright.design.SheetsInUse;
import zonewright.formula.Reference;
import zonewright.formula.ReferenceTable;
import zonewright.sheet.Book;
import zonewright.sheet.Entry;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.workbook.kit.CellText;
import zonewright.workbook.kit.Protection;
import zonewright.workbook.kit.Styles;
import zonewright.workbook.kit.WorkbookLayout;
import zonewright.workbook.pack.PackBook;
import zonewright.workbook.pack.PackOrder;
import zonewright.workbook.pack.PackSheet;

/** Makes the workbook of a design, in memory. */
final class DesignWorkbook {
  /** A property of the file that marks it as a design, with the number of the format. */
  static final String MARK = "Zonewright design";

  /** A property of the file that says in which units it is. */
  static final String UNITS = "Zonewright units";

  /** The second shape: typed and used values have a cell each. */
  static final int FORMAT = 2;

  private final List<PackSheet> selection;
  private final PackBook pack;
  private final Book book;
  private final Schema schema;
  private final List<TableDefinition> ours;
  private final XSSFWorkbook workbook;
  private final Styles styles;
  private final WorkbookLayout layout;
  private final String project;
  private final LaterRows later;
  private int tables;

  private DesignWorkbook(
      XSSFWorkbook workbook,
      Design office,
      Styles styles,
      WorkbookLayout layout,
      PackOrder order,
      LaterRows later) {
    Design design = order.client() ? ForClient.of(office) : office;
    this.later = later;
    this.workbook = workbook;
    this.styles = styles;
    this.layout = layout;
    this.selection =
        order.sheets().stream().filter(sheet -> sheet.lacks(office).isEmpty()).toList();
    this.book = design.book();
    this.schema = book.schema();
    this.ours =
        schema.tables().stream()
            .filter(table -> !order.client() || ForClient.SHEETS.contains(table.id()))
            .toList();
    int zone = order.zoneIn(design).orElse(0);
    this.pack = new PackBook(design, office, ours, styles, layout, zone, this::sheet);
    this.project = pack.project();
    workbook.forEach(
        sheet ->
            ((XSSFSheet) sheet)
                .getTables()
                .forEach(table -> tables = Math.max(tables, (int) table.getCTTable().getId())));
  }

  /**
   * Returns the workbook of a design; whoever asks for it closes it.
   *
   * @param order the sheets beside the design's own, in their order
   */
  static XSSFWorkbook of(Design design, PackOrder order) {
    return of(design, order, new LaterRows(Integer.MAX_VALUE));
  }

  /**
   * Returns the workbook of a design without the rows that are to be written later; whoever asks
   * for it closes it.
   *
   * @param order the sheets beside the design's own, in their order
   * @param later takes the rows of long tables
   */
  static XSSFWorkbook of(Design design, PackOrder order, LaterRows later) {
    XSSFWorkbook workbook = new XSSFWorkbook();
    DesignWorkbook made =
        new DesignWorkbook(
            workbook, design, Styles.of(workbook), layout(design, order.client()), order, later);
    made.add(
        new Validations(design.book().schema(), design.book().system(), made.lists()), Set.of());
    workbook.setActiveSheet(0);
    return workbook;
  }

  /** Returns how the sheets of a new workbook of the design are laid out. */
  static WorkbookLayout layout(Design design, boolean client) {
    Book book = (client ? ForClient.of(design) : design).book();
    return WorkbookLayout.of(
        book,
        table ->
            SheetsInUse.uses(book, table) && (!client || ForClient.SHEETS.contains(table.id())),
        column -> false,
        column -> false);
  }

  /** Prepares for a workbook in which some of the sheets stand already. */
  static DesignWorkbook within(
      XSSFWorkbook workbook, Design design, Styles styles, WorkbookLayout layout, PackOrder order) {
    return new DesignWorkbook(
        workbook, design, styles, layout, order, new LaterRows(Integer.MAX_VALUE));
  }

  /** Returns a number that no table of the workbook has. */
  int nextTable() {
    return ++tables;
  }

  /** A new sheet of a title, or of the next like it where a person's own sheet has that. */
  private XSSFSheet sheet(String title) {
    String free = title;
    for (int i = 2; workbook.getSheet(free) != null; i++) {
      free = title + " " + i;
    }
    return workbook.createSheet(free);
  }

  /**
   * Adds all sheets but those of some of the design's tables.
   *
   * @param there identifiers of tables that stand in the workbook already
   */
  void add(Validations validations, Set<String> there) {
    // Every text is made by one writer and tested as such; parsing each cell again takes long.
    workbook.setCellFormulaValidation(false);
    SingleSheet singles = new SingleSheet(workbook, book, styles, layout, validations);
    TableSheet rows = new TableSheet(workbook, book, styles, layout, validations, later);
    selection.stream().filter(PackSheet::leads).forEach(sheet -> sheet.write(pack));
    selection.stream().filter(sheet -> !sheet.leads()).forEach(sheet -> sheet.write(pack));
    boolean first = true;
    for (TableDefinition table : inOrder()) {
      if (there.contains(table.id())) {
        first &= !table.single();
        continue;
      }
      XSSFSheet sheet;
      if (table.single()) {
        sheet = singles.write(table, project, first);
        first = false;
      } else {
        sheet = rows.write(table, ++tables, project);
      }
      if (table.single() || table.givenNames()) {
        Protection.on(sheet);
      }
      hide(sheet, !SheetsInUse.uses(book, table));
    }
    ReferenceCells tradeCells = new ReferenceCells(schema, book.system());
    ReferenceSheet references = new ReferenceSheet(workbook, styles, book.system(), tradeCells);
    for (ReferenceTable bundled : IrrigationSheets.referenceTables()) {
      ReferenceTable table = schema.inPlaceOf(bundled);
      XSSFSheet sheet = workbook.getSheet(table.name());
      if (sheet == null && !layout.looksIn(table)) {
        continue;
      }
      if (sheet != null && tradeCells.restore(table, sheet)) {
        continue;
      }
      int at = sheet == null ? -1 : workbook.getSheetIndex(sheet);
      if (sheet != null) {
        workbook.removeSheetAt(at);
      }
      XSSFSheet written = references.write(table, ++tables, project);
      Protection.on(written);
      hide(written, true);
      if (sheet != null) {
        workbook.setSheetOrder(table.name(), at);
      }
    }
    XSSFSheet limits = new LimitsSheet(workbook, styles).write(layout, project);
    Protection.on(limits);
    hide(limits, true);
    XSSFSheet guide = new GuideSheet(workbook, styles).write(ours, layout, project);
    Protection.on(guide);
    hide(guide, true);
    properties();
    MadeSheets.note(workbook, pack.made());
    workbook.setForceFormulaRecalculation(true);
  }

  private void hide(XSSFSheet sheet, boolean hidden) {
    workbook.setSheetHidden(workbook.getSheetIndex(sheet), hidden);
  }

  /** What every design has first, then what this one uses, then what those rest on. */
  private List<TableDefinition> inOrder() {
    List<TableDefinition> order = new ArrayList<>(ours.stream().filter(layout::has).toList());
    order.sort(Comparator.comparingInt(this::place));
    return order;
  }

  private int place(TableDefinition table) {
    int always = SheetsInUse.ALWAYS.indexOf(table.id());
    int last = SheetsInUse.ALWAYS.size();
    return always >= 0 ? always : SheetsInUse.uses(book, table) ? last : last + 1;
  }

  /** Returns the cells that hold the words of each table, where they stand in a new workbook. */
  Map<String, String> lists() {
    Map<String, String> lists = new HashMap<>();
    for (ReferenceTable table : IrrigationSheets.referenceTables()) {
      int rows = schema.inPlaceOf(table).size();
      lists.put(table.name(), Validations.cells(table.name(), 0, 1, rows));
    }
    for (TableDefinition table : schema.tables()) {
      if (!table.single() && layout.has(table)) {
        int last = TableSheet.lastRow(book, table);
        lists.put(table.id(), Validations.cells(table.title(), 0, TableSheet.FIRST_ROW, last));
      }
    }
    return lists;
  }

  private void properties() {
    POIXMLProperties properties = workbook.getProperties();
    properties.getCoreProperties().setTitle(CellText.encoded(project));
    properties.getCoreProperties().setSubjectProperty("Landscape irrigation design");
    properties.getCoreProperties().setCreator(words(Facts.PREPARED_BY.reference(), "Zonewright"));
    // The library dates the parts of the file by this; so the same design gives the same bytes.
    String epoch = System.getenv("SOURCE_DATE_EPOCH");
    if (epoch != null && epoch.matches("\\d{1,12}")) {
      properties
          .getCoreProperties()
          .setCreated(Optional.of(Date.from(Instant.ofEpochSecond(Long.parseLong(epoch)))));
    }
    properties.getExtendedProperties().getUnderlyingProperties().setApplication("Zonewright");
    POIXMLProperties.CustomProperties own = properties.getCustomProperties();
    if (own.contains(MARK)) {
      own.getProperty(MARK).setI4(FORMAT);
    } else {
      own.addProperty(MARK, FORMAT);
    }
    if (own.contains(UNITS)) {
      own.getProperty(UNITS).setLpwstr(book.system().words());
    } else {
      own.addProperty(UNITS, book.system().words());
    }
  }

  private String words(Reference reference, String otherwise) {
    return book.entry(reference, 0) instanceof Entry.Words words
        ? CellText.encoded(words.text())
        : otherwise;
  }
}
