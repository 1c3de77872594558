package zonewright.sheet;

import java.util.Arrays;
import java.util.List;

/** A row of entries, one for each column of its table; never changes. */
public final class Row {
  private final long id;
  private final Entry[] entries;

  private Row(long id, Entry[] entries) {
    this.id = id;
    this.entries = entries;
  }

  /** Returns a row with nothing in it. */
  static Row blank(long id, int columns) {
    Entry[] entries = new Entry[columns];
    Arrays.fill(entries, Entry.BLANK);
    return new Row(id, entries);
  }

  /**
   * Returns a row with entries, for whoever puts a snapshot together.
   *
   * @param id what tells it from all other rows of its table
   * @param entries one for each column of its table
   */
  public static Row of(long id, List<Entry> entries) {
    return new Row(id, entries.toArray(Entry[]::new));
  }

  /** Returns what tells it from all other rows, also after it moved. */
  public long id() {
    return id;
  }

  /** Returns the entry in a column, by its position in the table. */
  public Entry entry(int column) {
    return entries[column];
  }

  /** Returns the row with another entry in one column. */
  Row with(int column, Entry entry) {
    Entry[] changed = entries.clone();
    changed[column] = entry;
    return new Row(id, changed);
  }

  /** Returns the row under another name; itself where it has it already. */
  Row named(Entry name) {
    return entries[0].equals(name) ? this : with(0, name);
  }

  /** Returns the row under another identity. */
  Row as(long another) {
    return new Row(another, entries);
  }

  /** Says whether nothing was entered in it. */
  public boolean isBlank() {
    return Arrays.stream(entries).allMatch(Entry.BLANK::equals);
  }

  /** Says whether both hold the same entries; who they are does not count. */
  public boolean sameEntries(Row other) {
    return Arrays.equals(entries, other.entries);
  }
}
