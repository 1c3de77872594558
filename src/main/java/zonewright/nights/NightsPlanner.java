package zonewright.nights;

import java.util.List;
import java.util.Optional;
import zonewright.timetable.NightRules;
import zonewright.timetable.PlainTimetable;
import zonewright.timetable.PlainWeekPlanner;
import zonewright.timetable.Timetable;
import zonewright.timetable.TimetablePlanner;

/** Makes the timetable of a design from what it depends on; on any thread. */
public final class NightsPlanner {
  private NightsPlanner() {}

  /**
   * Plans the nights. The same input and earlier plan give the same plan.
   *
   * @param earlier a plan made before: nights with the same zones never become longer when a rule
   *     is only loosened
   * @throws java.util.concurrent.CancellationException when the thread is interrupted meanwhile
   */
  public static NightsPlan plan(NightsInput input, Optional<NightsPlan> earlier) {
    if (input.plain()) {
      PlainTimetable plain =
          PlainWeekPlanner.plan(
              input.zones(), oneValve(input.rules()), input.firstDay(), input.startRuns());
      return new NightsPlan(input, plain.timetable(), plain.programs());
    }
    Optional<Timetable> known =
        earlier.filter(plan -> !plan.input().plain()).map(NightsPlan::timetable);
    Timetable timetable =
        TimetablePlanner.plan(input.zones(), input.rules(), input.firstDay(), known);
    return new NightsPlan(input, timetable, List.of());
  }

  private static NightRules oneValve(NightRules rules) {
    return new NightRules(
        rules.windows(),
        1,
        rules.availableFlow(),
        rules.gapMinutes(),
        rules.mostStarts(),
        rules.noWaterDays());
  }
}
