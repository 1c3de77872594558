package zonewright.budget;

import static zonewright.trade.Sheets.CLIMATE;
import static zonewright.trade.Sheets.MONTHS;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.WATER;
import static zonewright.trade.Sheets.ZONES;

import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.climate.Rain;
import zonewright.emitters.Emitters;
import zonewright.formula.Comparator;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.formula.Term;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;

/**
 * Columns of what the plants of the whole site need in a month beside the rain that counts: the
 * peak month is the one in which that is greatest.
 *
 * <p>A zone needs reference ET × its coefficient less rain, and nothing where that is below 0. So
 * in each month the zones count whose coefficient is above rain ÷ reference ET.
 */
public final class SiteNeed {
  private static final Formula NO_DEPTH = Formula.zero(QuantityKind.DAILY_DEPTH);

  private static final Condition PLANTED = Plants.PLANT.given().or(Plants.PLANT_FACTOR.given());

  public static final Column COUNTED_COEFFICIENT =
      Column.calculated(
              ZONES,
              "counted-coefficient",
              "Coefficient counted for the peak",
              QuantityKind.FACTOR,
              Formula.when(Emitters.AREA.given().and(PLANTED))
                  .then(Plants.LANDSCAPE_COEFFICIENT)
                  .otherwise(0))
          .band(WATER)
          .means(
              "The landscape coefficient by which the zone has a say in the peak month; 0 while its area or its plants are not given.")
          .source("By definition.")
          .build();

  public static final Column COUNTED_AREA =
      Column.calculated(
              SITE,
              "counted-area",
              "Area counted for the peak",
              QuantityKind.AREA,
              above(Formula.number(0)).sum(Emitters.AREA))
          .band(CLIMATE)
          .means("Area of the zones that have a say in the peak month.")
          .source("By definition.")
          .build();

  public static final Column COVERED =
      Column.calculated(
              MONTHS,
              "covered-coefficient",
              "Coefficient rain covers",
              QuantityKind.FACTOR,
              Formula.when(Climate.DAILY_REFERENCE_ET.atMost(NO_DEPTH))
                  .then(Formula.doesNotApply("no need", "Nothing evaporates in the month."))
                  .otherwise(Rain.DAILY_EFFECTIVE.over(Climate.DAILY_REFERENCE_ET)))
          .band(WATER)
          .means("Zones with a landscape coefficient no greater than this need no irrigation.")
          .source("Effective rain ÷ reference ET: from the definition of the need.")
          .build();

  public static final Column THIRSTY_AREA =
      thirsty("thirsty-area", "Area that needs more than rain", Emitters.AREA, "Area");

  public static final Column THIRSTY_WEIGHTED =
      thirsty(
          "thirsty-weighted",
          "Coefficient × area there",
          ZoneBudget.WEIGHTED_AREA,
          "Landscape coefficient × area");

  public static final Column NEED =
      Column.calculated(
              MONTHS,
              "daily-need",
              "Need a day",
              QuantityKind.DAILY_DEPTH,
              Formula.when(COUNTED_AREA.atMost(Formula.zero(QuantityKind.AREA)))
                  .then(
                      Formula.larger(
                          NO_DEPTH, Climate.DAILY_REFERENCE_ET.minus(Rain.DAILY_EFFECTIVE)))
                  .otherwise(
                      Climate.DAILY_REFERENCE_ET
                          .times(THIRSTY_WEIGHTED)
                          .minus(Rain.DAILY_EFFECTIVE.times(THIRSTY_AREA))
                          .over(COUNTED_AREA)))
          .band(WATER)
          .means(
              "What all plants of the site need on a mean day of the month beside the rain that counts, as a depth over their area; that of"
                  + " a field of reference grass while no zone has plants and an area.")
          .source(
              "Sum over the zones of (reference ET × coefficient − effective rain) × area, where above 0, ÷ area: by definition.")
          .build();

  public static final Column PEAK =
      Column.calculated(
              SITE,
              "peak-daily-need",
              "Peak need a day",
              QuantityKind.DAILY_DEPTH,
              NEED.inRow(Peak.POSITION))
          .band(CLIMATE)
          .means("What all plants of the site need on a mean day of the peak month.")
          .source("By definition.")
          .build();

  private SiteNeed() {}

  private static Matching above(Term coefficient) {
    return Matching.rowsWith(COUNTED_COEFFICIENT, Comparator.ABOVE, coefficient);
  }

  private static Column thirsty(String id, String name, Column column, String what) {
    return Column.calculated(
            MONTHS,
            id,
            name,
            QuantityKind.AREA,
            Formula.when(Climate.DAILY_REFERENCE_ET.atMost(NO_DEPTH))
                .then(Formula.zero(QuantityKind.AREA))
                .otherwise(above(COVERED).sum(column)))
        .band(WATER)
        .means(what + " of the zones whose need the month's rain does not cover.")
        .source("By definition.")
        .build();
  }
}
