package zonewright.formula;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Sorts positions by a number, equal ones left in their order; on plain arrays, for speed. */
final class StableOrder {
  /** Where more than one in so many numbers is another, sorting anew takes no longer. */
  private static final int FEW = 16;

  private StableOrder() {}

  /** Returns the positions of {@code numbers}, which rise or fall in this order. */
  static int[] of(double[] numbers, boolean rising) {
    return sorted(numbers, rising, IntStream.range(0, numbers.length).toArray());
  }

  /**
   * Returns the same as {@link #of}, sooner where only a few numbers are others than before.
   *
   * @param before the order before
   * @param were the numbers before, in that order
   */
  static int[] again(double[] numbers, boolean rising, int[] before, double[] were) {
    if (before.length != numbers.length) {
      return of(numbers, rising);
    }
    int[] kept = new int[before.length];
    int[] moved = new int[before.length / FEW + 1];
    int keeping = 0;
    int moving = 0;
    for (int i = 0; i < before.length; i++) {
      if (Double.compare(numbers[before[i]], were[i]) == 0) {
        kept[keeping++] = before[i];
      } else if (moving < moved.length) {
        moved[moving++] = before[i];
      } else {
        return of(numbers, rising);
      }
    }
    int[] order = new int[before.length];
    int at = 0;
    int taken = 0;
    for (int position : sorted(numbers, rising, Arrays.copyOf(moved, moving))) {
      int place = place(numbers, rising, kept, taken, keeping, position);
      System.arraycopy(kept, taken, order, at, place - taken);
      at += place - taken;
      taken = place;
      order[at] = position;
      at++;
    }
    System.arraycopy(kept, taken, order, at, keeping - taken);
    return order;
  }

  /** Returns where a position belongs among sorted ones, from one place to before another. */
  private static int place(
      double[] numbers, boolean rising, int[] sorted, int from, int to, int position) {
    int low = from;
    int high = to;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (inOrder(numbers, sorted[middle], position, rising)) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Sorts positions by merging ever longer parts; may write to what it is given. */
  private static int[] sorted(double[] numbers, boolean rising, int[] positions) {
    int count = positions.length;
    int[] order = positions;
    int[] other = new int[count];
    for (int width = 1; width < count; width *= 2) {
      for (int from = 0; from < count; from += 2 * width) {
        int middle = Math.min(from + width, count);
        int end = Math.min(middle + width, count);
        merge(numbers, rising, order, from, middle, end, other);
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
