package zonewright.timetable;

/**
 * A stretch of time in which valves may be open. Minutes count from midnight at the start of the
 * weekday the window belongs to, so a window that crosses midnight ends after minute 1440.
 *
 * @param startMinute first minute allowed, 0 to 1439
 * @param endMinute the minute by which every valve is closed; up to a day after the start
 */
public record WateringWindow(int startMinute, int endMinute) {
  /** Minutes in a day. */
  public static final int DAY = 1440;

  /** Checks the times; an end at or before the start is read as the next morning. */
  public WateringWindow {
    Require.between(startMinute, 0, DAY - 1, "The minute a window opens");
    if (endMinute <= startMinute) {
      endMinute += DAY;
    }
    Require.between(endMinute, startMinute + 1, startMinute + DAY, "The minute a window closes");
  }

  /** Length in minutes, 1 to 1440. */
  public int minutes() {
    return endMinute - startMinute;
  }
}
