package zonewright.workbook;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import zonewright.units.UnitSystem;

/**
 * The file a design came from, kept beside the design: what is a person's own in it goes into the
 * next file that is written.
 */
public final class KeptFile {
  private final Optional<byte[]> content;
  private final UnitSystem system;
  private final Map<String, Map<Long, Integer>> rows;
  private final Set<String> made;
  private final boolean foreign;
  private final Optional<String> password;

  /**
   * Keeps a file.
   *
   * @param content the file as it was read or written, not copied; none where it is too large to be
   *     kept in memory
   * @param system the unit system it is in
   * @param rows by the identifier of a table, in which row of its sheet each row of the design
   *     stands
   * @param made the titles of the sheets that were made beside the design's own
   * @param foreign whether a person may have put something of their own into it
   */
  KeptFile(
      Optional<byte[]> content,
      UnitSystem system,
      Map<String, Map<Long, Integer>> rows,
      Set<String> made,
      boolean foreign) {
    this(content, system, Map.copyOf(rows), Set.copyOf(made), foreign, Optional.empty());
  }

  private KeptFile(
      Optional<byte[]> content,
      UnitSystem system,
      Map<String, Map<Long, Integer>> rows,
      Set<String> made,
      boolean foreign,
      Optional<String> password) {
    this.foreign = foreign;
    this.password = password;
    this.content = content;
    this.system = system;
    this.rows = rows;
    this.made = made;
  }

  /** Returns the same file, opened with a password and closed with it again. */
  KeptFile closedBy(Optional<String> word) {
    return new KeptFile(content, system, rows, made, foreign, word);
  }

  /** Returns the password the file is protected by, if it is. */
  public Optional<String> password() {
    return password;
  }

  /** Returns the file; none where it is too large to be kept in memory. */
  Optional<byte[]> content() {
    return content;
  }

  /** Says whether a person may have put something of their own into it. */
  boolean foreign() {
    return foreign;
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
