package zonewright.budget;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.ALLOWANCES;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.ZONES;

import java.util.List;
import zonewright.climate.Climate;
import zonewright.climate.Rain;
import zonewright.emitters.Emitters;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.FunctionKind;
import zonewright.formula.Term;
import zonewright.plants.Plants;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/**
 * Columns of the yearly allowance and the estimated use of the Californian model ordinance.
 *
 * <p>The rule prescribes the rounded factor 0.62 gallons to a square foot and an inch, where the
 * exact one is 0.6234; here, and only here, the prescribed one is used.
 */
public final class Ordinance {
  private static final String RULE =
      "California Model Water Efficient Landscape Ordinance, 23 CCR 492.4, as in the Gridley code, appendix B, and the Ventura County"
          + " worksheet, appendix L3 (verified). A design aid: the local authority's form decides.";

  public static final String RESIDENTIAL = "residential";
  public static final String OTHER = "non-residential";
  public static final String YES = "yes";
  public static final String NO = "no";

  public static final Column APPLIES =
      Column.choice(
              SITE,
              "ordinance-applies",
              "Model ordinance applies",
              new WordList.Fixed(List.of(NO, YES)),
              NO)
          .band(ALLOWANCES)
          .means(
              "Whether the site must keep to the Californian model ordinance. The figures are shown either way; findings come only where"
                  + " it applies.")
          .build();

  private static final Condition IN_FORCE = APPLIES.is(YES);

  public static final Column LAND_USE =
      Column.choice(
              SITE,
              "land-use",
              "Land use",
              new WordList.Fixed(List.of(RESIDENTIAL, OTHER)),
              RESIDENTIAL)
          .band(ALLOWANCES)
          .means(
              "What the site is used for; sets the usual adjustment factor of the yearly allowance.")
          .build();

  public static final Column ADJUSTMENT_FACTOR =
      Column.defaulted(
              SITE,
              "adjustment-factor",
              "ET adjustment factor",
              QuantityKind.FACTOR,
              Formula.when(LAND_USE.is(RESIDENTIAL)).then(0.55).otherwise(0.45))
          .band(ALLOWANCES)
          .within(Bounds.above(0, 1, Units.ONE))
          .means(
              "Share of the reference ET the yearly allowance grants. Local rules differ: type theirs.")
          .source(RULE + " San Diego uses 0.42 for both land uses (verified).")
          .build();

  public static final Column RAIN_CREDITED =
      Column.defaulted(SITE, "rain-credited", "Yearly rain credited", QuantityKind.SHARE, number(0))
          .band(ALLOWANCES)
          .within(Bounds.from(0, 1, Units.ONE))
          .means(
              "Part of the year's rain that is taken off the reference ET of the yearly allowance.")
          .source("None unless typed; Vacaville takes off 25 % of the yearly rain (verified).")
          .build();

  public static final Column SPECIAL =
      Column.choice(ZONES, "special-area", "Special area", new WordList.Fixed(List.of(NO, YES)), NO)
          .band(ALLOWANCES)
          .means(
              "Whether the zone counts as a special landscape area: edible plants, recycled water or public play, for instance.")
          .build();

  private static final Condition IS_SPECIAL = SPECIAL.is(YES);

  public static final Column SPECIAL_AREA =
      Column.calculated(
              ZONES,
              "special-square",
              "Special part of the area",
              QuantityKind.AREA,
              Formula.when(IS_SPECIAL)
                  .then(Emitters.AREA)
                  .otherwise(Formula.zero(QuantityKind.AREA)))
          .band(ALLOWANCES)
          .means("The zone's area where it is special, else 0.")
          .source("By definition.")
          .build();

  public static final Column ZONE_FACTOR =
      Column.calculated(
              ZONES,
              "zone-adjustment",
              "Zone adjustment factor",
              QuantityKind.FACTOR,
              Formula.when(IS_SPECIAL)
                  .then(1)
                  .otherwise(Plants.PLANT_FACTOR.over(Emitters.IRRIGATION_EFFICIENCY)))
          .band(ALLOWANCES)
          .means("Plant factor over irrigation efficiency; 1 for special areas.")
          .source(RULE)
          .build();

  private static final Formula WEIGHTED = ZONE_FACTOR.times(Emitters.AREA);

  public static final Column REGULAR_WEIGHTED =
      Column.calculated(
              ZONES,
              "regular-weighted",
              "Regular factor × area",
              QuantityKind.AREA,
              Formula.when(IS_SPECIAL).then(Formula.zero(QuantityKind.AREA)).otherwise(WEIGHTED))
          .band(ALLOWANCES)
          .means(
              "Zone adjustment factor times area, of regular zones; from it follows the site's mean factor.")
          .source("By definition.")
          .build();

