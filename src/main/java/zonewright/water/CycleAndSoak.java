package zonewright.water;

import static zonewright.trade.Sheets.SCHEDULE;
import static zonewright.trade.Sheets.WATER;
import static zonewright.trade.Sheets.ZONES;

import zonewright.emitters.Emitters;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Term;
import zonewright.sheet.Column;
import zonewright.soil.Soils;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns that split a run so that no water runs off. */
public final class CycleAndSoak {
  private static final Formula EXCESS = Emitters.WETTED_RATE.minus(Soils.INTAKE_RATE);

  private static final Condition TAKEN_IN_AT_ONCE = Emitters.WETTED_RATE.atMost(Soils.INTAKE_RATE);

  public static final Column LONGEST_CYCLE =
      Column.calculated(
              ZONES,
              "longest-cycle",
              "Longest cycle",
              QuantityKind.MINUTES,
              Formula.when(TAKEN_IN_AT_ONCE)
                  .then(
                      Formula.doesNotApply(
                          "no limit",
                          "The soil takes water in as fast as it comes, so none ever stands."))
                  .otherwise(Controller.roundedDown(Soils.SURFACE_STORAGE.over(EXCESS))))
          .band(SCHEDULE)
          .means(
              "Minutes the valve may run before water runs off, rounded down to the controller's step; judged by the rate where the water falls: of drip lines, on the wetted"
                  + " strip.")
          .source(
              "Surface storage ÷ (rate on wetted ground − intake rate), only where the rate is the greater: verified (secondary) in a"
                  + " public university exercise with the same variables.")
          .build();

  /**
   * Both schedules of a zone rest on it, so that what no cycle is short enough for is told once.
   */
  public static final Column MOST_MINUTES =
      Column.calculated(
              ZONES,
              "most-minutes-a-cycle",
              "Most minutes a cycle",
              QuantityKind.MINUTES,
              Formula.when(TAKEN_IN_AT_ONCE)
                  .then(Controller.LONGEST_RUN_KEYED)
                  .otherwise(
                      Formula.when(LONGEST_CYCLE.below(Controller.MINUTE_STEP))
                          .then(
                              Formula.refused(
                                  "runs off",
                                  "water runs off before the shortest run that can be keyed in is over; use emitters with a lower precipitation rate"))
                          .otherwise(Formula.smaller(LONGEST_CYCLE, Controller.LONGEST_RUN_KEYED))))
          .band(SCHEDULE)
          .means(
              "The most minutes of one cycle: the longest cycle, or the controller's longest run where that is shorter.")
          .source("The shorter of the two: by definition.")
          .build();

  public static final Column CYCLES =
      Column.calculated(ZONES, "cycles", "Cycles", QuantityKind.COUNT, cyclesOf(Demand.RUN_TIME))
          .band(SCHEDULE)
          .means("In how many parts the run of a watering day is given.")
          .source("Run time ÷ most minutes a cycle, rounded up: general practice, from memory.")
          .build();

  public static final Column CYCLE_MINUTES =
      Column.calculated(
              ZONES,
              "cycle-minutes",
              "Minutes a cycle",
              QuantityKind.MINUTES,
              minutesOf(Demand.RUN_TIME, CYCLES))
          .band(SCHEDULE)
          .means(
              "Minutes of each cycle; together never less than the run time, each never longer than the longest cycle.")
          .source("Run time ÷ cycles, rounded up to the controller's step.")
          .build();

  public static final Column SOAK =
      Column.calculated(
              ZONES,
              "soak",
              "Shortest soak",
              QuantityKind.MINUTES,
              soakAfter(CYCLES, CYCLE_MINUTES))
          .band(SCHEDULE)
          .means(
              "Shortest pause after a cycle, until what stands on the surface has gone in. The 30 to 60 minutes of common practice"
                  + " are often less than this.")
          .source(
              "(Rate on wetted ground − intake rate) × cycle ÷ intake rate, rounded up: derived from the definition. Common practice:"
                  + " Texas A&M Water University, Irrigation Cycle and Soak, 30 to 60 min (verified).")
          .build();

  public static final Column MINUTES_GIVEN =
      Column.calculated(
              ZONES,
              "minutes-given",
              "Minutes given",
              QuantityKind.MINUTES,
              Formula.when(Controller.KEEPS_SOAKS)
                  .then(Demand.RUN_TIME)
                  .otherwise(CYCLES.times(CYCLE_MINUTES)))
          .band(WATER)
          .means(
              "Minutes the valve really runs on a watering day: cycles times minutes a cycle; the run time itself where the controller keeps the cycles"
                  + " and makes the last one shorter.")
          .source("By definition.")
          .build();

  public static final Column EXCESS_OF_ROUNDING =
      Column.calculated(
              ZONES,
              "rounding-excess",
              "Rounded up by",
              QuantityKind.MINUTES,
              MINUTES_GIVEN.times(Demand.WATERINGS_A_WEEK).minus(Demand.RUN_TIME_PER_WEEK))
          .band(WATER)
          .decimals(1, 1)
          .means(
              "Minutes a week that are given beyond what is asked for, because cycles are alike and minutes go in steps.")
          .source("Minutes given × waterings a week − run time a week.")
          .build();

  public static final Column APPLIED =
      Column.calculated(
              ZONES,
              "applied-depth",
              "Depth a watering day",
              QuantityKind.DEPTH,
              MINUTES_GIVEN.times(Emitters.PRECIPITATION_RATE))
          .band(SCHEDULE)
          .means("Mean depth that all cycles of a watering day lay down.")
          .source("Time × rate: by definition.")
          .build();

  /** Returns in how many cycles a run of a watering day is given, at least one. */
  static Formula cyclesOf(Term run) {
    return Formula.larger(Formula.number(1), run.over(MOST_MINUTES).roundedUpTo(Units.ONE));
  }

  /** Returns the minutes of each of several like cycles. */
  static Formula minutesOf(Term run, Term cycles) {
    return Controller.roundedUp(run.over(cycles));
  }

  /** Returns the shortest pause after one of several cycles. */
  static Formula soakAfter(Term cycles, Term minutes) {
    return Formula.when(cycles.atMost(1))
        .then(Formula.doesNotApply("none", "One cycle needs no soak."))
        .otherwise(
            Formula.larger(
                Formula.zero(QuantityKind.MINUTES),
                EXCESS.times(minutes).over(Soils.INTAKE_RATE).roundedUpTo(Units.MINUTE)));
  }

  private CycleAndSoak() {}
}
