package zonewright.timetable;

import java.util.List;

/**
 * A program of a controller that starts programs, as it is keyed in: the same on each of its
 * nights. What the controller or the hours cannot take is left out.
 *
 * @param program which program
 * @param place which program of the controller it would be, from 1, those that ask for most first
 * @param startMinutes its start times, in order, as minutes from midnight at the start of the
 *     night's weekday; 1440 and more is next morning
 * @param stations its stations, in the order they run
 * @param nights its nights: of every week, or of the dates the plan covers
 * @param asked what it would be whole
 */
public record PlainProgram(
    ProgramPart program,
    int place,
    List<Integer> startMinutes,
    List<Station> stations,
    List<Night> nights,
    Asked asked) {
  /** Keeps copies. */
  public PlainProgram {
    startMinutes = List.copyOf(startMinutes);
    stations = List.copyOf(stations);
    nights = List.copyOf(nights);
  }

  /**
   * One station of the program.
   *
   * @param zone the zone it waters
   * @param starts at how many of the program's starts it runs: the first so many
   */
  public record Station(WateredZone zone, int starts) {}

  /**
   * What a program would be if all of it ran.
   *
   * @param zones its zones in the order they run
   * @param starts how many starts
   * @param finishMinute when its last station would be done
   * @param closesMinute when the last window closes that its nights have in common
   */
  public record Asked(List<WateredZone> zones, int starts, int finishMinute, int closesMinute) {
    /** Keeps a copy. */
    public Asked {
      zones = List.copyOf(zones);
    }
  }
}