  public static final String SUM_OF_MONTHS = "the sum of the months";
  public static final String AS_PRINTED = "printed for the place";

  private static final WordList.Fixed ANNUAL_VALUES =
      new WordList.Fixed(List.of(SUM_OF_MONTHS, AS_PRINTED));

  public static final Column ANNUAL_CHOICE =
      Column.choice(SITE, "annual-choice", "Annual value", ANNUAL_VALUES, SUM_OF_MONTHS)
          .band(ALLOWANCES)
          .means(
              "Which reference ET of the year the yearly allowance takes: the sum of the twelve months, or the value printed beside them"
                  + " for the climate place, as a form may ask. Where no place is used it is the sum.")
          .build();

  private static final Condition TAKES_PRINTED = Climate.PRINTED.and(ANNUAL_CHOICE.is(AS_PRINTED));

  public static final Column ANNUAL_USED =
      Column.calculatedWord(
              SITE,
              "annual-used",
              "Annual value used",
              ANNUAL_VALUES,
              Formula.when(TAKES_PRINTED).then(1).otherwise(0))
          .band(ALLOWANCES)
          .means("Which reference ET of the year the yearly allowance rests on.")
          .source("As chosen, where there is a printed value.")
          .build();

  public static final Column ANNUAL_ET =
      Column.calculated(
              SITE,
              "annual-et",
              "Annual reference ET",
              QuantityKind.DEPTH,
              Formula.when(TAKES_PRINTED)
                  .then(Climate.PRINTED_YEAR)
                  .otherwise(Climate.YEAR_REFERENCE_ET))
          .band(ALLOWANCES)
          .originIn(ANNUAL_USED)
          .means("Reference ET of the year that the yearly allowance takes.")
          .source("Printed, or the sum of the months: see Annual value used.")
          .build();

  public static final Column ESTIMATED_USE =
      Column.calculated(
              ZONES,
              "estimated-use",
              "Estimated use a year",
              QuantityKind.VOLUME,
              prescribed(ANNUAL_ET, WEIGHTED))
          .band(ALLOWANCES)
          .means("Water the ordinance expects the zone to use in a year.")
          .source(RULE)
          .build();

  public static final Column SITE_SPECIAL =
      Column.calculated(
              SITE,
              "special-square",
              "Special landscape area",
              QuantityKind.AREA,
              SPECIAL_AREA.sum())
          .band(ALLOWANCES)
          .means("Sum of the special areas; part of the irrigated area.")
          .source("By definition.")
          .build();

  private static final Formula YEAR_ET_COUNTED =
      Formula.when(RAIN_CREDITED.atMost(0))
          .then(ANNUAL_ET)
          .otherwise(ANNUAL_ET.minus(RAIN_CREDITED.times(Rain.MONTH_RAIN.sum())));

  public static final Column YEAR_ET =
      Column.calculated(
              SITE,
              "allowance-year-et",
              "Reference ET counted in the year",
              QuantityKind.DEPTH,
              YEAR_ET_COUNTED)
          .band(ALLOWANCES)
          .means("Reference ET of the year less the rain credited.")
          .source(RULE)
          .build();

  public static final Column MAXIMUM =
      Column.calculated(
              SITE,
              "yearly-allowance",
              "Maximum applied water allowance",
              QuantityKind.VOLUME,
              prescribed(
                  YEAR_ET,
                  ADJUSTMENT_FACTOR
                      .times(Emitters.AREA.sum())
                      .plus(number(1).minus(ADJUSTMENT_FACTOR).times(SITE_SPECIAL))))
          .band(ALLOWANCES)
          .means("Water the ordinance allows the site in a year.")
          .source(RULE)
          .build();

  public static final Column SITE_ESTIMATED_USE =
      Column.calculated(
              SITE,
              "estimated-use",
              "Estimated total water use",
              QuantityKind.VOLUME,
              ESTIMATED_USE.sum())
          .band(ALLOWANCES)
          .means("Water the ordinance expects the site to use in a year.")
          .source(RULE)
          .build();

  public static final Column MEAN_FACTOR =
      Column.calculated(
              SITE,
              "mean-adjustment",
              "Mean adjustment factor",
              QuantityKind.FACTOR,
              Formula.when(Emitters.AREA.sum().atMost(SITE_SPECIAL))
                  .then(
                      Formula.doesNotApply(
                          "all special", "Every zone is a special landscape area."))
                  .otherwise(REGULAR_WEIGHTED.sum().over(Emitters.AREA.sum().minus(SITE_SPECIAL))))
          .band(ALLOWANCES)
          .decimals(3, 3)
          .means(
              "Mean of the zone adjustment factors over the regular areas; must not be above the adjustment factor.")
          .source(RULE)
          .build();

