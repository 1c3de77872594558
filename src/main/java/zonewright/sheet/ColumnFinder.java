package zonewright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import zonewright.units.UnitSystem;

/**
 * Finds a column by the name a person writes: {@code Area}, {@code area (ft²)}, {@code Site: Volume
 * a week} where several tables have one of that name, or what else people call it.
 */
public final class ColumnFinder {
  private static final int SUGGESTIONS = 3;

  /** How much better than the next a column must fit to be taken for what was meant. */
  private static final double CLEARLY = 0.1;

  /** How well a column must fit to be taken for what was meant. */
  private static final double WELL = 0.8;

  /** How much less than the best a column may fit to be named beside it. */
  private static final double NEAR = 0.25;

  private final Schema schema;
  private final String preferred;
  private final Function<Column, List<String>> others;
  private final Map<List<Column>, ColumnSearch> searches = new HashMap<>();

  /**
   * Looks in all tables of a schema.
   *
   * @param preferred identifier of the table whose column is meant where several have the name
   * @param others what else a column is called
   */
  public ColumnFinder(Schema schema, String preferred, Function<Column, List<String>> others) {
    this.schema = schema;
    this.preferred = preferred;
    this.others = others;
  }

  /** What was found. */
  public sealed interface Found {}

  /** The column meant. */
  public record One(Column column) implements Found {}

  /** No single column; the sentence says why, and which names would do. */
  public record Unclear(String sentence) implements Found {}

  /** Returns the column of any table that a name means. */
  public Found find(String written) {
    int colon = written.indexOf(':');
    if (colon < 0 || all().stream().anyMatch(column -> means(column, written))) {
      return among(all(), written);
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

  /** Returns up to {@code most} columns of any table that come near, the one meant first. */
  public List<Column> nearest(String written, int most) {
    Stream<Column> meant =
        find(written) instanceof One one ? Stream.of(one.column()) : Stream.empty();
    Stream<Column> near = search(all()).ranked(written).stream().map(ColumnSearch.Fit::column);
    return Stream.concat(meant, near).distinct().limit(most).toList();
  }

  /** Returns the column a name means of those with a value to type in each of many rows. */
  public Found ofMany(String written) {
    List<Column> many = new ArrayList<>();
    schema.tables().stream()
        .filter(table -> !table.single())
        .flatMap(table -> table.inputs().stream())
        .filter(column -> column.content() == Column.Content.NUMBER)
        .forEach(many::add);
    return among(many, written);
  }

  /** Returns the column of one table that a name means. */
  public Found in(TableDefinition table, String written) {
    return among(table.columns(), written);
  }

  private Found among(List<Column> columns, String written) {
    List<Column> named = columns.stream().filter(column -> means(column, written)).toList();
    List<Column> first = named.stream().filter(column -> in(column, preferred)).toList();
    if (first.size() == 1) {
      return new One(first.get(0));
    }
    List<ColumnSearch.Fit> fits = search(columns).ranked(written);
    // What people call a column of the preferred table is not meant to be that of another.
    boolean called = !fits.isEmpty() && fits.get(0).score() == ColumnSearch.EXACT;
    if (called && (named.isEmpty() || in(fits.get(0).column(), preferred))) {
      return new One(fits.get(0).column());
    }
    if (named.size() == 1) {
      return new One(named.get(0));
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
    List<ColumnSearch.Fit> unlike = unlike(fits);
    if (clear(unlike)) {
      return new One(unlike.get(0).column());
    }
    return new Unclear(unclear(written.strip(), likely(columns, written, unlike)));
  }

  private ColumnSearch search(List<Column> columns) {
    return searches.computeIfAbsent(columns, these -> new ColumnSearch(these, preferred, others));
  }

  /** Returns the first of each name where the preferred table has it, as of zones as found. */
  private List<ColumnSearch.Fit> unlike(List<ColumnSearch.Fit> fits) {
    List<ColumnSearch.Fit> unlike = new ArrayList<>();
    for (ColumnSearch.Fit fit : fits) {
      boolean again =
          unlike.stream()
              .map(ColumnSearch.Fit::column)
              .anyMatch(other -> other.name().equals(fit.column().name()) && in(other, preferred));
      if (!again) {
        unlike.add(fit);
      }
    }
    return unlike;
  }

  private static boolean clear(List<ColumnSearch.Fit> fits) {
    return !fits.isEmpty()
        && fits.get(0).score() >= WELL
        && (fits.size() == 1 || fits.get(0).score() - fits.get(1).score() >= CLEARLY);
  }

  private static List<Column> likely(
      List<Column> columns, String written, List<ColumnSearch.Fit> fits) {
    List<Column> likely = new ArrayList<>();
    fits.stream()
        .filter(fit -> fit.score() >= fits.get(0).score() - NEAR)
        .limit(SUGGESTIONS)
        .forEach(fit -> likely.add(fit.column()));
    if (likely.isEmpty()) {
      List<String> names = columns.stream().map(Column::name).toList();
      Nearest.to(written, names, SUGGESTIONS)
          .forEach(name -> likely.add(columns.get(names.indexOf(name))));
    }
    return likely;
  }

  /** Names the columns that come near, a single one in the sentence, several in a line each. */
  private String unclear(String written, List<Column> likely) {
    String none = "There is no column “%s”; did you mean ".formatted(written);
    if (likely.size() == 1) {
      return none + "“" + shortestName(likely.get(0)) + "”?";
    }
    List<String> names = likely.stream().map(this::shortestName).toList();
    int width = names.stream().mapToInt(String::length).max().orElse(0);
    StringBuilder text = new StringBuilder(none).append("one of these?");
    for (int i = 0; i < names.size(); i++) {
      String meaning = likely.get(i).meaning().split("(?<=\\.)\\s", 2)[0];
      String gap = " ".repeat(width - names.get(i).length() + 2);
      text.append(System.lineSeparator())
          .append(("  " + names.get(i) + gap + meaning).stripTrailing());
    }
    return text.toString();
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
