package zonewright.timetable;

import java.util.List;

/**
 * A program of a plain controller with its days: what to key in, the same on each of them.
 *
 * @param card its start times and stations
 * @param days when it waters
 * @param nights its nights: of every week, or of the dates the plan covers
 */
public record PlainProgram(ProgramCard card, WateringDays days, List<Night> nights) {
  /** Keeps a copy. */
  public PlainProgram {
    nights = List.copyOf(nights);
  }
}
