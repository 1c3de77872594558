package zonewright.budget;

import static zonewright.trade.Sheets.MONTHS;
import static zonewright.trade.Sheets.PROGRAMS;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.WATER;
import static zonewright.trade.Sheets.ZONE;
import static zonewright.trade.Sheets.ZONES;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.climate.Rain;
import zonewright.emitters.Emitters;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.Units;
import zonewright.water.Controller;
import zonewright.water.CycleAndSoak;

/** Columns of the water of the site, of its programs and of the months. */
public final class SiteBudget {
  public static final Column PROGRAM =
      Column.words(PROGRAMS, "program", "Program")
          .band(ZONE)
          .means("Letter or name of a program of the controller.")
          .build();

  public static final Column ZONE_PROGRAM =
      Column.choice(ZONES, "program", "Program", new WordList.RowsOf(PROGRAMS))
          .band(ZONE)
          .optional()
          .means("The controller program that runs the zone.")
          .build();

  public static final Column PROGRAM_MINUTES =
      Column.calculated(
              PROGRAMS,
              "minutes",
              "Minutes a watering day",
              QuantityKind.MINUTES,
              sumOver(CycleAndSoak.MINUTES_GIVEN.reference()))
          .band(WATER)
          .means("Minutes of all its zones, were all watered on the same day, one after another.")
          .source("By definition; soaks and gaps are not in it.")
          .build();

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
              Formula.when(TOTAL_AREA.atMost(Formula.zero(QuantityKind.AREA)))
                  .then(Formula.doesNotApply("no area", "No zone has an area yet."))
                  .otherwise(ZoneBudget.WEIGHTED_AREA.sum().over(TOTAL_AREA)))
          .band(WATER)
          .means("Landscape coefficient of the site: the mean over its zones, by area.")
          .source("By definition.")
          .build();

  private static final Formula PLAIN_PERCENT = Climate.DAILY_REFERENCE_ET.over(Peak.REFERENCE_ET);

  private static final Formula PERCENT_WITH_RAIN =
      Formula.when(SiteNeed.PEAK.atMost(Formula.zero(QuantityKind.DAILY_DEPTH)))
          .then(
              Formula.doesNotApply(
                  "no need", "Rain covers what the plants need in the peak month."))
          .otherwise(SiteNeed.NEED.over(SiteNeed.PEAK));

  public static final Column PERCENT =
      Column.calculated(
              MONTHS,
              "percent",
              "Percent of the baseline",
              QuantityKind.SHARE,
              Formula.when(Rain.COUNTS).then(PERCENT_WITH_RAIN).otherwise(PLAIN_PERCENT))
          .band(WATER)
          .means(
              "What the month asks of the baseline: from the climate alone, or where rain counts from what the plants of the site need beside"
                  + " it. A weather-based controller should come near it once it is left to itself.")
          .source(
              "Reference ET of the month over that of the peak month: Washington State University Extension (Grant County), Monthly"
                  + " Sprinkler Runtime Adjustment (verified). Where rain counts: need of the month over that of the peak month (derived).")
          .build();

  public static final Column PEAK_DAYS_WORTH =
      Column.calculated(
              MONTHS,
              "peak-days-worth",
              "Peak days' worth",
              QuantityKind.DAYS,
              Climate.DAYS.times(PERCENT))
          .band(WATER)
          .decimals(1, 1)
          .means("How many days at 100 percent the month's water comes to.")
          .source("By definition.")
          .build();

  public static final Column MONTH_VOLUME =
      Column.calculated(
              MONTHS,
              "volume",
              "Site volume",
              QuantityKind.VOLUME,
              VolumeNames.ofAllZones(Climate.NUMBER, UnaryOperator.identity()))
          .band(WATER)
          .means(
              "Water of the whole site in the month when the baseline of each zone is scaled by its own percent.")
          .source("Sum over the zones of the sheet Monthly.")
          .build();

  public static final Column PERCENT_BY_VOLUME =
      Column.calculated(
              MONTHS,
              "percent-by-volume",
              "Percent by volume",
              QuantityKind.SHARE,
              Formula.when(SITE_WEEK.atMost(Formula.zero(QuantityKind.VOLUME)))
                  .then(Formula.doesNotApply("no water", "No zone takes water yet."))
                  .otherwise(
                      MONTH_VOLUME.over(
                          SITE_WEEK.over(Formula.amount(7, Units.DAY)).times(Climate.DAYS))))
          .band(WATER)
          .means(
              "What the month asks of the baseline of the whole site: the percents of the zones, weighted by the water each takes."
                  + " Where rain counts or a zone has coefficients by month this, not the percent from the climate alone, is what one"
                  + " setting for all should come near.")
          .source("By definition.")
          .build();

  public static final Column PERCENT_TO_KEY_IN =
      Column.calculated(
              MONTHS,
              "percent-to-key-in",
              "Percent to key in",
              QuantityKind.SHARE,
              PERCENT_BY_VOLUME
                  .over(Controller.PERCENT_STEP)
                  .roundedUpTo(Units.ONE)
                  .times(Controller.PERCENT_STEP))
          .band(WATER)
          .means(
              "What the percent of the controller is set to in the month, where no sensor sets it: the percent by volume, rounded up to its step.")
          .source("By definition.")
          .build();

  /** Months that ask for more than the peak month does. */
  public static final Rule ABOVE_PEAK =
      new Rule(
              "month-above-peak",
              Severity.CHECK,
              MONTHS,
              PERCENT.above(1),
              PERCENT,
              "asks {0} of the baseline, which is made for {1}",
              "choose the peak month by need of the plants",
              List.of(PERCENT, Peak.MONTH))
          .curedBy("Choose the peak month by need", SiteBudget::byNeed);

  /** Months that take more water than the peak month, though they need no more. */
  public static final Rule ABOVE_PEAK_BY_VOLUME =
      new Rule(
          "month-above-peak-by-volume",
          Severity.CHECK,
          MONTHS,
          PERCENT_BY_VOLUME.above(1.005).and(PERCENT.atMost(1)),
          PERCENT_BY_VOLUME,
          "takes {0} of the water of the baseline, which is made for {1}",
          "where coefficients are typed by month, give the zones those of the peak month",
          List.of(PERCENT_BY_VOLUME, Peak.MONTH));

  private static Formula sumOver(Reference column) {
    return Matching.rows(ZONE_PROGRAM, PROGRAM).sum(column);
  }

  private static Column program(String id, String name, Column zone) {
    return Column.calculated(PROGRAMS, id, name, QuantityKind.VOLUME, sumOver(zone.reference()))
        .band(WATER)
        .means("Sum over the zones of the program: " + name.toLowerCase(Locale.ROOT) + ".")
        .source("By definition.")
        .build();
  }

  private static Column site(String id, String name, QuantityKind kind, Column zone) {
    return Column.calculated(SITE, id, name, kind, zone.sum())
        .band(WATER)
        .means("Sum over all zones: " + zone.name().toLowerCase(Locale.ROOT) + ".")
        .source("By definition.")
        .build();
  }

  private static Optional<Edit> byNeed(Book book, Reference cell, int row) {
    Edit edit = new Edits(book).set(Peak.CHOICE.reference(), 0, new Entry.Words(Peak.BY_NEED));
    return edit.changesNothing() ? Optional.empty() : Optional.of(edit);
  }

  private SiteBudget() {}
}
