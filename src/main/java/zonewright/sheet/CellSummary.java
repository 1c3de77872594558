package zonewright.sheet;

import java.util.List;
import java.util.Optional;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.units.QuantityKind;

/**
 * What the numbers of some cells come to together.
 *
 * <p>Cells without a number are left out, as are words. Numbers of different kinds are counted but
 * not added: flow and area have no sum.
 *
 * @param cells how many cells were looked at
 * @param numbers how many of them hold a number
 * @param amounts sum and the like; none without a number, or where kinds differ
 */
public record CellSummary(int cells, int numbers, Optional<Amounts> amounts) {
  /**
   * The numbers together, in the unit of their kind.
   *
   * @param like a column of theirs, which says how to show them
   */
  public record Amounts(Reference like, double sum, double mean, double least, double greatest) {}

  /** Returns what {@code cells} of a book come to. */
  public static CellSummary of(Book book, List<Place> cells) {
    int numbers = 0;
    double sum = 0;
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    Reference like = null;
    boolean alike = true;
    for (Place cell : cells) {
      double value = number(book, cell);
      if (Double.isNaN(value)) {
        continue;
      }
      numbers++;
      sum += value;
      least = Math.min(least, value);
      greatest = Math.max(greatest, value);
      like = like == null ? cell.column() : like;
      alike &= like.kind() == cell.column().kind();
    }
    return new CellSummary(
        cells.size(),
        numbers,
        numbers == 0 || !alike
            ? Optional.empty()
            : Optional.of(new Amounts(like, sum, sum / numbers, least, greatest)));
  }

  private static double number(Book book, Place cell) {
    return cell.column().kind() == QuantityKind.CHOICE
        ? Double.NaN
        : book.number(cell.column(), cell.row());
  }

  /** Returns one of the amounts as text, with unit. */
  public static String shown(Book book, Amounts amounts, double value) {
    return book.shown(amounts.like(), new Outcome.Amount(value));
  }
}