  public static final Column LEFT_OVER =
      Column.calculated(
              SITE,
              "yearly-left",
              "Left of the yearly allowance",
              QuantityKind.VOLUME,
              MAXIMUM.minus(SITE_ESTIMATED_USE))
          .band(ALLOWANCES)
          .means("Allowance less estimated use: 0 or more passes, below 0 fails by that much.")
          .source("By definition.")
          .build();

  public static final Column ABOVE_SHARE =
      Column.calculated(
              ZONES,
              "above-share",
              "Above its yearly share",
              QuantityKind.VOLUME,
              Formula.when(IS_SPECIAL)
                  .then(Formula.zero(QuantityKind.VOLUME))
                  .otherwise(
                      ESTIMATED_USE.minus(
                          prescribed(YEAR_ET, ADJUSTMENT_FACTOR.times(Emitters.AREA)))))
          .formerly("Above its share of the allowance")
          .band(ALLOWANCES)
          .means(
              "What the zone is expected to use above (or, below 0, under) its share of the yearly allowance. Where the site fails,"
                  + " start with the zones that stand highest.")
          .source("Derived from the ordinance's two equations.")
          .build();

  private static final Condition TOO_MUCH = IN_FORCE.and(SITE_ESTIMATED_USE.above(MAXIMUM));

  public static final Column LEAST_CUT =
      LeastCut.column(
          "yearly-cut",
          "Cut for the yearly allowance",
          ABOVE_SHARE,
          SITE_ESTIMATED_USE.minus(MAXIMUM),
          TOO_MUCH);

  public static final Column FACTOR_WANTED =
      Column.calculated(
              ZONES,
              "factor-wanted",
              "Zone factor that meets it",
              QuantityKind.FACTOR,
              ZONE_FACTOR.times(number(1).minus(LEAST_CUT.over(ESTIMATED_USE))))
          .band(ALLOWANCES)
          .means(
              "Plant factor over irrigation efficiency that the zone may have after its cut for the yearly allowance.")
          .source("Derived: use is in proportion to the factor.")
          .build();

  /** Zones whose change is enough for the site to keep to the allowance. */
  public static final Rule CHANGE =
      new Rule(
          "yearly-allowance-change",
          Severity.CHECK,
          ZONES,
          LEAST_CUT.above(Formula.zero(QuantityKind.VOLUME)),
          LEAST_CUT,
          "is one of the fewest zones whose change meets the yearly allowance: {0} less",
          "bring plant factor ÷ irrigation efficiency from {1} to {2}",
          List.of(LEAST_CUT, ZONE_FACTOR, FACTOR_WANTED));

  /** The printed annual value is not the sum of the months. */
  public static final Rule ANNUAL_VALUES_DIFFER =
      new Rule(
          "annual-values-differ",
          Severity.NOTE,
          SITE,
          IN_FORCE.and(
              Climate.PRINTED_YEAR
                  .minus(Climate.YEAR_REFERENCE_ET)
                  .apply(FunctionKind.ABSOLUTE)
                  .above(Formula.amount(0.05, Units.INCH))),
          ANNUAL_CHOICE,
          "has a yearly allowance by {0}: the months come to {1}, {2} is printed for the year",
          "ask the local authority which of the two its form takes",
          List.of(ANNUAL_USED, Climate.YEAR_REFERENCE_ET, Climate.PRINTED_YEAR));

  /** The expected use is above the allowance. */
  public static final Rule EXCEEDED =
      new Rule(
          "yearly-allowance-exceeded",
          Severity.CHECK,
          SITE,
          TOO_MUCH,
          LEFT_OVER,
          "is expected to use {0} a year; the model ordinance allows {1}",
          "the findings of the zones name the fewest that need to change, and to what",
          List.of(SITE_ESTIMATED_USE, MAXIMUM));

  /** The mean factor of the regular areas is above the limit. */
  public static final Rule MEAN_TOO_HIGH =
      new Rule(
          "mean-adjustment-too-high",
          Severity.CHECK,
          SITE,
          IN_FORCE.and(MEAN_FACTOR.above(ADJUSTMENT_FACTOR)),
          MEAN_FACTOR,
          "has a mean adjustment factor of {0} on its regular areas; at most {1} passes",
          "choose plants with a lower factor, or emitters with a higher efficiency, on the largest zones first",
          List.of(MEAN_FACTOR, ADJUSTMENT_FACTOR));

  /** The volume of a depth over an area by the prescribed 0.62 gal/(ft² in). */
  private static Formula prescribed(Term depth, Term area) {
    return depth
        .measuredIn(Units.INCH)
        .times(0.62)
        .times(area.measuredIn(Units.SQUARE_FOOT))
        .times(Formula.amount(1, Units.GALLON));
  }

  private Ordinance() {}
}
