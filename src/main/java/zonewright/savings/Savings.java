package zonewright.savings;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.BILL;
import static zonewright.trade.Sheets.CASH;
import static zonewright.trade.Sheets.SAVED;
import static zonewright.trade.Sheets.SAVINGS;

import zonewright.formula.Formula;
import zonewright.formula.Term;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the savings of a year, and of what they are worth over the years. */
public final class Savings {
  /** The most years looked at. */
  public static final int MOST_YEARS = 30;

  public static final Column WATER_RISE =
      share("water-rise", "Water price rise", 0, "How much dearer water gets each year.");

  public static final Column ENERGY_RISE =
      share("energy-rise", "Energy price rise", 0, "How much dearer energy gets each year.");

  public static final Column DISCOUNT =
      share(
          "discount",
          "Discount rate",
          0.03,
          "What the owner's money would earn elsewhere in a year. Where price rises are beyond inflation, so must this be.");

  public static final Column LIFE =
      Column.defaulted(SAVINGS, "life", "Life", QuantityKind.COUNT, number(15))
          .band(CASH)
          .within(Bounds.from(1, MOST_YEARS, Units.ONE).wholeNumbers())
          .means("Years the new equipment is counted on, at most 30.")
          .source("Common practice, no source: 15 years unless typed.")
          .build();

  public static final Column UPKEEP =
      Column.defaulted(
              SAVINGS,
              "upkeep",
              "Upkeep saved a year",
              QuantityKind.MONEY,
              Formula.zero(QuantityKind.MONEY))
          .band(SAVED)
          .within(Bounds.from(-1e8, 1e8, Units.MONEY))
          .means("What upkeep gets cheaper in a year; below 0 where it gets dearer.")
          .source("None unless typed.")
          .build();

  public static final Column PUMP_PRESSURE =
      Column.input(SAVINGS, "pump-pressure", "Pump pressure", QuantityKind.PRESSURE)
          .band(SAVED)
          .within(Bounds.from(0, 1000, Units.POUND_PER_SQUARE_INCH))
          .optional()
          .means(
              "Pressure a pump of the site adds to the water. Leave it blank where nothing is pumped.")
          .build();

  public static final Column PUMP_EFFICIENCY =
      Column.defaulted(
              SAVINGS, "pump-efficiency", "Pump efficiency", QuantityKind.SHARE, number(0.6))
          .band(SAVED)
          .within(Bounds.above(0, 1, Units.ONE))
          .means("Part of the electricity that becomes pressure, pump and motor together.")
          .source("Common practice, no source.")
          .build();

  public static final Column ENERGY_PRICE =
      Column.input(SAVINGS, "energy-price", "Energy price", QuantityKind.PRICE_PER_ENERGY)
          .band(SAVED)
          .within(Bounds.from(0, 1000, Units.MONEY_PER_KILOWATT_HOUR))
          .decimals(4, 4)
          .optional()
          .means("What the pump's electricity costs. Needed only where a pump pressure is given.")
          .build();

  public static final Column YEAR_FOUND =
      total(
          "year-found",
          "As found, well scheduled",
          Use.FOUND,
          "Water of a year that the zones as found would need.");

  public static final Column YEAR_PRESENT =
      total(
          "year-present",
          "Present schedule a year",
          Use.PRESENT,
          "Water of a year as the controller is set now.");

  public static final Column YEAR_METERED =
      total(
          "year-metered",
          "Metered irrigation a year",
          Use.METERED_IRRIGATION,
          "Water of a year by the meter, less other use.");

  public static final Column OVERWATERED =
      Column.calculated(
              SAVINGS,
              "overwatered",
              "Present beyond need",
              QuantityKind.VOLUME,
              YEAR_PRESENT.minus(YEAR_FOUND))
          .band(SAVED)
          .means(
              "What the present schedule gives beyond what the zones as found need; below 0 where it gives too little. This much"
                  + " better scheduling alone would save.")
          .source("By definition.")
          .build();

  public static final Column YEAR_BEFORE =
      total(
          "year-before",
          "Water a year before",
          Use.BEFORE,
          "What the proposed water is held against.");

  public static final Column YEAR_AFTER =
      total(
          "year-after",
          "Water a year proposed",
          Use.AFTER,
          "Water of a year of the zones as proposed.");

  public static final Column SAVED_VOLUME =
      Column.calculated(
              SAVINGS,
              "saved-volume",
              "Water saved a year",
              QuantityKind.VOLUME,
              YEAR_BEFORE.minus(YEAR_AFTER))
          .band(SAVED)
          .means("Before less proposed; below 0 where the job uses more.")
          .source("By definition.")
          .build();

  public static final Column SAVED_SHARE =
      Column.calculated(
              SAVINGS,
              "saved-share",
              "Part saved",
              QuantityKind.SHARE,
              Formula.when(YEAR_BEFORE.atMost(Formula.zero(QuantityKind.VOLUME)))
                  .then(Formula.doesNotApply("none", "There is no water before to save."))
                  .otherwise(SAVED_VOLUME.over(YEAR_BEFORE)))
          .band(SAVED)
          .means("Water saved as a part of the water before.")
          .source("By definition.")
          .build();

