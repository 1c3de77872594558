package zonewright.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.PackageRelationshipTypes;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbookType;
import zonewright.design.Design;
import zonewright.design.OwnColumnSheet;
import zonewright.design.SheetsInUse;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.workbook.kit.Styles;
import zonewright.workbook.kit.WorkbookLayout;
import zonewright.workbook.pack.PackOrder;

/**
 * Writes a design into a copy of the file it came from: what is ours is brought up to date where it
 * stands, and all else stays as a person left it.
 */
final class InPlace {
  private final Design design;
  private final Book book;
  private final KeptFile kept;
  private final XSSFWorkbook workbook;
  private final WorkbookLayout keptLayout;
  private final Map<String, Map<Long, Integer>> rows = new HashMap<>();
  private final Map<String, Optional<SingleReading>> singles = new HashMap<>();

  /** Columns of one's own as the file has them; some may be gone since. */
  private final Map<String, Set<String>> ownBefore;

  private InPlace(Design design, KeptFile kept, XSSFWorkbook workbook) {
    this.design = design;
    this.book = design.book();
    this.kept = kept;
    this.workbook = workbook;
    this.keptLayout = WorkbookLayout.of(design.book().schema(), kept.system());
    this.ownBefore = ownInTheFile();
  }

  /**
   * A workbook made so; whoever asked for it closes it.
   *
   * @param rows in which row of its sheet each row of each table stands
   */
  record Made(XSSFWorkbook workbook, Map<String, Map<Long, Integer>> rows) {}

  /** Returns the copy with the design in it. */
  static Made of(Design design, KeptFile kept, PackOrder order) throws IOException {
    XSSFWorkbook workbook = opened(kept.content().orElseThrow());
    try {
      InPlace update = new InPlace(design, kept, workbook);
      update.all(order);
      return new Made(workbook, update.rows);
    } catch (RuntimeException | Error problem) {
      workbook.close();
      throw problem;
    }
  }

  /** Opens the copy without what would be stale or must not be carried on: chains and macros. */
  private static XSSFWorkbook opened(byte[] content) throws IOException {
    try {
      OPCPackage parts = OPCPackage.open(new ByteArrayInputStream(content));
      PackageRelationship main =
          parts.getRelationshipsByType(PackageRelationshipTypes.CORE_DOCUMENT).getRelationship(0);
      PackagePart book = parts.getPart(main);
      for (PackageRelationship each : List.copyOf(all(book))) {
        String type = each.getRelationshipType();
        if (type.endsWith("/calcChain") || type.endsWith("/vbaProject")) {
          parts.deletePart(PackagingURIHelper.createPartName(each.getTargetURI()));
          book.removeRelationship(each.getId());
        }
      }
      XSSFWorkbook workbook = new XSSFWorkbook(parts);
      DateSystem.usual(workbook);
      return workbook;
    } catch (OpenXML4JException problem) {
      throw new IOException(problem);
    }
  }

  private static List<PackageRelationship> all(PackagePart part) throws OpenXML4JException {
    List<PackageRelationship> all = new ArrayList<>();
    part.getRelationships().forEach(all::add);
    return all;
  }

  private void all(PackOrder order) {
    workbook.setWorkbookType(XSSFWorkbookType.XLSX);
    workbook.setCellFormulaValidation(false);
    String front = workbook.getSheetName(workbook.getActiveSheetIndex());
    Map<String, Integer> gone = removeMade();
    Styles styles = Styles.of(workbook);
    CellWriter cells = new CellWriter(book, styles);
    Map<TableDefinition, TableReading> readings = new LinkedHashMap<>();
    for (TableDefinition table : book.schema().tables()) {
      reading(table).ifPresent(reading -> readings.put(table, reading));
    }
    WorkbookLayout layout =
        WorkbookLayout.of(
            book,
            table -> SheetsInUse.uses(book, table),
            column -> stands(column, readings),
            column ->
                Optional.ofNullable(readings.get(book.schema().table(column.reference().table())))
                    .filter(reading -> reading.takesYours(column))
                    .isPresent());
    Reformat reformat = Reformat.of(workbook, book, kept.system());
    Map<String, TableUpdate> found = new LinkedHashMap<>();
    Map<String, SingleUpdate> lines = new LinkedHashMap<>();
    for (TableDefinition table : book.schema().tables()) {
      if (table.single()) {
        XSSFSheet sheet = workbook.getSheet(table.title());
        if (sheet != null) {
          lines.put(
              table.id(), new SingleUpdate(book, table, layout, cells, styles, reformat, sheet));
        }
      } else {
        if (readings.containsKey(table)) {
          found.put(
              table.id(),
              new TableUpdate(book, layout, table, cells, styles, reformat, readings.get(table)));
        }
      }
    }
    lines.forEach(
        (id, update) -> {
          update.clearOurs();
          update.takeOut(ownGone(book.schema().table(id)));
        });
    found.values().forEach(TableUpdate::clearOurs);
    found.forEach((id, update) -> rows.put(id, update.write(kept.rows(id))));
    DesignWorkbook whole = DesignWorkbook.within(workbook, design, styles, layout, order);
    Map<String, String> lists = whole.lists();
    found.forEach((id, update) -> lists.put(id, update.nameCells()));
    Validations validations = new Validations(book.schema(), book.system(), lists);
    found.values().forEach(update -> update.validate(validations));
    lines.values().forEach(update -> update.write(validations));
    found.values().forEach(update -> update.finish(whole.nextTable()));
    Set<String> there = new LinkedHashSet<>(found.keySet());
    there.addAll(lines.keySet());
    whole.add(validations, there);
    back(gone, order);
    for (TableDefinition table : book.schema().tables()) {
      rows.computeIfAbsent(table.id(), any -> KeptRows.fresh(book, table));
    }
    int index = workbook.getSheetIndex(front);
    workbook.setActiveSheet(Math.max(0, index));
  }

