package zonewright.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.design.IrrigationSheets;
import zonewright.formula.Reference;
import zonewright.formula.ReferenceTable;
import zonewright.sheet.Blueprint;
import zonewright.sheet.Book;
import zonewright.sheet.Entry;
import zonewright.sheet.TableDefinition;
import zonewright.workbook.kit.CellText;
import zonewright.workbook.kit.ColumnFormulas;
import zonewright.workbook.kit.Protection;
import zonewright.workbook.kit.Styles;
import zonewright.workbook.pack.PackBook;
import zonewright.workbook.pack.PackSheet;

/** Makes the workbook of a design, in memory. */
final class DesignWorkbook {
  /** A property of the file that marks it as a design, with the number of the format. */
  static final String MARK = "Zonewright design";

  /** A property of the file that says in which units it is. */
  static final String UNITS = "Zonewright units";

  private static final int FORMAT = 1;

  private final Design design;
  private final List<PackSheet> selection;
  private final PackBook pack;
  private final Book book;
  private final Blueprint blueprint;
  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final Styles styles = new Styles(workbook);
  private final ColumnFormulas formulas;
  private final String project;
  private int tables;

  private DesignWorkbook(Design design, List<PackSheet> selection) {
    this.design = design;
    this.selection = selection.stream().filter(sheet -> sheet.lacks(design).isEmpty()).toList();
    this.book = design.book();
    this.blueprint = book.blueprint();
    this.formulas = new ColumnFormulas(blueprint, book.system());
    this.pack = new PackBook(design, styles, formulas, workbook::createSheet);
    this.project = pack.project();
  }

  /**
   * Returns the workbook of a design; whoever asks for it closes it.
   *
   * @param selection the sheets beside the design's own, in their order
   */
  static XSSFWorkbook of(Design design, List<PackSheet> selection) {
    return new DesignWorkbook(design, selection).make();
  }

  private XSSFWorkbook make() {
    // Every text is made by one writer and tested as such; parsing each cell again takes long.
    workbook.setCellFormulaValidation(false);
    Validations validations = new Validations(book.system(), lists());
    SingleSheet singles = new SingleSheet(workbook, book, styles, formulas, validations);
    TableSheet rows = new TableSheet(workbook, book, styles, formulas, validations);
    selection.stream().filter(PackSheet::leads).forEach(sheet -> sheet.write(pack));
    boolean first = true;
    for (TableDefinition table : inOrder()) {
      if (table.single()) {
        Protection.on(singles.write(table, project, first));
        first = false;
      } else {
        XSSFSheet sheet = rows.write(table, ++tables, project);
        if (table.givenNames()) {
          Protection.on(sheet);
        }
      }
    }
    selection.stream().filter(sheet -> !sheet.leads()).forEach(sheet -> sheet.write(pack));
    ReferenceSheet references = new ReferenceSheet(workbook, styles, book.system(), lookedUp());
    for (ReferenceTable table : IrrigationSheets.referenceTables()) {
      Protection.on(references.write(table, ++tables, project));
    }
    Protection.on(new GuideSheet(workbook, styles).write(blueprint, book.system(), project));
    properties();
    MadeSheets.note(workbook, pack.made());
    workbook.setForceFormulaRecalculation(true);
    workbook.setActiveSheet(0);
    return workbook;
  }

  /** One-row tables first, then the widest, which is the one people work in, then the others. */
  private List<TableDefinition> inOrder() {
    List<TableDefinition> order = new ArrayList<>(blueprint.tables());
    TableDefinition widest =
        order.stream()
            .filter(table -> !table.single() && table.other().isEmpty())
            .max(Comparator.comparingInt(table -> table.columns().size()))
            .orElseThrow();
    order.sort(Comparator.comparingInt(table -> table.single() ? 0 : table.equals(widest) ? 1 : 2));
    return order;
  }

  private Map<String, String> lists() {
    Map<String, String> lists = new HashMap<>();
    for (ReferenceTable table : IrrigationSheets.referenceTables()) {
      lists.put(table.name(), Validations.cells(table.name(), 0, 1, table.size()));
    }
    for (TableDefinition table : blueprint.tables()) {
      if (!table.single()) {
        int last = TableSheet.lastRow(book, table);
        lists.put(table.id(), Validations.cells(table.title(), 0, TableSheet.FIRST_ROW, last));
      }
    }
    return lists;
  }

  private Set<ReferenceTable.Numbers> lookedUp() {
    Set<ReferenceTable.Numbers> all = new LinkedHashSet<>();
    blueprint
        .order()
        .forEach(
            column ->
                blueprint.dependencies(column).ifPresent(needs -> all.addAll(needs.published())));
    return all;
  }

  private void properties() {
    POIXMLProperties properties = workbook.getProperties();
    properties.getCoreProperties().setTitle(CellText.encoded(project));
    properties.getCoreProperties().setSubjectProperty("Landscape irrigation design");
    properties.getCoreProperties().setCreator(words(Facts.PREPARED_BY.reference(), "Zonewright"));
    properties.getExtendedProperties().getUnderlyingProperties().setApplication("Zonewright");
    properties.getCustomProperties().addProperty(MARK, FORMAT);
    properties.getCustomProperties().addProperty(UNITS, book.system().words());
  }

  private String words(Reference reference, String otherwise) {
    return book.entry(reference, 0) instanceof Entry.Words words
        ? CellText.encoded(words.text())
        : otherwise;
  }
}
