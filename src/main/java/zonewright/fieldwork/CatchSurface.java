package zonewright.fieldwork;

import java.util.ArrayList;
import java.util.List;
import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.trade.Sheets;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;
import zonewright.units.Unit;

/**
 * The cans of a test on a plan, and the depth between them: a weighted mean of the cans, near ones
 * counting most. Only for looking at; no figure of a test comes from it.
 *
 * @param cans those that have a place and a depth
 * @param mean mean depth of all cans of the test, above 0
 * @param unplaced how many cans of the test have no place or no depth
 * @param length the unit of places
 * @param depth the unit of depths
 */
public record CatchSurface(List<Can> cans, double mean, int unplaced, Unit length, Unit depth) {
  /** Fewer cans make no surface. */
  private static final int LEAST_CANS = 3;

  public CatchSurface {
    cans = List.copyOf(cans);
  }

  /**
   * A can.
   *
   * @param standing how it lies beside the rest, in the words of its column
   */
  public record Can(String name, double x, double y, double depth, String standing) {
    /** Says whether it lies far from the rest. */
    public boolean outlier() {
      return !standing.equals(Cans.AS_THE_REST);
    }
  }

  /** Returns the cans of a test as they are now. */
  public static CatchSurface of(Book book, int test) {
    List<Can> cans = new ArrayList<>();
    int unplaced = 0;
    for (int row = 0; row < book.rows(Sheets.CANS); row++) {
      if (book.number(Cans.TEST.reference(), row) != test || !book.counts(Sheets.CANS, row)) {
        continue;
      }
      double x = book.number(Cans.ACROSS.reference(), row);
      double y = book.number(Cans.UP.reference(), row);
      double depth = book.number(Cans.DEPTH.reference(), row);
      if (Double.isNaN(x + y + depth)) {
        unplaced++;
      } else {
        String standing =
            book.outcome(Cans.STANDING.reference(), row) instanceof Outcome.Words words
                ? words.text()
                : Cans.AS_THE_REST;
        String name = book.outcome(Cans.CAN.reference(), row).text();
        cans.add(new Can(name, x, y, depth, standing));
      }
    }
    return new CatchSurface(
        cans,
        book.number(CatchTests.MEAN.reference(), test),
        unplaced,
        QuantityKind.LENGTH.unit(book.system()),
        QuantityKind.DEPTH.unit(book.system()));
  }

  /** Says whether there is enough to shade. */
  public boolean drawable() {
    return cans.size() >= LEAST_CANS && mean > 0;
  }

  /** Returns the depth at a place, in the unit of depths. */
  public double at(double x, double y) {
    double weights = 0;
    double sum = 0;
    for (Can can : cans) {
      double square = square(can, x, y);
      if (square < 1e-12) {
        return can.depth();
      }
      double weight = 1 / (square * Math.sqrt(square));
      weights += weight;
      sum += weight * can.depth();
    }
    return sum / weights;
  }

  private static double square(Can can, double x, double y) {
    return (can.x() - x) * (can.x() - x) + (can.y() - y) * (can.y() - y);
  }

  /** Says whether a place is near enough to a can to be shaded at all. */
  public boolean near(double x, double y, double reach) {
    return cans.stream().anyMatch(can -> square(can, x, y) <= reach * reach);
  }

  /** Returns the greatest distance from a can to its nearest neighbour; 1 for lonely cans. */
  public double spacing() {
    double greatest = 0;
    for (Can can : cans) {
      double nearest = Double.POSITIVE_INFINITY;
      for (Can other : cans) {
        double square = square(other, can.x(), can.y());
        if (square > 0) {
          nearest = Math.min(nearest, square);
        }
      }
      if (nearest < Double.POSITIVE_INFINITY) {
        greatest = Math.max(greatest, Math.sqrt(nearest));
      }
    }
    return greatest > 0 ? greatest : 1;
  }

  /** Returns a depth in words with its unit. */
  public String inWords(double value) {
    return QuantityText.readable(value, 2) + " " + depth.symbol();
  }
}
