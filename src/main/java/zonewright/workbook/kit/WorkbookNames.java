package zonewright.workbook.kit;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import zonewright.formula.NamedConstant;
import zonewright.formula.Reference;
import zonewright.formula.ReferenceTable;
import zonewright.formula.SpreadsheetNames;
import zonewright.formula.SpreadsheetText;
import zonewright.sheet.Column;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;

/**
 * What the workbook calls things: tables by title, columns by heading, single cells by a name. It
 * takes note of the cells that must stand beside those a person types into, for formulas to ask.
 */
public final class WorkbookNames implements SpreadsheetNames {
  /** The heading of the column that holds 1 in rows in which something was typed. */
  public static final String FILLED_IN = "Filled in";

  /** The heading of the column that names something a row lacks. */
  public static final String MISSING = "Missing";

  /** The heading of the column of numbers that stay with their rows. */
  public static final String IDENTITY = "Identity";

  /** What means something else in the heading of a table. */
  private static final Pattern SIGNS = Pattern.compile("(['#\\[\\]])");

  private static final Pattern NO_LETTERS = Pattern.compile("[^\\p{L}\\p{N}]+");

  private static final String STEP = "/step/";
  private static final String WORD = "/word/";

  private final Schema schema;
  private final UnitSystem system;
  private final TableDefinition home;
  private final Predicate<Column> there;
  private final Wanted wanted;

  /** Which cells formulas ask for that no column of the design stands for. */
  static final class Wanted {
    /** Typed columns whose checked cells are asked for. */
    final Set<Reference> checked = new LinkedHashSet<>();

    /** Words whose rows in a list are asked for. */
    final Set<Row> rows = new LinkedHashSet<>();

    /** Pairs of tables, the first of which must know the rows of the second. */
    final Set<Join> joins = new LinkedHashSet<>();

    /** Tables that must say which of their rows count. */
    final Set<String> counted = new LinkedHashSet<>();

    int size() {
      return checked.size() + rows.size() + joins.size() + counted.size();
    }
  }

  /**
   * A word whose row in a list is asked for.
   *
   * @param list the name of the column that holds the words of the list
   * @param heading over the cells that hold the rows
   */
  record Row(Reference word, String list, String heading) {}

  /** A table whose rows must know the rows of another with the same identity. */
  record Join(String of, String to) {}

  /**
   * Makes the names as formulas of one table use them.
   *
   * @param home the table whose cells hold the formulas
   * @param there says which columns stand in the workbook
   * @param wanted takes note of what else must be there
   */
  WorkbookNames(
      Schema schema,
      UnitSystem system,
      TableDefinition home,
      Predicate<Column> there,
      Wanted wanted) {
    this.there = there;
    this.schema = schema;
    this.system = system;
    this.home = home;
    this.wanted = wanted;
  }

  /** Returns the defined name of a cell of a one-row table, such as {@code Site_Peak_month}. */
  public static String defined(TableDefinition table, Column column) {
    return defined(table, column.name());
  }

  /** Returns the defined name of a line of a one-row table. */
  public static String defined(TableDefinition table, String line) {
    String words = NO_LETTERS.matcher(line).replaceAll("_");
    int from = words.startsWith("_") ? 1 : 0;
    int to = words.length() - (words.endsWith("_") ? 1 : 0);
    return table.title() + "_" + words.substring(from, Math.max(from, to));
  }

  /** Returns the name of one of the limits of a typed column, or of what it usually is. */
  public static String limit(TableDefinition table, Column column, String which) {
    return defined(table, column.name() + " " + which);
  }

  /** Returns the heading of the column a person types into. */
  public static String typedHeading(Column column, UnitSystem system) {
    if (column.role() != Column.Role.DEFAULTED) {
      return column.heading(system);
    }
    String heading = column.heading(system);
    boolean unit = heading.length() > column.name().length();
    return column.name()
        + TypedHeadings.YOURS
        + (unit ? heading.substring(column.name().length()) : "");
  }

  static String checkedHeading(Column column) {
    return column.name() + (column.role() == Column.Role.INPUT ? " used" : " checked");
  }

