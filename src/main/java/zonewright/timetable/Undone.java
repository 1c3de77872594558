package zonewright.timetable;

import java.util.OptionalInt;

/**
 * A cycle that cannot run in its night.
 *
 * @param zone the zone
 * @param cycle which of its cycles this night, from 1
 * @param why what stands in its way
 * @param startMinute where the arrangement of all cycles has it, counted as in {@link ValveRun};
 *     none where it has no place in it
 */
public record Undone(WateredZone zone, int cycle, Why why, OptionalInt startMinute) {
  /** What keeps water from a zone. */
  public enum Why {
    /** The zone alone draws more than the available flow. */
    OVER_FLOW,
    /** Days on which it should water are closed, or too few are open. */
    CLOSED_NIGHTS,
    /** The nights of its program have no hours in common. */
    NO_COMMON_HOURS,
    /** It would not be over when the night's last window closes. */
    AFTER_CLOSE,
    /** The controller has no start left for it. */
    OVER_STARTS,
    /** The controller lets a station run no longer at one start. */
    OVER_LONGEST_RUN,
    /** The controller has no program left for it. */
    OVER_PROGRAMS
  }

  /** Minutes of watering that are lost. */
  public int minutes() {
    return zone.minutesOf(cycle);
  }
}
