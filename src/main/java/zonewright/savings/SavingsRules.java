package zonewright.savings;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.CASES;
import static zonewright.trade.Sheets.FOUND;
import static zonewright.trade.Sheets.REBATES;
import static zonewright.trade.Sheets.SAVINGS;
import static zonewright.trade.Sheets.USE;

import java.util.List;
import zonewright.formula.Formula;
import zonewright.retrofit.AsFound;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.units.QuantityKind;

/** What an owner should be told before believing that a job pays. */
public final class SavingsRules {
  private static final Formula NOTHING = Formula.zero(QuantityKind.MONEY);

  /** More is paid back than the job costs. */
  public static final Rule REBATE_OVER_COST =
      new Rule(
          "rebate-over-cost",
          Severity.CHECK,
          SAVINGS,
          Savings.REBATE.above(Savings.COST),
          Savings.REBATE,
          "rebates of {0} are more than the job costs ({1})",
          "look at caps and counts: programs pay no more than the cost",
          List.of(Savings.REBATE, Savings.COST));

  /** A rebate is named, and nobody knows what it pays. */
  public static final Rule REBATE_WITHOUT_SUM =
      new Rule(
          "rebate-without-sum",
          Severity.MISSING,
          REBATES,
          Rebates.LABEL.given().and(Rebates.EACH.given().negated()),
          Rebates.EACH,
          "does not say what is paid for each: rebates cannot be added up",
          "type it, or 0 where nothing is paid",
          List.of());

  /** A rebate is named, and nobody knows for how many. */
  public static final Rule REBATE_WITHOUT_COUNT =
      new Rule(
          "rebate-without-count",
          Severity.MISSING,
          REBATES,
          Rebates.EACH
              .given()
              .and(Rebates.COUNTED_BY.given().negated())
              .and(Rebates.COUNT.given().negated()),
          Rebates.COUNT,
          "says neither what it is counted by nor how many are paid for",
          "choose what it is counted by, or type the count",
          List.of());

  /** Water is held against a meter that nobody has read. */
  public static final Rule METER_NOT_READ =
      new Rule(
          "meter-not-read",
          Severity.MISSING,
          USE,
          Use.BASIS.is(Use.BY_METER).and(Use.METERED.given().negated()),
          Use.METERED,
          "has no metered water, and savings are held against the meter",
          "type what the meter shows, 0 where none was used, or choose on the sheet Savings what else they are held against",
          List.of());

  /** The equipment is worn before it is paid. */
  public static final Rule PAYBACK_OVER_LIFE =
      new Rule(
          "payback-over-life",
          Severity.CHECK,
          CASES,
          Worth.PAYBACK.above(Savings.LIFE),
          Worth.PAYBACK,
          "pays back in {0} years, beyond its life of {1}",
          "leave out what saves little, look for rebates, or say what else speaks for it",
          List.of(Worth.PAYBACK, Savings.LIFE));

  /** A retrofit that takes more water than before. */
  public static final Rule USES_MORE =
      new Rule(
          "uses-more",
          Severity.CHECK,
          SAVINGS,
          Savings.YEAR_BEFORE
              .above(Formula.zero(QuantityKind.VOLUME))
              .and(Savings.SAVED_VOLUME.below(Formula.zero(QuantityKind.VOLUME))),
          Savings.SAVED_VOLUME,
          "the proposed zones need more water than before: {0} against {1} a year",
          "see on the sheet Takeoff which zones do; a present schedule may be giving too little",
          List.of(Savings.YEAR_AFTER, Savings.YEAR_BEFORE));

  /** Present watering far beyond what the plants need. */
  public static final Rule OVERWATERED =
      new Rule(
          "overwatered",
          Severity.NOTE,
          SAVINGS,
          Savings.OVERWATERED.above(number(0.1).times(Savings.YEAR_FOUND)),
          Savings.YEAR_PRESENT,
          "the present schedule gives {0} a year, {1} more than the zones as found need",
          "a new schedule saves that without any new equipment; do not count it for the equipment",
          List.of(Savings.YEAR_PRESENT, Savings.OVERWATERED));

  /** A zone that gets far more than it needs even in the peak month. */
  public static final Rule ZONE_OVERWATERED =
      new Rule(
          "zone-overwatered",
          Severity.NOTE,
          FOUND,
          AsFound.PRESENT_PART.above(1.5),
          AsFound.PRESENT_PART,
          "is given {0} of what it needs in the peak month: {1} a week",
          "set the controller to the run time it needs before anything is replaced",
          List.of(AsFound.PRESENT_PART, AsFound.PRESENT_VOLUME));

  /** A zone that is kept short in the peak month. */
  public static final Rule ZONE_UNDERWATERED =
      new Rule(
          "zone-underwatered",
          Severity.NOTE,
          FOUND,
          AsFound.PRESENT_PART.below(0.7),
          AsFound.PRESENT_PART,
          "is given only {0} of what it needs in the peak month: {1} a week",
          "look whether the plants get by: against the present schedule this zone may save nothing",
          List.of(AsFound.PRESENT_PART, AsFound.PRESENT_VOLUME));

  private static Formula firstYear(String name) {
    return Worth.FIRST_YEAR.inRow(Cases.NAMES.indexOf(name) + 1);
  }

  private SavingsRules() {}

  /** Returns the rules in the order in which they should be read. */
  public static List<Rule> all() {
    return List.of(
        Rates.ORDER,
        Rates.WITHOUT_PRICE,
        Rates.NO_LAST,
        REBATE_WITHOUT_SUM,
        REBATE_WITHOUT_COUNT,
        REBATE_OVER_COST,
        METER_NOT_READ,
        PAYBACK_OVER_LIFE,
        USES_MORE,
        OVERWATERED,
        ZONE_OVERWATERED,
        ZONE_UNDERWATERED,
        NOT_PAID,
        LOW_BEATS_HIGH);
  }

  /** What is lost counts less where less of it comes true: that the case low wins is no mistake. */
  public static final Rule LOW_BEATS_HIGH =
      new Rule(
          "low-beats-high",
          Severity.NOTE,
          SAVINGS,
          firstYear(Cases.LOW).above(firstYear(Cases.HIGH)),
          Savings.WATER_SAVING,
          "comes to {0} a year, a loss: the case low counts less of it than high, and so comes out better",
          "read low and high the other way round, and see on the sheet Takeoff which zones need more water",
          List.of(Savings.WATER_SAVING));

  /** Savings that never come. */
  public static final Rule NOT_PAID =
      new Rule(
          "saves-nothing",
          Severity.CHECK,
          CASES,
          Savings.NET_COST.above(NOTHING).and(Worth.FIRST_YEAR.atMost(NOTHING)),
          Worth.FIRST_YEAR,
          "saves nothing in the first year and costs {0}",
          "check the rates, and what the savings are held against",
          List.of(Savings.NET_COST));
}
