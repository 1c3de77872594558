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
import zonewright.formula.Gathering;
import zonewright.formula.Reference;
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
                  + " it applies.");

  private static final Condition IN_FORCE = new Condition.WordIs(APPLIES.reference(), List.of(YES));

  public static final Column LAND_USE =
      Column.choice(
              SITE,
              "land-use",
              "Land use",
              new WordList.Fixed(List.of(RESIDENTIAL, OTHER)),
              RESIDENTIAL)
          .band(ALLOWANCES)
          .means(
              "What the site is used for; sets the usual adjustment factor of the yearly allowance.");

  public static final Column ADJUSTMENT_FACTOR =
      Column.defaulted(
              SITE,
              "adjustment-factor",
              "ET adjustment factor",
              QuantityKind.FACTOR,
              Formula.when(new Condition.WordIs(LAND_USE.reference(), List.of(RESIDENTIAL)))
                  .then(number(0.55))
                  .otherwise(number(0.45)))
          .band(ALLOWANCES)
          .within(Bounds.above(0, 1, Units.ONE))
          .means(
              "Share of the reference ET the yearly allowance grants. Local rules differ: type theirs.")
          .source(RULE + " San Diego uses 0.42 for both land uses (verified).");

  public static final Column RAIN_CREDITED =
      Column.defaulted(SITE, "rain-credited", "Yearly rain credited", QuantityKind.SHARE, number(0))
          .band(ALLOWANCES)
          .within(Bounds.from(0, 1, Units.ONE))
          .means(
              "Part of the year's rain that is taken off the reference ET of the yearly allowance.")
          .source("None unless typed; Vacaville takes off 25 % of the yearly rain (verified).");

  public static final Column SPECIAL =
      Column.choice(ZONES, "special-area", "Special area", new WordList.Fixed(List.of(NO, YES)), NO)
          .band(ALLOWANCES)
          .means(
              "Whether the zone counts as a special landscape area: edible plants, recycled water or public play, for instance.");

  private static final Condition IS_SPECIAL =
      new Condition.WordIs(SPECIAL.reference(), List.of(YES));

  public static final Column SPECIAL_AREA =
      Column.calculated(
              ZONES,
              "special-square",
              "Special part of the area",
              QuantityKind.AREA,
              Formula.when(IS_SPECIAL)
                  .then(Emitters.AREA.cell())
                  .otherwise(Formula.zero(QuantityKind.AREA)))
          .band(ALLOWANCES)
          .means("The zone's area where it is special, else 0.")
          .source("By definition.");

  public static final Column ZONE_FACTOR =
      Column.calculated(
              ZONES,
              "zone-adjustment",
              "Zone adjustment factor",
              QuantityKind.FACTOR,
              Formula.when(IS_SPECIAL)
                  .then(number(1))
                  .otherwise(
                      Plants.PLANT_FACTOR.cell().over(Emitters.IRRIGATION_EFFICIENCY.cell())))
          .band(ALLOWANCES)
          .means("Plant factor over irrigation efficiency; 1 for special areas.")
          .source(RULE);

  private static final Formula WEIGHTED = ZONE_FACTOR.cell().times(Emitters.AREA.cell());

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
          .source("By definition.");

  public static final String SUM_OF_MONTHS = "the sum of the months";
  public static final String AS_PRINTED = "printed for the place";

  private static final WordList.Fixed ANNUAL_VALUES =
      new WordList.Fixed(List.of(SUM_OF_MONTHS, AS_PRINTED));

  public static final Column ANNUAL_CHOICE =
      Column.choice(SITE, "annual-choice", "Annual value", ANNUAL_VALUES, SUM_OF_MONTHS)
          .band(ALLOWANCES)
          .means(
              "Which reference ET of the year the yearly allowance takes: the sum of the twelve months, or the value printed beside them"
                  + " for the climate place, as a form may ask. Where no place is used it is the sum.");

  private static final Condition TAKES_PRINTED =
      Climate.PRINTED.and(new Condition.WordIs(ANNUAL_CHOICE.reference(), List.of(AS_PRINTED)));

  public static final Column ANNUAL_USED =
      Column.calculatedWord(
              SITE,
              "annual-used",
              "Annual value used",
              ANNUAL_VALUES,
              Formula.when(TAKES_PRINTED).then(number(1)).otherwise(number(0)))
          .band(ALLOWANCES)
          .means("Which reference ET of the year the yearly allowance rests on.")
          .source("As chosen, where there is a printed value.");

  public static final Column ANNUAL_ET =
      Column.calculated(
              SITE,
              "annual-et",
              "Annual reference ET",
              QuantityKind.DEPTH,
              Formula.when(TAKES_PRINTED)
                  .then(Climate.PRINTED_YEAR.cell())
                  .otherwise(Climate.YEAR_REFERENCE_ET.cell()))
          .band(ALLOWANCES)
          .originIn(ANNUAL_USED)
          .means("Reference ET of the year that the yearly allowance takes.")
          .source("Printed, or the sum of the months: see Annual value used.");

  public static final Column ESTIMATED_USE =
      Column.calculated(
              ZONES,
              "estimated-use",
              "Estimated use a year",
              QuantityKind.VOLUME,
              prescribed(ANNUAL_ET.cell(), WEIGHTED))
          .band(ALLOWANCES)
          .means("Water the ordinance expects the zone to use in a year.")
          .source(RULE);

  public static final Column SITE_SPECIAL =
      Column.calculated(
              SITE,
              "special-square",
              "Special landscape area",
              QuantityKind.AREA,
              total(SPECIAL_AREA.reference()))
          .band(ALLOWANCES)
          .means("Sum of the special areas; part of the irrigated area.")
          .source("By definition.");

  private static final Formula YEAR_ET_COUNTED =
      Formula.when(RAIN_CREDITED.cell().atMost(number(0)))
          .then(ANNUAL_ET.cell())
          .otherwise(
              ANNUAL_ET
                  .cell()
                  .minus(RAIN_CREDITED.cell().times(total(Rain.MONTH_RAIN.reference()))));

  public static final Column YEAR_ET =
      Column.calculated(
              SITE,
              "allowance-year-et",
              "Reference ET counted in the year",
              QuantityKind.DEPTH,
              YEAR_ET_COUNTED)
          .band(ALLOWANCES)
          .means("Reference ET of the year less the rain credited.")
          .source(RULE);

  public static final Column MAXIMUM =
      Column.calculated(
              SITE,
              "yearly-allowance",
              "Maximum applied water allowance",
              QuantityKind.VOLUME,
              prescribed(
                  YEAR_ET.cell(),
                  ADJUSTMENT_FACTOR
                      .cell()
                      .times(total(Emitters.AREA.reference()))
                      .plus(number(1).minus(ADJUSTMENT_FACTOR.cell()).times(SITE_SPECIAL.cell()))))
          .band(ALLOWANCES)
          .means("Water the ordinance allows the site in a year.")
          .source(RULE);

  public static final Column SITE_ESTIMATED_USE =
      Column.calculated(
              SITE,
              "estimated-use",
              "Estimated total water use",
              QuantityKind.VOLUME,
              total(ESTIMATED_USE.reference()))
          .band(ALLOWANCES)
          .means("Water the ordinance expects the site to use in a year.")
          .source(RULE);

  public static final Column MEAN_FACTOR =
      Column.calculated(
              SITE,
              "mean-adjustment",
              "Mean adjustment factor",
              QuantityKind.FACTOR,
              Formula.when(total(Emitters.AREA.reference()).atMost(SITE_SPECIAL.cell()))
                  .then(
                      Formula.doesNotApply(
                          "all special", "Every zone is a special landscape area."))
                  .otherwise(
                      total(REGULAR_WEIGHTED.reference())
                          .over(total(Emitters.AREA.reference()).minus(SITE_SPECIAL.cell()))))
          .band(ALLOWANCES)
          .decimals(3, 3)
          .means(
              "Mean of the zone adjustment factors over the regular areas; must not be above the adjustment factor.")
          .source(RULE);

  public static final Column LEFT_OVER =
      Column.calculated(
              SITE,
              "yearly-left",
              "Left of the yearly allowance",
              QuantityKind.VOLUME,
              MAXIMUM.cell().minus(SITE_ESTIMATED_USE.cell()))
          .band(ALLOWANCES)
          .means("Allowance less estimated use: 0 or more passes, below 0 fails by that much.")
          .source("By definition.");

  public static final Column ABOVE_SHARE =
      Column.calculated(
              ZONES,
              "above-share",
              "Above its share of the allowance",
              QuantityKind.VOLUME,
              Formula.when(IS_SPECIAL)
                  .then(Formula.zero(QuantityKind.VOLUME))
                  .otherwise(
                      ESTIMATED_USE
                          .cell()
                          .minus(
                              prescribed(
                                  YEAR_ET.cell(),
                                  ADJUSTMENT_FACTOR.cell().times(Emitters.AREA.cell())))))
          .band(ALLOWANCES)
          .means(
              "What the zone is expected to use above (or, below 0, under) its share of the yearly allowance. Where the site fails,"
                  + " start with the zones that stand highest.")
          .source("Derived from the ordinance's two equations.");

  private static final Condition TOO_MUCH =
      IN_FORCE.and(SITE_ESTIMATED_USE.cell().above(MAXIMUM.cell()));

  public static final Column LEAST_CUT =
      LeastCut.column(
          "yearly-cut",
          "Cut for the yearly allowance",
          ABOVE_SHARE,
          SITE_ESTIMATED_USE.cell().minus(MAXIMUM.cell()),
          TOO_MUCH);

  public static final Column FACTOR_WANTED =
      Column.calculated(
              ZONES,
              "factor-wanted",
              "Zone factor that meets it",
              QuantityKind.FACTOR,
              ZONE_FACTOR
                  .cell()
                  .times(number(1).minus(LEAST_CUT.cell().over(ESTIMATED_USE.cell()))))
          .band(ALLOWANCES)
          .means(
              "Plant factor over irrigation efficiency that the zone may have after its cut for the yearly allowance.")
          .source("Derived: use is in proportion to the factor.");

  /** Zones whose change is enough for the site to keep to the allowance. */
  public static final Rule CHANGE =
      new Rule(
          "yearly-allowance-change",
          Severity.CHECK,
          ZONES,
          LEAST_CUT.cell().above(Formula.zero(QuantityKind.VOLUME)),
          LEAST_CUT.reference(),
          "is one of the fewest zones whose change meets the yearly allowance: {0} less",
          "bring plant factor ÷ irrigation efficiency from {1} to {2}",
          List.of(LEAST_CUT.reference(), ZONE_FACTOR.reference(), FACTOR_WANTED.reference()));

  /** The printed annual value is not the sum of the months. */
  public static final Rule ANNUAL_VALUES_DIFFER =
      new Rule(
          "annual-values-differ",
          Severity.NOTE,
          SITE,
          IN_FORCE.and(
              Climate.PRINTED_YEAR
                  .cell()
                  .minus(Climate.YEAR_REFERENCE_ET.cell())
                  .apply(FunctionKind.ABSOLUTE)
                  .above(Formula.amount(0.05, Units.INCH))),
          ANNUAL_CHOICE.reference(),
          "has a yearly allowance by {0}: the months come to {1}, {2} is printed for the year",
          "ask the local authority which of the two its form takes",
          List.of(
              ANNUAL_USED.reference(),
              Climate.YEAR_REFERENCE_ET.reference(),
              Climate.PRINTED_YEAR.reference()));

  /** The expected use is above the allowance. */
  public static final Rule EXCEEDED =
      new Rule(
          "yearly-allowance-exceeded",
          Severity.CHECK,
          SITE,
          TOO_MUCH,
          LEFT_OVER.reference(),
          "is expected to use {0} a year; the model ordinance allows {1}",
          "the findings of the zones name the fewest that need to change, and to what",
          List.of(SITE_ESTIMATED_USE.reference(), MAXIMUM.reference()));

  /** The mean factor of the regular areas is above the limit. */
  public static final Rule MEAN_TOO_HIGH =
      new Rule(
          "mean-adjustment-too-high",
          Severity.CHECK,
          SITE,
          IN_FORCE.and(MEAN_FACTOR.cell().above(ADJUSTMENT_FACTOR.cell())),
          MEAN_FACTOR.reference(),
          "has a mean adjustment factor of {0} on its regular areas; at most {1} passes",
          "choose plants with a lower factor, or emitters with a higher efficiency, on the largest zones first",
          List.of(MEAN_FACTOR.reference(), ADJUSTMENT_FACTOR.reference()));

  /** The volume of a depth over an area by the prescribed 0.62 gal/(ft² in). */
  private static Formula prescribed(Formula depth, Formula area) {
    return depth
        .measuredIn(Units.INCH)
        .times(number(0.62))
        .times(area.measuredIn(Units.SQUARE_FOOT))
        .times(Formula.amount(1, Units.GALLON));
  }

  private static Formula total(Reference column) {
    return new Formula.Gather(Gathering.SUM, column);
  }

  private Ordinance() {}
}
