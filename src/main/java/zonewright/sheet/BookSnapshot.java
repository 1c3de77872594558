package zonewright.sheet;

import java.util.List;
import java.util.Map;
import zonewright.units.UnitSystem;

/**
 * All that was entered in a book at one moment; never changes, so any thread may read it.
 *
 * @param system the unit system of all numbers
 * @param tables the rows of each table, by its identifier
 */
public record BookSnapshot(UnitSystem system, Map<String, List<Row>> tables) {
  public BookSnapshot {
    tables = Map.copyOf(tables);
  }

  /** Says whether both hold the same entries in the same order; who the rows are does not count. */
  public boolean sameEntries(BookSnapshot other) {
    return system == other.system
        && tables.keySet().equals(other.tables.keySet())
        && tables.keySet().stream().allMatch(table -> same(rows(table), other.rows(table)));
  }

  private static boolean same(List<Row> one, List<Row> other) {
    boolean same = one.size() == other.size();
    for (int i = 0; same && i < one.size(); i++) {
      same = one.get(i).sameEntries(other.get(i));
    }
    return same;
  }

  /** Returns the rows of a table. */
  public List<Row> rows(String table) {
    return tables.getOrDefault(table, List.of());
  }
}
