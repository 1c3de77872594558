package zonewright.nights;

import java.util.HashMap;
import java.util.Map;

/**
 * When a zone is started: the days and times that its cards say. They are keyed in once and hold in
 * every month, for the percent of a month changes minutes alone.
 *
 * @param days its days, in words; of several cards one after the other
 * @param starts its start times, for each of the days
 */
public record ZoneStarts(String days, String starts) {
  /** A zone that nothing starts. */
  public static final ZoneStarts NEVER = new ZoneStarts("", "");

  /** Returns the days and times of all zones that are started, by their rows. */
  public static Map<Integer, ZoneStarts> of(NightsPlan plan) {
    Map<Integer, ZoneStarts> all = new HashMap<>();
    for (ScheduleCard card : ScheduleCards.of(plan)) {
      for (ScheduleCard.Line line : card.lines()) {
        ZoneStarts own = new ZoneStarts(line.days(), String.join(", ", line.starts()));
        all.merge(line.zone().row(), own, ZoneStarts::and);
      }
    }
    return all;
  }

  /** Two cards of a zone: where their days are the same, the times go together. */
  private ZoneStarts and(ZoneStarts other) {
    return days.equals(other.days)
        ? new ZoneStarts(days, starts + ", " + other.starts)
        : new ZoneStarts(days + "; " + other.days, starts + "; " + other.starts);
  }
}
