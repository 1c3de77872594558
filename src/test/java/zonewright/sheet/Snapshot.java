package zonewright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import zonewright.formula.Reference;
import zonewright.units.UnitSystem;

/**
 * All that a book holds, entries by row and numbers bit by bit, to hold two states against each
 * other.
 */
record Snapshot(
    UnitSystem system,
    Map<String, List<List<Entry>>> entries,
    Map<String, List<Long>> identities,
    Map<Reference, List<Long>> bits) {
  static Snapshot of(Book book) {
    Map<String, List<List<Entry>>> entries = new LinkedHashMap<>();
    Map<String, List<Long>> identities = new LinkedHashMap<>();
    Map<Reference, List<Long>> bits = new LinkedHashMap<>();
    for (TableDefinition table : book.schema().tables()) {
      List<List<Entry>> rows = new ArrayList<>();
      List<Long> ids = new ArrayList<>();
      for (Row row : book.contents().rows(table.id())) {
        List<Entry> cells = new ArrayList<>();
        for (int column = 0; column < table.columns().size(); column++) {
          cells.add(row.entry(column));
        }
        rows.add(cells);
        ids.add(row.id());
      }
      entries.put(table.id(), rows);
      identities.put(table.id(), ids);
      for (Column column : table.columns()) {
        List<Long> numbers = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
          numbers.add(Double.doubleToLongBits(book.number(column.reference(), row)));
        }
        bits.put(column.reference(), numbers);
      }
    }
    return new Snapshot(book.system(), entries, identities, bits);
  }

  /** Returns a new book that was never edited but holds the same entries. */
  static Book freshCopy(Book book) {
    Book copy = new Book(book.schema(), book.system());
    List<Edit> parts = new ArrayList<>();
    for (TableDefinition table : book.schema().tables()) {
      List<Row> rows = book.contents().rows(table.id());
      if (table.other().isPresent()) {
        parts.add(new Edit.SetCells("copy", entries(table, rows)));
        continue;
      }
      List<Row> blank = copy.contents().rows(table.id());
      parts.add(new Edit.RemoveRows("copy", table.id(), 0, blank));
      parts.add(new Edit.InsertRows("copy", table.id(), 0, rows));
    }
    copy.start(new Edit.Several("copy", parts));
    return copy;
  }

  private static List<Edit.Change> entries(TableDefinition table, List<Row> rows) {
    List<Edit.Change> changes = new ArrayList<>();
    for (Row row : rows) {
      for (int column = 1; column < table.columns().size(); column++) {
        changes.add(new Edit.Change(table.id(), row.id(), column, Entry.BLANK, row.entry(column)));
      }
    }
    return changes;
  }
}
