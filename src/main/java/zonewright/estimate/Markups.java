package zonewright.estimate;

import static zonewright.trade.Sheets.COST;
import static zonewright.trade.Sheets.ESTIMATE;
import static zonewright.trade.Sheets.PRICE;

import java.util.Locale;
import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/**
 * Markups of their own for material, labour, equipment and subcontracts, in place of the overhead
 * that is on all else, and what each of them makes the overhead differ by.
 */
final class Markups {
  static final Column MATERIAL = markup("Material");
  static final Column LABOUR = markup("Labour");
  static final Column EQUIPMENT = markup("Equipment");
  static final Column SUBCONTRACT = markup("Subcontract");

  private Markups() {}

  private static Column markup(String kind) {
    String word = kind.toLowerCase(Locale.ROOT);
    return Column.input(ESTIMATE, word + "-markup", kind + " markup", QuantityKind.SHARE)
        .band(PRICE)
        .within(Bounds.from(0, 5, Units.ONE))
        .decimals(2, 2)
        .inFull()
        .optional()
        .means(
            "What is added to %s in place of Overhead, as a part of its cost. Left blank, Overhead counts."
                .formatted(word))
        .build();
  }

  /** Returns by how much the overhead on a cost is more, or below 0 less, by its own markup. */
  static Column difference(Column markup, Column cost) {
    return Column.calculated(
            ESTIMATE,
            markup.reference().column() + "-difference",
            "More by " + markup.name().toLowerCase(Locale.ROOT),
            QuantityKind.MONEY,
            Formula.when(markup.given())
                .then(cost.times(markup.minus(JobFacts.OVERHEAD_SHARE)))
                .otherwise(Formula.zero(QuantityKind.MONEY)))
        .band(COST)
        .decimals(4, 4)
        .means(
            "What its own markup adds to the overhead beside the usual one; below 0 where it is less. Not rounded: the overhead is.")
        .source("By definition.")
        .build();
  }
}
