package zonewright.savings;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.BILL;
import static zonewright.trade.Sheets.PRICE;
import static zonewright.trade.Sheets.RATES;
import static zonewright.trade.Sheets.SAVINGS;

import java.util.List;
import zonewright.formula.Comparator;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.formula.Term;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the water supplier's rates: what a unit of water costs in each tier of a month. */
public final class Rates {
  /** The tiers a new design has room for; more can be added as rows. */
  public static final List<String> TIERS = List.of("1", "2", "3");

  public static final String THOUSAND_GALLONS = "1,000 gal";
  public static final String HUNDRED_CUBIC_FEET = "100 ft³";
  public static final String CUBIC_METRE = "m³";

  private static final String YES = "yes";
  private static final String NO = "no";

  /** More than any month's water in any unit: where a tier without an end ends. */
  private static final double BEYOND = 1e12;

  private static final Formula NEVER = number(BEYOND);

  public static final Column BILLED_BY =
      Column.choice(
              SAVINGS,
              "billed-by",
              "Billed by",
              new WordList.Fixed(List.of(THOUSAND_GALLONS, HUNDRED_CUBIC_FEET, CUBIC_METRE)))
          .band(BILL)
          .optional()
          .means(
              "The unit the water supplier bills by; tiers and prices on the sheet Rates are in it.")
          .build();

  public static final Column SEWER_CHARGED =
      Column.choice(SAVINGS, "sewer", "Sewer charged", new WordList.Fixed(List.of(NO, YES)), NO)
          .band(BILL)
          .means(
              "Whether sewer is charged on irrigation water too. Many suppliers do not, where it has a meter of its own or a"
                  + " deduction: ask before you count on it.")
          .source(
              "Water not discharged to the sewer may be deducted: U.S. EPA, WaterSense at Work (2012), page on simple payback"
                  + " (verified).")
          .build();

  public static final Column SEWER_SHARE =
      Column.defaulted(SAVINGS, "sewer-share", "Sewer charged on", QuantityKind.SHARE, number(1))
          .band(BILL)
          .within(Bounds.from(0, 1, Units.ONE))
          .means(
              "The part of the water taken to return to the sewer, where sewer is charged: less than all where the supplier gives a"
                  + " credit for garden water or for summer.")
          .source("All of it unless typed; the rate sheet says what is credited.")
          .build();

  public static final Column TIER =
      Column.words(RATES, "tier", "Tier")
          .band(BILL)
          .means("Name of the tier, such as its number. Add a row for each tier the supplier has.")
          .build();

  public static final Column UP_TO =
      Column.input(RATES, "up-to", "Up to", QuantityKind.FACTOR)
          .band(BILL)
          .within(Bounds.above(0, 1e9, Units.ONE))
          .optional()
          .means(
              "The month's water up to which the tier goes, in the unit billed by. Leave it blank in the last tier, which has no end.")
          .build();

  public static final Column WATER_PRICE = price("water-price", "Water price", "water");

  public static final Column SEWER_PRICE = price("sewer-price", "Sewer price", "sewer");

  private static final Condition BOUNDED = UP_TO.given();

  private static final Condition WITHOUT_PRICES =
      WATER_PRICE.given().or(SEWER_PRICE.given()).negated();

  public static final Column END =
      Column.calculated(
              RATES,
              "end",
              "End",
              QuantityKind.FACTOR,
              Formula.when(BOUNDED).then(UP_TO).otherwise(NEVER))
          .band(BILL)
          .decimals(0, 0)
          .wordsFrom(BEYOND, "no end")
          .means(
              "Where the tier ends; the last one has no end, for which formulas take a very great number.")
          .source("By definition.")
          .build();

  private static final Matching BELOW_IT = Matching.rowsWith(END, Comparator.BELOW, END);

  public static final Column START =
      Column.calculated(
              RATES,
              "start",
              "Start",
              QuantityKind.FACTOR,
              Formula.when(BOUNDED.negated().and(WITHOUT_PRICES))
                  .then(NEVER)
                  .otherwise(
                      Formula.when(BELOW_IT.count().above(0))
                          .then(BELOW_IT.largest(END))
                          .otherwise(0)))
          .band(BILL)
          .decimals(0, 0)
          .wordsFrom(BEYOND, "not used")
          .means(
              "Where the tier begins: where the next lower one ends, in whatever order they stand. A row with neither an end nor a"
                  + " price is not used.")
          .source("By definition.")
          .build();

