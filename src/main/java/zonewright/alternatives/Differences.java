package zonewright.alternatives;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.Wording;
import zonewright.trade.Sheets;

/**
 * Finds what an alternative does otherwise than the design. Rows with one identity are the same
 * row; their order, notes and colours do not count.
 */
final class Differences {
  private final Wording wording;
  private final BookSnapshot design;
  private final BookSnapshot other;
  private final Map<String, RowNames> names = new HashMap<>();
  private final List<Change> changes = new ArrayList<>();

  private Differences(Wording wording, BookSnapshot design, BookSnapshot other) {
    this.wording = wording;
    this.design = design;
    this.other = other;
  }

  /**
   * Returns what makes one moment of a design into another, sheet by sheet.
   *
   * @param wording the words for values in the units of both
   */
  static List<Change> between(
      Schema schema, Wording wording, BookSnapshot design, BookSnapshot other) {
    Differences found = new Differences(wording, design, other);
    for (TableDefinition table : schema.tables()) {
      if (!design.rows(table.id()).equals(other.rows(table.id())) && !about(table)) {
        found.compare(table);
      }
    }
    return found.changes;
  }

  /** Says whether a sheet is about the alternatives themselves and the same in all of them. */
  static boolean about(TableDefinition table) {
    return table.id().equals(Sheets.ALTERNATIVES) || table.id().equals(Sheets.CHANGES);
  }

  /** Says whether a cell is about the alternatives themselves and the same in all of them. */
  static boolean about(Column column) {
    return column.reference().equals(AlternativeSheets.COMPARED.reference());
  }

  private void compare(TableDefinition table) {
    String leading = table.other().orElse(table.id());
    RowNames rows = names.computeIfAbsent(leading, id -> new RowNames(design.rows(id)));
    Map<Long, Row> before = new LinkedHashMap<>();
    design.rows(table.id()).forEach(row -> before.put(row.id(), row));
    Row above = null;
    for (Row row : other.rows(table.id())) {
      if (table.other().isEmpty() && !before.containsKey(row.id())) {
        add(Change.Kind.ROW_ADDED, table, rows.put(row), "", above == null ? "" : rows.of(above));
      }
      above = row;
    }
    for (Row row : other.rows(table.id())) {
      Row old = before.remove(row.id());
      if (!row.equals(old)) {
        cells(table, rows, old, row);
      }
    }
    if (table.other().isEmpty()) {
      before.values().forEach(gone -> add(Change.Kind.ROW_GONE, table, rows.of(gone), "", ""));
    }
  }

  /** Compares a row with the one of the design; a row that was put in has its name and no more. */
  private void cells(TableDefinition table, RowNames rows, Row old, Row row) {
    for (int i = table.givenNames() ? 1 : 0; i < table.columns().size(); i++) {
      Column column = table.columns().get(i);
      Entry before = old != null ? old.entry(i) : i == 0 ? Entry.words(rows.of(row)) : Entry.BLANK;
      Entry after = row.entry(i);
      if (!after.equals(before) && !about(column)) {
        String told = table.single() ? "" : rows.of(row);
        boolean blank = after instanceof Entry.Blank;
        add(
            blank ? Change.Kind.CLEARED : Change.Kind.TYPED,
            table,
            told,
            column.name(),
            blank ? "" : CellValues.words(column, after, wording));
      }
    }
  }

  private void add(
      Change.Kind kind, TableDefinition table, String row, String column, String value) {
    changes.add(new Change(kind, table.title(), row, column, value));
  }
}
