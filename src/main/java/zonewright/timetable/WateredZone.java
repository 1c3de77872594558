package zonewright.timetable;

import java.util.OptionalInt;

/**
 * What the timetable must know of a zone.
 *
 * @param name the zone's name, not blank
 * @param program name of the program it belongs to, the designer's own; may be blank
 * @param orderWish place in the order wished for; followed where it costs no time
 * @param cycles cycles a night, 1 to 96
 * @param minutesPerCycle whole minutes of each cycle, 1 to 1440
 * @param soakMinutes shortest pause from the end of one of its cycles to the start of its next, 0
 *     to 1440
 * @param flow flow while it runs, in the unit of the site's available flow; not negative
 * @param days when it waters
 */
public record WateredZone(
    String name,
    String program,
    OptionalInt orderWish,
    int cycles,
    int minutesPerCycle,
    int soakMinutes,
    double flow,
    WateringDays days) {

  /** Checks every part and says what is wrong. */
  public WateredZone {
    Require.that(!name.isBlank(), "A zone needs a name.");
    Require.between(cycles, 1, 96, "Cycles of " + name);
    Require.between(minutesPerCycle, 1, WateringWindow.DAY, "Minutes a cycle of " + name);
    Require.between(soakMinutes, 0, WateringWindow.DAY, "Soak minutes of " + name);
    Require.that(
        flow >= 0 && flow < Double.POSITIVE_INFINITY,
        "The flow of " + name + " must be a number, not below zero; it is " + flow + ".");
  }

  /** Minutes of watering in one night. */
  public int minutesPerNight() {
    return cycles * minutesPerCycle;
  }

  /** Minutes from its first start to its last end when nothing but its own soak holds it up. */
  public int shortestSpan() {
    return minutesPerNight() + (cycles - 1) * soakMinutes;
  }

  WateredZone withDays(WateringDays others) {
    return new WateredZone(
        name, program, orderWish, cycles, minutesPerCycle, soakMinutes, flow, others);
  }

  WateredZone withoutSoak() {
    return new WateredZone(name, program, orderWish, cycles, minutesPerCycle, 0, flow, days);
  }
}
