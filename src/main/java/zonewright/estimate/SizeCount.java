package zonewright.estimate;

import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.formula.Reference;
import zonewright.retrofit.PipeTakeoff;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.QuantityKind;

/**
 * The columns by which a row of a table counts pipe, or fittings, of one kind and size.
 *
 * @param pipe the kind and size
 * @param needed how much of it the finished job has, in the unit of the row
 * @param fresh how much of that is new
 */
record SizeCount(Reference pipe, Column needed, Column fresh) {
  /** Returns the columns beside the words of what is counted, in which unit, of which pipe. */
  static SizeCount of(Reference what, Reference unit, Reference pipe) {
    return new SizeCount(
        pipe,
        column(
            what,
            pipe,
            "size-needed",
            "Needed of the size",
            byWord(
                what,
                unit,
                sum(PipeTakeoff.PIPE, pipe, PipeTakeoff.LENGTH),
                sum(PipeTakeoff.MAIN_PIPE, pipe, PipeTakeoff.MAIN),
                sum(PipeTakeoff.PIPE, pipe, PipeTakeoff.FITTINGS),
                sum(PipeTakeoff.MAIN_PIPE, pipe, PipeTakeoff.MAIN_FITTINGS))),
        column(
            what,
            pipe,
            "size-new",
            "New of the size",
            byWord(
                what,
                unit,
                sum(PipeTakeoff.PIPE, pipe, PipeTakeoff.LENGTH_NEW),
                sum(PipeTakeoff.MAIN_PIPE, pipe, PipeTakeoff.MAIN_NEW),
                sum(PipeTakeoff.PIPE, pipe, PipeTakeoff.FITTINGS_NEW),
                sum(PipeTakeoff.MAIN_PIPE, pipe, PipeTakeoff.MAIN_FITTINGS_NEW))));
  }

  /** Says that a row counts something that comes in sizes, and only one of them. */
  static Condition counts(Reference what, Reference pipe) {
    return new Condition.Given(pipe).and(Counted.is(what, Counted.SIZED));
  }

  private static Column column(
      Reference what, Reference pipe, String id, String name, Formula formula) {
    return Column.calculated(
            what.table(),
            id,
            name,
            QuantityKind.FACTOR,
            Formula.when(counts(what, pipe))
                .then(formula)
                .otherwise(Formula.doesNotApply("–", "It does not count pipe of one size.")))
        .band(Sheets.QUANTITY)
        .decimals(1, 1)
        .means("Pipe, or fittings, of the kind and size chosen.")
        .source("The sheet Takeoff.");
  }

  private static Formula byWord(
      Reference what,
      Reference unit,
      Formula lateral,
      Formula main,
      Formula fittings,
      Formula mainFittings) {
    Formula lengths = Formula.when(Counted.is(what, Counted.LATERAL)).then(lateral).otherwise(main);
    Formula numbers =
        Formula.when(Counted.is(what, Counted.LATERAL_FITTINGS))
            .then(fittings)
            .otherwise(mainFittings);
    return Formula.when(Counted.is(what, Counted.LATERAL, Counted.MAIN))
        .then(Counted.length(lengths, unit))
        .otherwise(Counted.each(numbers, unit));
  }

  private static Formula sum(Column size, Reference pipe, Column part) {
    return Matching.rows(size.reference(), pipe).sum(part.reference());
  }
}
