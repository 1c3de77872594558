package zonewright.pipes;

import static zonewright.trade.Sheets.FLOW;
import static zonewright.trade.Sheets.PIPES;

import zonewright.emitters.Emitters;
import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** Columns of how many valves a zone takes and what each carries. */
public final class Valves {
  public static final Column ZONE =
      Column.words(PIPES, "zone", "Zone")
          .band(FLOW)
          .means("The zone, as on the sheet Zones.")
          .build();

  public static final Column FLOW_A_HEAD =
      Column.calculated(
              PIPES,
              "flow-per-head",
              "Flow of a head",
              QuantityKind.FLOW,
              Emitters.ZONE_FLOW.over(Emitters.EMITTER_COUNT))
          .band(FLOW)
          .decimals(3, 3)
          .means("Mean flow of one emitter of the zone.")
          .source("By definition.")
          .build();

  public static final Column MOST_HEADS =
      Column.calculated(
              PIPES,
              "most-heads",
              "Heads at most on a valve",
              QuantityKind.COUNT,
              Supply.AVAILABLE_FLOW.over(FLOW_A_HEAD).roundedDownTo(Units.ONE))
          .band(FLOW)
          .means("How many emitters the available flow can feed.")
          .source("By definition, whole heads.")
          .build();

  public static final Column VALVES_NEEDED =
      Column.calculated(
              PIPES,
              "valves-needed",
              "Valves needed",
              QuantityKind.COUNT,
              Formula.when(MOST_HEADS.below(1))
                  .then(
                      Formula.refused(
                          "no head",
                          "a single head draws more than the available flow; choose smaller heads or a larger supply"))
                  .otherwise(Emitters.EMITTER_COUNT.over(MOST_HEADS).roundedUpTo(Units.ONE)))
          .band(FLOW)
          .means(
              "How many valves the zone takes so that none draws more than the available flow. More than one: split the zone, so"
                  + " that every valve is a row of its own.")
          .source("By definition, whole heads on whole valves.")
          .build();

  public static final Column HEADS =
      Column.calculated(
              PIPES,
              "heads",
              "Heads on a valve",
              QuantityKind.COUNT,
              Emitters.EMITTER_COUNT.over(VALVES_NEEDED).roundedUpTo(Units.ONE))
          .band(FLOW)
          .means("Heads on the fullest valve when they are spread evenly.")
          .source("By definition.")
          .build();

  public static final Column VALVE_FLOW =
      Column.defaulted(
              PIPES, "valve-flow", "Flow of a valve", QuantityKind.FLOW, HEADS.times(FLOW_A_HEAD))
          .band(FLOW)
          .within(Bounds.above(0, 5000, Units.GALLON_PER_MINUTE))
          .decimals(2, 1)
          .means("What the fullest valve of the zone draws. All that follows is for this valve.")
          .source("By definition.")
          .build();

  private Valves() {}
}
