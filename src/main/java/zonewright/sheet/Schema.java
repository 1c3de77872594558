package zonewright.sheet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import zonewright.formula.Condition;
import zonewright.formula.Dependencies;
import zonewright.formula.Formula;
import zonewright.formula.Reference;
import zonewright.formula.ReferenceTable;
import zonewright.formula.Rewriter;
import zonewright.units.Unit;
import zonewright.units.Units;

/**
 * All tables and columns there are, checked as a whole: every name means a column, and no column
 * depends on itself.
 *
 * <p>Knows the order in which columns must be calculated.
 */
public final class Schema {
  private final Map<String, TableDefinition> tables = new LinkedHashMap<>();
  private final Map<Reference, Column> columns = new LinkedHashMap<>();
  private final Map<Reference, Dependencies> dependencies = new HashMap<>();
  private final Map<Reference, Set<Reference>> origins = new HashMap<>();
  private final List<Column> order = new ArrayList<>();
  private LongerTables longer = LongerTables.NONE;
  private int moneyDecimals = 2;

  /**
   * Puts the tables together.
   *
   * @throws IllegalArgumentException when a name means no column, stands twice, or columns depend
   *     on each other in a circle
   */
  public Schema(List<TableDefinition> definitions) {
    for (TableDefinition table : definitions) {
      table.other().ifPresent(other -> judge(table, tables.get(other)));
      if (tables.put(table.id(), table) != null) {
        throw new IllegalArgumentException("two tables are called " + table.id());
      }
      Set<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
      for (Column column : table.columns()) {
        if (columns.put(column.reference(), column) != null || !names.add(column.name())) {
          throw new IllegalArgumentException(
              "two columns of " + table.title() + " are called " + column.name());
        }
      }
    }
    for (Column column : columns.values()) {
      column.formula().ifPresent(formula -> learn(column, Dependencies.of(formula)));
    }
    Set<Reference> done = new LinkedHashSet<>();
    for (Column column : columns.values()) {
      visit(column, done, new ArrayDeque<>());
    }
    order.forEach(this::trace);
  }

  /**
   * Returns the same tables with some calculated columns as inputs, for values that are known and
   * need not be calculated. All that depends on them is calculated as before.
   */
  public Schema withInputs(Set<Reference> known) {
    return with(column -> known.contains(column.reference()) ? column.asInput() : column);
  }

  /**
   * Returns the same tables with other equations for some columns.
   *
   * @param known a column that has no equation any more
   * @param equations the equations
   * @param said where an equation comes from
   * @throws IllegalArgumentException where columns then depend on each other in a circle, or ask
   *     whether something is given that is calculated now
   */
  public Schema turned(
      Reference known, Map<Reference, Formula> equations, Map<Reference, String> said) {
    return with(
        column -> {
          if (column.reference().equals(known)) {
            return column.typed();
          }
          Formula equation = equations.get(column.reference());
          return equation == null
              ? column
              : column.turned(equation, said.getOrDefault(column.reference(), ""));
        });
  }

  /**
   * Returns the same tables with tables of the trade that have rows of a person's own.
   *
   * @param tables the longer table in place of each
   * @param takesAfter for each of those replaced, the words of one's own with the word of the
   *     program's that each takes after
   */
  public Schema withTables(
      Map<ReferenceTable, ReferenceTable> tables,
      Map<ReferenceTable, Map<String, String>> takesAfter) {
    LongerTables others = new LongerTables(tables, takesAfter);
    Schema schema = with(column -> others.in(this, column));
    schema.longer = others;
    return schema;
  }

  /**
   * Returns the same tables with money rounded to and shown by another smallest amount than the
   * hundredth it is declared with.
   *
   * @param decimals how many decimals the smallest amount has, 0 to 9
   */
  public Schema withMoneyOf(int decimals) {
    if (decimals == moneyDecimals) {
      return this;
    }
    Unit smallest = Units.smallestAmount(decimals);
    Schema schema =
        with(
            column ->
                column
                    .with(list -> list, formula -> Rewriter.rounded(formula, Units.CENT, smallest))
                    .withMoneyOf(decimals));
    schema.moneyDecimals = decimals;
    return schema;
  }

