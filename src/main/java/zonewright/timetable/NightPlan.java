package zonewright.timetable;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One night with every cycle in its place, or left undone: no cycle runs past the close of the last
 * window, nor more of them than the controller can start.
 *
 * @param night which night
 * @param windows its windows, in order
 * @param runs the cycles that run, by start
 * @param undone the cycles that cannot
 * @param arrangement all cycles by start, as the shortest night that holds them has them; where all
 *     can run, the runs
 * @param finishMinute minute the last valve would close if all cycles ran, counted as in {@link
 *     ValveRun}
 * @param boundMinute no arrangement of all of them finishes before this minute
 */
public record NightPlan(
    Night night,
    List<WateringWindow> windows,
    List<ValveRun> runs,
    List<Undone> undone,
    List<ValveRun> arrangement,
    int finishMinute,
    int boundMinute) {

  /** Keeps copies. */
  public NightPlan {
    windows = List.copyOf(windows);
    runs = List.copyOf(runs);
    undone = List.copyOf(undone);
    arrangement = List.copyOf(arrangement);
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

  /** Minutes by which the night runs past its last window; 0 when it fits. */
  public int overrunMinutes() {
    return Math.max(0, finishMinute - closesMinute());
  }

  /** True when no zone asks for water in it. */
  public boolean isEmpty() {
    return runs.isEmpty() && undone.isEmpty();
  }

  /** Minutes left undone, by zone, in the order of the arrangement. */
  public Map<WateredZone, Integer> undoneMinutes() {
    Map<WateredZone, Integer> minutes = new LinkedHashMap<>();
    undone.forEach(each -> minutes.merge(each.zone(), each.minutes(), Integer::sum));
    return minutes;
  }
}
