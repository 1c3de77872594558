package zonewright.budget;

import static zonewright.trade.Sheets.MONTHLY;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import zonewright.climate.Climate;
import zonewright.formula.Formula;
import zonewright.formula.Gathering;
import zonewright.formula.Reference;
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
                      volume(month).column(),
                      volume(month).name(),
                      QuantityKind.VOLUME,
                      ZoneBudget.VOLUME_PER_WEEK
                          .cell()
                          .over(Formula.amount(7, Units.DAY))
                          .times(new Formula.Pick(Climate.DAYS.reference(), Formula.number(month)))
                          .times(MonthlySchedule.PERCENTS.get(month - 1).cell()))
                  .band("Volume")
                  .means(
                      MonthlySchedule.said(
                          "Water the zone takes%s when its baseline is scaled by its percent of the month.",
                          month))
                  .source("By definition."));

  /** Returns the name of the volume in a month; the zones add theirs up by it. */
  static Reference volume(int month) {
    return new Reference(
        MONTHLY,
        MonthlySchedule.id("volume", month),
        MonthlySchedule.name("Volume", month),
        QuantityKind.VOLUME);
  }

  /** Water of the year; the zones show it too. */
  public static final Column YEAR =
      Column.calculated(
              MONTHLY,
              year().column(),
              year().name(),
              QuantityKind.VOLUME,
              volumes().stream()
                  .<Formula>map(Formula.Cell::new)
                  .reduce(Formula::plus)
                  .orElseThrow())
          .band("Volume")
          .means("Water of the twelve months.")
          .source("By definition.");

  /** Returns the name of the volume of the year. */
  static Reference year() {
    return new Reference(MONTHLY, "volume-year", "Volume a year", QuantityKind.VOLUME);
  }

  /** Returns the names of all twelve. */
  static List<Reference> volumes() {
    return IntStream.rangeClosed(1, Climate.MONTH_NAMES.size())
        .mapToObj(MonthlyVolume::volume)
        .toList();
  }

  /**
   * Returns the water that all zones of a table take in a month, so that zones as found and as
   * proposed are added up alike.
   *
   * @param month the number of the month
   * @param there the column of the table that stands for one of these
   */
  public static Formula ofAllZones(Formula month, UnaryOperator<Reference> there) {
    return new Formula.Nth(
        month,
        volumes().stream()
            .<Formula>map(volume -> new Formula.Gather(Gathering.SUM, there.apply(volume)))
            .toList());
  }

  private MonthlyVolume() {}
}
