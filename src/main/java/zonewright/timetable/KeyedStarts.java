package zonewright.timetable;

import java.util.ArrayList;
import java.util.List;

/**
 * Start times shared out over programs of the controller. A program starts at all its times on each
 * of its days, so one that does not water every night has them all before midnight or all after it;
 * and it has no more than the controller lets it have.
 */
final class KeyedStarts {
  private KeyedStarts() {}

  /**
   * Returns with which start each program begins, in order.
   *
   * @param starts in order, minutes from midnight of the night's day
   * @param everyNight whether they are those of every night
   * @param mostStarts most starts of a program
   */
  static List<Integer> programs(int[] starts, boolean everyNight, int mostStarts) {
    List<Integer> first = new ArrayList<>();
    for (int pass = 0; pass < starts.length; pass++) {
      boolean full = first.isEmpty() || pass - first.get(first.size() - 1) == mostStarts;
      if (full || (!everyNight && straddles(starts[pass - 1], starts[pass]))) {
        first.add(pass);
      }
    }
    return first;
  }

  /** Says whether midnight lies between two starts, the latter at it or after. */
  static boolean straddles(int one, int later) {
    return one < WateringWindow.DAY && later >= WateringWindow.DAY;
  }
}
