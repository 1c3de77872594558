package zonewright.savings;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.BILL;
import static zonewright.trade.Sheets.PRICE;
import static zonewright.trade.Sheets.RATES;
import static zonewright.trade.Sheets.SAVINGS;

import java.util.ArrayList;
import java.util.List;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the water supplier's rates: what a unit of water costs in each tier of a month. */
public final class Rates {
  /** The tiers, in their order; how many there can be. */
  public static final List<String> TIERS = List.of("1", "2", "3", "4", "5", "6");

  public static final String THOUSAND_GALLONS = "1,000 gal";
  public static final String HUNDRED_CUBIC_FEET = "100 ft³";
  public static final String CUBIC_METRE = "m³";

  private static final String YES = "yes";
  private static final String NO = "no";

  /** More than any month's water in any unit: where a tier that does not exist would begin. */
  private static final Formula NEVER = number(1e12);

  public static final Column BILLED_BY =
      Column.choice(
              SAVINGS,
              "billed-by",
              "Billed by",
              new WordList.Fixed(List.of(THOUSAND_GALLONS, HUNDRED_CUBIC_FEET, CUBIC_METRE)))
          .band(BILL)
          .optional()
          .means(
              "The unit the water supplier bills by; tiers and prices on the sheet Rates are in it.");

  public static final Column SEWER_CHARGED =
      Column.choice(SAVINGS, "sewer", "Sewer charged", new WordList.Fixed(List.of(NO, YES)), NO)
          .band(BILL)
          .means(
              "Whether sewer is charged on irrigation water too. Many suppliers do not, where it has a meter of its own or a"
                  + " deduction: ask before you count on it.")
          .source(
              "Water not discharged to the sewer may be deducted: U.S. EPA, WaterSense at Work (2012), page on simple payback"
                  + " (verified).");

  public static final Column TIER =
      Column.words(RATES, "tier", "Tier")
          .band(BILL)
          .means("Tier of the rate, from the first unit on.");

  public static final Column POSITION =
      Column.input(RATES, "number", "Number", QuantityKind.COUNT)
          .band(BILL)
          .within(Bounds.from(1, TIERS.size(), Units.ONE).wholeNumbers())
          .optional()
          .means("The tier's place.");

  public static final Column UP_TO =
      Column.input(RATES, "up-to", "Up to", QuantityKind.FACTOR)
          .band(BILL)
          .within(Bounds.above(0, 1e9, Units.ONE))
          .optional()
          .means(
              "The month's water up to which the tier goes, in the unit billed by. Leave it blank in the last tier.");

  public static final Column WATER_PRICE = price("water-price", "Water price", "water");

  public static final Column SEWER_PRICE = price("sewer-price", "Sewer price", "sewer");

  public static final Column END =
      Column.calculated(
              RATES,
              "end",
              "End",
              QuantityKind.FACTOR,
              Formula.when(new Condition.Given(UP_TO.reference()))
                  .then(UP_TO.cell())
                  .otherwise(NEVER))
          .band(BILL)
          .decimals(0, 0)
          .means("Where the tier ends; a very great number in the last one.")
          .source("By definition.");

  public static final Column START =
      Column.calculated(
              RATES,
              "start",
              "Start",
              QuantityKind.FACTOR,
              Formula.when(POSITION.cell().atMost(number(1)))
                  .then(number(0))
                  .otherwise(new Formula.Pick(END.reference(), POSITION.cell().minus(number(1)))))
          .band(BILL)
          .decimals(0, 0)
          .means("Where the tier begins: where the one before ends.")
          .source("By definition.");

  public static final Column COMBINED =
      Column.calculated(
              RATES,
              "combined",
              "Price in all",
              QuantityKind.MONEY,
              orNothing(WATER_PRICE)
                  .plus(
                      Formula.when(new Condition.WordIs(SEWER_CHARGED.reference(), List.of(YES)))
                          .then(orNothing(SEWER_PRICE))
                          .otherwise(Formula.zero(QuantityKind.MONEY))))
          .band(PRICE)
          .decimals(4, 4)
          .means("Water and, where it is charged, sewer, for one unit of this tier.")
          .source("By definition.");

