package zonewright.nights;

import java.util.List;
import java.util.Optional;
import zonewright.timetable.NightPlan;
import zonewright.timetable.PlainProgram;
import zonewright.timetable.Timetable;
import zonewright.timetable.WateredZone;

/**
 * The timetable of a design.
 *
 * @param input what it was made from
 * @param timetable the nights, what was noticed, and what would help
 * @param programs for a controller that starts programs at set times, what to key in; else empty
 */
public record NightsPlan(NightsInput input, Timetable timetable, List<PlainProgram> programs) {
  /** Keeps a copy. */
  public NightsPlan {
    programs = List.copyOf(programs);
  }

  /** Returns the same nights for a problem that differs in words only. */
  NightsPlan renamed(NightsInput other) {
    return other.equals(input) ? this : new NightsPlan(other, timetable, programs);
  }

  /** Says whether the nights are those of a week that repeats; else they are dates. */
  public boolean weekly() {
    return timetable.nights().stream().noneMatch(night -> night.night().date().isPresent());
  }

  /** Returns how many weeks its nights cover. */
  public int weeks() {
    return weekly() ? 1 : Timetable.DATED_WEEKS;
  }

  /** Says whether every zone of the sheet gets all the water it asks for. */
  public boolean complete() {
    return ZoneShare.of(this).stream().allMatch(ZoneShare::whole);
  }

  /** Returns the night with the most minutes between opening and finish; of several, the first. */
  public Optional<NightPlan> longestNight() {
    return timetable.nights().stream()
        .reduce((one, other) -> other.lengthMinutes() > one.lengthMinutes() ? other : one);
  }

  /** Returns the greatest flow at one time in a night, in the unit of the zones' flows. */
  public static double greatestFlow(NightPlan night) {
    double greatest = 0;
    for (var run : night.runs()) {
      double flow =
          night.runs().stream()
              .filter(
                  other ->
                      other.startMinute() <= run.startMinute()
                          && run.startMinute() < other.endMinute())
              .map(other -> other.zone())
              .mapToDouble(WateredZone::flow)
              .sum();
      greatest = Math.max(greatest, flow);
    }
    return greatest;
  }
}