  static String rowHeading(Column column) {
    return column.name() + " row";
  }

  static String usualHeading(Column column) {
    return column.name() + " usual";
  }

  static String stepHeading(Column column, int step) {
    return column.name() + " step " + (step + 1);
  }

  String joinHeading(String other) {
    return schema.table(other).title() + " row";
  }

  /** Returns what stands for a step of a column's formula. */
  static Reference step(Column column, int step) {
    Reference of = column.reference();
    return new Reference(
        of.table(), of.column() + STEP + step, stepHeading(column, step), of.kind());
  }

  /** Returns what stands for a word in a formula. */
  static Reference word(Column column, String word) {
    return new Reference(column.reference().table(), WORD + word, word, QuantityKind.CHOICE);
  }

  private static boolean isStep(Reference reference) {
    return reference.column().contains(STEP);
  }

  static String escaped(String heading) {
    return SIGNS.matcher(heading).replaceAll("'$1");
  }

  private TableDefinition table(Reference reference) {
    return schema.table(reference.table());
  }

  /** Returns the cell of this row under a heading of this table. */
  String own(String heading) {
    return own(home, heading);
  }

  private static String own(TableDefinition table, String heading) {
    return table.title() + "[[#This Row],[" + escaped(heading) + "]]";
  }

  /** Returns a whole column of a table. */
  static String whole(TableDefinition table, String heading) {
    return table.title() + "[" + escaped(heading) + "]";
  }

  /** Returns the names of the rows of a table. */
  String names(TableDefinition table) {
    return whole(table, table.columns().get(0).heading(system));
  }

  /** The cell under a heading: of this row, of the same row in another table, or a single one. */
  private String at(Reference reference, String heading, String single) {
    TableDefinition table = table(reference);
    if (table.single()) {
      return single;
    }
    if (table.equals(home)) {
      return own(heading);
    }
    wanted.joins.add(new Join(home.id(), table.id()));
    return "INDEX(%s,%s)".formatted(whole(table, heading), own(joinHeading(table.id())));
  }

  @Override
  public String cell(Reference reference) {
    if (reference.column().startsWith(WORD)) {
      return SpreadsheetText.quoted(reference.name());
    }
    if (isStep(reference)) {
      return home.single() ? defined(home, reference.name()) : own(reference.name());
    }
    Column column = schema.column(reference);
    return at(reference, heading(column), defined(table(reference), column));
  }

  @Override
  public String typed(Reference reference) {
    Column column = schema.column(reference);
    String heading = typedHeading(column, system);
    return at(reference, heading, limit(table(reference), column, "typed"));
  }

  @Override
  public String column(Reference reference) {
    TableDefinition table = table(reference);
    Column column = schema.column(reference);
    return table.single() ? defined(table, column) : whole(table, heading(column));
  }

  /** The heading of the cells to calculate with. */
  private String heading(Column column) {
    TableDefinition table = table(column.reference());
    boolean plain =
        column.role() != Column.Role.INPUT
            || column.content() == Column.Content.WORDS
            || !table.takesEntries(column)
            || table.single();
    if (plain) {
      return column.heading(system);
    }
    wanted.checked.add(column.reference());
    return checkedHeading(column);
  }

  /**
   * Returns the heading of the cells that show what is used, or what was typed where that is it.
   */
  public String shown(Column column) {
    return column(column, column.heading(system));
  }

  private String column(Column column, String heading) {
    TableDefinition table = table(column.reference());
    return table.single() ? defined(table, column) : whole(table, heading);
  }

  @Override
  public Optional<String> constant(double value) {
    return NamedConstant.of(value).map(NamedConstant::title);
  }

  @Override
  public Optional<String> across(List<Reference> columns) {
    return columns.get(0).table().equals(home.id())
        ? neighbours(columns)
            .map(all -> home.title() + "[[#This Row]," + all.substring(home.title().length() + 1))
        : Optional.empty();
  }

