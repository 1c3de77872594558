package zonewright.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.officeDocument.x2006.customProperties.CTProperty;
import zonewright.design.Design;
import zonewright.design.IrrigationSheets;
import zonewright.design.OwnColumns;
import zonewright.design.SheetsInUse;
import zonewright.formula.ReferenceTable;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.Headings;
import zonewright.sheet.Remark;
import zonewright.sheet.Row;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.QuantityText;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.WorkbookLayout;

/** Makes a design from a workbook: takes what was typed, calculates anew, and tells the rest. */
final class DesignReader {
  private static final String EARLIER =
      "this file is of an earlier shape; it is brought over into the present one when it is saved,"
          + " without sheets and columns of your own, which stay in the version beside it";

  private static final int MOST_NAMED = 3;

  private static final String SINCE_1904 =
      "this file counts its dates from 1904; each was taken as the day it shows, and saving counts"
          + " them from 1900";

  private final WorkbookSource source;
  private final XSSFWorkbook workbook;
  private final Notes notes = new Notes();

  /** Columns of a sheet whose shown results differ from ours and that were named. */
  private final Map<String, Set<Column>> different = new HashMap<>();

  private final Map<String, Map<Long, Integer>> rows = new HashMap<>();
  private final Map<String, List<Double>> identities = new HashMap<>();
  private final List<String> taken = new ArrayList<>();

  /** The columns there are; once those of one's own were read, these among them. */
  private Schema schema = IrrigationSheets.schema();

  private WorkbookLayout layout;

  /** Whether the file is of the shape in which typed and used values had one cell. */
  private final boolean earlier;

