package zonewright.nights;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
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

  /** Says whether the nights are those of a week that repeats; else they are dates. */
  public boolean weekly() {
    return timetable.nights().stream().noneMatch(night -> night.night().date().isPresent());
  }

  /** Returns the night with the most minutes between opening and finish. */
  public Optional<NightPlan> longestNight() {
    NightPlan longest = null;
    for (NightPlan night : timetable.nights()) {
      if (longest == null || night.lengthMinutes() > longest.lengthMinutes()) {
        longest = night;
      }
    }
    return Optional.ofNullable(longest);
  }

  /** Returns the station of each zone of the timetable, by the zone's name there. */
  public Map<String, NightsInput.Station> stations() {
    return input.stations().stream()
        .collect(
            Collectors.toMap(
                station -> station.zone().name(), Function.identity(), (one, other) -> one));
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
