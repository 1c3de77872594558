package zonewright.timetable;

/**
 * Water that finds no room.
 *
 * @param zone the zone that comes short
 * @param minutes its minutes of watering that lie after the last window has closed
 */
public record Shortfall(WateredZone zone, int minutes) {}
