package zonewright.sheet;

import java.util.ArrayList;
import java.util.List;
import zonewright.units.UnitSystem;

/**
 * Finds a column by the name a person writes: {@code Area}, {@code area (ft²)}, or {@code Site:
 * Volume a week} where several tables have one of that name.
 */
public final class ColumnFinder {
  private static final int SUGGESTIONS = 3;

  private final Schema schema;
  private final String preferred;

  /**
   * Looks in all tables of a schema.
   *
   * @param preferred identifier of the table whose column is meant where several have the name
   */
  public ColumnFinder(Schema schema, String preferred) {
    this.schema = schema;
    this.preferred = preferred;
  }

  /** What was found. */
  public sealed interface Found {}

  /** The column meant. */
  public record One(Column column) implements Found {}

  /** No single column; the sentence says why, and which names would do. */
  public record Unclear(String sentence) implements Found {}

  /** Returns the column of any table that a name means. */
  public Found find(String written) {
    Found whole = among(all(), written);
    int colon = written.indexOf(':');
    if (whole instanceof One || colon < 0) {
      return whole;
    }
    String title = written.substring(0, colon).strip();
    return schema.tables().stream()
        .filter(table -> table.title().equalsIgnoreCase(title))
        .findFirst()
        .map(table -> in(table, written.substring(colon + 1)))
        .orElseGet(
            () ->
                new Unclear(
                    "There is no sheet “%s”; the sheets are %s."
                        .formatted(title, String.join(", ", titles()))));
  }

  /** Returns the column of one table that a name means. */
  public Found in(TableDefinition table, String written) {
    return among(table.columns(), written);
  }

  private Found among(List<Column> columns, String written) {
    List<Column> named = columns.stream().filter(column -> means(column, written)).toList();
    List<Column> first = named.stream().filter(column -> in(column, preferred)).toList();
    if (named.size() == 1 || first.size() == 1) {
      return new One(first.size() == 1 ? first.get(0) : named.get(0));
    }
    // The months are the same in every sheet that has a row for each.
    List<Column> rows = named.stream().filter(column -> !rowNames(column).isEmpty()).toList();
    if (rows.stream().map(this::rowNames).distinct().count() == 1) {
      return new One(rows.get(0));
    }
    if (!named.isEmpty()) {
      return new Unclear(
          "“%s” stands in several sheets; write %s."
              .formatted(written.strip(), either(named.stream().map(this::fullName).toList())));
    }
    List<String> names = columns.stream().map(Column::name).toList();
    return new Unclear(
        "There is no column “%s”; did you mean %s?"
            .formatted(written.strip(), either(Nearest.to(written, names, SUGGESTIONS))));
  }

  /** Returns the fixed names of the rows a column holds, such as the months; none for others. */
  private List<String> rowNames(Column column) {
    TableDefinition table = schema.table(column.reference().table());
    return table.rows() instanceof TableDefinition.Rows.Named rows
            && table.columns().get(0).equals(column)
        ? rows.names()
        : List.of();
  }

  private static boolean in(Column column, String table) {
    return column.reference().table().equals(table);
  }

  private static boolean means(Column column, String written) {
    String plain = written.strip();
    return plain.equalsIgnoreCase(column.name())
        || plain.equalsIgnoreCase(column.heading(UnitSystem.US))
        || plain.equalsIgnoreCase(column.heading(UnitSystem.SI));
  }

  private List<Column> all() {
    List<Column> columns = new ArrayList<>();
    schema.tables().forEach(table -> columns.addAll(table.columns()));
    return columns;
  }

  private List<String> titles() {
    return schema.tables().stream().map(TableDefinition::title).toList();
  }

  /** Returns the shortest name that means a column: its own, or with its table in front. */
  public String shortestName(Column column) {
    return find(column.name()) instanceof One one
            && one.column().reference().equals(column.reference())
        ? column.name()
        : fullName(column);
  }

  /** Returns a column's name with its table, as {@code Site: Volume a week}. */
  private String fullName(Column column) {
    return schema.table(column.reference().table()).title() + ": " + column.name();
  }

  private static String either(List<String> names) {
    List<String> quoted = names.stream().map(name -> "“" + name + "”").toList();
    int last = quoted.size() - 1;
    return last == 0
        ? quoted.get(0)
        : String.join(", ", quoted.subList(0, last)) + " or " + quoted.get(last);
  }
}
