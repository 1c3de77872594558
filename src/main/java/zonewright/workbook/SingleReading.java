package zonewright.workbook;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Headings;
import zonewright.sheet.Remark;
import zonewright.sheet.TableDefinition;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;
import zonewright.workbook.kit.SheetColumn;

/** Reads a one-row table: a line for each column, found by what stands before it. */
final class SingleReading {
  /** What stood over the values before typed and used ones had a column each. */
  private static final String EARLIER = "value";

  private final XSSFSheet sheet;
  private final Map<String, Integer> lines = new HashMap<>();
  private int item;
  private int used = 2;
  private int value = 1;
  private int unit = 3;
  private int headingRow = -1;

  SingleReading(XSSFSheet sheet) {
    this.sheet = sheet;
    for (int row = 0; row <= sheet.getLastRowNum() && headingRow < 0; row++) {
      headings(row);
    }
    for (int row = headingRow + 1; row <= sheet.getLastRowNum(); row++) {
      String words = words(row, item);
      if (!words.isBlank()) {
        // The title of a group may read like a line of it, but nothing stands beside it.
        int place = row;
        lines.merge(Headings.plain(words), place, (known, other) -> alone(known) ? other : known);
      }
    }
  }

  private boolean alone(int row) {
    XSSFRow cells = sheet.getRow(row);
    for (int column = 0; column < cells.getLastCellNum(); column++) {
      if (column != item && !SheetCell.empty(SheetCell.of(cells.getCell(column)))) {
        return false;
      }
    }
    return true;
  }

  private void headings(int row) {
    XSSFRow cells = sheet.getRow(row);
    Map<String, Integer> places = new HashMap<>();
    for (int column = 0; cells != null && column < cells.getLastCellNum(); column++) {
      places.putIfAbsent(Headings.plain(words(row, column)), column);
    }
    Integer first = places.get(Headings.plain(SingleSheet.ITEM));
    Integer second = places.get(Headings.plain(SingleSheet.YOURS));
    Integer before = places.get(EARLIER);
    if (first != null && (second != null || before != null)) {
      item = first;
      value = second == null ? before : second;
      used = places.getOrDefault(Headings.plain(SingleSheet.USED), value);
      unit = places.getOrDefault(Headings.plain(SingleSheet.UNIT), -1);
      headingRow = row;
    }
  }

  private XSSFCell cell(int row, int column) {
    XSSFRow cells = sheet.getRow(row);
    return cells == null || column < 0 ? null : cells.getCell(column);
  }

  private String words(int row, int column) {
    XSSFCell cell = cell(row, column);
    return cell != null && cell.getCellType() == CellType.STRING ? cell.getStringCellValue() : "";
  }

  /** Returns the sheet it stands in. */
  XSSFSheet sheet() {
    return sheet;
  }

  /** Returns the unit system the sheet names, if it does. */
  Optional<UnitSystem> system() {
    Integer row = lines.get(Headings.plain(SingleSheet.UNITS_LINE));
    return row == null
        ? Optional.empty()
        : system(words(row, used)).or(() -> system(words(row, value)));
  }

  /** Returns the unit system that is called so. */
  static Optional<UnitSystem> system(String words) {
    for (UnitSystem system : UnitSystem.values()) {
      if (Headings.plain(system.words()).equals(Headings.plain(words))) {
        return Optional.of(system);
      }
    }
    return Optional.empty();
  }

  /** Returns the row of a column's line; none where the sheet has no such line. */
  Optional<Integer> line(String name) {
    return Optional.ofNullable(lines.get(Headings.plain(name)));
  }

  /** Returns the column of the names of lines. */
  int itemColumn() {
    return item;
  }

  /** Returns the column of what a person types. */
  int yoursColumn() {
    return value;
  }

  /** Returns the column of what is used. */
  int usedColumn() {
    return used;
  }

  /**
   * Says whether what is typed and what is used had one column, as in files of an earlier shape.
   */
  boolean earlier() {
    return used == value;
  }

  /** Returns the column of the units; negative where there is none. */
  int unitColumn() {
    return unit;
  }

  /** Returns the cell in which the value of a column is used; none where there is no such line. */
  Optional<XSSFCell> cell(Column column) {
    Integer row = lines.get(Headings.plain(column.name()));
    return row == null ? Optional.empty() : Optional.ofNullable(cell(row, used));
  }

