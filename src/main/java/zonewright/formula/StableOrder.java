package zonewright.formula;

import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Sorts positions by a number, equal ones left in their order; on plain arrays, for speed. */
final class StableOrder {
  private StableOrder() {}

  /**
   * Returns the positions 0 to {@code count} - 1, their numbers rising or falling.
   *
   * @param start any order of all positions, best one that nearly fits; empty where none is known
   */
  static int[] of(int count, IntToDoubleFunction number, boolean rising, int[] start) {
    double[] numbers = new double[count];
    for (int i = 0; i < count; i++) {
      numbers[i] = number.applyAsDouble(i);
    }
    int[] order = start.length == count ? start.clone() : IntStream.range(0, count).toArray();
    int[] other = new int[count];
    for (int width = 1; width < count; width *= 2) {
      for (int from = 0; from < count; from += 2 * width) {
        int middle = Math.min(from + width, count);
        int end = Math.min(middle + width, count);
        if (middle == end || inOrder(numbers, order[middle - 1], order[middle], rising)) {
          System.arraycopy(order, from, other, from, end - from);
        } else {
          merge(numbers, rising, order, from, middle, end, other);
        }
      }
      int[] done = other;
      other = order;
      order = done;
    }
    return order;
  }

  private static void merge(
      double[] numbers, boolean rising, int[] from, int start, int middle, int end, int[] to) {
    int left = start;
    int right = middle;
    for (int at = start; at < end; at++) {
      boolean takeLeft =
          right >= end || (left < middle && inOrder(numbers, from[left], from[right], rising));
      to[at] = takeLeft ? from[left++] : from[right++];
    }
  }

  /** Says whether one position comes before another; of equal numbers the earlier position does. */
  private static boolean inOrder(double[] numbers, int first, int second, boolean rising) {
    int order = Double.compare(numbers[first], numbers[second]);
    return order == 0 ? first < second : order < 0 == rising;
  }
}
