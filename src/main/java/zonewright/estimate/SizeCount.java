package zonewright.estimate;

import static zonewright.formula.Formula.number;

import java.util.List;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.formula.Reference;
import zonewright.retrofit.PipeTakeoff;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.QuantityKind;

/**
 * The columns by which a row of a table counts one kind and size of pipe, or its fittings, one pipe
 * of the designer's own, or one size of wire.
 *
 * @param single whether the row counts so: 1, else 0
 * @param needed how much of it the finished job has, in the unit of the row
 * @param fresh how much of that is new
 */
record SizeCount(Column single, Column needed, Column fresh) {
  /**
   * The words a row is counted by.
   *
   * @param what what is counted
   * @param unit in which unit
   * @param pipe the kind and size of pipe
   * @param own the pipe of the designer's own
   * @param wire the size of wire
   */
  record Words(Reference what, Reference unit, Reference pipe, Reference own, Reference wire) {}

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
    Column single =
        Column.calculated(
                words.what().table(),
                "of-a-size",
                "Of a size",
                QuantityKind.COUNT,
                Formula.when(pipe(words).or(own(words)).or(wire(words)))
                    .then(number(1))
                    .otherwise(number(0)))
            .band(Sheets.QUANTITY)
            .means("1 where only one kind and size of pipe, or one size of wire, counts; else 0.")
            .source("By definition.");
    return new SizeCount(
        single,
        column(words, "size-needed", "Needed of the size", NEEDED),
        column(words, "size-new", "New of the size", NEW));
  }

  /** Says that a row counts something that comes in sizes, and only one of them. */
  Condition counts() {
    return single.cell().above(number(0));
  }

  static Condition pipe(Words words) {
    return new Condition.Given(words.pipe()).and(Counted.is(words.what(), Counted.SIZED));
  }

  static Condition own(Words words) {
    return new Condition.Given(words.own()).and(Counted.is(words.what(), Counted.SIZED));
  }

  static Condition wire(Words words) {
    return new Condition.Given(words.wire()).and(Counted.is(words.what(), Counted.WIRE));
  }

  private static Column column(Words words, String id, String name, Amounts of) {
    return Column.calculated(
            words.what().table(),
            id,
            name,
            QuantityKind.FACTOR,
            Formula.when(wire(words))
                .then(
                    Counted.length(
                        sum(PipeTakeoff.WIRE_SIZE, words.wire(), of.wire()), words.unit()))
                .otherwise(
                    Formula.when(pipe(words))
                        .then(
                            piped(words, PipeTakeoff.PIPE, PipeTakeoff.MAIN_PIPE, words.pipe(), of))
                        .otherwise(
                            Formula.when(own(words))
                                .then(
                                    piped(
                                        words,
                                        PipeTakeoff.OWN,
                                        PipeTakeoff.MAIN_OWN,
                                        words.own(),
                                        of))
                                .otherwise(
                                    Formula.doesNotApply(
                                        "–", "It does not count one size only.")))))
        .band(Sheets.QUANTITY)
        .decimals(1, 1)
        .means("Pipe, fittings or wire of the kind and size chosen.")
        .source("The sheet Takeoff.");
  }

  private static Formula piped(
      Words words, Column lateral, Column main, Reference key, Amounts of) {
    Reference what = words.what();
    Formula lengths =
        Formula.when(Counted.is(what, Counted.LATERAL))
            .then(sum(lateral, key, of.lateral()))
            .otherwise(sum(main, key, of.main()));
    Formula numbers =
        Formula.when(Counted.is(what, Counted.LATERAL_FITTINGS))
            .then(sum(lateral, key, of.laterals()))
            .otherwise(sum(main, key, of.mains()));
    return Formula.when(Counted.is(what, List.of(Counted.LATERAL, Counted.MAIN)))
        .then(Counted.length(lengths, words.unit()))
        .otherwise(Counted.each(numbers, words.unit()));
  }

  private static Formula sum(Column size, Reference key, Column part) {
    return Matching.rows(size.reference(), key).sum(part.reference());
  }
}
