package zonewright.pipes;

import static zonewright.trade.Sheets.ALL_ZONES;
import static zonewright.trade.Sheets.FLOW;
import static zonewright.trade.Sheets.PIPES;
import static zonewright.trade.Sheets.SUPPLY;

import java.util.List;
import zonewright.emitters.Emitters;
import zonewright.formula.Aggregation;
import zonewright.formula.Comparator;
import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.formula.Matching;
import zonewright.formula.Term;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/**
 * Columns of the flows of valves that run together. The sum of the largest few flows is the least,
 * over all flows t, of that many times t and what other flows have above t.
 */
public final class Together {
  private static final String MEANING =
      "The sum of the largest few of many numbers is the least, over all of them, of that many times one and what others exceed it by.";

  private static final Formula NOTHING = Formula.zero(QuantityKind.FLOW);

  private static final Column COUNTED =
      column(
          "flow-counted",
          "Flow counted",
          Formula.when(known()).then(Valves.VALVE_FLOW).otherwise(NOTHING),
          "Flow of the valve; a zone whose emitters are not typed yet adds nothing.",
          "By definition.");

  private static final Matching MORE = Matching.rowsWith(COUNTED, Comparator.ABOVE, COUNTED);

  private static final Column EXCEEDED =
      column(
          "flow-exceeded",
          "What others draw beyond it",
          MORE.sum(COUNTED).minus(MORE.count().times(COUNTED)),
          "What the valves that draw more draw beyond this one's flow, all added up.",
          "By definition.");

  private static final Column AT_ONCE =
      column(
          "flow-bound-at-once",
          "Bound for all valves at once",
          EXCEEDED.plus(PipeLimits.VALVES_AT_ONCE.times(COUNTED)),
          "No set of as many valves as may run at once draws more.",
          MEANING);

  private static final Column BESIDE =
      column(
          "flow-bound-beside",
          "Bound for the valves beside one",
          EXCEEDED.plus(PipeLimits.VALVES_AT_ONCE.minus(1).times(COUNTED)),
          "No set of valves that may run beside one draws more.",
          MEANING);

  public static final Column LARGEST_AT_ONCE =
      total(
          "largest-at-once",
          "Largest flows at once",
          AT_ONCE,
          "The flows of those that draw most, as many as may run at once, added up; not limited by what the supply gives.");

  public static final Column LARGEST_BESIDE =
      total(
          "largest-beside",
          "Largest flows beside one",
          BESIDE,
          "The flows of those that draw most, one fewer than may run at once, added up.");

  public static final Column MAIN_FLOW =
      Column.defaulted(
              PIPES,
              "main-flow",
              "Flow in the main at once",
              QuantityKind.FLOW,
              Formula.when(PipeLimits.VALVES_AT_ONCE.atMost(1))
                  .then(Valves.VALVE_FLOW)
                  .otherwise(withOthers()))
          .band(FLOW)
          .within(Bounds.above(0, 5000, Units.GALLON_PER_MINUTE))
          .decimals(2, 1)
          .means(
              "The most that flows in the main to this zone at one time: its own flow and the largest that may run beside it, as many"
                  + " as may run at once, and no more than the supply gives. Type over it what your timetable really lets run together.")
          .source("By definition: an upper bound of whatever the timetable lets run together.")
          .build();

  private Together() {}

  private static Condition known() {
    return Valves.VALVE_FLOW
        .given()
        .or(
            Emitters.EMITTER_COUNT
                .given()
                .and(Emitters.EMITTER_FLOW.given().or(Emitters.ZONE_FLOW.given())));
  }

  private static Column column(String id, String name, Term formula, String means, String source) {
    return Column.calculated(PIPES, id, name, QuantityKind.FLOW, formula)
        .band(FLOW)
        .decimals(2, 1)
        .means(means)
        .source(source)
        .build();
  }

  private static Column total(String id, String name, Column bound, String means) {
    Formula sum = COUNTED.sum();
    return Column.calculated(
            SUPPLY,
            id,
            name,
            QuantityKind.FLOW,
            Formula.when(sum.atMost(NOTHING))
                .then(NOTHING)
                .otherwise(Formula.smaller(sum, bound.gathered(Aggregation.SMALLEST))))
        .band(ALL_ZONES)
        .decimals(1, 1)
        .means(means)
        .source(MEANING)
        .build();
  }

  /** No more than the supply gives, unless the zone alone draws more. */
  private static Formula withOthers() {
    Column own = Valves.VALVE_FLOW;
    Formula planned = Formula.smaller(LARGEST_AT_ONCE, own.plus(LARGEST_BESIDE));
    return Formula.larger(own, Formula.smaller(Supply.AVAILABLE_FLOW, planned));
  }

  static List<Column> ofZones() {
    return List.of(COUNTED, EXCEEDED, AT_ONCE, BESIDE, MAIN_FLOW);
  }
}
