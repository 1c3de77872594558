package zonewright.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A table: its columns and what its rows are.
 *
 * @param id identifier; never changes
 * @param title what a person calls it, and its name in a workbook: one word
 * @param rowWord what a person calls a row, such as {@code zone}
 * @param rows how many rows there may be
 * @param columns its columns in their usual order
 * @param about what it is for, in a sentence or two; empty where its title says it
 * @param formerColumns names of columns that files may still have and the table has no more
 */
public record TableDefinition(
    String id,
    String title,
    String rowWord,
    Rows rows,
    List<Column> columns,
    String about,
    List<String> formerColumns) {
  /** How many rows there may be. */
  public sealed interface Rows {
    /** One row, for facts that hold for the whole design. */
    record One() implements Rows {}

    /** A row for each name, neither more nor fewer. */
    record Named(List<String> names) implements Rows {
      public Named {
        names = List.copyOf(names);
      }
    }

    /**
     * One row for each row of another table that has as many as are wanted, in its order; the first
     * column holds the names given there.
     */
    record Alongside(String table) implements Rows {}

    /** As many as are wanted; the first column holds their names. */
    record Free() implements Rows {}
  }

  /** A table that needs no words on what it is for. */
  public TableDefinition(String id, String title, String rowWord, Rows rows, List<Column> columns) {
    this(id, title, rowWord, rows, columns, "", List.of());
  }

  public TableDefinition {
    columns = List.copyOf(columns);
    formerColumns = List.copyOf(formerColumns);
    for (Column column : columns) {
      if (!column.reference().table().equals(id)) {
        throw new IllegalArgumentException(
            "%s belongs to %s, not to %s".formatted(column.name(), column.reference().table(), id));
      }
    }
  }

  /** Returns the same table with other columns. */
  TableDefinition with(List<Column> others) {
    return new TableDefinition(id, title, rowWord, rows, others, about, formerColumns);
  }

  /** Returns the same table with words on what it is for. */
  public TableDefinition about(String words) {
    return new TableDefinition(id, title, rowWord, rows, columns, words, formerColumns);
  }

  /** Returns the same table with names of columns it had once, all of them calculated. */
  public TableDefinition without(List<String> names) {
    return new TableDefinition(id, title, rowWord, rows, columns, about, names);
  }

  /** Says whether there is one row for all. */
  public boolean single() {
    return rows instanceof Rows.One;
  }

  /** Returns the column that names the rows; none in a one-row table. */
  public Optional<Column> key() {
    return single() ? Optional.empty() : Optional.of(columns.get(0));
  }

  /** Says whether another table has the same columns, each declared just as here. */
  public boolean declaredLike(TableDefinition other) {
    return equals(other)
        && IntStream.range(0, columns.size())
            .allMatch(at -> columns.get(at).declaredLike(other.columns().get(at)));
  }

  /** Returns the column of an identifier; none where the table has no such column. */
  public Optional<Column> column(String wanted) {
    return columns.stream()
        .filter(column -> column.reference().column().equals(wanted))
        .findFirst();
  }

  /**
   * Says whether a person types into a column: not where it is calculated, nor where it names rows
   * that are given.
   */
  public boolean takesEntries(Column column) {
    return column.takesEntries() && !(givenNames() && column.equals(columns.get(0)));
  }

  /** Says whether a row lacks something where nothing good is typed into a column. */
  public boolean needs(Column column) {
    return column.role() == Column.Role.INPUT
        && column.content() != Column.Content.WORDS
        && !column.isOptional()
        && takesEntries(column);
  }

  /** Says whether the names of the rows are given, so that nobody types them. */
  public boolean givenNames() {
    return rows instanceof Rows.Named || rows instanceof Rows.Alongside;
  }

  /** Returns the table it has a row for each row of; none for most. */
  public Optional<String> other() {
    return rows instanceof Rows.Alongside beside ? Optional.of(beside.table()) : Optional.empty();
  }

  /** Returns the columns a person types into. */
  public List<Column> inputs() {
    return columns.stream().filter(Column::takesEntries).toList();
  }
}
