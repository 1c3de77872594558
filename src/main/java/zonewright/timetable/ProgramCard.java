package zonewright.timetable;

import java.util.List;

/**
 * What someone keys in for one program of a plain controller.
 *
 * @param program the program's name
 * @param startMinutes its start times, in order, as minutes from midnight at the start of the
 *     night's weekday; 1440 and more is next morning
 * @param stations its stations, in the order they run
 */
public record ProgramCard(String program, List<Integer> startMinutes, List<Station> stations) {
  /** Keeps copies. */
  public ProgramCard {
    startMinutes = List.copyOf(startMinutes);
    stations = List.copyOf(stations);
  }

  /**
   * One station of the program.
   *
   * @param zone the zone it waters
   * @param minutes its run time, minutes at each start
   * @param starts at how many of the program's starts it runs: the first so many
   */
  public record Station(WateredZone zone, int minutes, int starts) {}
}
