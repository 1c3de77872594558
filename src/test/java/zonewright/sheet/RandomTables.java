package zonewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import zonewright.formula.Aggregation;
import zonewright.formula.Comparator;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.FunctionKind;
import zonewright.formula.Matching;
import zonewright.formula.Reference;
import zonewright.formula.ReferenceTable;
import zonewright.formula.RoundingWay;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/**
 * Small tables, one of them alongside another, with formulas made at random: of every kind of node,
 * over inputs that may be blank, unreadable or out of range.
 */
final class RandomTables {
  static final String SITE = "settings";
  static final String GROUPS = "groups";
  static final String ROWS = "rows";
  static final String BESIDE = "beside";
  static final ReferenceTable WORDS = ReferenceTable.read(RandomTables.class, "words.csv", "Words");

  private static final double[] CONSTANTS = {0, 1, 0.5, -2, 3.7, 60, 1e-9};

  private final Random random;
  private final List<Column> site = new ArrayList<>();
  private final List<Column> groups = new ArrayList<>();
  private final List<Column> rows = new ArrayList<>();
  private final List<Column> beside = new ArrayList<>();

  private RandomTables(long seed) {
    random = new Random(seed);
    site.add(input(SITE, "x").build());
    site.add(input(SITE, "y").within(Bounds.above(0, 10, Units.ONE)).build());
    groups.add(Column.words(GROUPS, "group", "Group").build());
    groups.add(input(GROUPS, "g").build());
    rows.add(Column.words(ROWS, "row", "Row").build());
    rows.add(Column.choice(ROWS, "in-group", "In group", new WordList.RowsOf(GROUPS)).build());
    rows.add(Column.choice(ROWS, "word", "Word", new WordList.Published(WORDS)).build());
    rows.add(
        Column.choice(
                ROWS, "way", "Way", new WordList.Fixed(List.of("one way", "other way")), "one way")
            .build());
    rows.add(Column.input(ROWS, "length", "Length", QuantityKind.LENGTH).build());
    rows.add(input(ROWS, "a").build());
    rows.add(input(ROWS, "b").within(Bounds.from(0, 100, Units.ONE)).build());
    rows.add(
        Column.calculated(
                ROWS, "square", "Square", QuantityKind.AREA, rows.get(4).times(rows.get(4)))
            .build());
    beside.add(Column.words(BESIDE, "row", "Row").build());
    beside.add(input(BESIDE, "c").build());
    for (int i = 0; i < 14; i++) {
      List<Column> table = List.of(rows, rows, groups, site, beside).get(random.nextInt(5));
      String id = table == rows ? ROWS : table == groups ? GROUPS : table == site ? SITE : BESIDE;
      String name = "f" + i;
      Formula formula = formula(id, 3);
      table.add(
          random.nextInt(3) == 0
              ? Column.defaulted(id, name, name, QuantityKind.FACTOR, formula).build()
              : Column.calculated(id, name, name, QuantityKind.FACTOR, formula).build());
    }
  }

  /** Returns tables whose formulas follow from {@code seed} alone. */
  static Schema schema(long seed) {
    RandomTables made = new RandomTables(seed);
    return new Schema(
        List.of(
            new TableDefinition(
                SITE, "Settings", "setting", new TableDefinition.Rows.One(), made.site),
            new TableDefinition(
                GROUPS, "Groups", "group", new TableDefinition.Rows.Free(), made.groups),
            new TableDefinition(ROWS, "Rows", "row", new TableDefinition.Rows.Free(), made.rows),
            new TableDefinition(
                BESIDE, "Beside", "row", new TableDefinition.Rows.Alongside(ROWS), made.beside)));
  }

  private static Column.Builder input(String table, String id) {
    return Column.input(table, id, id, QuantityKind.FACTOR);
  }

  private Formula formula(String table, int depth) {
    if (depth == 0) {
      return leaf(table);
    }
    int less = depth - 1;
    return switch (random.nextInt(13)) {
      case 12 ->
          new Formula.Nth(
              cell(table), List.of(formula(table, 0), formula(table, less), Formula.number(3)));
      case 0 -> formula(table, less).plus(formula(table, less));
      case 1 -> formula(table, less).minus(formula(table, less));
      case 2 -> formula(table, less).times(formula(table, less));
      case 3 -> formula(table, less).over(formula(table, less));
      case 4 ->
          new Formula.Extreme(random.nextBoolean(), formula(table, less), formula(table, less));
      case 5 -> new Formula.Rounding(any(RoundingWay.values()), formula(table, less), Units.ONE);
      case 6 -> formula(table, less).power(formula(table, less));
      case 7 -> formula(table, less).apply(any(FunctionKind.values()));
      case 8, 9, 10 ->
          Formula.when(condition(table, less))
              .then(formula(table, less))
              .otherwise(formula(table, less));
      default -> leaf(table);
    };
  }

