package zonewright.water;

import static zonewright.trade.Sheets.SITE;
import static zonewright.trade.Sheets.ZONES;

import java.util.ArrayList;
import java.util.List;
import zonewright.emitters.Emitters;
import zonewright.formula.Formula;
import zonewright.formula.Reference;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.soil.SoilLayers;
import zonewright.soil.Soils;
import zonewright.units.QuantityKind;
import zonewright.units.Units;

/** What to tell a designer about a schedule. */
public final class ScheduleRules {
  private static final Rule TOO_FEW_DAYS =
      new Rule(
              "too-few-days",
              Severity.CHECK,
              ZONES,
              Demand.LONGEST_GAP.above(Demand.LONGEST_INTERVAL),
              Demand.WATERING_DAYS,
              "goes {0} without water, its soil lasts {1}: watered on {2} days a week, it wants {3} evenly spread",
              "allow more days or better spread ones, or choose plants that root deeper or stand more depletion",
              List.of(
                  Demand.LONGEST_GAP,
                  Demand.LONGEST_INTERVAL,
                  Demand.WATERING_DAYS,
                  Demand.DAYS_NEEDED))
          .curedBy("Allow {3} watering days a week", ScheduleRemedies::allowDays);

  private static final Rule LESS_THAN_A_DAY =
      new Rule(
          "less-than-a-day",
          Severity.CHECK,
          ZONES,
          Demand.DEPLETION_DEPTH.below(Demand.NET_DEMAND.times(Formula.amount(1, Units.DAY))),
          Demand.LONGEST_INTERVAL,
          "uses more in a day ({0}) than its soil may give ({1}): even daily watering dries it too far",
          "check root depth and soil; such a zone wants more than one watering a day or plants that need less",
          List.of(Demand.NET_DEMAND, Demand.DEPLETION_DEPTH));

  private static final Rule TOO_MANY_CYCLES =
      new Rule(
              "too-many-cycles",
              Severity.CHECK,
              ZONES,
              CycleAndSoak.CYCLES.above(Controller.STARTS).and(Controller.STARTS_STATIONS),
              CycleAndSoak.CYCLES,
              "needs {0} cycles a day, the controller starts at most {1}",
              "water on more days, or use emitters with a lower precipitation rate than {2}; of drip lines, type the strip they wet",
              List.of(CycleAndSoak.CYCLES, Controller.STARTS, Emitters.PRECIPITATION_RATE))
          .curedBy("Water it on more days", ScheduleRemedies::moreDays);

  private static final Rule FLOW_TOO_GREAT =
      new Rule(
              "flow-too-great",
              Severity.CHECK,
              ZONES,
              Emitters.ZONE_FLOW.above(SiteRules.AVAILABLE_FLOW),
              Emitters.ZONE_FLOW,
              "draws {0}, the supply gives {1}",
              "split the zone over more valves",
              List.of(Emitters.ZONE_FLOW, SiteRules.AVAILABLE_FLOW))
          .curedBy("Split it over more valves", ScheduleRemedies::split);

  private static final Rule DRAINS_AWAY =
      new Rule(
          "drains-away",
          Severity.CHECK,
          ZONES,
          CycleAndSoak.APPLIED.above(SoilLayers.WATER_HELD),
          Demand.RUN_TIME,
          "puts on {0} in a watering day of {1}; its root zone holds {2} when it is dry: the rest drains away",
          "water less at a time and more often",
          List.of(CycleAndSoak.APPLIED, Demand.RUN_TIME, SoilLayers.WATER_HELD));

  /** Whether the site must keep to the Californian rules; declared with the yearly allowance. */
  private static final Reference ORDINANCE_APPLIES =
      new Reference(SITE, "ordinance-applies", "Model ordinance applies", QuantityKind.CHOICE);

  private static final Rule STEEP_AND_FAST =
      new Rule(
          "steep-and-fast",
          Severity.CHECK,
          ZONES,
          Soils.SLOPE
              .above(Formula.amount(25, Units.PERCENT))
              .and(ORDINANCE_APPLIES.is("yes"))
              .and(Emitters.PRECIPITATION_RATE.above(Formula.amount(0.75, Units.INCH_PER_HOUR))),
          Emitters.PRECIPITATION_RATE,
          "lies on a slope of {0} and gets {1}; California allows at most 0.75 in/h above 25 % (23 CCR 492.7)",
          "use emitters with a lower precipitation rate; local rules may be stricter",
          List.of(Soils.SLOPE, Emitters.PRECIPITATION_RATE));

  private static final Rule SPLIT =
      new Rule(
          "split",
          Severity.NOTE,
          ZONES,
          CycleAndSoak.CYCLES.above(1),
          CycleAndSoak.CYCLES,
          "runs {0} before water runs off, and needs {1}: give it in {2} cycles of {3}",
          "let it soak at least {4} between cycles; other zones can run meanwhile",
          List.of(
              CycleAndSoak.LONGEST_CYCLE,
              Demand.RUN_TIME,
              CycleAndSoak.CYCLES,
              CycleAndSoak.CYCLE_MINUTES,
              CycleAndSoak.SOAK));

  private static final Rule UNEVEN =
      new Rule(
          "uneven",
          Severity.NOTE,
          ZONES,
          Emitters.DISTRIBUTION_UNIFORMITY.below(0.5).and(Emitters.DISTRIBUTION_UNIFORMITY.given()),
          Emitters.DISTRIBUTION_UNIFORMITY,
          "waters very unevenly ({0}): longer runs cannot make up for that",
          "look for tilted, blocked or wrong nozzles and for low pressure before adding minutes",
          List.of(Emitters.DISTRIBUTION_UNIFORMITY));

  private ScheduleRules() {}

  /** Returns the rules in the order in which they should be read. */
  public static List<Rule> all() {
    List<Rule> all = new ArrayList<>(MonthlyRules.all());
    all.addAll(
        List.of(
            TOO_FEW_DAYS,
            LESS_THAN_A_DAY,
            TOO_MANY_CYCLES,
            FLOW_TOO_GREAT,
            DRAINS_AWAY,
            STEEP_AND_FAST,
            SPLIT,
            UNEVEN));
    return all;
  }
}
