package zonewright.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import zonewright.formula.ReferenceTable;
import zonewright.sheet.Schema;
import zonewright.trade.OwnRows;
import zonewright.units.QuantityKind;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;
import zonewright.workbook.kit.CellText;

/** What the cells of the trade's tables hold in a workbook, and whether somebody changed them. */
final class ReferenceCells {
  private static final String NONE = "not given";

  private final UnitSystem system;
  private final Map<String, ReferenceTable.Numbers> used = new HashMap<>();

  /** Prepares for one unit system; the schema says in which columns formulas look things up. */
  ReferenceCells(Schema schema, UnitSystem system) {
    this.system = system;
    schema
        .order()
        .forEach(
            column ->
                schema
                    .dependencies(column)
                    .ifPresent(needs -> needs.published().forEach(this::uses)));
  }

  private void uses(ReferenceTable.Numbers column) {
    used.put(column.table().name() + "/" + column.sourceHeading(), column);
  }

  /** A cell of a table that holds something else than the program's table does. */
  record Changed(XSSFCell cell, Object ours) {}

  /**
   * Returns the cells in which a sheet differs from the program's table, found by headings and
   * keys; nothing where the sheet lacks one of them.
   */
  Optional<List<Changed>> changed(ReferenceTable table, XSSFSheet sheet) {
    return changed(table, sheet, table.bundled());
  }

  private Optional<List<Changed>> changed(ReferenceTable table, XSSFSheet sheet, int count) {
    Map<String, Integer> columns = new HashMap<>();
    XSSFRow top = sheet.getRow(0);
    for (int i = 0; top != null && i < top.getLastCellNum(); i++) {
      columns.putIfAbsent(words(top.getCell(i)), i);
    }
    List<String> headings = table.headings();
    Map<String, Integer> rows = new HashMap<>();
    Integer keys = columns.get(headings.get(0));
    for (int row = 1; keys != null && row <= sheet.getLastRowNum(); row++) {
      XSSFRow cells = sheet.getRow(row);
      rows.putIfAbsent(cells == null ? "" : words(cells.getCell(keys)), row);
    }
    List<Changed> changed = new ArrayList<>();
    for (String heading : headings) {
      Optional<ReferenceTable.Numbers> numbers = numbers(table, heading);
      Integer column = columns.get(numbers.map(found -> found.heading(system)).orElse(heading));
      if (column == null) {
        return Optional.empty();
      }
      for (int row = 0; row < count; row++) {
        Integer at = rows.get(table.text(row, headings.get(0)));
        if (at == null) {
          return Optional.empty();
        }
        XSSFCell cell = sheet.getRow(at).getCell(column);
        Object ours = content(table.text(row, heading), row, numbers);
        if (!same(cell, ours)) {
          changed.add(new Changed(cell == null ? sheet.getRow(at).createCell(column) : cell, ours));
        }
      }
    }
    return Optional.of(changed);
  }

  /**
   * Brings a sheet back to what the table holds, rows of one's own among it; says whether it could.
   */
  boolean restore(ReferenceTable table, XSSFSheet sheet) {
    if (holdsGone(table, sheet)) {
      return false;
    }
    Optional<List<Changed>> all = changed(table, sheet, table.size());
    all.ifPresent(
        changed ->
            changed.forEach(
                each -> {
                  CellWriter.empty(each.cell());
                  if (each.ours() instanceof Double number) {
                    each.cell().setCellValue(number);
                  } else {
                    each.cell().setCellValue(CellText.encoded((String) each.ours()));
                  }
                }));
    return all.isPresent();
  }

  /** Says whether a sheet has rows of one's own that the design has no more. */
  private static boolean holdsGone(ReferenceTable table, XSSFSheet sheet) {
    int status = table.headings().size() - 1;
    for (int row = 1; row <= sheet.getLastRowNum(); row++) {
      XSSFRow cells = sheet.getRow(row);
      if (cells != null
          && words(cells.getCell(status)).equals(OwnRows.STATUS)
          && table.position(words(cells.getCell(0))).isEmpty()) {
        return true;
      }
    }
    return false;
  }

  private static String words(XSSFCell cell) {
    return cell != null && cell.getCellType() == CellType.STRING ? cell.getStringCellValue() : "";
  }

  private static boolean same(XSSFCell cell, Object ours) {
    if (ours instanceof Double number) {
      return cell != null
          && cell.getCellType() == CellType.NUMERIC
          && !ShownNumber.differs(cell.getNumericCellValue(), number);
    }
    return words(cell).equals(ours);
  }

  /** What a cell holds: a number, or words. */
  Object content(String text, int at, Optional<ReferenceTable.Numbers> numbers) {
    if (numbers.isPresent() && !text.isBlank()) {
      return numbers.get().value(at, system);
    }
    return numbers.isPresent() ? NONE : text;
  }

  /** Returns the numbers of a column; nothing where it holds words. */
  Optional<ReferenceTable.Numbers> numbers(ReferenceTable table, String heading) {
    ReferenceTable.Numbers known = used.get(table.name() + "/" + heading);
    if (known != null) {
      return Optional.of(known);
    }
    boolean any = false;
    for (int row = 0; row < table.size(); row++) {
      String text = table.text(row, heading);
      if (!text.isBlank() && !text.matches("-?\\d+(\\.\\d+)?")) {
        return Optional.empty();
      }
      any |= !text.isBlank();
    }
    return any ? kind(heading).map(kind -> table.numbers(heading, kind)) : Optional.empty();
  }

  /** The kind whose unit a heading names, for columns that no formula looks at. */
  private static Optional<QuantityKind> kind(String heading) {
    if (!heading.endsWith(")")) {
      return Optional.of(QuantityKind.FACTOR);
    }
    String words = heading.substring(heading.lastIndexOf('(') + 1, heading.length() - 1);
    Unit unit = Units.named(words).orElse(null);
    for (QuantityKind kind : QuantityKind.values()) {
      if (kind.unit(UnitSystem.US).equals(unit) || kind.unit(UnitSystem.SI).equals(unit)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }
}
