package zonewright.nights;

import java.util.List;
import java.util.Optional;
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
    NightsProblem problem = input.problem();
    if (problem.plain()) {
      PlainTimetable plain =
          PlainWeekPlanner.plan(
              problem.zones(), problem.rules(), problem.firstDay(), problem.startRuns());
      return new NightsPlan(input, plain.timetable(), plain.programs());
    }
    Optional<Timetable> known =
        earlier.filter(plan -> !plan.input().plain()).map(NightsPlan::timetable);
    Timetable timetable =
        TimetablePlanner.plan(problem.zones(), problem.rules(), problem.firstDay(), known);
    return new NightsPlan(input, timetable, List.of());
  }
}
