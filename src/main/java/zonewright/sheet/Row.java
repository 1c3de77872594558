package zonewright.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A row of entries, one for each column of its table, with a person's remarks on them; never
 * changes.
 */
public final class Row {
  private final long id;
  private final Entry[] entries;

  /**
   * By the identifier of the column, only those there are: columns of one's own come and go, so
   * that their positions say nothing.
   */
  private final Map<String, Remark> remarks;

  private Row(long id, Entry[] entries, Map<String, Remark> remarks) {
    this.id = id;
    this.entries = entries;
    this.remarks = remarks;
  }

  /** Returns a row with nothing in it. */
  static Row blank(long id, int columns) {
    Entry[] entries = new Entry[columns];
    Arrays.fill(entries, Entry.BLANK);
    return new Row(id, entries, Map.of());
  }

  /**
   * Returns a row with entries, for whoever puts a snapshot together.
   *
   * @param id what tells it from all other rows of its table
   * @param entries one for each column of its table
   */
  public static Row of(long id, List<Entry> entries) {
    return of(id, entries, Map.of());
  }

  /**
   * Returns a row with entries and remarks.
   *
   * @param remarks by the identifier of the column; {@link Remark#NONE} may be among them
   */
  public static Row of(long id, List<Entry> entries, Map<String, Remark> remarks) {
    Row row = new Row(id, entries.toArray(Entry[]::new), Map.of());
    for (Map.Entry<String, Remark> remark : remarks.entrySet()) {
      row = row.with(remark.getKey(), remark.getValue());
    }
    return row;
  }

  /** Returns what tells it from all other rows, also after it moved. */
  public long id() {
    return id;
  }

  /**
   * Returns the entry in a column, by its position in the table; blank in columns that came after
   * the row was made, which are calculated.
   */
  public Entry entry(int column) {
    return column < entries.length ? entries[column] : Entry.BLANK;
  }

  /** Returns the row with another entry in one column. */
  Row with(int column, Entry entry) {
    Entry[] changed = entries.clone();
    changed[column] = entry;
    return new Row(id, changed, remarks);
  }

  /** Returns the row with another remark on one column, by its identifier. */
  Row with(String column, Remark remark) {
    Map<String, Remark> changed = new TreeMap<>(remarks);
    if (remark.equals(Remark.NONE)) {
      changed.remove(column);
    } else {
      changed.put(column, remark);
    }
    return new Row(id, entries, Map.copyOf(changed));
  }

  /** Returns the remark on a column, by its identifier. */
  public Remark remark(String column) {
    return remarks.getOrDefault(column, Remark.NONE);
  }

  /** Returns the remarks there are, by the identifier of the column. */
  public Map<String, Remark> remarks() {
    return remarks;
  }

  /** Returns the identifiers of the columns whose remarks another row has not, or has otherwise. */
  public Set<String> remarkedOtherwise(Row other) {
    Set<String> columns = new TreeSet<>(remarks.keySet());
    columns.addAll(other.remarks.keySet());
    columns.removeIf(column -> remark(column).equals(other.remark(column)));
    return columns;
  }

  /** Returns the row under another name; itself where it has it already. */
  Row named(Entry name) {
    return entries[0].equals(name) ? this : with(0, name);
  }

  /** Returns the row under another identity. */
  Row as(long another) {
    return new Row(another, entries, remarks);
  }

  /** Says whether nothing was entered in it. */
  public boolean isBlank() {
    // asked for every cell that is typed into, so without a stream
    for (Entry entry : entries) {
      if (!entry.equals(Entry.BLANK)) {
        return false;
      }
    }
    return true;
  }

  /** Says whether both hold the same entries and remarks; who they are does not count. */
  public boolean sameEntries(Row other) {
    return Arrays.equals(entries, other.entries) && remarks.equals(other.remarks);
  }
}
