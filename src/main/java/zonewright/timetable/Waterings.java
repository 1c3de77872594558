package zonewright.timetable;

import java.util.List;

/**
 * Water that is wanted again and again, by a zone or by a whole program.
 *
 * @param subject who wants it
 * @param days on which days
 * @param minutes minutes of watering each time
 */
record Waterings(Subject subject, WateringDays days, int minutes) {
  static List<Waterings> of(List<WateredZone> zones) {
    return zones.stream()
        .map(zone -> new Waterings(zone, zone.days(), zone.minutesPerNight()))
        .toList();
  }
}
