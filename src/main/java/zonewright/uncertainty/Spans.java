package zonewright.uncertainty;

import java.util.Arrays;

/**
 * What answers came to over all designs tried: of each answer, row by row, the least, the greatest,
 * and whether there was no number somewhere.
 */
final class Spans {
  /** By what share two numbers may differ and still be the same: sums end in other last digits. */
  static final double SAME = 1e-9;

  final double[][] held;
  final double[][] least;
  final double[][] greatest;
  final boolean[][] missing;

  /** Begins with what the answers come to in the design as it is. */
  Spans(double[][] held) {
    this.held = held;
    this.least = copy(held);
    this.greatest = copy(held);
    this.missing = new boolean[held.length][];
    for (int answer = 0; answer < held.length; answer++) {
      missing[answer] = new boolean[held[answer].length];
    }
  }

  private static double[][] copy(double[][] numbers) {
    return Arrays.stream(numbers).map(double[]::clone).toArray(double[][]::new);
  }

  /** Takes in what they come to in another design. */
  void take(double[][] numbers) {
    for (int answer = 0; answer < numbers.length; answer++) {
      for (int row = 0; row < numbers[answer].length; row++) {
        take(answer, row, numbers[answer][row]);
      }
    }
  }

  void take(int answer, int row, double number) {
    if (Double.isNaN(number)) {
      missing[answer][row] = true;
    } else if (!(number >= least[answer][row])) {
      least[answer][row] = number;
    }
    if (!Double.isNaN(number) && !(number <= greatest[answer][row])) {
      greatest[answer][row] = number;
    }
  }

  /** Says whether an answer of a row was not the same in all designs tried. */
  boolean moves(int answer, int row) {
    return missing[answer][row] || above(greatest[answer][row], least[answer][row]);
  }

  /** Says whether one number lies above another by more than the last digits of a sum. */
  static boolean above(double one, double other) {
    return one - other > SAME * Math.max(Math.abs(one), Math.abs(other));
  }
}