  public static final Column COMBINED =
      Column.calculated(
              RATES,
              "combined",
              "Price in all",
              QuantityKind.MONEY,
              orNothing(WATER_PRICE)
                  .plus(
                      Formula.when(SEWER_CHARGED.is(YES))
                          .then(orNothing(SEWER_PRICE).times(SEWER_SHARE))
                          .otherwise(Formula.zero(QuantityKind.MONEY))))
          .band(PRICE)
          .decimals(4, 4)
          .means("Water and, where it is charged, sewer, for one unit of this tier.")
          .source("By definition.")
          .build();

  public static final Column TO_START =
      upTo(
          "to-start",
          "Price × start",
          START,
          "What the units below the tier would cost at its price: bills count all units at the price of every tier begun, and take"
              + " this off.");

  public static final Column TO_END =
      upTo(
          "to-end",
          "Price × end",
          END,
          "What the units up to the tier's end would cost at its price: bills take off what lies beyond the end of every tier that is"
              + " full.");

  /** Two tiers that begin at the same place: they end alike, or both have no end. */
  public static final Rule ORDER =
      new Rule(
          "tier-order",
          Severity.WRONG,
          RATES,
          START
              .below(NEVER)
              .and(
                  startsFrom(Comparator.AT_LEAST, START)
                      .minus(startsFrom(Comparator.ABOVE, START))
                      .above(1)),
          UP_TO,
          "begins at {0}, and so does another tier: the same water would be billed twice",
          "give each tier an end of its own, and leave only the last one without",
          List.of(START));

  /** A tier that can be reached and has no price. */
  public static final Rule WITHOUT_PRICE =
      new Rule(
          "tier-without-price",
          Severity.MISSING,
          RATES,
          START.below(NEVER).and(WATER_PRICE.given().negated()),
          WATER_PRICE,
          "has no water price and can be reached from {0} on: that water would count as free",
          "type its price, or 0 where it costs nothing",
          List.of(START));

  /** The last tier ends somewhere. */
  public static final Rule NO_LAST =
      new Rule(
          "no-last-tier",
          Severity.MISSING,
          RATES,
          BOUNDED.and(
              startsFrom(Comparator.AT_LEAST, END)
                  .minus(startsFrom(Comparator.AT_LEAST, NEVER))
                  .atMost(0)),
          UP_TO,
          "is the last tier and ends at {0}: water beyond would count as free",
          "leave its end blank, or add the tier that follows",
          List.of(UP_TO));

  /** Columns of the sheet, in their order. */
  public static List<Column> columns() {
    return List.of(TIER, UP_TO, WATER_PRICE, SEWER_PRICE, START, END, COMBINED, TO_START, TO_END);
  }

  private Rates() {}

  /** Returns a volume as a number of the unit billed by. */
  static Formula billed(Term volume) {
    Condition gallons = BILLED_BY.is(THOUSAND_GALLONS);
    Condition feet = BILLED_BY.is(HUNDRED_CUBIC_FEET);
    return Formula.when(gallons)
        .then(volume.measuredIn(Units.GALLON).over(1000))
        .otherwise(
            Formula.when(feet)
                .then(volume.measuredIn(Units.CUBIC_FOOT).over(100))
                .otherwise(volume.measuredIn(Units.CUBIC_METRE)));
  }

  /**
   * Returns what a month's water costs: each unit at the price of every tier begun, less what lies
   * beyond the end of every tier that is full, so that each unit costs what its own tier says.
   */
  static Formula cost(Term units) {
    return beyond(START, TO_START, units).minus(beyond(END, TO_END, units));
  }

  /** What the units beyond the tiers' places cost at the tiers' prices, added up. */
  private static Formula beyond(Column place, Column toPlace, Term units) {
    Matching passed = Matching.rowsWith(place, Comparator.BELOW, units);
    return passed.sum(COMBINED).times(units).minus(passed.sum(toPlace));
  }

  private static Formula startsFrom(Comparator comparator, Term place) {
    return Matching.rowsWith(START, comparator, place).count();
  }

  private static Column upTo(String id, String name, Column place, String means) {
    return Column.calculated(
            RATES,
            id,
            name,
            QuantityKind.MONEY,
            Formula.when(place.below(NEVER))
                .then(COMBINED.times(place))
                .otherwise(Formula.zero(QuantityKind.MONEY)))
        .band(PRICE)
        .means(means)
        .source("By definition.")
        .build();
  }

  private static Formula orNothing(Column price) {
    return Formula.when(price.given()).then(price).otherwise(Formula.zero(QuantityKind.MONEY));
  }

  private static Column price(String id, String name, String what) {
    return Column.input(RATES, id, name, QuantityKind.MONEY)
        .band(PRICE)
        .within(Bounds.from(0, 100_000, Units.MONEY))
        .decimals(4, 4)
        .optional()
        .means("Price of one unit of " + what + " in this tier, as on the supplier's rate sheet.")
        .build();
  }
}