  /** Returns the table that stands in place of one of the trade's here: longer, or itself. */
  public ReferenceTable inPlaceOf(ReferenceTable table) {
    return longer.inPlaceOf(table);
  }

  /** Returns a condition that was declared with the program's tables as it is meant here. */
  public Condition meant(Condition declared) {
    return longer.in(this, declared);
  }

  /**
   * Returns the same tables with further columns behind those that are declared.
   *
   * @param further by the table's identifier; all of them calculated
   * @throws IllegalArgumentException as the constructor does, or when a column takes entries
   */
  public Schema withColumns(Map<String, List<Column>> further) {
    List<TableDefinition> tables = new ArrayList<>();
    for (TableDefinition table : tables()) {
      List<Column> columns = new ArrayList<>(table.columns());
      for (Column column : further.getOrDefault(table.id(), List.of())) {
        if (column.takesEntries()) {
          throw new IllegalArgumentException(column.name() + " would hold entries");
        }
        columns.add(column.saysDecimals() ? column : column.withMoneyOf(moneyDecimals));
      }
      tables.add(table.with(columns));
    }
    return like(new Schema(tables));
  }

  private Schema with(UnaryOperator<Column> change) {
    List<TableDefinition> changed = new ArrayList<>();
    for (TableDefinition table : tables.values()) {
      changed.add(table.with(table.columns().stream().map(change).toList()));
    }
    return like(new Schema(changed));
  }

  /** Has another schema hold what was said of this one. */
  private Schema like(Schema other) {
    other.longer = longer;
    other.moneyDecimals = moneyDecimals;
    return other;
  }

  private void trace(Column column) {
    Set<Reference> found = new LinkedHashSet<>();
    column.originIn().ifPresent(found::add);
    dependencies(column)
        .ifPresent(
            needs ->
                Stream.concat(needs.cells().stream(), needs.columns().stream())
                    .forEach(need -> found.addAll(origins.getOrDefault(need, Set.of()))));
    origins.put(column.reference(), found);
  }

  private void learn(Column column, Dependencies needs) {
    dependencies.put(column.reference(), needs);
    for (Reference cell : needs.cells()) {
      boolean reachable =
          sameRows(cell.table(), column.reference().table()) || table(cell.table()).single();
      if (!reachable) {
        throw new IllegalArgumentException(
            "%s means a cell of %s, but which row of it?"
                .formatted(column.reference().key(), cell.key()));
      }
    }
    typedInto(column.reference().key(), needs);
    needs.pairs().forEach(pair -> comparable(pair.word(), pair.key()));
    needs.finds().forEach(find -> comparable(names(find.column().table()), find.word()));
  }

  /**
   * Checks that a formula or a condition asks only of cells a person types into whether they are
   * given: of a calculated one there is nothing to ask.
   *
   * @throws IllegalArgumentException when it asks it of another, naming {@code asking}
   */
  public void typedInto(String asking, Dependencies needs) {
    for (Reference cell : needs.givens()) {
      if (!column(cell).takesEntries()) {
        throw new IllegalArgumentException(
            "%s asks whether %s is given, but that is calculated and never typed"
                .formatted(asking, cell.key()));
      }
    }
  }

  private static void judge(TableDefinition table, TableDefinition other) {
    if (other == null || !(other.rows() instanceof TableDefinition.Rows.Free)) {
      throw new IllegalArgumentException(
          "%s stands alongside a table that is not declared before it, or not free to grow"
              .formatted(table.id()));
    }
  }

  private Reference names(String table) {
    return table(table).columns().get(0).reference();
  }

  /** Words are held against each other by their places in a list: it must be one list. */
  private void comparable(Reference word, Reference key) {
    if (!oneList(column(word), column(key))) {
      throw new IllegalArgumentException(
          "%s and %s are not words of one list".formatted(word.key(), key.key()));
    }
  }

