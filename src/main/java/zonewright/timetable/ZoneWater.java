package zonewright.timetable;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What a zone asks for and what it gets, in a week or in the dates the plan covers. What it gets
 * and what is left undone together are what it asks for.
 *
 * @param zone the zone
 * @param nights its nights, those among them in which nothing of it can run
 * @param waterings how often it asks for water, on open nights or not
 * @param minutesPlaced minutes that its cycles run
 * @param undone minutes left undone, by what stands in the way
 */
public record ZoneWater(
    WateredZone zone,
    List<Night> nights,
    int waterings,
    int minutesPlaced,
    Map<Undone.Why, Integer> undone) {
  /** Keeps copies. */
  public ZoneWater {
    nights = List.copyOf(nights);
    EnumMap<Undone.Why, Integer> copy = new EnumMap<>(Undone.Why.class);
    copy.putAll(undone);
    undone = Collections.unmodifiableMap(copy);
  }

  /** Minutes of watering it asks for. */
  public int minutesAsked() {
    return waterings * zone.minutesPerNight();
  }

  /** Minutes left undone for whatever reason. */
  public int minutesUndone() {
    return undone.values().stream().mapToInt(Integer::intValue).sum();
  }
}
