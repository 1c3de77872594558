package zonewright.estimate;

import static zonewright.trade.Sheets.COUNTS;
import static zonewright.trade.Sheets.ESTIMATE;
import static zonewright.trade.Sheets.PARTS;
import static zonewright.trade.Sheets.TAKEOFF;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.pipes.Laterals;
import zonewright.pipes.Mains;
import zonewright.pipes.Wiring;
import zonewright.retrofit.Difference;
import zonewright.retrofit.PipeTakeoff;
import zonewright.retrofit.Takeoff;
import zonewright.sheet.Column;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
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
          Parts.BOUGHT.above(0).and(Parts.PRICE.given().negated()),
          Parts.PRICE,
          "has no price, and {0} of it are needed: the estimate cannot be added up",
          "ask a supplier, or type 0 where it costs nothing",
          List.of(Parts.BOUGHT));

  /** An item counted by nothing, of which nobody typed how many. */
  public static final Rule WITHOUT_QUANTITY =
      new Rule(
              "item-without-quantity",
              Severity.MISSING,
              PARTS,
              Parts.PRICE
                  .given()
                  .and(Parts.COUNTED_BY.given().negated())
                  .and(Parts.COUNT.given().negated()),
              Parts.COUNT,
              "has no quantity: it is counted by nothing, and its count is blank, so the estimate cannot be added up",
              "type the count, 0 where this job needs none, or choose what it is counted by",
              List.of())
          .curedBy(
              "Type 0: this job needs none",
              (book, cell, row) ->
                  Optional.of(new Edits(book).set(cell, row, new Entry.Figure(0))));

  /** Labour without what an hour costs. */
  public static final Rule WITHOUT_RATE =
      new Rule(
          "no-labour-rate",
          Severity.MISSING,
          ESTIMATE,
          BuildUp.HOURS
              .above(Formula.zero(QuantityKind.HOURS))
              .and(Crews.PEOPLE.sum().atMost(0))
              .and(JobFacts.LABOUR_RATE.given().negated()),
          JobFacts.LABOUR_RATE,
          "{0} of labour are in the items, and an hour has no price",
          "type the labour rate",
          List.of(BuildUp.HOURS));

  /** Labour of no crew, where there are crews and the job has no rate of its own. */
  public static final Rule WITHOUT_CREW =
      new Rule(
          "item-without-crew",
          Severity.MISSING,
          PARTS,
          Parts.HOURS
              .above(Formula.zero(QuantityKind.HOURS))
              .and(Crews.PEOPLE.sum().above(0))
              .and(Parts.CREW.given().negated())
              .and(JobFacts.LABOUR_RATE.given().negated()),
          Parts.CREW,
          "has {0} of labour and no crew, and the job has no labour rate",
          "choose its crew, or type the labour rate on the sheet Estimate",
          List.of(Parts.HOURS));

  /** Exempt from a tax that is on all. */
  public static final Rule UNTAXED_BUT_ALL_IS =
      new Rule(
          "untaxed-but-all-is",
          Severity.CHECK,
          PARTS,
          Parts.TAXABLE
              .is(Parts.UNTAXED)
              .and(JobFacts.TAX_ON.is(JobFacts.ON_PRICE))
              .and(JobFacts.TAX_SHARE.above(0)),
          Parts.TAXABLE,
          "is not taxable, but tax is on the whole price and so on it too",
          "choose tax on material on the sheet Estimate, if the local law has it so",
          List.of());

  /**
   * An item kept in the book that this job does not use: only worth a note where it is expected.
   */
  public static final Rule WITHOUT_KIND =
      new Rule(
          "item-without-kind",
          Severity.CHECK,
          PARTS,
          Parts.COUNTED_BY
              .is(Counted.EMITTERS, Counted.DRIP_LINE)
              .and(Parts.EMITTER.given().negated())
              .and(Parts.COUNT.given().negated()),
          Parts.EMITTER,
          "is counted by {0}, but not of which kind",
          "choose the kind of emitter, or type the count",
          List.of(Parts.COUNTED_BY));

  /** Something is needed that no item buys. */
  public static final Rule WITHOUT_ITEM =
      new Rule(
          "quantity-without-item",
          Severity.CHECK,
          COUNTS,
          BuildUp.DIRECT.above(NOTHING).and(Counts.ANY_NEW.above(0)).and(Counts.ITEMS.atMost(0)),
          Counts.ITEMS,
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
              .above(NOTHING)
              .and(
                  Difference.HEADS_NEW
                      .above(0)
                      .or(Difference.DRIP_NEW.above(Formula.zero(QuantityKind.LENGTH))))
              .and(Matching.rows(Parts.EMITTER, Takeoff.KIND).count().atMost(0)),
          Takeoff.KIND,
          "is to get new emitters ({0}), and no item of the price book is of that kind",
          "add an item of that kind to the sheet Parts",
          List.of(Takeoff.KIND));

  /** Pipe or wire is priced, and nobody knows how much of it. */
  public static final Rule LATERAL_UNKNOWN =
      unknown("lateral-not-measured", Counted.LATERAL, Laterals.LENGTH, PipeTakeoff.LENGTH);

  public static final Rule MAIN_UNKNOWN =
      unknown("main-not-measured", Counted.MAIN, Mains.LENGTH, PipeTakeoff.MAIN);

  public static final Rule WIRE_UNKNOWN =
      unknown("wire-not-measured", Counted.WIRE, Wiring.RUN, PipeTakeoff.STATION_WIRE);

  /** Lateral, main or wire of a size that no item counts. */
  public static final List<Rule> SIZE_WITHOUT_ITEM =
      List.of(
          sizeWithoutItem(
              "lateral-without-item",
              Counted.LATERAL,
              PipeTakeoff.LENGTH_NEW,
              Parts.PIPE,
              PipeTakeoff.PIPE),
          sizeWithoutItem(
              "lateral-own-without-item",
              Counted.LATERAL,
              PipeTakeoff.LENGTH_NEW,
              Parts.OWN_PIPE,
              PipeTakeoff.OWN),
          sizeWithoutItem(
              "main-without-item",
              Counted.MAIN,
              PipeTakeoff.MAIN_NEW,
              Parts.PIPE,
              PipeTakeoff.MAIN_PIPE),
          sizeWithoutItem(
              "main-own-without-item",
              Counted.MAIN,
              PipeTakeoff.MAIN_NEW,
              Parts.OWN_PIPE,
              PipeTakeoff.MAIN_OWN),
          sizeWithoutItem(
              "wire-without-item",
              Counted.WIRE,
              PipeTakeoff.WIRE_NEW,
              Parts.WIRE,
              PipeTakeoff.WIRE_SIZE));

  /** A price without anything for the office and the risk. */
  public static final Rule NOTHING_ADDED =
      new Rule(
          "nothing-added",
          Severity.NOTE,
          ESTIMATE,
          BuildUp.DIRECT
              .above(NOTHING)
              .and(BuildUp.OVERHEAD.plus(BuildUp.PROFIT).plus(BuildUp.CONTINGENCY).atMost(NOTHING)),
          JobFacts.OVERHEAD_SHARE,
          "nothing is added to the direct cost of {0}: no overhead, profit or contingency",
          "type what your office adds, if the price goes to an owner",
          List.of(BuildUp.DIRECT));

  /** A schedule of payments that asks for more than the price. */
  public static final Rule PAID_TOO_MUCH =
      new Rule(
          "paid-too-much",
          Severity.CHECK,
          ESTIMATE,
          ProposalFacts.DEPOSIT_SHARE.plus(ProposalFacts.PROGRESS_SHARE).above(1),
          ProposalFacts.PROGRESS_SHARE,
          "{0} on order and {1} during the work are more than the price",
          "type parts that come to 100 % at most",
          List.of(ProposalFacts.DEPOSIT_SHARE, ProposalFacts.PROGRESS_SHARE));

  private EstimateRules() {}

  private static Formula inCounts(Column column, String word) {
    return column.inRow(Counted.row(word));
  }

  private static Rule unknown(String id, String word, Column drawn, Column needed) {
    String name = needed.name().toLowerCase(Locale.ROOT);
    return new Rule(
        id,
        Severity.MISSING,
        TAKEOFF,
        inCounts(Counts.ITEMS, word)
            .above(0)
            .and(Difference.ZONES_FOUND.atMost(0))
            .and(Difference.VALVES_NEW.above(0))
            .and(drawn.given().negated())
            .and(needed.given().negated())
            .and(PipeTakeoff.newOf(needed).given().negated()),
        needed,
        "its " + name + " is not known, and items of the price book are counted by it",
        "type the "
            + drawn.name().toLowerCase(Locale.ROOT)
            + " on the sheet Pipes, or the length here",
        List.of());
  }

  private static Rule sizeWithoutItem(
      String id, String word, Column fresh, Column items, Column pipe) {
    return new Rule(
        id,
        Severity.CHECK,
        TAKEOFF,
        inCounts(Counts.ITEMS, word)
            .above(0)
            .and(inCounts(Counts.ITEMS_OF_ALL_SIZES, word).atMost(0))
            .and(fresh.above(Formula.zero(QuantityKind.LENGTH)))
            .and(Matching.rows(items, pipe).count().atMost(0)),
        pipe,
        "is to get {0} of {1}, and no item of the price book counts that size",
        "add an item for it to the sheet Parts",
        List.of(fresh, pipe));
  }

  /** Returns the rules in the order in which they should be read. */
  public static List<Rule> all() {
    List<Rule> rules =
        new ArrayList<>(
            List.of(
                WITHOUT_QUANTITY,
                WITHOUT_PRICE,
                WITHOUT_RATE,
                WITHOUT_CREW,
                UNTAXED_BUT_ALL_IS,
                WITHOUT_KIND,
                WITHOUT_ITEM,
                EMITTER_WITHOUT_ITEM,
                LATERAL_UNKNOWN,
                MAIN_UNKNOWN,
                WIRE_UNKNOWN));
    rules.addAll(SIZE_WITHOUT_ITEM);
    rules.add(NOTHING_ADDED);
    rules.add(PAID_TOO_MUCH);
    return rules;
  }
}
