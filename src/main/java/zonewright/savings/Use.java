package zonewright.savings;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.BILL;
import static zonewright.trade.Sheets.PRESENT_USE;
import static zonewright.trade.Sheets.SAVINGS;
import static zonewright.trade.Sheets.USE;
import static zonewright.trade.Sheets.WATER;

import java.util.List;
import zonewright.budget.SiteBudget;
import zonewright.budget.VolumeNames;
import zonewright.climate.Climate;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Reference;
import zonewright.formula.Term;
import zonewright.retrofit.AsFound;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the water of each month: as found and proposed, as it should be and as it is. */
public final class Use {
  public static final String BY_DESIGN = "as found, well scheduled";
  public static final String BY_SCHEDULE = "the present schedule";
  public static final String BY_METER = "the meter";

  public static final Column BASIS =
      Column.choice(
              SAVINGS,
              "basis",
              "Saved against",
              new WordList.Fixed(List.of(BY_DESIGN, BY_SCHEDULE, BY_METER)),
              BY_DESIGN)
          .band(BILL)
          .means(
              "What the proposed water is held against: what the zones as found would need, well scheduled (only what better"
                  + " equipment and plants save); what the controller runs now; or what the meter shows. The last two also count"
                  + " what better scheduling saves.")
          .build();

  public static final Column MONTH =
      Column.words(USE, "month", "Month").band(WATER).means("The month.").build();

  public static final Column POSITION =
      Column.input(USE, "number", "Number", QuantityKind.COUNT)
          .band(WATER)
          .within(Bounds.from(1, 12, Units.ONE).wholeNumbers())
          .optional()
          .means("The month's place in the year.")
          .build();

  public static final Column SETTING =
      Column.defaulted(USE, "setting", "Seasonal setting", QuantityKind.SHARE, number(1))
          .band(PRESENT_USE)
          .within(Bounds.from(0, 5, Units.ONE))
          .means(
              "Seasonal setting of the controller in the month as it is run now; 0 % where it is off.")
          .source("100 % all year unless typed: many controllers are never touched.")
          .build();

  public static final Column METERED =
      Column.input(USE, "metered", "Metered", QuantityKind.VOLUME)
          .band(PRESENT_USE)
          .within(Bounds.from(0, 1e10, Units.GALLON))
          .optional()
          .means("Water of the month by the meter or the bill; the mean of several years is best.")
          .build();

  public static final Column OTHER =
      Column.defaulted(
              USE,
              "other",
              "Of it other use",
              QuantityKind.VOLUME,
              Formula.zero(QuantityKind.VOLUME))
          .band(PRESENT_USE)
          .within(Bounds.from(0, 1e10, Units.GALLON))
          .means(
              "What the same meter gives to buildings and all but irrigation. A winter month without irrigation tells it.")
          .source("None unless typed: a meter for irrigation alone.")
          .build();

  public static final Column FOUND =
      volume(
          "found",
          "As found, well scheduled",
          VolumeNames.ofAllZones(POSITION, AsFound::of),
          "What the zones as found would need in the month at their own uniformity and rate: each scaled by its own percent of the"
              + " month, as the proposed zones are.",
          "Sum over the zones of the sheet Found.");

  public static final Column PRESENT =
      volume(
          "present",
          "Present schedule",
          AsFound.PRESENT_VOLUME
              .sum()
              .over(Formula.amount(7, Units.DAY))
              .times(month(Climate.DAYS))
              .times(SETTING),
          "What the controller runs in the month as it is set now.",
          "Flow × minutes a week × weeks of the month × seasonal setting.");

  public static final Column METERED_IRRIGATION =
      volume(
          "metered-irrigation",
          "Metered irrigation",
          Formula.larger(Formula.zero(QuantityKind.VOLUME), METERED.minus(OTHER)),
          "Metered water less other use.",
          "By definition.");

  public static final Column BEFORE =
      volume(
          "before",
          "Before",
          Formula.when(basis(BY_DESIGN))
              .then(FOUND)
              .otherwise(
                  Formula.when(basis(BY_SCHEDULE)).then(PRESENT).otherwise(METERED_IRRIGATION)),
          "What the proposed water is held against, as chosen on the sheet Savings.",
          "By definition.");

  public static final Column AFTER =
      volume(
          "after",
          "Proposed",
          month(SiteBudget.MONTH_VOLUME),
          "What the zones as proposed need in the month.",
          "The sheet Months.");

  public static final Column UNITS_OTHER =
      units("units-other", "Other use billed", OTHER, "Other use in the unit billed by.");

  public static final Column UNITS_BEFORE =
      units(
          "units-before",
          "Billed before",
          BEFORE.plus(OTHER),
          "All water of the month before, in the unit billed by.");

  public static final Column UNITS_AFTER =
      units(
          "units-after",
          "Billed proposed",
          AFTER.plus(OTHER),
          "All water of the month as proposed, in the unit billed by.");

  public static final Column COST_OTHER =
      cost("cost-other", "Cost of other use", UNITS_OTHER, "What other use alone would cost.");

  public static final Column COST_BEFORE =
      cost("cost-before", "Cost before", UNITS_BEFORE, "What all water of the month costs before.");

  public static final Column COST_AFTER =
      cost(
          "cost-after",
          "Cost proposed",
          UNITS_AFTER,
          "What all water of the month costs as proposed.");

  /** Columns of the sheet, in their order. */
  public static List<Column> columns() {
    return List.of(
        MONTH,
        POSITION,
        SETTING,
        METERED,
        OTHER,
        FOUND,
        PRESENT,
        METERED_IRRIGATION,
        BEFORE,
        AFTER,
        UNITS_OTHER,
        UNITS_BEFORE,
        UNITS_AFTER,
        COST_OTHER,
        COST_BEFORE,
        COST_AFTER);
  }

  private Use() {}

  private static Formula month(Column column) {
    Reference there = column.reference();
    return there.inRow(POSITION);
  }

  private static Condition basis(String word) {
    return BASIS.is(word);
  }

  private static Column volume(String id, String name, Term formula, String means, String source) {
    return Column.calculated(USE, id, name, QuantityKind.VOLUME, formula)
        .band(WATER)
        .means(means)
        .source(source)
        .build();
  }

  private static Column units(String id, String name, Term volume, String means) {
    return Column.calculated(USE, id, name, QuantityKind.FACTOR, Rates.billed(volume))
        .band(BILL)
        .means(means)
        .source("By definition.")
        .build();
  }

  private static Column cost(String id, String name, Column units, String means) {
    return Column.calculated(
            USE, id, name, QuantityKind.MONEY, Rates.cost(units).roundedTo(Units.CENT))
        .band(BILL)
        .means(
            means
                + " Irrigation stands on top of other use and fills the dearer tiers: its own cost is the difference.")
        .source(
            "By the tiers of the sheet Rates, month by month, to the smallest amount of the currency.")
        .build();
  }
}
