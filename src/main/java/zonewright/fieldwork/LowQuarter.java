package zonewright.fieldwork;

import static zonewright.formula.Formula.number;
import static zonewright.trade.Sheets.CANS;
import static zonewright.trade.Sheets.LOW_QUARTER;
import static zonewright.trade.Sheets.TESTS;

import java.util.List;
import zonewright.emitters.Emitters;
import zonewright.formula.Formula;
import zonewright.formula.Reference;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;
import zonewright.water.Demand;
import zonewright.water.DryingOut;

/**
 * Columns of a catch-can test that hold the driest places against what was applied: scheduling
 * coefficient and the efficiencies of the low quarter.
 */
public final class LowQuarter {
  private static final String MERRIAM_AND_KELLER =
      "Merriam and Keller, Farm Irrigation System Evaluation (1978), pages 41 to 44, as a public reference page gives the"
          + " definition (verified).";

  public static final Column DRIEST_COUNT =
      Column.calculated(
              TESTS,
              "driest-count",
              "Cans in the driest twentieth",
              QuantityKind.COUNT,
              Formula.larger(number(1), number(0.05).times(CatchTests.COUNT).roundedTo(Units.ONE)))
          .band(LOW_QUARTER)
          .means("The nearest whole number of cans to 5 % of them, at least one.")
          .source("As for the lowest quarter.")
          .build();

  public static final Column DRIEST_DEPTH =
      Column.calculated(
              TESTS,
              "driest-depth",
              "Depth in the driest twentieth",
              QuantityKind.DEPTH,
              CatchTests.ITS_CANS
                  .sum(new Reference(CANS, "driest-depth", "Driest depth", QuantityKind.DEPTH))
                  .over(DRIEST_COUNT))
          .band(LOW_QUARTER)
          .decimals(3, 2)
          .means("Mean depth in the driest cans.")
          .source("By definition.")
          .build();

  public static final Column SCHEDULING_COEFFICIENT =
      Column.calculated(
              TESTS,
              "scheduling-coefficient",
              "Scheduling coefficient",
              QuantityKind.FACTOR,
              Formula.when(DRIEST_DEPTH.above(Formula.zero(QuantityKind.DEPTH)))
                  .then(CatchTests.MEAN.over(DRIEST_DEPTH))
                  .otherwise(
                      Formula.doesNotApply(
                          "dry spot", "The driest cans caught nothing: no run time waters them.")))
          .band(LOW_QUARTER)
          .means(
              "How much longer the zone would have to run for its driest 5 % to get the mean. Up to 29 cans that is one can; of more,"
                  + " the driest are taken wherever they stand, while the definition wants them to touch: the figure is then too"
                  + " high rather than too low. Nothing here runs by it.")
          .source(
              "Mean ÷ mean of the driest area: California State University, Fresno, irrigation pages (verified); 5 % and touching,"
                  + " from memory.")
          .build();

  public static final Column APPLIED_RATE =
      Column.defaulted(
              TESTS,
              "applied-rate",
              "Rate applied",
              QuantityKind.RATE,
              Emitters.RATE_BY_AREA.inRowOf(CatchTests.ZONE))
          .band(LOW_QUARTER)
          .within(Bounds.above(0, 50, Units.INCH_PER_HOUR))
          .means(
              "What left the heads, spread over the area: more than the cans caught, by what wind and sun took. Follows from flow and"
                  + " area of the zone; type over it what the meter showed during the test.")
          .source("Rate by area of the zone, unless typed over.")
          .build();

  public static final Column LOW_QUARTER_RATE =
      Column.calculated(
              TESTS,
              "low-quarter-rate",
              "Low-quarter rate",
              QuantityKind.RATE,
              CatchTests.LOW_QUARTER.times(CatchTests.RATE))
          .band(LOW_QUARTER)
          .means("Depth an hour that the driest quarter got.")
          .source("By definition.")
          .build();

  public static final Column POTENTIAL =
      Column.calculated(
              TESTS,
              "potential-efficiency",
              "Potential efficiency of low quarter",
              QuantityKind.SHARE,
              LOW_QUARTER_RATE.over(APPLIED_RATE))
          .band(LOW_QUARTER)
          .decimals(1, 1)
          .means(
              "Potential application efficiency of the low quarter (PELQ): the best this zone can do, reached when the run just fills"
                  + " the driest quarter. Uniformity and what wind and sun take are both in it.")
          .source("Mean low-quarter rate ÷ rate applied: " + MERRIAM_AND_KELLER)
          .build();

  public static final Column RUN_TIME =
      Column.defaulted(
              TESTS,
              "irrigation-minutes",
              "Minutes of an irrigation",
              QuantityKind.MINUTES,
              Demand.RUN_TIME.inRowOf(CatchTests.ZONE))
          .band(LOW_QUARTER)
          .within(Bounds.above(0, 10_080, Units.MINUTE))
          .means("How long the zone runs on a watering day, for the efficiency of it.")
          .source("Run time of the zone, unless typed over.")
          .build();

  public static final Column DEFICIT =
      Column.defaulted(
              TESTS,
              "soil-deficit",
              "Soil deficit",
              QuantityKind.DEPTH,
              DryingOut.DEPTH.inRowOf(CatchTests.ZONE))
          .band(LOW_QUARTER)
          .within(Bounds.above(0, 120, Units.INCH))
          .means(
              "Depth of water the root zone lacks when the irrigation begins: what the zone uses up over its longest gap, or what a"
                  + " probe found.")
          .source("Depletion after the days without watering of the zone, unless typed over.")
          .build();

  public static final Column STORED =
      Column.calculated(
              TESTS,
              "low-quarter-stored",
              "Stored in the low quarter",
              QuantityKind.DEPTH,
              Formula.smaller(DEFICIT, LOW_QUARTER_RATE.times(RUN_TIME)))
          .band(LOW_QUARTER)
          .decimals(3, 1)
          .means("What the driest quarter gets and can hold; the rest drains below the roots.")
          .source("By definition.")
          .build();

  public static final Column ACTUAL =
      Column.calculated(
              TESTS,
              "low-quarter-efficiency",
              "Efficiency of low quarter",
              QuantityKind.SHARE,
              STORED.over(APPLIED_RATE.times(RUN_TIME)))
          .band(LOW_QUARTER)
          .decimals(1, 1)
          .means(
              "Application efficiency of the low quarter (AELQ) of an irrigation: what the driest quarter stores, as a part of what is"
                  + " applied. As high as the potential while the run does not overfill it, lower the longer it runs.")
          .source(
              "Mean depth stored in the low quarter ÷ mean depth applied: " + MERRIAM_AND_KELLER)
          .build();

  /** All columns in their usual order. */
  public static final List<Column> ALL =
      List.of(
          DRIEST_COUNT,
          DRIEST_DEPTH,
          SCHEDULING_COEFFICIENT,
          APPLIED_RATE,
          LOW_QUARTER_RATE,
          POTENTIAL,
          RUN_TIME,
          DEFICIT,
          STORED,
          ACTUAL);

  private LowQuarter() {}
}
