package zonewright.timetable;

/**
 * One cycle in its place.
 *
 * @param zone the zone that runs
 * @param cycle which of its cycles this night, from 1
 * @param startMinute minute it opens, counted from midnight at the start of the night's weekday;
 *     1440 and more is next morning
 * @param endMinute minute it closes
 */
public record ValveRun(WateredZone zone, int cycle, int startMinute, int endMinute) {
  /** Minutes it waters. */
  public int minutes() {
    return endMinute - startMinute;
  }
}
