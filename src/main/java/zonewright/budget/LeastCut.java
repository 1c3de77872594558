package zonewright.budget;

import static zonewright.trade.Sheets.ALLOWANCES;
import static zonewright.trade.Sheets.ZONES;

import zonewright.formula.Comparator;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.formula.Term;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;

/**
 * The fewest zones that need to change so that a site keeps to an allowance, and by how much each.
 *
 * <p>Each zone may be brought down to its own share, not further. Whoever wants to change as few as
 * possible then takes those that stand highest above their shares, one after another, until the
 * excess is gone; the last of them gives only what is still wanted.
 */
final class LeastCut {
  private LeastCut() {}

  /**
   * Returns the column of what each zone gives.
   *
   * @param above how much a zone stands above its share
   * @param excess how much the site stands above the allowance
   * @param wanted whether the allowance is exceeded and counts
   */
  static Column column(String id, String name, Column above, Term excess, Condition wanted) {
    Formula nothing = Formula.zero(QuantityKind.VOLUME);
    Formula higher = Matching.rowsWith(above, Comparator.ABOVE, above).sum(above);
    Formula still = Formula.larger(nothing, excess.minus(higher));
    return Column.calculated(
            ZONES,
            id,
            name,
            QuantityKind.VOLUME,
            Formula.when(wanted)
                .then(Formula.larger(nothing, Formula.smaller(above, still)))
                .otherwise(
                    Formula.doesNotApply(
                        "none", "The site keeps to this allowance, or need not keep to it.")))
        .band(ALLOWANCES)
        .means(
            "What the zone would have to use less, where as few zones as possible are changed: those that stand highest above"
                + " their shares, none of them brought below its share.")
        .source("Derived: the largest first, until the excess is gone.")
        .build();
  }
}
