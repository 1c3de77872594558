package zonewright.estimate;

import java.util.Locale;
import java.util.Optional;
import zonewright.emitters.Emitters;
import zonewright.formula.Cells;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.formula.Reference;
import zonewright.formula.Term;
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
 * @param size how pipe or wire of one size is counted, if the table asks for it
 */
public record CountOf(
    Reference what, Reference which, Reference unit, Cells emitter, Optional<SizeCount> size) {
  private enum Part {
    NEEDED,
    KEPT,
    NEW,
    REMOVED
  }

  /** Returns how many there are in the finished job. */
  public Formula needed() {
    return counted(
        Part.NEEDED,
        Takeoff.HEADS,
        Takeoff.DRIP_LENGTH,
        Counts.NUMBER_NEEDED,
        Counts.LENGTH_NEEDED);
  }

  /** Returns how many stay. */
  public Formula kept() {
    return counted(
        Part.KEPT,
        Difference.HEADS_KEPT,
        Difference.DRIP_KEPT,
        Counts.NUMBER_KEPT,
        Counts.LENGTH_KEPT);
  }

  /** Returns how many are new. */
  public Formula fresh() {
    return counted(
        Part.NEW, Difference.HEADS_NEW, Difference.DRIP_NEW, Counts.NUMBER_NEW, Counts.LENGTH_NEW);
  }

  /** Returns how many are taken out of use. */
  public Formula removed() {
    return byWord(
        Part.REMOVED,
        found(Takeoff.HEADS).minus(ofKind(Difference.HEADS_KEPT)),
        found(Takeoff.DRIP_LENGTH).minus(ofKind(Difference.DRIP_KEPT)),
        Counts.NUMBER_REMOVED,
        Counts.LENGTH_REMOVED,
        Counts.AREA_REMOVED);
  }

  /** Returns which of the four counts. */
  public Formula chosen(Term needed, Term kept, Term fresh, Term removed) {
    Formula counted =
        Formula.when(which.is(Counted.NEEDED))
            .then(needed)
            .otherwise(
                Formula.when(which.is(Counted.KEPT))
                    .then(kept)
                    .otherwise(Formula.when(which.is(Counted.NEW)).then(fresh).otherwise(removed)));
    // Without the word there is nothing to choose: what is lacking is the word.
    return Formula.when(what.given()).then(counted).otherwise(inCounts(Counts.NUMBER_NEEDED));
  }

  /** Declares a column of one of the four beside the words it is counted by. */
  public Column column(String id, String name, Term formula) {
    return Column.calculated(what.table(), id, name, QuantityKind.FACTOR, formula)
        .band(Sheets.QUANTITY)
        .decimals(1, 1)
        .means("Of what it is counted by: " + name.toLowerCase(Locale.ROOT) + ".")
        .source("The sheets Takeoff and Counts.")
        .build();
  }

  private Formula counted(Part part, Column heads, Column drip, Column numbers, Column lengths) {
    Column areas =
        switch (part) {
          case NEEDED -> Counts.AREA_NEEDED;
          case KEPT -> Counts.AREA_KEPT;
          case NEW -> Counts.AREA_NEW;
          case REMOVED -> Counts.AREA_REMOVED;
        };
    return byWord(part, ofKind(heads), ofKind(drip), numbers, lengths, areas);
  }

  private Formula byWord(
      Part part, Term heads, Term drip, Column numbers, Column lengths, Column areas) {
    Formula others =
        Formula.when(what.is(Counted.LENGTHS))
            .then(Counted.length(inCounts(lengths), unit))
            .otherwise(
                Formula.when(what.is(Counted.AREA, Counted.TURF))
                    .then(Counted.area(inCounts(areas), unit))
                    .otherwise(Counted.each(inCounts(numbers), unit)));
    Formula counted =
        Formula.when(what.is(Counted.EMITTERS))
            .then(Counted.each(heads, unit))
            .otherwise(
                Formula.when(what.is(Counted.DRIP_LINE))
                    .then(Counted.length(drip, unit))
                    .otherwise(
                        size.isEmpty() || part == Part.REMOVED
                            ? others
                            : Formula.when(size.get().counts())
                                .then(ofSize(part, size.get()))
                                .otherwise(others)));
    return Formula.when(what.given())
        .then(counted)
        .otherwise(Formula.doesNotApply("–", "It is counted by hand: its count is typed."));
  }

  /** Buried pipe out of use is taken to stay where it is, so none of a size is removed. */
  private static Formula ofSize(Part part, SizeCount size) {
    return switch (part) {
      case NEEDED -> size.of(size.needed());
      case NEW -> size.of(size.fresh());
      case KEPT -> size.of(size.needed()).minus(size.of(size.fresh()));
      case REMOVED -> throw new IllegalArgumentException("no pipe is removed");
    };
  }

  private Formula inCounts(Column column) {
    return column.inRowOf(what);
  }

  private Formula ofKind(Column column) {
    return Matching.rows(Takeoff.KIND, emitter).sum(column);
  }

  private Formula found(Column column) {
    return Matching.rows(AsFound.of(Emitters.EMITTER), emitter).sum(AsFound.of(column));
  }
}
