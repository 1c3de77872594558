package zonewright.budget;

import static zonewright.trade.Sheets.MONTHS;
import static zonewright.trade.Sheets.WATER;

import zonewright.climate.Climate;
import zonewright.climate.Rain;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;

/** Columns that hold the need of each month against the rain and the yearly allowance. */
public final class YearBalance {
  public static final Column NEED =
      Column.calculated(
              MONTHS,
              "need",
              "Plants' need",
              QuantityKind.VOLUME,
              Climate.REFERENCE_ET.times(ZoneBudget.WEIGHTED_AREA.sum()))
          .band(WATER)
          .means(
              "Water the plants of all zones use in the month, from rain and irrigation together.")
          .source(
              "Reference ET × landscape coefficient × area, summed over the zones: by definition.")
          .build();

  public static final Column FROM_RAIN =
      Column.calculated(
              MONTHS,
              "need-from-rain",
              "Need met by rain",
              QuantityKind.VOLUME,
              Formula.smaller(Rain.EFFECTIVE.times(SiteBudget.TOTAL_AREA), NEED))
          .band(WATER)
          .means(
              "The part of the need that the effective rain covers, no more than all of it. Nothing where rain is not counted.")
          .source("Effective rain × area: by definition.")
          .build();

  public static final Column ALLOWED =
      Column.calculated(
              MONTHS,
              "allowed",
              "Month's part of the yearly allowance",
              QuantityKind.VOLUME,
              yearly().times(Climate.REFERENCE_ET).over(Climate.YEAR_REFERENCE_ET))
          .band(WATER)
          .means(
              "The local limit where one is given, and else the maximum allowance of the model ordinance, spread over the year as"
                  + " reference ET is. Budgets are for the year; the part of a month is for comparing only.")
          .source("Spread by reference ET: common practice, no source.")
          .build();

  private static Formula yearly() {
    Condition local = LocalRule.VOLUME.given().or(LocalRule.SHARE.given());
    return Formula.when(local).then(LocalRule.LIMIT).otherwise(Ordinance.MAXIMUM);
  }

  private YearBalance() {}
}