  /** Puts sheets made anew where they stood, and new ones that lead to the front. */
  private void back(Map<String, Integer> gone, PackOrder order) {
    gone.entrySet().stream()
        .filter(sheet -> workbook.getSheetIndex(sheet.getKey()) >= 0)
        .sorted(Map.Entry.comparingByValue())
        .forEach(
            sheet ->
                workbook.setSheetOrder(
                    sheet.getKey(), Math.min(sheet.getValue(), workbook.getNumberOfSheets() - 1)));
    for (String title : MadeSheets.in(workbook)) {
      boolean leads =
          order.sheets().stream().anyMatch(sheet -> sheet.leads() && sheet.title().equals(title));
      if (leads && !gone.containsKey(title)) {
        workbook.setSheetOrder(title, 0);
      }
    }
  }

  /** What stands in the file stays there. */
  private boolean stands(Column column, Map<TableDefinition, TableReading> readings) {
    TableDefinition table = book.schema().table(column.reference().table());
    if (!table.single()) {
      return readings.containsKey(table) && readings.get(table).has(column);
    }
    return singles
        .computeIfAbsent(
            table.id(),
            id -> Optional.ofNullable(workbook.getSheet(table.title())).map(SingleReading::new))
        .filter(reading -> reading.line(column.name()).isPresent())
        .isPresent();
  }

  private Optional<TableReading> reading(TableDefinition table) {
    if (table.single()) {
      return Optional.empty();
    }
    List<String> gone = new ArrayList<>(table.formerColumns());
    gone.addAll(ownGone(table));
    Optional<TableReading> reading = found(table.without(gone));
    reading.ifPresent(TableReading::lines);
    return reading;
  }

  private Optional<TableReading> found(TableDefinition table) {
    Notes unheard = new Notes();
    CellReader cells = new CellReader(kept.system(), unheard);
    return TableReading.find(
        WorkbookSource.whole(workbook), table, kept.system(), unheard, cells, keptLayout);
  }

  /** Returns the names of one's own columns that the file defines, by the sheet they stand on. */
  private Map<String, Set<String>> ownInTheFile() {
    Map<String, Set<String>> own = new HashMap<>();
    TableDefinition table = book.schema().table(Sheets.OWN_COLUMNS);
    for (TableReading.Line line : found(table).map(TableReading::lines).orElse(List.of())) {
      if (line.entries().get(book.position(OwnColumnSheet.NAME.reference()))
              instanceof Entry.Words name
          && line.entries().get(book.position(OwnColumnSheet.SHEET)) instanceof Entry.Words sheet) {
        own.computeIfAbsent(sheet.text(), any -> new LinkedHashSet<>()).add(name.text());
      }
    }
    return own;
  }

  /** Returns the names of one's own columns that the file has on a sheet and the design has not. */
  private Set<String> ownGone(TableDefinition table) {
    Set<String> gone = new LinkedHashSet<>(ownBefore.getOrDefault(table.title(), Set.of()));
    table.columns().forEach(column -> gone.remove(column.name()));
    return gone;
  }

  /** Takes out the sheets that are made anew each time; returns where they stood. */
  private Map<String, Integer> removeMade() {
    Set<String> titles = new LinkedHashSet<>(MadeSheets.in(workbook));
    titles.add(GuideSheet.TITLE);
    titles.add(LimitsSheet.TITLE);
    Map<String, Integer> gone = new LinkedHashMap<>();
    for (String title : titles) {
      int index = workbook.getSheetIndex(title);
      if (index >= 0) {
        gone.put(title, index);
      }
    }
    gone.keySet().forEach(title -> workbook.removeSheetAt(workbook.getSheetIndex(title)));
    return gone;
  }
}
