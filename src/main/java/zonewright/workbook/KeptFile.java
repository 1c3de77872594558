package zonewright.workbook;

import java.util.Map;
import java.util.Set;
import zonewright.units.UnitSystem;

/**
 * The file a design came from, kept beside the design: what is a person's own in it goes into the
 * next file that is written.
 */
public final class KeptFile {
  private final byte[] content;
  private final UnitSystem system;
  private final Map<String, Map<Long, Integer>> rows;
  private final Set<String> made;

  /**
   * Keeps a file.
   *
   * @param content the file as it was read or written; not copied
   * @param system the unit system it is in
   * @param rows by the identifier of a table, in which row of its sheet each row of the design
   *     stands
   * @param made the titles of the sheets that were made beside the design's own
   */
  KeptFile(
      byte[] content, UnitSystem system, Map<String, Map<Long, Integer>> rows, Set<String> made) {
    this.content = content;
    this.system = system;
    this.rows = Map.copyOf(rows);
    this.made = Set.copyOf(made);
  }

  byte[] content() {
    return content;
  }

  UnitSystem system() {
    return system;
  }

  /** Returns the titles of the sheets that were made beside the design's own. */
  Set<String> made() {
    return made;
  }

  /** Returns the rows of a table's sheet by the identity of the design's rows. */
  Map<Long, Integer> rows(String table) {
    return rows.getOrDefault(table, Map.of());
  }
}