  /** Calculated columns stand in the order of the table, with nothing else between them. */
  @Override
  public Optional<String> neighbours(List<Reference> columns) {
    TableDefinition table = table(columns.get(0));
    List<Reference> calculated =
        table.columns().stream()
            .filter(column -> column.role() != Column.Role.INPUT && there.test(column))
            .map(Column::reference)
            .toList();
    int first = calculated.indexOf(columns.get(0));
    boolean inOrder =
        !table.single()
            && first >= 0
            && first + columns.size() <= calculated.size()
            && calculated.subList(first, first + columns.size()).equals(columns);
    return inOrder
        ? Optional.of(
            "%s[[%s]:[%s]]"
                .formatted(
                    table.title(),
                    escaped(schema.column(columns.get(0)).heading(system)),
                    escaped(schema.column(columns.get(columns.size() - 1)).heading(system))))
        : Optional.empty();
  }

  @Override
  public String row(Reference word) {
    return at(word, rowOf(word));
  }

  private String rowOf(Reference word) {
    Column column = schema.column(word);
    String list = words(list(column).orElseThrow()).orElseThrow();
    String heading = rowHeading(column);
    wanted.rows.add(new Row(word, list, heading));
    return heading;
  }

  private String at(Reference word, String heading) {
    return at(word, heading, defined(table(word), heading));
  }

  @Override
  public String row(Reference word, ReferenceTable table) {
    return row(word, keys(table), table.name());
  }

  @Override
  public String row(Reference word, Reference of) {
    TableDefinition table = schema.table(base(of.table()));
    return row(word, names(table), table.title());
  }

  /** The row of a word in a list that need not be its own. */
  private String row(Reference word, String list, String title) {
    Column column = schema.column(word);
    boolean own = list(column).flatMap(this::words).filter(list::equals).isPresent();
    String heading = rowHeading(column) + (own ? "" : " in " + title);
    wanted.rows.add(new Row(word, list, heading));
    return at(word, heading);
  }

  @Override
  public String rows(Reference word) {
    TableDefinition table = table(word);
    String heading = rowOf(word);
    return table.single() ? defined(table, heading) : whole(table, heading);
  }

  @Override
  public boolean listed(Reference word) {
    return list(schema.column(word)).filter(list -> !(list instanceof WordList.Fixed)).isPresent();
  }

  /** The list the words of a column are of: names of rows that are given are fixed. */
  Optional<WordList> list(Column column) {
    TableDefinition table = table(column.reference());
    boolean name = table.key().filter(column::equals).isPresent();
    Optional<WordList> list = name ? Optional.of(new WordList.RowsOf(table.id())) : column.words();
    return list.map(
        each ->
            each instanceof WordList.RowsOf of
                    && schema.table(of.table()).rows() instanceof TableDefinition.Rows.Named named
                ? new WordList.Fixed(named.names())
                : each);
  }

  /** Returns the cells that hold the words of a list, by the name of a table's column. */
  Optional<String> words(WordList list) {
    if (list instanceof WordList.Published published) {
      return Optional.of(keys(published.table()));
    }
    return list instanceof WordList.RowsOf rows
        ? Optional.of(names(schema.table(base(rows.table()))))
        : Optional.empty();
  }

  private String base(String table) {
    return schema.table(table).other().orElse(table);
  }

  @Override
  public Optional<String> counted(Reference column) {
    TableDefinition table = table(column);
    if (table.single() || table.rows() instanceof TableDefinition.Rows.Named) {
      return Optional.empty();
    }
    wanted.counted.add(table.id());
    return Optional.of(whole(table, FILLED_IN));
  }

  @Override
  public String published(ReferenceTable.Numbers column) {
    return column.table().name() + "[" + escaped(column.heading(system)) + "]";
  }

  @Override
  public String published(ReferenceTable.Numbers first, ReferenceTable.Numbers last) {
    return "%s[[%s]:[%s]]"
        .formatted(
            first.table().name(), escaped(first.heading(system)), escaped(last.heading(system)));
  }

  private static String keys(ReferenceTable table) {
    return table.name() + "[" + escaped(table.keyHeading()) + "]";
  }
}
