package zonewright.budget;

import static zonewright.trade.Sheets.MONTHLY;

import java.util.List;
import zonewright.climate.Climate;
import zonewright.formula.Formula;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;
import zonewright.water.MonthlySchedule;

/** Columns of the water each zone takes month by month, from one declaration. */
public final class MonthlyVolume {
  /** Volumes, January first. */
  public static final List<Column> VOLUMES =
      MonthlySchedule.each(
          month ->
              Column.calculated(
                      MONTHLY,
                      VolumeNames.month(month).column(),
                      VolumeNames.month(month).name(),
                      QuantityKind.VOLUME,
                      ZoneBudget.VOLUME_PER_WEEK
                          .over(Formula.amount(7, Units.DAY))
                          .times(Climate.DAYS.inRow(month))
                          .times(MonthlySchedule.PERCENTS.get(month - 1)))
                  .band("Volume")
                  .means(
                      MonthlySchedule.said(
                          "Water the zone takes%s when its baseline is scaled by its percent of the month.",
                          month))
                  .source("By definition.")
                  .build());

  public static final Column OF_THE_MONTH =
      Column.calculated(
              MONTHLY,
              "volume",
              "Volume",
              QuantityKind.VOLUME,
              Formula.nth(MonthlySchedule.MONTH_NUMBER, VOLUMES))
          .band(MonthlySchedule.PERCENT.band())
          .means("Water the zone takes in the month shown.")
          .source("The volume of that month.")
          .build();

  /** Water of the year; the zones show it too. */
  public static final Column YEAR =
      Column.calculated(
              MONTHLY,
              VolumeNames.year().column(),
              VolumeNames.year().name(),
              QuantityKind.VOLUME,
              VolumeNames.months().stream()
                  .<Formula>map(Formula.Cell::new)
                  .reduce(Formula::plus)
                  .orElseThrow())
          .band("Volume")
          .means("Water of the twelve months.")
          .source("By definition.")
          .build();

  private MonthlyVolume() {}
}