  public static final Column FIXED_BEFORE =
      fixed(
          "fixed-before",
          "Fixed charge a month before",
          Formula.zero(QuantityKind.MONEY),
          "What the water supplier charges each month whatever is used, such as for the size of the meter. Where bills come every"
              + " two months, half of it.",
          "None unless typed.");

  public static final Column FIXED_AFTER =
      fixed(
          "fixed-after",
          "Fixed charge a month proposed",
          FIXED_BEFORE,
          "The same after the job, lower where a smaller meter or one meter less will do.",
          "As before, unless typed.");

  public static final Column BILL_BEFORE =
      bill("bill-before", "Water bill a year before", FIXED_BEFORE, Use.COST_BEFORE);

  public static final Column BILL_AFTER =
      bill("bill-after", "Water bill a year proposed", FIXED_AFTER, Use.COST_AFTER);

  public static final Column WATER_SAVING =
      Column.calculated(
              SAVINGS,
              "water-saving",
              "Water bill saved a year",
              QuantityKind.MONEY,
              BILL_BEFORE.minus(BILL_AFTER).roundedTo(Units.CENT))
          .band(SAVED)
          .means("The year's bills before less those as proposed, at today's rates.")
          .source("By definition; the sum of rounded amounts.")
          .build();

  public static final Column ENERGY =
      Column.calculated(
              SAVINGS,
              "energy",
              "Energy saved a year",
              QuantityKind.ENERGY,
              Formula.when(PUMP_PRESSURE.given())
                  .then(SAVED_VOLUME.times(PUMP_PRESSURE).over(PUMP_EFFICIENCY))
                  .otherwise(Formula.zero(QuantityKind.ENERGY)))
          .band(SAVED)
          .decimals(0, 0)
          .means("What the pump needs less in a year; none where no pump pressure is given.")
          .source("Energy = volume × pressure ÷ efficiency, by definition of work.")
          .build();

  public static final Column ENERGY_SAVING =
      Column.calculated(
              SAVINGS,
              "energy-saving",
              "Energy bill saved a year",
              QuantityKind.MONEY,
              Formula.when(PUMP_PRESSURE.given())
                  .then(ENERGY.times(ENERGY_PRICE).roundedTo(Units.CENT))
                  .otherwise(Formula.zero(QuantityKind.MONEY)))
          .band(SAVED)
          .means("Energy saved at today's price, to the smallest amount of the currency.")
          .source("By definition; half of the smallest amount goes up.")
          .build();

  public static final Column COST = JobCost.COST;

  public static final Column REBATE =
      Column.calculated(
              SAVINGS,
              "rebate",
              "Rebates",
              QuantityKind.MONEY,
              Rebates.AMOUNT.sum().roundedTo(Units.CENT))
          .band(CASH)
          .means("Sum of the sheet Rebates.")
          .source("By definition.")
          .build();

  public static final Column NET_COST =
      Column.calculated(
              SAVINGS, "net-cost", "Cost less rebates", QuantityKind.MONEY, COST.minus(REBATE))
          .band(CASH)
          .means("What the owner puts in at the start.")
          .source("By definition.")
          .build();

  private Savings() {}

  private static Column fixed(String id, String name, Term usual, String means, String source) {
    return Column.defaulted(SAVINGS, id, name, QuantityKind.MONEY, usual)
        .band(BILL)
        .within(Bounds.from(0, 1e7, Units.MONEY))
        .means(means)
        .source(source)
        .build();
  }

  private static Column bill(String id, String name, Column fixed, Column month) {
    return Column.calculated(
            SAVINGS,
            id,
            name,
            QuantityKind.MONEY,
            number(12).times(fixed).plus(month.sum()).roundedTo(Units.CENT))
        .band(BILL)
        .means(
            "Water of the twelve months by the tiers, other use included, and the fixed charges.")
        .source("By definition; the sum of rounded amounts.")
        .build();
  }

  private static Column total(String id, String name, Column month, String means) {
    return Column.calculated(SAVINGS, id, name, QuantityKind.VOLUME, month.sum())
        .band(BILL)
        .means(means)
        .source("Sum over the months of the sheet Use.")
        .build();
  }

  private static Column share(String id, String name, double usual, String means) {
    return Column.defaulted(SAVINGS, id, name, QuantityKind.SHARE, number(usual))
        .band(CASH)
        .within(Bounds.from(-0.5, 1, Units.ONE))
        .decimals(1, 1)
        .inFull()
        .means(means)
        .source(
            usual == 0
                ? "None unless typed."
                : "3 % a year beyond inflation, from memory: the least rate of 10 CFR 436 for federal projects; ask the owner.")
        .build();
  }
}
