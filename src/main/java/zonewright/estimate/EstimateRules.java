package zonewright.estimate;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.COUNTS;
import static zonewright.trade.Sheets.ESTIMATE;
import static zonewright.trade.Sheets.PARTS;
import static zonewright.trade.Sheets.TAKEOFF;

import java.util.List;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.retrofit.Difference;
import zonewright.retrofit.Takeoff;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.units.QuantityKind;

/** What an estimator should know before a price goes out. */
public final class EstimateRules {
  private static final Formula NOTHING = Formula.zero(QuantityKind.MONEY);

  /** Something is needed and nobody knows what it costs. */
  public static final Rule WITHOUT_PRICE =
      new Rule(
          "item-without-price",
          Severity.MISSING,
          PARTS,
          Parts.BOUGHT
              .cell()
              .above(number(0))
              .and(new Condition.Given(Parts.PRICE.reference()).negated()),
          Parts.PRICE.reference(),
          "has no price, and {0} of it are needed: the estimate cannot be added up",
          "ask a supplier, or type 0 where it costs nothing",
          List.of(Parts.BOUGHT.reference()));

  /** Labour without what an hour costs. */
  public static final Rule WITHOUT_RATE =
      new Rule(
          "no-labour-rate",
          Severity.MISSING,
          ESTIMATE,
          BuildUp.HOURS
              .cell()
              .above(Formula.zero(QuantityKind.HOURS))
              .and(new Condition.Given(JobFacts.LABOUR_RATE.reference()).negated()),
          JobFacts.LABOUR_RATE.reference(),
          "{0} of labour are in the items, and an hour has no price",
          "type the labour rate",
          List.of(BuildUp.HOURS.reference()));

  /**
   * An item kept in the book that this job does not use: only worth a note where it is expected.
   */
  public static final Rule WITHOUT_KIND =
      new Rule(
          "item-without-kind",
          Severity.CHECK,
          PARTS,
          Counted.is(Parts.COUNTED_BY.reference(), Counted.EMITTERS, Counted.DRIP_LINE)
              .and(new Condition.Given(Parts.EMITTER.reference()).negated())
              .and(new Condition.Given(Parts.COUNT.reference()).negated()),
          Parts.EMITTER.reference(),
          "is counted by {0}, but not of which kind",
          "choose the kind of emitter, or type the count",
          List.of(Parts.COUNTED_BY.reference()));

  /** Something is needed that no item buys. */
  public static final Rule WITHOUT_ITEM =
      new Rule(
          "quantity-without-item",
          Severity.CHECK,
          COUNTS,
          BuildUp.DIRECT
              .cell()
              .above(NOTHING)
              .and(Counts.ANY_NEW.cell().above(number(0)))
              .and(Counts.ITEMS.cell().atMost(number(0))),
          Counts.ITEMS.reference(),
          "is needed new, and no item of the price book is counted by it",
          "add an item to the sheet Parts, or leave it where others supply it",
          List.of());

  /** A kind of emitter that no item buys. */
  public static final Rule EMITTER_WITHOUT_ITEM =
      new Rule(
          "emitter-without-item",
          Severity.CHECK,
          TAKEOFF,
          BuildUp.DIRECT
              .cell()
              .above(NOTHING)
              .and(
                  Difference.HEADS_NEW
                      .cell()
                      .above(number(0))
                      .or(Difference.DRIP_NEW.cell().above(Formula.zero(QuantityKind.LENGTH))))
              .and(
                  Matching.rows(Parts.EMITTER.reference(), Takeoff.KIND.reference())
                      .count()
                      .atMost(number(0))),
          Takeoff.KIND.reference(),
          "is to get new emitters ({0}), and no item of the price book is of that kind",
          "add an item of that kind to the sheet Parts",
          List.of(Takeoff.KIND.reference()));

  /** A price without anything for the office and the risk. */
  public static final Rule NOTHING_ADDED =
      new Rule(
          "nothing-added",
          Severity.NOTE,
          ESTIMATE,
          BuildUp.DIRECT
              .cell()
              .above(NOTHING)
              .and(
                  BuildUp.OVERHEAD
                      .cell()
                      .plus(BuildUp.PROFIT.cell())
                      .plus(BuildUp.CONTINGENCY.cell())
                      .atMost(NOTHING)),
          JobFacts.OVERHEAD_SHARE.reference(),
          "nothing is added to the direct cost of {0}: no overhead, profit or contingency",
          "type what your office adds, if the price goes to an owner",
          List.of(BuildUp.DIRECT.reference()));

  private EstimateRules() {}

  /** Returns the rules in the order in which they should be read. */
  public static List<Rule> all() {
    return List.of(
        WITHOUT_PRICE,
        WITHOUT_RATE,
        WITHOUT_KIND,
        WITHOUT_ITEM,
        EMITTER_WITHOUT_ITEM,
        NOTHING_ADDED);
  }
}
