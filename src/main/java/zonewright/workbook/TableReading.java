package zonewright.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Headings;
import zonewright.sheet.Remark;
import zonewright.sheet.TableDefinition;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.SheetColumn;
import zonewright.workbook.kit.TypedHeadings;
import zonewright.workbook.kit.WorkbookLayout;
import zonewright.workbook.kit.WorkbookNames;

/** Reads a table with many rows: by its name as a table, or by its sheet and headings. */
final class TableReading {
  private static final int ROWS_SEARCHED_FOR_HEADINGS = 20;

  /** How the heading began that said beside which row one stands, in files of an earlier shape. */
  private static final String EARLIER_PLACE = "Row in ";

  /** A row that holds so many headings of a table is that of its headings, and no other. */
  private static final int HEADINGS_OF_A_TABLE = 6;

  /** The heading of a column that an earlier program made, and that holds nothing now. */
  static final String NOT_USED = "Not used ";

  private static final Pattern UNIT = Pattern.compile("\\s*\\([^()]*\\)$");

  private static final Pattern IN_BETWEEN =
      Pattern.compile("(.+) (?:step \\d+|used|checked|usual|row|row in \\w+)");

  /**
   * A row as it was read.
   *
   * @param row its place in the sheet
   * @param identity the number that stays with it; not a number where it has none
   * @param remarks a person's notes and colours, by the identifier of the column
   */
  record Line(int row, double identity, List<Entry> entries, Map<String, Remark> remarks) {
    Line {
      entries = List.copyOf(entries);
      remarks = Map.copyOf(remarks);
    }
  }

  /** Where the rows of a table stand. */
  record Area(
      SheetCells cells,
      Optional<XSSFTable> made,
      int heading,
      int last,
      int firstColumn,
      int lastColumn) {

    /** Returns the area of a table where it says it stands, or where its headings do. */
    static Area of(SheetCells cells, XSSFTable made, TableDefinition table, UnitSystem system) {
      int said = made.getStartRowIndex();
      int there = headingsIn(cells, said, table, system);
      int heading =
          there >= HEADINGS_OF_A_TABLE
              ? said
              : searched(cells, table, system)
                  .map(Area::heading)
                  .filter(row -> headingsIn(cells, row, table, system) > there)
                  .orElse(said);
      XSSFRow row = cells.sheet().getRow(heading);
      int columns = row == null ? 0 : Math.max(0, row.getLastCellNum());
      return new Area(
          cells,
          Optional.of(made),
          heading,
          Math.max(heading, made.getEndRowIndex() - made.getTotalsRowCount()),
          Math.min(made.getStartColIndex(), columns),
          Math.min(made.getEndColIndex(), columns - 1));
    }

    XSSFSheet sheet() {
      return cells.sheet();
    }

    /** Says whether the table is said to stand where nothing does. */
    boolean beyond() {
      return made.isPresent()
          && (heading != made.get().getStartRowIndex()
              || last > Math.max(cells.lastRow(), heading + 1)
              || lastColumn < made.get().getEndColIndex());
    }

    Area to(int end) {
      return new Area(cells, made, heading, end, firstColumn, lastColumn);
    }
  }

  private final TableDefinition table;
  private final UnitSystem system;
  private final Notes notes;
  private final CellReader cells;

  /** Says which headings are ours without being those of columns of the design. */
  private final Predicate<String> ours;

  /** The headings of the columns that check what is typed. */
  private final Map<Column, String> checks;

  private Area area;
  private final CellRemarks remarks;

  /** Where a person types, and where what is used or calculated stands. */
  private final Headings headings;

  private final Headings yours;
  private final Map<String, Integer> between = new HashMap<>();

  /** Where columns stand that an earlier program made for its formulas. */
  private final List<Integer> leftOver = new ArrayList<>();

  private int lineCount;

  private TableReading(
      TableDefinition table,
      UnitSystem system,
      Notes notes,
      CellReader cells,
      Predicate<String> ours,
      Map<Column, String> checks,
      Area area) {
    this.ours = ours;
    this.checks = checks;
    this.table = table;
    this.system = system;
    this.notes = notes;
    this.cells = cells;
    this.area = area;
    this.remarks = new CellRemarks(area.cells());
    this.headings = new Headings(table, system);
    this.yours = new Headings(table, system);
  }