  /** Returns the entries of all input columns that have a line, and notes what was left. */
  Map<Column, Entry> entries(
      TableDefinition table,
      UnitSystem system,
      Notes notes,
      CellReader cells,
      List<SheetColumn> ours) {
    Map<Column, Entry> entries = new LinkedHashMap<>();
    Map<String, Integer> left = new LinkedHashMap<>(lines);
    left.remove(Headings.plain(SingleSheet.UNITS_LINE));
    ours.stream()
        .filter(line -> line.role().closed())
        .forEach(line -> left.remove(Headings.plain(line.heading())));
    for (Column column : table.columns()) {
      Integer row = line(column, left).orElse(null);
      if (row == null) {
        boolean hidden =
            sheet.getWorkbook().isSheetHidden(sheet.getWorkbook().getSheetIndex(sheet));
        if (table.needs(column) && !hidden) {
          notes.add(sheet.getSheetName(), "", "there is no line “%s”".formatted(column.name()));
        }
      } else if (column.takesEntries()) {
        entries.put(column, entry(column, row, value, system, notes, cells));
        overUsed(column, row, system, notes, cells).ifPresent(entry -> entries.put(column, entry));
      } else if (SheetCell.typed(SheetCell.of(cell(row, used)))) {
        notes.add(
            sheet.getSheetName(),
            Notes.cell(row, used),
            "something was typed over %s, which is calculated; it was left"
                .formatted(column.name()));
      }
    }
    left.forEach(
        (words, row) -> {
          if (!SheetCell.empty(SheetCell.of(cell(row, value)))) {
            notes.add(
                sheet.getSheetName(),
                Notes.cell(row, value),
                "the line “%s” is your own; it is kept and not read".formatted(words(row, item)));
          }
        });
    return entries;
  }

  /** Returns a person's notes and colours, by the identifier of the column. */
  Map<String, Remark> remarks(TableDefinition table) {
    CellRemarks all = new CellRemarks(SheetCells.of(sheet));
    Map<String, Remark> found = new HashMap<>();
    for (Column column : table.columns()) {
      line(column, new HashMap<>(lines))
          .map(row -> all.at(row, List.of(value, used)))
          .filter(remark -> !remark.equals(Remark.NONE))
          .ifPresent(remark -> found.put(column.reference().column(), remark));
    }
    return found;
  }

  /** Takes the line of a column from those left, by its name or one it had before. */
  private static Optional<Integer> line(Column column, Map<String, Integer> left) {
    Integer row = left.remove(Headings.plain(column.name()));
    for (String name : column.formerNames()) {
      row = row == null ? left.remove(Headings.plain(name)) : row;
    }
    return Optional.ofNullable(row);
  }

  /** What was typed over the value used is a person's own, where its own cell is blank. */
  private Optional<Entry> overUsed(
      Column column, int row, UnitSystem system, Notes notes, CellReader cells) {
    boolean over =
        !earlier()
            && SheetCell.typed(SheetCell.of(cell(row, used)))
            && SheetCell.empty(SheetCell.of(cell(row, value)));
    if (!over) {
      return Optional.empty();
    }
    notes.add(
        sheet.getSheetName(),
        Notes.cell(row, used),
        "what was typed over %s was taken as yours".formatted(column.name()));
    return Optional.of(entry(column, row, used, system, notes, cells));
  }

  private Entry entry(
      Column column, int row, int at, UnitSystem system, Notes notes, CellReader cells) {
    Unit own = column.kind().unit(system);
    String words = words(row, unit);
    Optional<Unit> named = words.isBlank() ? Optional.of(own) : Units.named(words);
    boolean usual = column.role() == Column.Role.DEFAULTED && (earlier() || at != value);
    Entry entry = cells.read(column, SheetCell.of(cell(row, at)), named.orElse(own), usual);
    if (!(entry instanceof Entry.Figure)) {
      return entry;
    }
    String place = Notes.cell(row, at);
    if (named.isEmpty() || !named.get().dimension().equals(own.dimension())) {
      String text = cell(row, at).getRawValue() + " " + words.strip();
      notes.add(
          sheet.getSheetName(),
          place,
          "“" + text + "” was kept as words: no unit of " + column.name());
      return new Entry.Unreadable(text, "“" + words.strip() + "” is no unit of " + column.name());
    }
    if (!named.get().equals(own)) {
      notes.add(
          sheet.getSheetName(),
          place,
          "%s is in %s; it was converted to %s"
              .formatted(column.name(), named.get().symbol(), own.symbol()));
    }
    return entry;
  }
}
