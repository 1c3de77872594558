package zonewright.nights;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import zonewright.timetable.WateringWindow;

/** The nights a site keeps where a rule allows fewer than are open. */
final class FewerNights {
  private FewerNights() {}

  /**
   * Returns as many of the open nights as are allowed: those that leave the shortest longest gap,
   * of several such the ones with most minutes, and then the first of the week.
   *
   * @param most how many are allowed, at least 1
   */
  static Map<DayOfWeek, List<WateringWindow>> of(
      Map<DayOfWeek, List<WateringWindow>> open, int most) {
    if (open.size() <= most) {
      return open;
    }
    List<DayOfWeek> days = new ArrayList<>(open.keySet());
    List<List<DayOfWeek>> sets = new ArrayList<>();
    for (int bits = 1 << days.size(); bits-- > 0; ) {
      List<DayOfWeek> some = new ArrayList<>();
      for (int day = 0; day < days.size(); day++) {
        if ((bits >> (days.size() - 1 - day) & 1) == 1) {
          some.add(days.get(day));
        }
      }
      if (some.size() == most) {
        sets.add(some);
      }
    }
    sets.sort(
        Comparator.comparingInt(FewerNights::longestGap)
            .thenComparingInt(set -> -set.stream().mapToInt(day -> minutes(open.get(day))).sum()));
    Map<DayOfWeek, List<WateringWindow>> kept = new EnumMap<>(open);
    kept.keySet().retainAll(sets.get(0));
    return kept;
  }

  private static int minutes(List<WateringWindow> windows) {
    return windows.stream().mapToInt(WateringWindow::minutes).sum();
  }

  /** The most days from one of them to the next, over the week's end too. */
  private static int longestGap(List<DayOfWeek> days) {
    int longest = 0;
    for (int i = 0; i < days.size(); i++) {
      int next = days.get((i + 1) % days.size()).getValue();
      int gap = Math.floorMod(next - days.get(i).getValue() - 1, 7) + 1;
      longest = Math.max(longest, gap);
    }
    return longest;
  }
}
