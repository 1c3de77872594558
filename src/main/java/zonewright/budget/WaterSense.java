package zonewright.budget;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.ALLOWANCES;
import static zonewright.trade.Sheets.MONTHS;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.ZONES;

import java.util.List;
import zonewright.climate.Climate;
import zonewright.climate.Rain;
import zonewright.emitters.Emitters;
import zonewright.formula.Aggregation;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/**
 * Columns of the peak-month water allowance that the WaterSense water budget approach knows.
 *
 * <p>Its multiplier for uniformity is 1 ÷ uniformity; that of the schedule is another, and the two
 * are never mixed.
 */
public final class WaterSense {
  private static final String FROM_MEMORY =
      "EPA WaterSense water budget approach: that it rests on 70 % of reference ET in the peak watering month is verified; the"
          + " equations are from memory. A design aid: the local authority's form decides.";

  public static final Column APPLIES =
      Column.choice(
              SITE,
              "allowance-applies",
              "Peak-month allowance applies",
              new WordList.Fixed(List.of(Ordinance.NO, Ordinance.YES)),
              Ordinance.NO)
          .band(ALLOWANCES)
          .means(
              "Whether the site must keep to the peak-month allowance of the WaterSense approach. The figures are shown either way;"
                  + " findings come only where it applies.")
          .build();

  public static final Column MONTH_RANKING =
      Column.calculated(
              MONTHS,
              "allowance-ranking",
              "Reference ET less rain",
              QuantityKind.COUNT,
              number(1000)
                  .times(Climate.REFERENCE_ET.minus(Rain.MONTH_RAIN).measuredIn(Units.MILLIMETRE))
                  .roundedDownTo(Units.ONE))
          .band(ALLOWANCES)
          .means(
              "What the months are ranked by to find the peak watering month of the allowance, in thousandths of a millimetre. Type 0 where a month has no rain.")
          .source(FROM_MEMORY)
          .build();

  private static final Formula POSITION = MONTH_RANKING.gathered(Aggregation.POSITION_OF_LARGEST);

  public static final Column MONTH_ET =
      Column.calculated(
              SITE,
              "allowance-et",
              "Reference ET of the allowance month",
              QuantityKind.DEPTH,
              Climate.REFERENCE_ET.inRow(POSITION))
          .band(ALLOWANCES)
          .means("Reference ET of the month with the greatest reference ET less rain.")
          .source(FROM_MEMORY)
          .build();

  public static final Column MONTH_RAIN =
      Column.calculated(
              SITE,
              "allowance-rain",
              "Rain counted in the allowance month",
              QuantityKind.DEPTH,
              number(0.25).times(Rain.MONTH_RAIN.inRow(POSITION)))
          .band(ALLOWANCES)
          .means("A quarter of the rain of that month.")
          .source(FROM_MEMORY)
          .build();

  public static final Column REQUIRED =
      Column.calculated(
              ZONES,
              "allowance-required",
              "Required in the allowance month",
              QuantityKind.VOLUME,
              Formula.larger(
                      Formula.zero(QuantityKind.DEPTH),
                      MONTH_ET.times(Plants.LANDSCAPE_COEFFICIENT).minus(MONTH_RAIN))
                  .times(Emitters.AREA)
                  .over(Emitters.DISTRIBUTION_UNIFORMITY))
          .band(ALLOWANCES)
          .means("Water the zone requires in the peak watering month, as the allowance counts it.")
          .source(FROM_MEMORY)
          .build();

  public static final Column ALLOWANCE =
      Column.calculated(
              SITE,
              "allowance",
              "Peak-month allowance",
              QuantityKind.VOLUME,
              number(0.7).times(MONTH_ET.times(Emitters.AREA.sum())))
          .band(ALLOWANCES)
          .means("70 % of the reference ET of the peak watering month over the irrigated area.")
          .source(FROM_MEMORY)
          .build();

  public static final Column SITE_REQUIRED =
      Column.calculated(
              SITE,
              "allowance-required",
              "Required in the allowance month",
              QuantityKind.VOLUME,
              REQUIRED.sum())
          .band(ALLOWANCES)
          .means("Sum over the zones of what the allowance counts as required.")
          .source(FROM_MEMORY)
          .build();

  public static final Column LEFT_OVER =
      Column.calculated(
              SITE,
              "allowance-left",
              "Left of the peak-month allowance",
              QuantityKind.VOLUME,
              ALLOWANCE.minus(SITE_REQUIRED))
          .band(ALLOWANCES)
          .means("Allowance less requirement: 0 or more passes, below 0 fails by that much.")
          .source("By definition.")
          .build();

  public static final Column ABOVE_SHARE =
      Column.calculated(
              ZONES,
              "allowance-above-share",
              "Above its peak share",
              QuantityKind.VOLUME,
              REQUIRED.minus(number(0.7).times(MONTH_ET.times(Emitters.AREA))))
          .formerly("Above its share of the peak month")
          .band(ALLOWANCES)
          .means(
              "What the zone requires above (or, below 0, under) its share by area of the peak-month allowance.")
          .source("Derived from the two equations of the allowance.")
          .build();

  private static final Condition TOO_MUCH =
      APPLIES.is(Ordinance.YES).and(SITE_REQUIRED.above(ALLOWANCE));

  public static final Column LEAST_CUT =
      LeastCut.column(
          "allowance-cut",
          "Cut for the peak-month allowance",
          ABOVE_SHARE,
          SITE_REQUIRED.minus(ALLOWANCE),
          TOO_MUCH);

  /** Zones whose change is enough for the site to keep to the allowance. */
  public static final Rule CHANGE =
      new Rule(
          "allowance-change",
          Severity.CHECK,
          ZONES,
          LEAST_CUT.above(Formula.zero(QuantityKind.VOLUME)),
          LEAST_CUT,
          "is one of the fewest zones whose change meets the peak-month allowance: {0} less of {1}",
          "give it plants that need less, or emitters that water more evenly",
          List.of(LEAST_CUT, REQUIRED));

  /** The requirement is above the allowance. */
  public static final Rule EXCEEDED =
      new Rule(
          "allowance-exceeded",
          Severity.CHECK,
          SITE,
          TOO_MUCH,
          LEFT_OVER,
          "requires {0} in the peak watering month; the WaterSense allowance is {1}",
          "the findings of the zones name the fewest that need to change, and by how much",
          List.of(SITE_REQUIRED, ALLOWANCE));

  private WaterSense() {}
}
