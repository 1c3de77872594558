package zonewright.uncertainty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.water.InputRange;

/**
 * An input that is known only as a range, with its range in each row where it has one. Of an input
 * of the site there is one row, and its numbers are parts of what stands in the months.
 */
final class UncertainInput {
  /** Who says so, of a range that a person typed. */
  static final String TYPED = "typed";

  /** The parts of a range at which an input is tried by itself, beside the number held. */
  private static final double[] PARTS = {0, 0.25, 0.5, 0.75, 1};

  /** At how many numbers an input is tried by itself. */
  static final int STEPS = PARTS.length + 1;

  private final InputRange range;
  private final double[] held;
  private final double[] least;
  private final double[] greatest;
  private final String[] origins;

  private UncertainInput(InputRange range, int rows) {
    this.range = range;
    this.held = new double[rows];
    this.least = new double[rows];
    this.greatest = new double[rows];
    this.origins = new String[rows];
    Arrays.fill(origins, "");
  }

  /**
   * Returns the inputs that are uncertain anywhere, in the order of the sheets; none without zones,
   * for then nothing follows from them.
   */
  static List<UncertainInput> of(Book book) {
    PublishedRanges published = new PublishedRanges(book);
    List<UncertainInput> all = new ArrayList<>();
    int zones = book.rows(Sheets.ZONES);
    for (InputRange range : zones == 0 ? List.<InputRange>of() : InputRange.all()) {
      int rows = range.ofSite() ? 1 : zones;
      UncertainInput input = new UncertainInput(range, rows);
      boolean any = false;
      for (int row = 0; row < rows; row++) {
        any |= input.read(book, published, row);
      }
      if (any) {
        all.add(input);
      }
    }
    return all;
  }

  private boolean read(Book book, PublishedRanges published, int row) {
    double number = range.ofSite() ? 1 : book.number(range.input().reference(), row);
    held[row] = number;
    least[row] = number;
    greatest[row] = number;
    if (Double.isNaN(number)) {
      return false;
    }
    double from = book.number(range.least().reference(), row);
    double to = book.number(range.greatest().reference(), row);
    if (!Double.isNaN(from) || !Double.isNaN(to)) {
      take(row, from, to, TYPED);
    } else {
      published
          .of(range, row)
          .ifPresent(known -> take(row, known.least(), known.greatest(), known.origin()));
    }
    return uncertain(row);
  }

  /** The number the design rests on belongs to the range, and may be its end. */
  private void take(int row, double from, double to, String origin) {
    least[row] = from < held[row] ? from : held[row];
    greatest[row] = to > held[row] ? to : held[row];
    origins[row] = origin;
  }

  InputRange range() {
    return range;
  }

  Column column() {
    return range.input();
  }

  int rows() {
    return held.length;
  }

  /** Returns the row of this input that counts for a zone. */
  int rowOf(int zone) {
    return range.ofSite() ? 0 : zone;
  }

  boolean uncertain(int row) {
    return least[row] < greatest[row];
  }

  double held(int row) {
    return held[row];
  }

  /** Returns the numbers the design rests on, row by row. */
  double[] allHeld() {
    return held.clone();
  }

  /** Returns numbers over all of a range, going up, with that the design rests on among them. */
  double[] steps(int row) {
    double[] steps =
        DoubleStream.concat(
                Arrays.stream(PARTS).map(part -> at(row, part)), DoubleStream.of(held[row]))
            .toArray();
    Arrays.sort(steps);
    return steps;
  }

  /** Returns a number of the range: the least for 0, the greatest for 1. */
  double at(int row, double part) {
    return part == 0
        ? least[row]
        : part == 1 ? greatest[row] : least[row] + part * (greatest[row] - least[row]);
  }

  /** Returns who says so. */
  String origin(int row) {
    return origins[row];
  }

  /** Returns a range in words; nothing where there is none. */
  Optional<String> inWords(Book book, int row) {
    if (!uncertain(row)) {
      return Optional.empty();
    }
    Column shown = range.ofSite() ? range.least() : range.input();
    return Optional.of(
        "%s to %s"
            .formatted(Words.of(book, shown, least[row]), Words.of(book, shown, greatest[row])));
  }
}
