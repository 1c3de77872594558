package zonewright.timetable;

import java.util.Optional;

/**
 * Something the designer should know.
 *
 * @param kind what sort of thing it is
 * @param zone the zone it is about; empty when it is about the site or a program
 * @param sentence what is wrong, and what would be right
 */
public record Finding(Kind kind, Optional<String> zone, String sentence) {
  /** Sorts of findings. */
  public enum Kind {
    /** No night on which the zone may water. */
    NO_NIGHT,
    /** The zone alone draws more than the available flow. */
    OVER_AVAILABLE_FLOW,
    /** One cycle is longer than every window of the night. */
    CYCLE_OVER_WINDOW,
    /** The zone's cycles and soaks alone outlast the night. */
    SOAK_OVER_WINDOW,
    /** More cycles than a program may have starts. */
    TOO_MANY_STARTS,
    /** The waterings are further apart than the zone may wait. */
    GAP_TOO_LONG,
    /** Fewer days are open than the zone needs. */
    TOO_FEW_DAYS,
    /** A watering day of the zone falls on a day without water. */
    DAY_WITHOUT_WATER,
    /** A night needs more time than its windows give. */
    NIGHT_TOO_SHORT,
    /** Stations of one program need different numbers of starts. */
    PROGRAM_SPLIT,
    /** Nights of one program have no hours in common. */
    NO_COMMON_HOURS,
    /** The soak before the next night's first cycle is not kept. */
    REST_BETWEEN_NIGHTS
  }

  static Finding of(Kind kind, WateredZone zone, String sentence) {
    return new Finding(kind, Optional.of(zone.name()), sentence);
  }

  static Finding ofSite(Kind kind, String sentence) {
    return new Finding(kind, Optional.empty(), sentence);
  }
}
