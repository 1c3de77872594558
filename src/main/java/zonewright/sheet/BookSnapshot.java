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

  /** Returns the rows of a table. */
  public List<Row> rows(String table) {
    return tables.getOrDefault(table, List.of());
  }
}
