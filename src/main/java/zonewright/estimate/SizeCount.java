package zonewright.estimate;

import java.util.ArrayList;
import java.util.List;
import zonewright.formula.Cells;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.formula.Reference;
import zonewright.formula.Term;
import zonewright.retrofit.PipeTakeoff;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.QuantityKind;

/**
 * The columns by which a row of a table counts one kind and size of pipe, or its fittings, one pipe
 * of the designer's own, or one size of wire.
 *
 * @param way which of these: 1 a tabulated pipe, 2 one's own, 3 wire; 0 where all sizes count
 * @param needed how much of it the finished job has, in the unit of the row, by way
 * @param fresh how much of that is new, by way
 */
record SizeCount(Column way, List<Column> needed, List<Column> fresh) {
  SizeCount {
    needed = List.copyOf(needed);
    fresh = List.copyOf(fresh);
  }

  /**
   * The words a row is counted by.
   *
   * @param what what is counted
   * @param unit in which unit
   * @param pipe the kind and size of pipe
   * @param own the pipe of the designer's own
   * @param wire the size of wire
   */
  record Words(Reference what, Reference unit, Cells pipe, Reference own, Reference wire) {}

  /** How much there is of each thing that comes in sizes. */
  private record Amounts(Column lateral, Column main, Column laterals, Column mains, Column wire) {}

  private static final Amounts NEEDED =
      new Amounts(
          PipeTakeoff.LENGTH,
          PipeTakeoff.MAIN,
          PipeTakeoff.FITTINGS,
          PipeTakeoff.MAIN_FITTINGS,
          PipeTakeoff.STATION_WIRE);

  private static final Amounts NEW =
      new Amounts(
          PipeTakeoff.LENGTH_NEW,
          PipeTakeoff.MAIN_NEW,
          PipeTakeoff.FITTINGS_NEW,
          PipeTakeoff.MAIN_FITTINGS_NEW,
          PipeTakeoff.WIRE_NEW);

  /** Returns the columns beside the words a row is counted by. */
  static SizeCount of(Words words) {
    Column way =
        Column.calculated(
                words.what().table(),
                "of-a-size",
                "Of a size",
                QuantityKind.COUNT,
                Formula.when(words.what().given()).then(wayOf(words)).otherwise(0))
            .band(Sheets.QUANTITY)
            .means(
                "1 where only one tabulated kind and size of pipe counts, 2 where one pipe of your own, 3 where one size of wire; 0 where"
                    + " all sizes count.")
            .source("By definition.")
            .build();
    return new SizeCount(
        way,
        columns(words, way, "needed", "Needed", NEEDED),
        columns(words, way, "new", "New", NEW));
  }

  private static Formula wayOf(Words words) {
    return Formula.when(words.what().is(Counted.SIZED))
        .then(Formula.when(words.own().given()).then(2).otherwise(given(words.pipe(), 1)))
        .otherwise(
            Formula.when(words.what().is(Counted.WIRE)).then(given(words.wire(), 3)).otherwise(0));
  }

  private static Formula given(Cells word, int way) {
    return Formula.when(word.given()).then(way).otherwise(0);
  }

  /** Says that a row counts something that comes in sizes, and only one of them. */
  Condition counts() {
    return way.above(0);
  }

  /** Returns one of the columns by the way the row counts, which must be one of the three. */
  Formula of(List<Column> columns) {
    return Formula.when(way.atLeast(3))
        .then(columns.get(2))
        .otherwise(Formula.when(way.atLeast(2)).then(columns.get(1)).otherwise(columns.get(0)));
  }

  /** Returns all columns in their order. */
  List<Column> columns() {
    List<Column> columns = new ArrayList<>();
    columns.add(way);
    columns.addAll(needed);
    columns.addAll(fresh);
    return columns;
  }

  private static List<Column> columns(Words words, Column way, String id, String name, Amounts of) {
    return List.of(
        column(
            way,
            1,
            "size-" + id,
            name + " of the size",
            piped(words, PipeTakeoff.PIPE, PipeTakeoff.MAIN_PIPE, words.pipe(), of)),
        column(
            way,
            2,
            "own-" + id,
            name + " of the own pipe",
            piped(words, PipeTakeoff.OWN, PipeTakeoff.MAIN_OWN, words.own(), of)),
        column(
            way,
            3,
            "wire-" + id,
            name + " of the wire size",
            Counted.length(sum(PipeTakeoff.WIRE_SIZE, words.wire(), of.wire()), words.unit())));
  }

  private static Column column(Column way, int which, String id, String name, Term formula) {
    Formula other = Formula.doesNotApply("–", "It does not count so.");
    return Column.calculated(
            way.reference().table(),
            id,
            name,
            QuantityKind.FACTOR,
            Formula.when(way.below(which))
                .then(other)
                .otherwise(Formula.when(way.above(which)).then(other).otherwise(formula)))
        .band(Sheets.QUANTITY)
        .decimals(1, 1)
        .means("Pipe, fittings or wire of the kind and size chosen.")
        .source("The sheet Takeoff.")
        .build();
  }

  private static Formula piped(Words words, Column lateral, Column main, Cells key, Amounts of) {
    Reference what = words.what();
    Formula lengths =
        Formula.when(what.is(Counted.LATERAL))
            .then(sum(lateral, key, of.lateral()))
            .otherwise(sum(main, key, of.main()));
    Formula numbers =
        Formula.when(what.is(Counted.LATERAL_FITTINGS))
            .then(sum(lateral, key, of.laterals()))
            .otherwise(sum(main, key, of.mains()));
    return Formula.when(what.is(Counted.LATERAL, Counted.MAIN))
        .then(Counted.length(lengths, words.unit()))
        .otherwise(Counted.each(numbers, words.unit()));
  }

  private static Formula sum(Column size, Cells key, Column part) {
    return Matching.rows(size, key).sum(part);
  }
}
