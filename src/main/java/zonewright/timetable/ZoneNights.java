package zonewright.timetable;

import java.util.List;

/**
 * When a zone waters.
 *
 * @param zone the zone
 * @param nights its nights: of every week, or of the dates the plan covers
 */
public record ZoneNights(WateredZone zone, List<Night> nights) {
  /** Keeps a copy. */
  public ZoneNights {
    nights = List.copyOf(nights);
  }
}
