package zonewright.equation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import zonewright.formula.Reference;
import zonewright.sheet.Column;
import zonewright.sheet.ColumnSearch;
import zonewright.sheet.Nearest;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;

/**
 * The columns an equation of one sheet can name: those of the sheet, those that stand in the same
 * rows, the cells of one-row sheets, and whole columns of all the others.
 */
public final class KnownColumns {
  private static final int OFFERS = 4;
  private static final List<String> SHEET_SIGNS = List.of(".", "!", ":");

  private final Schema schema;
  private final Map<String, List<Column>> further;
  private final TableDefinition home;
  private final Function<Column, List<String>> others;
  private final List<Column> near = new ArrayList<>();
  private ColumnSearch search;

  /** A column whose name stands at some place in a text, and where it ends there. */
  record Match(List<Column> columns, int end) {}

  /**
   * Takes the columns there are.
   *
   * @param schema the columns that are declared
   * @param further columns that are defined by others than the program, by sheet
   * @param home the sheet whose cells the equation gives
   * @param others what else people call a column: offered, never taken
   */
  public KnownColumns(
      Schema schema,
      Map<String, List<Column>> further,
      String home,
      Function<Column, List<String>> others) {
    this.schema = schema;
    this.further = further;
    this.home = schema.table(home);
    this.others = others;
    near.addAll(columns(this.home));
    for (TableDefinition table : schema.tables()) {
      if (!table.id().equals(home) && reaches(table)) {
        near.addAll(columns(table));
      }
    }
  }

  /** Returns the sheet whose cells the equation gives. */
  TableDefinition home() {
    return home;
  }

  /** Says whether an equation can mean one cell of a sheet: of the same row, or the only one. */
  boolean reaches(TableDefinition table) {
    return table.single() || schema.sameRows(table.id(), home.id());
  }

  TableDefinition tableOf(Column column) {
    return schema.table(column.reference().table());
  }

  Column column(Reference reference) {
    return columns(schema.table(reference.table())).stream()
        .filter(column -> column.reference().equals(reference))
        .findFirst()
        .orElseThrow();
  }

  private List<Column> columns(TableDefinition table) {
    List<Column> all = new ArrayList<>(table.columns());
    all.addAll(further.getOrDefault(table.id(), List.of()));
    return all;
  }

  /**
   * Returns the columns within reach whose name stands at a place, the longest name winning: those
   * of the sheet itself if there are any.
   */
  Optional<Match> bare(String text, int at) {
    return longest(text, at, near).map(this::nearest);
  }

  /** Returns the column of a sheet whose name stands at a place. */
  Optional<Match> in(TableDefinition table, String text, int at) {
    return longest(text, at, columns(table));
  }

  /** Returns the columns of a name, in brackets, within reach. */
  List<Column> named(String name) {
    return nearest(new Match(named(near, name), 0)).columns();
  }

  /** Returns the columns of a sheet that have a name. */
  List<Column> named(TableDefinition table, String name) {
    return named(columns(table), name);
  }

  private static List<Column> named(List<Column> columns, String name) {
    String plain = name.strip();
    return columns.stream()
        .filter(column -> NameText.end(plain, 0, column.name()) == plain.length())
        .toList();
  }

  private Match nearest(Match match) {
    List<Column> own =
        match.columns().stream().filter(column -> tableOf(column).equals(home)).toList();
    return own.isEmpty() ? match : new Match(own, match.end());
  }

  private static Optional<Match> longest(String text, int at, List<Column> columns) {
    int longest = -1;
    List<Column> found = new ArrayList<>();
    for (Column column : columns) {
      int end = NameText.end(text, at, column.name());
      if (end > longest) {
        found.clear();
        longest = end;
      }
      if (end >= 0 && end == longest) {
        found.add(column);
      }
    }
    return found.isEmpty() ? Optional.empty() : Optional.of(new Match(found, longest));
  }

  /** Returns the sheet whose title and the sign behind it stand at a place, and where that ends. */
  Optional<Map.Entry<TableDefinition, Integer>> sheet(String text, int at) {
    for (TableDefinition table : schema.tables()) {
      int end = NameText.end(text, at, table.title());
      if (end >= 0 && SHEET_SIGNS.stream().anyMatch(sign -> text.startsWith(sign, end))) {
        return Optional.of(Map.entry(table, end + 1));
      }
    }
    return Optional.empty();
  }

  /** Returns what is written in place of what means no column, the likeliest first. */
  List<String> offers(String written) {
    List<Column> exact =
        schema.tables().stream()
            .flatMap(table -> named(table, written).stream())
            .filter(column -> !named(written).contains(column))
            .toList();
    if (search == null) {
      search = new ColumnSearch(near, home.id(), others);
    }
    Stream<Column> ranked = search.ranked(written).stream().map(ColumnSearch.Fit::column);
    List<String> found =
        Stream.concat(exact.stream(), ranked)
            .filter(column -> column.content() != Column.Content.WORDS)
            .map(this::written)
            .distinct()
            .limit(OFFERS)
            .toList();
    return found.isEmpty() ? unlike(written, near) : found;
  }

  /** Returns what is written in place of what means no column of a sheet. */
  List<String> offers(TableDefinition table, String written) {
    return unlike(written, columns(table));
  }

  private List<String> unlike(String written, List<Column> columns) {
    List<String> names = columns.stream().map(Column::name).distinct().toList();
    return Nearest.to(written, names, OFFERS).stream()
        .map(name -> written(named(columns, name).get(0)))
        .toList();
  }

  /** Returns all columns an equation can mean a cell of, those of its sheet first. */
  public List<Column> withinReach() {
    return List.copyOf(near);
  }

  /**
   * Returns a column as an equation of this sheet names it: bare where that is clear, else in
   * brackets or with its sheet.
   */
  public String written(Column column) {
    String name = column.name();
    String bracketed = NameText.plain(name) ? name : "[" + name + "]";
    boolean clear = named(name).equals(List.of(column));
    return clear ? bracketed : tableOf(column).title() + "." + bracketed;
  }

  /** Says whether two cells of words hold words of one list, so that they can be compared. */
  boolean comparable(Column word, Column key) {
    return schema.oneList(word, key);
  }

  /** Returns the list whose words a column holds, names of rows among them. */
  Optional<WordList> list(Column column) {
    return schema.list(column);
  }
}
