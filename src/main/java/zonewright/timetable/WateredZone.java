package zonewright.timetable;

import java.util.List;
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
 * @param notBefore minute of the day, 0 to 1439, before which its first cycle of a night should not
 *     start; it counts in nights that are open then
 */
public record WateredZone(
    String name,
    String program,
    OptionalInt orderWish,
    int cycles,
    int minutesPerCycle,
    int soakMinutes,
    double flow,
    WateringDays days,
    OptionalInt notBefore) {

  /** Checks every part and says what is wrong. */
  public WateredZone {
    Require.that(!name.isBlank(), "A zone needs a name.");
    Require.between(cycles, 1, 96, "Cycles of " + name);
    Require.between(minutesPerCycle, 1, WateringWindow.DAY, "Minutes a cycle of " + name);
    Require.between(soakMinutes, 0, WateringWindow.DAY, "Soak minutes of " + name);
    Require.that(
        flow >= 0 && flow < Double.POSITIVE_INFINITY,
        "The flow of " + name + " must be a number, not below zero; it is " + flow + ".");
    if (notBefore.isPresent()) {
      Require.between(
          notBefore.getAsInt(), 0, WateringWindow.DAY - 1, "The earliest minute of " + name);
    }
  }

  /** A zone that may start as soon as the night opens. */
  public WateredZone(
      String name,
      String program,
      OptionalInt orderWish,
      int cycles,
      int minutesPerCycle,
      int soakMinutes,
      double flow,
      WateringDays days) {
    this(
        name,
        program,
        orderWish,
        cycles,
        minutesPerCycle,
        soakMinutes,
        flow,
        days,
        OptionalInt.empty());
  }

  /** Minutes of watering in one night. */
  public int minutesPerNight() {
    return cycles * minutesPerCycle;
  }

  /** Minutes from its first start to its last end when nothing but its own soak holds it up. */
  public int shortestSpan() {
    return minutesPerNight() + (cycles - 1) * soakMinutes;
  }

  /**
   * Minutes from the opening of the night's first window before which the first cycle should not
   * start; 0 where the night is not open at the minute wished for.
   */
  int wait(List<WateringWindow> windows) {
    if (notBefore.isEmpty()) {
      return 0;
    }
    int opens = windows.get(0).startMinute();
    int closes = windows.get(windows.size() - 1).endMinute();
    int wait = Math.floorMod(notBefore.getAsInt() - opens, WateringWindow.DAY);
    return wait < closes - opens ? wait : 0;
  }

  WateredZone withDays(WateringDays others) {
    return new WateredZone(
        name, program, orderWish, cycles, minutesPerCycle, soakMinutes, flow, others, notBefore);
  }

  WateredZone inProgram(String other) {
    return new WateredZone(
        name, other, orderWish, cycles, minutesPerCycle, soakMinutes, flow, days, notBefore);
  }

  WateredZone withoutSoak() {
    return new WateredZone(
        name, program, orderWish, cycles, minutesPerCycle, 0, flow, days, notBefore);
  }
}