  public static final Column STEP =
      Column.calculated(
              RATES,
              "step",
              "More than before",
              QuantityKind.MONEY,
              Formula.when(POSITION.cell().atMost(number(1)))
                  .then(COMBINED.cell())
                  .otherwise(
                      COMBINED
                          .cell()
                          .minus(
                              new Formula.Pick(
                                  COMBINED.reference(), POSITION.cell().minus(number(1))))))
          .band(PRICE)
          .decimals(4, 4)
          .means("What each unit beyond the start of this tier costs more than one before it.")
          .source("By definition.");

  /** A tier that does not come after the one before. */
  public static final Rule ORDER =
      new Rule(
          "tier-order",
          Severity.WRONG,
          RATES,
          new Condition.Given(UP_TO.reference()).and(UP_TO.cell().atMost(START.cell())),
          UP_TO.reference(),
          "ends at {0}, which is not beyond the tier before it ({1})",
          "put the tiers in rising order, and leave the last one open",
          List.of(UP_TO.reference(), START.reference()));

  /** A tier that can be reached and has no price. */
  public static final Rule WITHOUT_PRICE =
      new Rule(
          "tier-without-price",
          Severity.MISSING,
          RATES,
          new Condition.Given(UP_TO.reference())
              .or(POSITION.cell().above(number(1)).and(START.cell().below(NEVER)))
              .and(new Condition.Given(WATER_PRICE.reference()).negated()),
          WATER_PRICE.reference(),
          "has no water price and can be reached from {0} on: that water would count as free",
          "type its price, or leave the tier before it open",
          List.of(START.reference()));

  /** Columns of the sheet, in their order. */
  public static List<Column> columns() {
    return List.of(TIER, POSITION, UP_TO, WATER_PRICE, SEWER_PRICE, START, END, COMBINED, STEP);
  }

  private Rates() {}

  /** Returns a volume as a number of the unit billed by. */
  static Formula billed(Formula volume) {
    Condition gallons = new Condition.WordIs(BILLED_BY.reference(), List.of(THOUSAND_GALLONS));
    Condition feet = new Condition.WordIs(BILLED_BY.reference(), List.of(HUNDRED_CUBIC_FEET));
    return Formula.when(gallons)
        .then(volume.measuredIn(Units.GALLON).over(number(1000)))
        .otherwise(
            Formula.when(feet)
                .then(volume.measuredIn(Units.CUBIC_FOOT).over(number(100)))
                .otherwise(volume.measuredIn(Units.CUBIC_METRE)));
  }

  /**
   * Returns what a month's water costs: each unit at the first tier's price, and what each unit
   * beyond the start of a tier costs more.
   */
  static Formula cost(Formula units) {
    List<Formula> parts = new ArrayList<>();
    for (int tier = 1; tier <= TIERS.size(); tier++) {
      Formula step = new Formula.Pick(STEP.reference(), number(tier));
      Formula start = new Formula.Pick(START.reference(), number(tier));
      parts.add(
          tier == 1
              ? step.times(units)
              : step.times(Formula.larger(number(0), units.minus(start))));
    }
    return parts.stream().reduce(Formula::plus).orElseThrow();
  }

  private static Formula orNothing(Column price) {
    return Formula.when(new Condition.Given(price.reference()))
        .then(price.cell())
        .otherwise(Formula.zero(QuantityKind.MONEY));
  }

  private static Column price(String id, String name, String what) {
    return Column.input(RATES, id, name, QuantityKind.MONEY)
        .band(PRICE)
        .within(Bounds.from(0, 100_000, Units.MONEY))
        .decimals(4, 4)
        .optional()
        .means("Price of one unit of " + what + " in this tier, as on the supplier's rate sheet.");
  }
}
