package zonewright.budget;

import static zonewright.trade.Sheets.MONTHS;
import static zonewright.trade.Sheets.PROGRAMS;
import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.WATER;
import static zonewright.trade.Sheets.ZONE;
import static zonewright.trade.Sheets.ZONES;

import zonewright.climate.Climate;
import zonewright.emitters.Emitters;
import zonewright.formula.Formula;
import zonewright.formula.Gathering;
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

  public static final Column PERCENT =
      Column.calculated(
              MONTHS,
              "percent",
              "Percent of the baseline",
              QuantityKind.SHARE,
              Climate.DAILY_REFERENCE_ET.cell().over(Climate.PEAK_REFERENCE_ET.cell()))
          .band(WATER)
          .means(
              "What the month asks of the baseline. A weather-based controller should come near it once it is left to itself.")
          .source(
              "Washington State University Extension (Grant County), Monthly Sprinkler Runtime Adjustment (verified).");

  public static final Column MONTH_VOLUME =
      Column.calculated(
              MONTHS,
              "volume",
              "Site volume",
              QuantityKind.VOLUME,
              SITE_WEEK
                  .cell()
                  .over(Formula.amount(7, Units.DAY))
                  .times(Climate.DAYS.cell())
                  .times(PERCENT.cell()))
          .band(WATER)
          .means("Water of the whole site in the month when the baseline is scaled by its percent.")
          .source("By definition; no rain is counted.");

  private static Formula sumOver(Reference column) {
    return new Formula.SumWhere(column, ZONE_PROGRAM.reference(), PROGRAM.reference());
  }

  private static Column program(String id, String name, Column zone) {
    return Column.calculated(PROGRAMS, id, name, QuantityKind.VOLUME, sumOver(zone.reference()))
        .band(WATER)
        .means(
            "Sum over the zones of the program: " + name.toLowerCase(java.util.Locale.ROOT) + ".")
        .source("By definition.");
  }

  private static Column site(String id, String name, QuantityKind kind, Column zone) {
    return Column.calculated(
            SITE, id, name, kind, new Formula.Gather(Gathering.SUM, zone.reference()))
        .band(WATER)
        .means("Sum over all zones: " + zone.name().toLowerCase(java.util.Locale.ROOT) + ".")
        .source("By definition.");
  }

  private SiteBudget() {}
}
