package zonewright.formula;

import java.util.function.IntToDoubleFunction;

/** Sorts positions by a number, equal ones left in their order; on plain arrays, for speed. */
final class StableOrder {
  private StableOrder() {}

  /** Returns the positions 0 to {@code count} - 1, their numbers rising or falling. */
  static int[] of(int count, IntToDoubleFunction number, boolean rising) {
    double[] numbers = new double[count];
    int[] order = new int[count];
    for (int i = 0; i < count; i++) {
      numbers[i] = number.applyAsDouble(i);
      order[i] = i;
    }
    int[] other = new int[count];
    for (int width = 1; width < count; width *= 2) {
      for (int start = 0; start < count; start += 2 * width) {
        int middle = Math.min(start + width, count);
        merge(numbers, rising, order, start, middle, Math.min(middle + width, count), other);
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
          right >= end
              || (left < middle && inOrder(numbers[from[left]], numbers[from[right]], rising));
      to[at] = takeLeft ? from[left++] : from[right++];
    }
  }

  private static boolean inOrder(double first, double second, boolean rising) {
    int order = Double.compare(first, second);
    return rising ? order <= 0 : order >= 0;
  }
}