  private Formula leaf(String table) {
    return switch (random.nextInt(14)) {
      case 0, 1 -> Formula.number(CONSTANTS[random.nextInt(CONSTANTS.length)]);
      case 2 -> number(rows).gathered(any(Aggregation.values()));
      case 3 -> number(groups).sum();
      case 4 -> number(random.nextBoolean() ? rows : groups).inRow(cell(table));
      case 5 ->
          table.equals(GROUPS)
              ? where(Matching.rows(rows.get(1), groups.get(0)), table)
              : rowsOnly(table);
      case 6 ->
          table.equals(ROWS)
              ? WORDS.numbers("Number", QuantityKind.FACTOR).of(rows.get(2))
              : cell(table);
      case 7 ->
          table.equals(ROWS)
              ? new Formula.LookupAcross(
                  rows.get(2).reference(),
                  List.of(
                      WORDS.numbers("Number", QuantityKind.FACTOR),
                      WORDS.numbers("Other number", QuantityKind.FACTOR)),
                  cell(table))
              : cell(table);
      case 8 -> table.equals(ROWS) ? rows.get(4).measuredIn(Units.METRE) : cell(table);
      case 9 ->
          random.nextInt(3) == 0
              ? new Formula.Nothing("nothing", "It is so.", random.nextBoolean())
              : cell(table);
      case 10 -> rowsOnly(table);
      default -> cell(table);
    };
  }

  /** What takes the words of a row: another row by its name, and rows with the same words. */
  private Formula rowsOnly(String table) {
    Reference group = rows.get(1).reference();
    if (!table.equals(ROWS) && !table.equals(BESIDE)) {
      return where(Matching.rowsWith(number(rows), any(Comparator.values()), cell(table)), table);
    }
    return switch (random.nextInt(3)) {
      case 0 -> number(groups).inRowOf(group);
      case 1 -> where(Matching.rows(group, group), table);
      default ->
          where(
              Matching.rows(group, group).and(rows.get(2).reference(), rows.get(2).reference()),
              table);
    };
  }

  private Formula where(Matching matching, String table) {
    Matching all =
        random.nextBoolean()
            ? matching
            : matching.with(number(rows), any(Comparator.values()), cell(table));
    return switch (random.nextInt(4)) {
      case 0 -> all.sum(number(rows));
      case 1 -> all.largest(number(rows));
      case 2 -> all.smallest(number(rows));
      default -> all.count();
    };
  }

  private Condition condition(String table, int depth) {
    return switch (random.nextInt(depth > 0 ? 7 : 4)) {
      case 0, 1 ->
          new Condition.Comparison(
              any(Comparator.values()), formula(table, depth), formula(table, depth));
      case 2 -> (table.equals(ROWS) ? rows.get(5 + random.nextInt(2)) : site.get(0)).given();
      case 3 ->
          table.equals(ROWS)
              ? random.nextBoolean() ? rows.get(2).is("plain", "none") : rows.get(3).is("other way")
              : new Condition.Comparison(any(Comparator.values()), cell(table), cell(table));
      case 4 -> condition(table, depth - 1).and(condition(table, depth - 1));
      case 5 -> condition(table, depth - 1).or(condition(table, depth - 1));
      default -> condition(table, depth - 1).negated();
    };
  }

  /** A cell of the same row, or of the settings. */
  private Formula cell(String table) {
    List<Column> own =
        table.equals(ROWS) || table.equals(BESIDE)
            ? random.nextInt(3) == 0 ? beside : rows
            : table.equals(GROUPS) ? groups : site;
    return number(random.nextInt(4) == 0 ? site : own).asFormula();
  }

  private Reference number(List<Column> columns) {
    List<Reference> found =
        columns.stream()
            .filter(column -> column.kind() == QuantityKind.FACTOR)
            .map(Column::reference)
            .toList();
    return found.get(random.nextInt(found.size()));
  }

  private <T> T any(T[] values) {
    return values[random.nextInt(values.length)];
  }
}
