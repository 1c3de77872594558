package zonewright.estimate;

import java.util.Locale;
import zonewright.emitters.Emitters;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.formula.Reference;
import zonewright.retrofit.AsFound;
import zonewright.retrofit.Difference;
import zonewright.retrofit.Takeoff;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.QuantityKind;

/**
 * The formulas by which a row of a table, an item or a rebate, is counted: by its own words for
 * what, which, in which unit and of which kind of emitter.
 *
 * @param what the word of what is counted
 * @param which the word of which of it
 * @param unit the word of the unit
 * @param emitter the kind of emitter
 */
public record CountOf(Reference what, Reference which, Reference unit, Reference emitter) {
  /** Returns how many there are in the finished job. */
  public Formula needed() {
    return counted(Takeoff.HEADS, Takeoff.DRIP_LENGTH, Counts.NUMBER_NEEDED, Counts.LENGTH_NEEDED);
  }

  /** Returns how many stay. */
  public Formula kept() {
    return counted(
        Difference.HEADS_KEPT, Difference.DRIP_KEPT, Counts.NUMBER_KEPT, Counts.LENGTH_KEPT);
  }

  /** Returns how many are new. */
  public Formula fresh() {
    return counted(Difference.HEADS_NEW, Difference.DRIP_NEW, Counts.NUMBER_NEW, Counts.LENGTH_NEW);
  }

  /** Returns how many are taken out of use. */
  public Formula removed() {
    return byWord(
        found(Takeoff.HEADS).minus(ofKind(Difference.HEADS_KEPT)),
        found(Takeoff.DRIP_LENGTH).minus(ofKind(Difference.DRIP_KEPT)),
        Counts.NUMBER_REMOVED,
        Counts.LENGTH_REMOVED,
        Counts.AREA_FOUND);
  }

  /** Returns which of the four counts. */
  public Formula chosen(Formula needed, Formula kept, Formula fresh, Formula removed) {
    return Formula.when(Counted.is(which, Counted.NEEDED))
        .then(needed)
        .otherwise(
            Formula.when(Counted.is(which, Counted.KEPT))
                .then(kept)
                .otherwise(
                    Formula.when(Counted.is(which, Counted.NEW)).then(fresh).otherwise(removed)));
  }

  /** Declares a column of one of the four beside the words it is counted by. */
  public Column column(String id, String name, Formula formula) {
    return Column.calculated(what.table(), id, name, QuantityKind.FACTOR, formula)
        .band(Sheets.QUANTITY)
        .decimals(1, 1)
        .means("Of what it is counted by: " + name.toLowerCase(Locale.ROOT) + ".")
        .source("The sheets Takeoff and Counts.");
  }

  private Formula counted(Column heads, Column drip, Column numbers, Column lengths) {
    return byWord(ofKind(heads), ofKind(drip), numbers, lengths, Counts.AREA_NEEDED);
  }

  private Formula byWord(
      Formula heads, Formula drip, Column numbers, Column lengths, Column areas) {
    Formula others =
        Formula.when(Counted.is(what, Counted.LATERAL, Counted.MAIN, Counted.WIRE))
            .then(Counted.length(inCounts(lengths), unit))
            .otherwise(
                Formula.when(Counted.is(what, Counted.AREA))
                    .then(Counted.area(inCounts(areas), unit))
                    .otherwise(Counted.each(inCounts(numbers), unit)));
    return Formula.when(Counted.is(what, Counted.EMITTERS))
        .then(Counted.each(heads, unit))
        .otherwise(
            Formula.when(Counted.is(what, Counted.DRIP_LINE))
                .then(Counted.length(drip, unit))
                .otherwise(others));
  }

  private Formula inCounts(Column column) {
    return new Formula.Find(column.reference(), what);
  }

  private Formula ofKind(Column column) {
    return Matching.rows(Takeoff.KIND.reference(), emitter).sum(column.reference());
  }

  private Formula found(Column column) {
    return Matching.rows(AsFound.of(Emitters.EMITTER), emitter).sum(AsFound.of(column));
  }
}
