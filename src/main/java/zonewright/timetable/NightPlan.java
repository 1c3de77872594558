package zonewright.timetable;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One night with every cycle placed. What does not fit is placed after the last window, so that it
 * can be seen and measured.
 *
 * @param night which night
 * @param windows its windows, in order
 * @param runs the cycles, by start
 * @param finishMinute minute the last valve closes, counted as in {@link ValveRun}
 * @param boundMinute no arrangement finishes before this minute
 */
public record NightPlan(
    Night night,
    List<WateringWindow> windows,
    List<ValveRun> runs,
    int finishMinute,
    int boundMinute) {

  /** Keeps copies. */
  public NightPlan {
    windows = List.copyOf(windows);
    runs = List.copyOf(runs);
  }

  /** Minute the first window opens. */
  public int opensMinute() {
    return windows.get(0).startMinute();
  }

  /** Minute the last window closes. */
  public int closesMinute() {
    return windows.get(windows.size() - 1).endMinute();
  }

  /** Minutes from opening to finish; 0 when nothing runs. */
  public int lengthMinutes() {
    return finishMinute - opensMinute();
  }

  /** The least length proven possible, in minutes from opening. */
  public int boundMinutes() {
    return boundMinute - opensMinute();
  }

  /** Length over its proven bound: 1 means that no arrangement is shorter. */
  public double ratioToBound() {
    return boundMinutes() == 0 ? 1 : (double) lengthMinutes() / boundMinutes();
  }

  /** Minutes by which the night runs past its last window; 0 when it fits. */
  public int overrunMinutes() {
    return Math.max(0, finishMinute - closesMinute());
  }

  /**
   * The zones that do not fit, each with its minutes of watering after the last window; in order of
   * their runs.
   */
  public List<Shortfall> shortfalls() {
    Map<WateredZone, Integer> late = new LinkedHashMap<>();
    for (ValveRun run : runs) {
      int minutes = run.endMinute() - Math.max(run.startMinute(), closesMinute());
      if (minutes > 0) {
        late.merge(run.zone(), minutes, Integer::sum);
      }
    }
    List<Shortfall> result = new ArrayList<>();
    late.forEach((zone, minutes) -> result.add(new Shortfall(zone, minutes)));
    return result;
  }
}