  /** Finds a table in a workbook; none where there is no such table or sheet. */
  static Optional<TableReading> find(
      WorkbookSource source,
      TableDefinition table,
      UnitSystem system,
      Notes notes,
      CellReader cells,
      WorkbookLayout layout) {
    Set<String> ours = new HashSet<>();
    Map<Column, String> checks = new HashMap<>();
    for (SheetColumn column : layout.columns(table)) {
      if (column.role() == SheetColumn.Role.CHECKED) {
        checks.put(column.column().orElseThrow(), Headings.plain(column.heading()));
      }
      if (column.role().closed() || column.role() == SheetColumn.Role.MISSING) {
        ours.add(Headings.plain(column.heading()));
      }
    }
    Predicate<String> known = heading -> ours.contains(Headings.plain(heading));
    return area(source, table, system)
        .map(area -> new TableReading(table, system, notes, cells, known, checks, area));
  }

  /** Says whether a workbook holds a table or a sheet of that name with its headings. */
  static boolean there(WorkbookSource source, TableDefinition table) {
    return area(source, table, UnitSystem.US).isPresent();
  }

  private static Optional<Area> area(
      WorkbookSource source, TableDefinition table, UnitSystem system) {
    XSSFWorkbook workbook = source.workbook();
    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      XSSFSheet sheet = workbook.getSheetAt(i);
      for (XSSFTable made : sheet.getTables()) {
        boolean named =
            table.title().equalsIgnoreCase(made.getDisplayName())
                || table.title().equalsIgnoreCase(made.getName());
        if (named && made.getHeaderRowCount() == 1) {
          return Optional.of(Area.of(source.cells(sheet), made, table, system));
        }
      }
    }
    XSSFSheet sheet = workbook.getSheet(table.title());
    return sheet == null ? Optional.empty() : searched(source.cells(sheet), table, system);
  }

  private static Optional<Area> searched(
      SheetCells cells, TableDefinition table, UnitSystem system) {
    int last = Math.min(cells.lastRow(), ROWS_SEARCHED_FOR_HEADINGS);
    int best = -1;
    int most = 1;
    for (int row = 0; row <= last; row++) {
      int found = headingsIn(cells, row, table, system);
      if (found > most) {
        most = found;
        best = row;
      }
    }
    return best < 0
        ? Optional.empty()
        : Optional.of(
            new Area(
                cells,
                Optional.empty(),
                best,
                best,
                0,
                cells.sheet().getRow(best).getLastCellNum() - 1));
  }

  /** Returns how many headings of the table stand in a row; 0 where that of its names does not. */
  private static int headingsIn(
      SheetCells cells, int row, TableDefinition table, UnitSystem system) {
    XSSFRow held = cells.sheet().getRow(row);
    Headings headings = new Headings(table, system);
    for (int column = 0; held != null && column < held.getLastCellNum(); column++) {
      headings.take(column, words(cells.at(row, column)));
    }
    return headings.found().containsKey(table.columns().get(0)) ? headings.found().size() : 0;
  }

  private static String words(SheetCell cell) {
    return cell != null && cell.type() == CellType.STRING ? cell.text() : "";
  }

  private String heading(int column) {
    return words(area.cells().at(area.heading(), column));
  }

  /** Returns the columns found and where a person types into them, or else where they stand. */
  Map<Column, Headings.Found> columns() {
    Map<Column, Headings.Found> columns = new LinkedHashMap<>(headings.found());
    columns.putAll(yours.found());
    return columns;
  }

  /** Returns where a column of the sheet stands; none where it does not. */
  Optional<Integer> position(SheetColumn column) {
    return switch (column.role()) {
      case TYPED ->
          Optional.ofNullable(
                  column.column().get().role() == Column.Role.DEFAULTED
                      ? yours.found().get(column.column().get())
                      : headings.found().get(column.column().get()))
              .map(Headings.Found::position);
      case VALUE ->
          Optional.ofNullable(headings.found().get(column.column().get()))
              .map(Headings.Found::position);
      default -> Optional.ofNullable(between.get(Headings.plain(column.heading())));
    };
  }

  /** Says whether a column stands in the file. */
  boolean has(Column column) {
    return headings.found().containsKey(column) || takesYours(column);
  }

  /**
   * Says whether a column has cells of its own for what a person types in place of what is usual.
   */
  boolean takesYours(Column column) {
    return yours.found().containsKey(column);
  }

  /** Returns where the table stands. */
  Area area() {
    return area;
  }

  /** Returns the sheet the table stands in. */
  XSSFSheet sheet() {
    return area.sheet();
  }

  /** Returns all rows in the order of the file, and notes what was left. */
  List<Line> lines() {
    for (int column = area.firstColumn(); column <= area.lastColumn(); column++) {
      String heading = heading(column);
      if (ours.test(heading)) {
        between.putIfAbsent(Headings.plain(heading), column);
      } else if (TypedHeadings.yours(heading)) {
        yours.take(column, TypedHeadings.plain(heading));
      } else if (madeBefore(heading)) {
        leftOver.add(column);
      } else {
        headings.take(column, heading);
      }
    }
    judge();
    if (area.beyond()) {
      narrowed();
    }
    List<Line> lines = new ArrayList<>();
    for (int row = area.heading() + 1; row <= area.last(); row++) {
      lines.add(line(row));
    }
    below(lines);
    if (lines.size() == 1 && blank(lines.get(0))) {
      lines.clear();
    }
    lineCount = lines.size();
    return lines;
  }

  /** Nobody pays for rows that a table is said to have and the sheet has not. */
  private void narrowed() {
    int last = Math.min(area.last(), area.cells().lastRow());
    if (last < area.last()) {
      while (last > area.heading() && typed(last) == 0) {
        last--;
      }
    }
    area = area.to(Math.max(area.heading(), last));
    notes.add(
        area.sheet().getSheetName(),
        Notes.cell(area.heading(), area.firstColumn()),
        "the table %s is said to stand in %s, where nothing does; rows %s to %s were taken"
            .formatted(
                table.title(),
                area.made().map(made -> made.getCTTable().getRef()).orElse(""),
                area.heading() + 1,
                area.last() + 1));
  }

  /** Returns how many rows were read. */
  int lineCount() {
    return lineCount;
  }

  /** Says whether a heading is that of a cell in between, as no formula of today has it. */
  private boolean madeBefore(String heading) {
    if (heading.startsWith(NOT_USED)) {
      return true;
    }
    String plain = UNIT.matcher(heading.strip()).replaceFirst("");
    if (table.formerColumns().stream().anyMatch(plain::equalsIgnoreCase)) {
      return true;
    }
    Matcher between = IN_BETWEEN.matcher(plain);
    return between.matches()
        && Stream.concat(
                table.formerColumns().stream(),
                table.columns().stream()
                    .flatMap(
                        column ->
                            Stream.concat(Stream.of(column.name()), column.formerNames().stream())))
            .anyMatch(name -> name.equalsIgnoreCase(between.group(1)));
  }

  /** Returns where columns stand that an earlier program made for its formulas, not used now. */
  List<Integer> leftOver() {
    return List.copyOf(leftOver);
  }

  private static boolean blank(Line line) {
    return line.entries().stream().allMatch(Entry.BLANK::equals);
  }

  private void judge() {
    String sheet = area.sheet().getSheetName();
    for (int position : headings.unknown()) {
      if (heading(position).startsWith(EARLIER_PLACE)) {
        continue;
      }
      notes.add(
          sheet,
          Notes.cell(area.heading(), position),
          "the column “%s” is your own; it is kept and not read".formatted(heading(position)));
    }
    columns()
        .forEach(
            (column, found) -> {
              Unit own = column.kind().unit(system);
              String cell = Notes.cell(area.heading(), found.position());
              if (!found.unitKnown()) {
                notes.add(
                    sheet,
                    cell,
                    "the unit of “%s” is not known here; its numbers were kept as words"
                        .formatted(heading(found.position())));
              } else if (!found.unit().equals(own) && column.takesEntries()) {
                notes.add(
                    sheet,
                    cell,
                    "%s is in %s; its numbers were converted to %s"
                        .formatted(column.name(), found.unit().symbol(), own.symbol()));
              }
            });
    boolean hidden = hides(area.sheet());
    for (Column column : table.inputs()) {
      // What need not be typed has a column only where somebody did; what checks it stands then.
      boolean missed =
          table.needs(column)
              || column.role() == Column.Role.DEFAULTED
              || column.content() == Column.Content.WORDS
              || between.containsKey(checks.get(column));
      if (!columns().containsKey(column) && missed && !hidden) {
        notes.add(sheet, "", "there is no column “%s”; it stays blank".formatted(column.name()));
      }
    }
  }

  /** A sheet that nobody used has the columns only that others rest on. */
  private static boolean hides(XSSFSheet sheet) {
    XSSFWorkbook workbook = sheet.getWorkbook();
    return workbook.isSheetHidden(workbook.getSheetIndex(sheet));
  }

  private SheetCell cell(int row, Headings.Found found) {
    return found == null ? null : area.cells().at(row, found.position());
  }

  private Line line(int row) {
    List<Entry> entries = new ArrayList<>();
    for (Column column : table.columns()) {
      Headings.Found own = yours.found().get(column);
      Headings.Found found = own == null ? headings.found().get(column) : own;
      SheetCell cell = cell(row, found);
      SheetCell used = own == null ? null : cell(row, headings.found().get(column));
      boolean over = SheetCell.typed(used) && SheetCell.empty(cell);
      if (over) {
        found = headings.found().get(column);
        cell = used;
      }
      boolean ours = own == null && column.role() == Column.Role.DEFAULTED && !between.isEmpty();
      if (over || (ours && SheetCell.typed(cell))) {
        notes.repeated(
            "yours/" + column.reference().key(),
            area.sheet().getSheetName(),
            Notes.cell(cell.row(), cell.column()),
            "what was typed over %s was taken as yours".formatted(column.name()));
      }
      boolean leading = table.other().isPresent() && column.equals(table.columns().get(0));
      if (leading && cell != null && cell.type() == CellType.FORMULA) {
        entries.add(Entry.BLANK);
      } else if (!column.takesEntries()) {
        overwritten(column, cell);
        entries.add(Entry.BLANK);
      } else {
        boolean usual = column.role() == Column.Role.DEFAULTED && !Objects.equals(found, own);
        entries.add(entry(column, cell, found, usual));
      }
    }
    Integer at = between.get(Headings.plain(WorkbookNames.IDENTITY));
    SheetCell number = at == null ? null : area.cells().at(row, at);
    boolean known = number != null && number.type() == CellType.NUMERIC;
    return new Line(row, known ? number.number() : Double.NaN, entries, remarks(row));
  }

  private Map<String, Remark> remarks(int row) {
    Map<String, Remark> found = new HashMap<>();
    for (Column column : table.columns()) {
      Remark remark = remarks.at(row, positions(column));
      if (!remark.equals(Remark.NONE)) {
        found.put(column.reference().column(), remark);
      }
    }
    return found;
  }

  private List<Integer> positions(Column column) {
    return CellRemarks.positions(
        Optional.ofNullable(yours.found().get(column)).map(Headings.Found::position),
        Optional.ofNullable(headings.found().get(column)).map(Headings.Found::position));
  }

  private Entry entry(Column column, SheetCell cell, Headings.Found found, boolean usual) {
    if (cell == null) {
      return Entry.BLANK;
    }
    Entry entry = cells.read(column, cell, found.unit(), usual);
    if (!found.unitKnown() && entry instanceof Entry.Figure) {
      String text = cell.words();
      return new Entry.Unreadable(text, "“" + text + "” has a unit that is not known here");
    }
    return entry;
  }

  private void overwritten(Column column, SheetCell cell) {
    if (SheetCell.typed(cell)) {
      notes.repeated(
          column.reference().key(),
          area.sheet().getSheetName(),
          Notes.cell(cell.row(), cell.column()),
          "something was typed over %s, which is calculated; it was left".formatted(column.name()));
    }
  }

  /** Rows typed directly under a table that did not grow with them. */
  private void below(List<Line> lines) {
    int row = area.last() + 1;
    int taken = 0;
    while (row <= area.cells().lastRow() && typed(row) >= 2) {
      lines.add(line(row++));
      taken++;
    }
    boolean wasTable = area.last() > area.heading();
    if (taken > 0 && wasTable) {
      notes.add(
          area.sheet().getSheetName(),
          Notes.cell(area.last() + 1, area.firstColumn()),
          "%s %s just under the table %s belonged to it by its look and %s taken"
              .formatted(
                  taken, taken == 1 ? "row" : "rows", table.title(), taken == 1 ? "was" : "were"));
    }
    if (row <= area.cells().lastRow() && typed(row) == 1) {
      notes.add(
          area.sheet().getSheetName(),
          Notes.cell(row, area.firstColumn()),
          "what stands under the table was left");
    }
  }

  private int typed(int row) {
    int typed = 0;
    for (Headings.Found found : columns().values()) {
      typed += SheetCell.typed(area.cells().at(row, found.position())) ? 1 : 0;
    }
    return typed;
  }

  /** Returns the numbers the file shows for a column, by the row of the sheet. */
  Map<Integer, Double> shown(Column column, List<Line> lines) {
    Headings.Found found = headings.found().get(column);
    Map<Integer, Double> shown = new HashMap<>();
    if (found == null || !found.unit().equals(column.kind().unit(system))) {
      return shown;
    }
    for (Line line : lines) {
      SheetCell cell = area.cells().at(line.row(), found.position());
      if (cell != null) {
        cell.shown().ifPresent(value -> shown.put(line.row(), value));
      }
    }
    return shown;
  }
}
