package zonewright.uncertainty;

import java.util.Arrays;
import java.util.List;

/**
 * What one input alone does to an answer of each row: at which numbers of its range the answer is
 * least and greatest, and whether it goes one way all along.
 */
final class Profile {
  final double[] least;
  final double[] greatest;
  private final double[] leastAt;
  private final double[] greatestAt;
  private final boolean[] rises;
  private final boolean[] falls;
  private final double[] last;

  Profile(int rows) {
    least = new double[rows];
    greatest = new double[rows];
    leastAt = new double[rows];
    greatestAt = new double[rows];
    rises = new boolean[rows];
    falls = new boolean[rows];
    last = new double[rows];
    for (double[] unknown : List.of(least, greatest, last)) {
      Arrays.fill(unknown, Double.NaN);
    }
  }

  /**
   * Takes in what the answer comes to at the next number of the range, going up.
   *
   * @param at the number of the input
   */
  void take(int row, double at, double number) {
    if (Double.isNaN(number)) {
      return;
    }
    if (Double.isNaN(last[row])) {
      least[row] = number;
      greatest[row] = number;
      leastAt[row] = at;
      greatestAt[row] = at;
    }
    rises[row] |= Spans.above(number, last[row]);
    falls[row] |= Spans.above(last[row], number);
    last[row] = number;
    if (number < least[row]) {
      least[row] = number;
      leastAt[row] = at;
    }
    if (number > greatest[row]) {
      greatest[row] = number;
      greatestAt[row] = at;
    }
  }

  /** Says whether the answer goes one way all along. */
  boolean steady(int row) {
    return !(rises[row] && falls[row]);
  }

  /** Says whether the input moves the answer of a row at all. */
  boolean moves(int row) {
    return Spans.above(greatest[row], least[row]);
  }

  /** Returns the number of the input at one end of the answer. */
  double at(int row, boolean most) {
    return most ? greatestAt[row] : leastAt[row];
  }
}
