package zonewright.timetable;

import java.util.List;
import java.util.OptionalInt;

/**
 * What the timetable must know of a zone.
 *
 * @param number tells it from all other zones; what people call it is not known here
 * @param program number of the program it belongs to, or {@link #NO_PROGRAM}
 * @param orderWish place in the order wished for; followed where it costs no time
 * @param cycles cycles a night, 1 to 96
 * @param minutesPerCycle whole minutes of each cycle, 1 to 1440
 * @param soakMinutes shortest pause from the end of one of its cycles to the start of its next, 0
 *     to 1440
 * @param flow flow while it runs, in the unit of the site's available flow; not negative
 * @param days when it waters
 * @param lastShorter minutes by which the last cycle of a night is shorter than the others
 * @param notBefore minute of the day, 0 to 1439, before which its first cycle of a night should not
 *     start; it counts in nights that are open then
 */
public record WateredZone(
    long number,
    long program,
    OptionalInt orderWish,
    int cycles,
    int minutesPerCycle,
    int soakMinutes,
    double flow,
    WateringDays days,
    int lastShorter,
    OptionalInt notBefore)
    implements Subject {
  /** The program of zones that have none. */
  public static final long NO_PROGRAM = 0;

  /** Checks every part and says what is wrong. */
  public WateredZone {
    Require.between(cycles, 1, 96, "Cycles of zone " + number);
    Require.between(minutesPerCycle, 1, WateringWindow.DAY, "Minutes a cycle of zone " + number);
    Require.between(
        lastShorter, 0, minutesPerCycle - 1, "Minutes less in the last cycle of zone " + number);
    Require.between(soakMinutes, 0, WateringWindow.DAY, "Soak minutes of zone " + number);
    Require.that(
        flow >= 0 && flow < Double.POSITIVE_INFINITY,
        "The flow of zone " + number + " must be a number, not below zero; it is " + flow + ".");
    if (notBefore.isPresent()) {
      Require.between(
          notBefore.getAsInt(), 0, WateringWindow.DAY - 1, "The earliest minute of zone " + number);
    }
  }

  /** A zone whose cycles are alike. */
  public WateredZone(
      long number,
      long program,
      OptionalInt orderWish,
      int cycles,
      int minutesPerCycle,
      int soakMinutes,
      double flow,
      WateringDays days,
      OptionalInt notBefore) {
    this(
        number, program, orderWish, cycles, minutesPerCycle, soakMinutes, flow, days, 0, notBefore);
  }

  /** Minutes of watering in one night. */
  public int minutesPerNight() {
    return minutes(cycles);
  }

  /** Minutes of the first so many cycles of a night. */
  public int minutes(int some) {
    return some * minutesPerCycle - (some == cycles ? lastShorter : 0);
  }

  /** Minutes of one cycle of a night, counted from 1. */
  int minutesOf(int cycle) {
    return cycle == cycles ? minutesPerCycle - lastShorter : minutesPerCycle;
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
        number,
        program,
        orderWish,
        cycles,
        minutesPerCycle,
        soakMinutes,
        flow,
        others,
        lastShorter,
        notBefore);
  }

  /** The same water in other cycles. */
  WateredZone with(
      WateringDays others, int otherCycles, int otherMinutes, int otherSoak, int otherShorter) {
    return new WateredZone(
        number,
        program,
        orderWish,
        otherCycles,
        otherMinutes,
        otherSoak,
        flow,
        others,
        otherShorter,
        notBefore);
  }

  WateredZone withoutSoak() {
    return new WateredZone(
        number, program, orderWish, cycles, minutesPerCycle, 0, flow, days, lastShorter, notBefore);
  }
}