  /** Says whether two columns hold words of one list, so that they can be compared. */
  public boolean oneList(Column one, Column other) {
    Optional<WordList> list = list(one);
    return list.isPresent() && list.equals(list(other));
  }

  /**
   * Returns the list whose words a column holds; names of rows are words of a list too. None where
   * it holds numbers, or any words.
   */
  public Optional<WordList> list(Column column) {
    TableDefinition table = table(column.reference().table());
    boolean name = table.key().filter(column::equals).isPresent();
    Optional<WordList> list = name ? Optional.of(new WordList.RowsOf(table.id())) : column.words();
    return list.map(words -> words instanceof WordList.RowsOf of ? rowsOf(of) : words);
  }

  /** Names that are given are as good as a list of those words: their places are the same. */
  private WordList rowsOf(WordList.RowsOf list) {
    return table(list.table()).rows() instanceof TableDefinition.Rows.Named named
        ? new WordList.Fixed(named.names())
        : new WordList.RowsOf(base(list.table()));
  }

  private String base(String table) {
    return table(table).other().orElse(table);
  }

  /** Says whether rows of two tables belong together one by one: one table, or one beside it. */
  public boolean sameRows(String one, String other) {
    return base(one).equals(base(other));
  }

  /** Returns the tables that have a row for each row of a table. */
  public List<TableDefinition> alongside(String id) {
    return tables.values().stream()
        .filter(table -> table.other().filter(id::equals).isPresent())
        .toList();
  }

  private void visit(Column column, Set<Reference> done, Deque<Reference> path) {
    Reference reference = column.reference();
    if (done.contains(reference)) {
      return;
    }
    if (path.contains(reference)) {
      throw new IllegalArgumentException("columns in a circle: " + circle(path, reference));
    }
    path.addLast(reference);
    for (Reference need : needs(column)) {
      visit(column(need), done, path);
    }
    path.removeLast();
    done.add(reference);
    order.add(column);
  }

  private static String circle(Deque<Reference> path, Reference back) {
    StringBuilder text = new StringBuilder();
    boolean inside = false;
    for (Reference reference : path) {
      inside |= reference.equals(back);
      if (inside) {
        text.append(reference.name()).append(" → ");
      }
    }
    return text.append(back.name()).toString();
  }

  private Set<Reference> needs(Column column) {
    Dependencies found = dependencies.get(column.reference());
    if (found == null) {
      return Set.of();
    }
    Set<Reference> all = new LinkedHashSet<>(found.cells());
    all.addAll(found.columns());
    return all;
  }

  /** Returns the tables in their order. */
  public List<TableDefinition> tables() {
    return List.copyOf(tables.values());
  }

  /** Returns a table by its identifier. */
  public TableDefinition table(String id) {
    TableDefinition table = tables.get(id);
    if (table == null) {
      throw new IllegalArgumentException("there is no table " + id);
    }
    return table;
  }

  /** Says whether there is the column a reference means. */
  public boolean has(Reference reference) {
    return columns.containsKey(reference);
  }

  /** Returns the column a reference means. */
  public Column column(Reference reference) {
    Column column = columns.get(reference);
    if (column == null) {
      throw new IllegalArgumentException("there is no column " + reference.key());
    }
    return column;
  }

  /**
   * Returns the cells that say where the values come from on which a column rests, near or far;
   * none where it rests on nothing that needs saying so. They come in the order of the formulas,
   * the same each time: pages of help are made of them.
   */
  public Set<Reference> origins(Column column) {
    return Collections.unmodifiableSet(origins.getOrDefault(column.reference(), Set.of()));
  }

  /** Returns all columns so that each comes after those it depends on. */
  public List<Column> order() {
    return List.copyOf(order);
  }

  /** Returns what a column's formula depends on; none for inputs. */
  public Optional<Dependencies> dependencies(Column column) {
    return Optional.ofNullable(dependencies.get(column.reference()));
  }
}
