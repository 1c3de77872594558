package zonewright.fieldwork;

import java.util.List;

/**
 * What there is to judge a tuning by. Percents are shares: 1 is 100 percent.
 *
 * @param zones the zones, in the order of their sheet
 * @param site the site tuning in force
 * @param looks what was seen since the last change, in the order in which it was seen
 * @param step the most that may be changed at a time, above 0
 * @param tolerance how far a controller may stray from the month before it is suspected, 0 or more
 */
public record TuningState(
    List<Zone> zones, double site, List<Look> looks, double step, double tolerance) {
  public TuningState {
    zones = List.copyOf(zones);
    looks = List.copyOf(looks);
    if (!(step > 0) || !(tolerance >= 0) || !(site > 0)) {
      throw new IllegalArgumentException(
          "step and site are above 0 and the tolerance is 0 or more, not %s, %s and %s"
              .formatted(step, site, tolerance));
    }
  }

  /**
   * A zone.
   *
   * @param name what a person calls it
   * @param tuning its own tuning in force
   */
  public record Zone(String name, double tuning) {}

  /**
   * One look at a zone.
   *
   * @param zone its place among the zones, from 0
   * @param day the day's number; see {@link zonewright.units.CalendarText}
   * @param overMonth percent the controller showed, less what the month asks; not-a-number where
   *     nobody wrote it down
   */
  public record Look(int zone, double day, Judgement judgement, double overMonth) {}
}
