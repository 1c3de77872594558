package zonewright.uncertainty;

import static zonewright.trade.Sheets.ZONES;

import java.util.Map;
import zonewright.budget.LocalRule;
import zonewright.budget.ZoneBudget;
import zonewright.emitters.Emitters;
import zonewright.formula.Formula;
import zonewright.sheet.Column;
import zonewright.soil.Soils;
import zonewright.units.QuantityKind;
import zonewright.units.Units;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;

/**
 * Columns that stand only in the designs tried. What answers in steps follow smoothly: an input
 * that makes no step by itself still moves this, and several such inputs together can make one.
 */
final class Drift {
  private static final Formula EXCESS = Emitters.WETTED_RATE.minus(Soils.INTAKE_RATE);

  /** How often the soil is used up: watering days go up with it. */
  static final Column PACE =
      Column.calculated(
              ZONES,
              "tried-pace",
              "Pace",
              QuantityKind.FACTOR,
              Demand.NET_DEMAND.over(Demand.DEPLETION_DEPTH).times(Formula.amount(1, Units.DAY)))
          .build();

  /** How much of a run stands on the ground: cycles go up with it. */
  static final Column LOAD =
      Column.calculated(
              ZONES,
              "tried-load",
              "Load",
              QuantityKind.FACTOR,
              EXCESS.times(Demand.RUN_TIME_PER_WEEK).over(Soils.SURFACE_STORAGE))
          .build();

  private static final Column SOAKING =
      Column.calculated(
              ZONES,
              "tried-soaking",
              "Soaking",
              QuantityKind.MINUTES,
              EXCESS.times(Demand.RUN_TIME_PER_WEEK).over(Soils.INTAKE_RATE))
          .build();

  /** How many weeks of the peak month a year comes to. */
  static final Column WEEKS =
      Column.calculated(
              ZONES,
              "tried-weeks",
              "Weeks",
              QuantityKind.FACTOR,
              ZoneBudget.VOLUME_PER_YEAR.over(ZoneBudget.VOLUME_PER_WEEK))
          .build();

  /** What each answer in steps follows while nothing else takes a step. */
  static final Map<Column, Column> OF =
      Map.of(
          Demand.WATERINGS_A_WEEK, PACE,
          CycleAndSoak.CYCLES, LOAD,
          CycleAndSoak.SOAK, SOAKING,
          CycleAndSoak.MINUTES_GIVEN, Demand.RUN_TIME_PER_WEEK,
          ZoneBudget.VOLUME_PER_WEEK, Demand.RUN_TIME_PER_WEEK,
          ZoneBudget.VOLUME_PER_YEAR, Demand.RUN_TIME_PER_WEEK,
          LocalRule.ABOVE_SHARE, Demand.RUN_TIME_PER_WEEK);

  private Drift() {}
}
