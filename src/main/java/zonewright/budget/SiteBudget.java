package zonewright.budget;

import static zonewright.trade.Sheets.MONTHS;
import static zonewright.trade.Sheets.PROGRAMS;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.WATER;
import static zonewright.trade.Sheets.ZONE;
import static zonewright.trade.Sheets.ZONES;

import java.util.List;
import java.util.Locale;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.climate.Rain;
import zonewright.emitters.Emitters;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Gathering;
import zonewright.formula.Matching;
import zonewright.formula.Reference;
import zonewright.sheet.Column;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of the water of the site, of its programs and of the months. */
public final class SiteBudget {
  public static final Column PROGRAM =
      Column.words(PROGRAMS, "program", "Program")
          .band(ZONE)
          .means("Letter or name of a program of the controller.");

  public static final Column ZONE_PROGRAM =
      Column.choice(ZONES, "program", "Program", new WordList.RowsOf(PROGRAMS))
          .band(ZONE)
          .optional()
          .means("The controller program that runs the zone.");

  public static final Column PROGRAM_MINUTES =
      Column.calculated(
              PROGRAMS,
              "minutes",
              "Minutes a watering day",
              QuantityKind.MINUTES,
              sumOver(ZoneBudget.MINUTES_GIVEN.reference()))
          .band(WATER)
          .means("Minutes of all its zones, were all watered on the same day, one after another.")
          .source("By definition; soaks and gaps are not in it.");

  public static final Column PROGRAM_WEEK =
      program("volume-per-week", "Volume a week", ZoneBudget.VOLUME_PER_WEEK);

  public static final Column PROGRAM_PEAK_MONTH =
      program("volume-peak-month", "Volume in the peak month", ZoneBudget.VOLUME_PEAK_MONTH);

  public static final Column PROGRAM_YEAR =
      program("volume-per-year", "Volume a year", ZoneBudget.VOLUME_PER_YEAR);

  public static final Column TOTAL_AREA =
      site("total-area", "Irrigated area", QuantityKind.AREA, Emitters.AREA);

  public static final Column SITE_WEEK =
      site("volume-per-week", "Volume a week", QuantityKind.VOLUME, ZoneBudget.VOLUME_PER_WEEK);

  public static final Column SITE_PEAK_MONTH =
      site(
          "volume-peak-month",
          "Volume in the peak month",
          QuantityKind.VOLUME,
          ZoneBudget.VOLUME_PEAK_MONTH);

  public static final Column SITE_YEAR =
      site("volume-per-year", "Volume a year", QuantityKind.VOLUME, ZoneBudget.VOLUME_PER_YEAR);

  public static final Column MEAN_COEFFICIENT =
      Column.calculated(
              SITE,
              "mean-coefficient",
              "Mean landscape coefficient",
              QuantityKind.FACTOR,
              Formula.when(TOTAL_AREA.cell().atMost(Formula.zero(QuantityKind.AREA)))
                  .then(Formula.doesNotApply("no area", "No zone has an area yet."))
                  .otherwise(
                      new Formula.Gather(Gathering.SUM, ZoneBudget.WEIGHTED_AREA.reference())
                          .over(TOTAL_AREA.cell())))
          .band(WATER)
          .means("Landscape coefficient of the site: the mean over its zones, by area.")
          .source("By definition.");

  private static final Formula PLAIN_PERCENT =
      Climate.DAILY_REFERENCE_ET.cell().over(Peak.REFERENCE_ET.cell());

  private static final Formula PERCENT_WITH_RAIN =
      Formula.larger(
              Formula.zero(QuantityKind.DAILY_DEPTH),
              Climate.DAILY_REFERENCE_ET
                  .cell()
                  .times(MEAN_COEFFICIENT.cell())
                  .minus(Rain.DAILY_EFFECTIVE.cell()))
          .over(
              Peak.REFERENCE_ET
                  .cell()
                  .times(MEAN_COEFFICIENT.cell())
                  .minus(Peak.EFFECTIVE_RAIN.cell()));

  public static final Column PERCENT =
      Column.calculated(
              MONTHS,
              "percent",
              "Percent of the baseline",
              QuantityKind.SHARE,
              Formula.when(new Condition.WordIs(Rain.METHOD.reference(), List.of(Rain.NONE)))
                  .then(PLAIN_PERCENT)
                  .otherwise(PERCENT_WITH_RAIN))
          .band(WATER)
          .means(
              "What the month asks of the baseline, from the climate and the mean landscape coefficient alone. A weather-based"
                  + " controller should come near it once it is left to itself.")
          .source(
              "Reference ET of the month over that of the peak month: Washington State University Extension (Grant County), Monthly"
                  + " Sprinkler Runtime Adjustment (verified). Where rain counts: net demand over that of the peak month, at the site's"
                  + " mean landscape coefficient (derived).");

  public static final Column PEAK_DAYS_WORTH =
      Column.calculated(
              MONTHS,
              "peak-days-worth",
              "Peak days' worth",
              QuantityKind.DAYS,
              Climate.DAYS.cell().times(PERCENT.cell()))
          .band(WATER)
          .decimals(1, 1)
          .means("How many days at 100 percent the month's water comes to.")
          .source("By definition.");

  public static final Column MONTH_VOLUME =
      Column.calculated(
              MONTHS,
              "volume",
              "Site volume",
              QuantityKind.VOLUME,
              new Formula.Nth(
                  Climate.NUMBER.cell(),
                  VolumeNames.months().stream()
                      .<Formula>map(volume -> new Formula.Gather(Gathering.SUM, volume))
                      .toList()))
          .band(WATER)
          .means(
              "Water of the whole site in the month when the baseline of each zone is scaled by its own percent.")
          .source("Sum over the zones of the sheet Monthly.");

  public static final Column PERCENT_BY_VOLUME =
      Column.calculated(
              MONTHS,
              "percent-by-volume",
              "Percent by volume",
              QuantityKind.SHARE,
              Formula.when(SITE_WEEK.cell().atMost(Formula.zero(QuantityKind.VOLUME)))
                  .then(Formula.doesNotApply("no water", "No zone takes water yet."))
                  .otherwise(
                      MONTH_VOLUME
                          .cell()
                          .over(
                              SITE_WEEK
                                  .cell()
                                  .over(Formula.amount(7, Units.DAY))
                                  .times(Climate.DAYS.cell()))))
          .band(WATER)
          .means(
              "What the month asks of the baseline of the whole site: the percents of the zones, weighted by the water each takes."
                  + " Where rain counts or a zone has coefficients by month this, not the percent from the climate alone, is what one"
                  + " setting for all should come near.")
          .source("By definition.");

  private static Formula sumOver(Reference column) {
    return Matching.rows(ZONE_PROGRAM.reference(), PROGRAM.reference()).sum(column);
  }

  private static Column program(String id, String name, Column zone) {
    return Column.calculated(PROGRAMS, id, name, QuantityKind.VOLUME, sumOver(zone.reference()))
        .band(WATER)
        .means("Sum over the zones of the program: " + name.toLowerCase(Locale.ROOT) + ".")
        .source("By definition.");
  }

  private static Column site(String id, String name, QuantityKind kind, Column zone) {
    return Column.calculated(
            SITE, id, name, kind, new Formula.Gather(Gathering.SUM, zone.reference()))
        .band(WATER)
        .means("Sum over all zones: " + zone.name().toLowerCase(Locale.ROOT) + ".")
        .source("By definition.");
  }

  private SiteBudget() {}
}