  private final UnitSystem system;
  private final CellReader cells;
  private final Design design;
  private final Set<String> known = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);

  /** Returns the design in a workbook with the report of its reading. */
  static DesignFile.Opened read(WorkbookSource source, String file) throws DesignFileException {
    XSSFWorkbook workbook = source.workbook();
    refuse(workbook, file);
    DesignReader reader = new DesignReader(source);
    if (source.macros()) {
      reader.notes.add("", "", "the file holds macros; they were neither run nor taken");
    }
    if (source.since1904()) {
      reader.notes.add("", "", SINCE_1904);
    }
    if (reader.earlier) {
      reader.notes.add("", "", EARLIER);
    }
    reader.all();
    return new DesignFile.Opened(
        reader.design,
        new ReadingReport(reader.taken, reader.notes.all()),
        new KeptFile(
            reader.earlier ? Optional.empty() : source.content(),
            reader.system,
            reader.rows,
            MadeSheets.in(workbook),
            true));
  }

  private static void refuse(XSSFWorkbook workbook, String file) throws DesignFileException {
    TableDefinition zones = IrrigationSheets.schema().table(Sheets.ZONES);
    boolean marked = workbook.getProperties().getCustomProperties().contains(DesignWorkbook.MARK);
    if (TableReading.there(WorkbookSource.whole(workbook), zones)) {
      return;
    }
    throw new DesignFileException(
        marked
            ? "%s is a design whose table “%s” is gone; its last version may stand beside it."
                .formatted(file, zones.title())
            : "%s is a workbook but not a design made with Zonewright: it has no table “%s”."
                .formatted(file, zones.title()));
  }

  private DesignReader(WorkbookSource source) {
    this.source = source;
    this.workbook = source.workbook();
    this.earlier = earlier(workbook);
    this.system = findSystem();
    this.cells = new CellReader(system, notes);
    this.layout = WorkbookLayout.of(schema, system);
    this.design = Design.blank(system);
    known.add("About");
    known.add(LimitsSheet.TITLE);
    known.addAll(MadeSheets.in(workbook));
    known.add(GuideSheet.TITLE);
    IrrigationSheets.referenceTables().forEach(table -> known.add(table.name()));
  }

  private static boolean earlier(XSSFWorkbook workbook) {
    POIXMLProperties.CustomProperties properties = workbook.getProperties().getCustomProperties();
    CTProperty mark = properties.getProperty(DesignWorkbook.MARK);
    return mark != null
        // Other programs keep whole numbers as such with decimals.
        && (mark.isSetR8() ? mark.getR8() : mark.getI4()) < DesignWorkbook.FORMAT;
  }

  private UnitSystem findSystem() {
    Optional<UnitSystem> said = Optional.empty();
    for (TableDefinition table : schema.tables()) {
      XSSFSheet sheet = workbook.getSheet(table.title());
      if (table.single() && sheet != null && said.isEmpty()) {
        said = new SingleReading(sheet).system();
      }
    }
    POIXMLProperties.CustomProperties properties = workbook.getProperties().getCustomProperties();
    if (said.isEmpty() && properties.contains(DesignWorkbook.UNITS)) {
      said = SingleReading.system(properties.getProperty(DesignWorkbook.UNITS).getLpwstr());
    }
    if (said.isEmpty()) {
      notes.add("", "", "the file does not say in which units it is; US units were taken");
    }
    return said.orElse(UnitSystem.US);
  }

  private void all() {
    List<Runnable> comparisons = new ArrayList<>();
    for (TableDefinition table : schema.tables()) {
      if (OwnColumns.source().definedBy().contains(table.id())) {
        rows(table, comparisons);
      }
    }
    if (!design.book().schema().equals(schema)) {
      schema = design.book().schema();
      layout = WorkbookLayout.of(schema, system);
    }
    for (TableDefinition table : schema.tables()) {
      if (table.single()) {
        single(table, comparisons);
      } else if (!OwnColumns.source().definedBy().contains(table.id())) {
        rows(table, comparisons);
      }
    }
    references();
    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      String name = workbook.getSheetName(i);
      if (!known.contains(name)) {
        notes.add(name, "", "this sheet is your own; it is kept and not read");
      }
    }
    comparisons.forEach(Runnable::run);
    design.book().settle();
  }

  /** Tables of the trade are the program's; what a person changed in them is told. */
  private void references() {
    ReferenceCells ours = new ReferenceCells(schema, system);
    for (ReferenceTable table : IrrigationSheets.referenceTables()) {
      XSSFSheet sheet = workbook.getSheet(table.name());
      if (sheet == null) {
        if (earlier) {
          notes.add(
              "", "", "there is no sheet “%s”; saving brings it back".formatted(table.name()));
        }
        continue;
      }
      Optional<List<ReferenceCells.Changed>> changed = ours.changed(table, sheet);
      if (changed.isEmpty()) {
        notes.add(
            table.name(),
            "",
            "headings or names of this table were changed; the program's own table is used");
      }
      for (ReferenceCells.Changed each : changed.orElse(List.of())) {
        notes.repeated(
            "reference",
            table.name(),
            Notes.cell(each.cell().getRowIndex(), each.cell().getColumnIndex()),
            "changed from %s; the program's own table is used. Type over the value on the sheet that takes it"
                .formatted(each.ours()));
      }
    }
  }

  private void single(TableDefinition table, List<Runnable> comparisons) {
    XSSFSheet sheet = workbook.getSheet(table.title());
    if (sheet == null) {
      lacks(table, "there is no sheet “%s”; it stays blank");
      return;
    }
    known.add(sheet.getSheetName());
    SingleReading reading = new SingleReading(sheet);
    Edits edits = design.edits();
    List<Edit> parts = new ArrayList<>();
    Map<Column, Entry> entries =
        reading.entries(table, system, notes, cells, layout.columns(table));
    entries.forEach((column, entry) -> parts.add(edits.set(column.reference(), 0, entry)));
    design.book().start(new Edit.Several("opening", parts));
    remarked(table, Map.of(0, reading.remarks(table)));
    taken.add("%s: %s".formatted(table.title(), typed(List.copyOf(entries.values()))));
    comparisons.add(
        () ->
            calculated(table)
                .forEach(
                    column ->
                        reading
                            .cell(column)
                            .map(SheetCell::of)
                            .ifPresent(
                                cell ->
                                    cell.shown()
                                        .ifPresent(
                                            shown ->
                                                compare(
                                                    column,
                                                    0,
                                                    shown,
                                                    sheet,
                                                    Notes.cell(cell.row(), cell.column()))))));
  }

  /** A sheet that nobody used is not in the file, which is nothing to tell of. */
  private void lacks(TableDefinition table, String sentence) {
    if (earlier || SheetsInUse.ALWAYS.contains(table.id())) {
      notes.add("", "", sentence.formatted(table.title()));
    }
  }

  private static String typed(List<Entry> entries) {
    long count = entries.stream().filter(entry -> !entry.equals(Entry.BLANK)).count();
    return count == 1 ? "1 typed cell" : count + " typed cells";
  }

  private static List<Column> calculated(TableDefinition table) {
    return table.columns().stream()
        .filter(column -> column.formula().isPresent())
        .filter(column -> column.content() == Column.Content.NUMBER)
        .toList();
  }

  private void rows(TableDefinition table, List<Runnable> comparisons) {
    TableReading reading =
        TableReading.find(source, table, system, notes, cells, layout).orElse(null);
    if (reading == null) {
      lacks(table, "there is no table “%s”; it stays as in a new design");
      return;
    }
    known.add(reading.sheet().getSheetName());
    List<TableReading.Line> lines = reading.lines();
    Map<Integer, Integer> places =
        table.rows() instanceof TableDefinition.Rows.Named named
            ? named(table, named, reading, lines)
            : table.other().isPresent() ? alongside(table, reading, lines) : free(table, lines);
    List<Entry> entries = lines.stream().flatMap(line -> line.entries().stream()).toList();
    taken.add(
        "%s: %s %s, %s"
            .formatted(
                table.title(), lines.size(), lines.size() == 1 ? "row" : "rows", typed(entries)));
    Map<Long, Integer> kept = new HashMap<>();
    places.forEach(
        (row, place) -> kept.put(design.book().contents().row(table.id(), place).id(), row));
    rows.put(table.id(), kept);
    Map<Integer, Map<String, Remark>> remarks = new HashMap<>();
    for (TableReading.Line line : lines) {
      if (places.containsKey(line.row())) {
        remarks.put(places.get(line.row()), line.remarks());
      }
    }
    remarked(table, remarks);
    comparisons.add(() -> compare(table, reading, lines, places));
  }

  private void remarked(TableDefinition table, Map<Integer, Map<String, Remark>> remarks) {
    Edit edit = design.edits().remarked(table.id(), remarks);
    if (!edit.changesNothing()) {
      design.book().start(edit);
    }
  }

  private Map<Integer, Integer> free(TableDefinition table, List<TableReading.Line> lines) {
    int before = design.book().rows(table.id());
    if (before > 0) {
      design.book().start(design.edits().removed(table.id(), 0, before));
    }
    identities.put(table.id(), lines.stream().map(TableReading.Line::identity).toList());
    int declared = design.book().declared().table(table.id()).columns().size();
    List<List<Entry>> rows =
        lines.stream().map(line -> line.entries().subList(0, declared)).toList();
    design.book().start(design.edits().appended(table.id(), rows));
    Map<Integer, Integer> places = new HashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      places.put(lines.get(i).row(), i);
    }
    return places;
  }

  private Map<Integer, Integer> named(
      TableDefinition table,
      TableDefinition.Rows.Named named,
      TableReading reading,
      List<TableReading.Line> lines) {
    Map<String, Integer> names = new LinkedHashMap<>();
    named.names().forEach(name -> names.put(Headings.plain(name), names.size()));
    Map<Integer, Integer> places = new HashMap<>();
    List<Edit> parts = new ArrayList<>();
    for (TableReading.Line line : lines) {
      String name = line.entries().get(0) instanceof Entry.Words words ? words.text() : "";
      Integer place = names.remove(Headings.plain(name));
      String sheet = reading.sheet().getSheetName();
      if (place == null) {
        notes.add(
            sheet,
            Notes.cell(line.row(), 0),
            "“%s” is no row of %s, or stands twice; it was left".formatted(name, table.title()));
        continue;
      }
      places.put(line.row(), place);
      parts.addAll(entered(table, reading, line, place));
    }
    if (!names.isEmpty()) {
      notes.add(
          reading.sheet().getSheetName(),
          "",
          "without %s, which stay as in a new design".formatted(String.join(", ", names.keySet())));
    }
    design.book().start(new Edit.Several("opening", parts));
    return places;
  }

  private List<Edit> entered(
      TableDefinition table, TableReading reading, TableReading.Line line, int place) {
    List<Edit> parts = new ArrayList<>();
    for (int position = 1; position < table.columns().size(); position++) {
      Column column = table.columns().get(position);
      if (column.takesEntries() && reading.columns().containsKey(column)) {
        parts.add(design.edits().set(column.reference(), place, line.entries().get(position)));
      }
    }
    return parts;
  }

  /** What stands alongside another table goes to the rows of its names, wherever they are now. */
  private Map<Integer, Integer> alongside(
      TableDefinition table, TableReading reading, List<TableReading.Line> lines) {
    List<String> names = new ArrayList<>();
    for (Row row : design.book().contents().rows(table.id())) {
      names.add(row.entry(0) instanceof Entry.Words words ? words.text() : "");
    }
    AlongsideMatch match =
        new AlongsideMatch(
            lines, names, identities.getOrDefault(table.other().orElseThrow(), List.of()));
    List<Edit> parts = new ArrayList<>();
    for (TableReading.Line line : lines) {
      Integer place = match.places().get(line.row());
      if (place != null) {
        parts.addAll(entered(table, reading, line, place));
      }
    }
    match
        .notes(table.title())
        .forEach(
            (row, sentence) ->
                notes.add(reading.sheet().getSheetName(), Notes.cell(row, 0), sentence));
    design.book().start(new Edit.Several("opening", parts));
    return match.places();
  }

  private void compare(
      TableDefinition table,
      TableReading reading,
      List<TableReading.Line> lines,
      Map<Integer, Integer> places) {
    for (Column column : calculated(table)) {
      Map<Integer, Double> shown = reading.shown(column, lines);
      for (TableReading.Line line : lines) {
        Double number = shown.get(line.row());
        Integer place = places.get(line.row());
        if (number != null && place != null) {
          int position = reading.position(layout.shown(column)).orElse(0);
          compare(column, place, number, reading.sheet(), Notes.cell(line.row(), position));
        }
      }
    }
  }

  private void compare(Column column, int row, double shown, XSSFSheet sheet, String cell) {
    double ours = design.book().number(column.reference(), row);
    if (!ShownNumber.differs(shown, ours)) {
      return;
    }
    String now =
        Double.isNaN(ours)
            ? design
                .book()
                .shown(column.reference(), design.book().outcome(column.reference(), row))
            : QuantityText.typed(ours, column.kind());
    Set<Column> named = different.computeIfAbsent(sheet.getSheetName(), any -> new HashSet<>());
    // One changed figure changes many that rest on it: a few are named, the others counted.
    boolean full = named.size() >= MOST_NAMED && !named.contains(column);
    if (!full) {
      named.add(column);
    }
    notes.repeated(
        "differs/" + (full ? "others" : column.reference().key()),
        sheet.getSheetName(),
        cell,
        "%s shows %s in the file; calculated anew it is: %s"
            .formatted(column.name(), QuantityText.typed(shown, column.kind()), now));
  }
}
