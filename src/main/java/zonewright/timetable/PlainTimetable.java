package zonewright.timetable;

import java.util.List;

/**
 * The nights of a site under a plain controller.
 *
 * @param timetable the nights as they will run, with what the designer should know
 * @param programs what to key in, in the order of their first starts
 */
public record PlainTimetable(Timetable timetable, List<PlainProgram> programs) {
  /** Keeps a copy. */
  public PlainTimetable {
    programs = List.copyOf(programs);
  }
}
