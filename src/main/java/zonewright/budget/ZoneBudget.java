package zonewright.budget;

import static zonewright.trade.Sheets.WATER;
import static zonewright.trade.Sheets.ZONES;

import zonewright.climate.Peak;
import zonewright.emitters.Emitters;
import zonewright.formula.Formula;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;

/** Columns of the water a zone takes at 100 percent. */
public final class ZoneBudget {
  private static final Formula WEEK = Formula.amount(7, Units.DAY);

  public static final Column WEIGHTED_AREA =
      Column.calculated(
              ZONES,
              "weighted-area",
              "Coefficient × area",
              QuantityKind.AREA,
              Plants.LANDSCAPE_COEFFICIENT.times(Emitters.AREA))
          .band(WATER)
          .means("The area of reference grass that would use as much water as the zone needs.")
          .source("By definition.")
          .build();

  public static final Column VOLUME_PER_WATERING_DAY =
      Column.calculated(
              ZONES,
              "volume-per-watering-day",
              "Volume a watering day",
              QuantityKind.VOLUME,
              Emitters.ZONE_FLOW.times(CycleAndSoak.MINUTES_GIVEN))
          .band(WATER)
          .means("Water of one watering day at 100 percent.")
          .source("Flow × time.")
          .build();

  public static final Column VOLUME_PER_WEEK =
      Column.calculated(
              ZONES,
              "volume-per-week",
              "Volume a week",
              QuantityKind.VOLUME,
              VOLUME_PER_WATERING_DAY.times(Demand.WATERINGS_A_WEEK))
          .band(WATER)
          .means("Water of a week of the peak month at 100 percent.")
          .source("By definition.")
          .build();

  public static final Column VOLUME_PEAK_MONTH =
      Column.calculated(
              ZONES,
              "volume-peak-month",
              "Volume in the peak month",
              QuantityKind.VOLUME,
              VOLUME_PER_WEEK
                  .times(Peak.DAYS)
                  .over(WEEK)
                  .times(Demand.partOfBaseline(Demand.PEAK_NEED)))
          .band(WATER)
          .means("Water of the site's whole peak month: the zone's share of the baseline budget.")
          .source(
              "A week's volume for each 7 days of the month, at the part of the baseline that the zone needs then.")
          .build();

  public static final Column VOLUME_PER_YEAR =
      Column.calculated(
              ZONES, "volume-per-year", "Volume a year", QuantityKind.VOLUME, VolumeNames.year())
          .band(WATER)
          .means(
              "Water of a year when the zone's baseline is scaled each month by its percent of that month.")
          .source("Sum of the twelve months of the sheet Monthly.")
          .build();

  public static final Column SHARE =
      Column.calculated(
              ZONES,
              "share",
              "Share of the site",
              QuantityKind.SHARE,
              VOLUME_PER_WEEK.over(VOLUME_PER_WEEK.sum()))
          .band(WATER)
          .decimals(1, 1)
          .means("The zone's part of the site's water.")
          .source("By definition.")
          .build();

  private ZoneBudget() {}
}
