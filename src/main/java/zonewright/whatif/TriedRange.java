package zonewright.whatif;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.NumberSearch;
import zonewright.units.QuantityText;
import zonewright.units.UnitSystem;

/**
 * The numbers that are tried in a cell: those its column allows, and where these have no end, so
 * many times what the cell holds.
 */
final class TriedRange {
  /** How many equal steps, and how many steps of one factor, lead through the range. */
  private static final int STEPS = 240;

  /** How many steps of one factor lead through the numbers near what the cell holds. */
  private static final int STEPS_NEARBY = 120;

  private static final double NEARBY = 4;
  private static final double FAR = 1e4;
  private static final double LEAST = 1e-4;
  private static final double LEAST_SHARE = 1e-6;

  /** Significant digits of what is found; more only where these do not do. */
  private static final int DIGITS = 4;

  private static final int MOST_DIGITS = 16;

  /** By what share a number lies within the end of a range at the least, where the answer jumps. */
  private static final double INSIDE = 1e-11;

  private final Column column;
  private final UnitSystem system;
  private final Optional<Bounds> bounds;
  private final double low;
  private final double high;
  private final double held;
  private final double[] points;

  /**
   * Reads the range of a column.
   *
   * @param held what the cell holds; not-a-number where it is blank
   */
  TriedRange(Column column, UnitSystem system, double held) {
    this.column = column;
    this.system = system;
    this.held = held;
    this.bounds = column.bounds();
    double far = FAR * (Double.isNaN(held) || held == 0 ? 1 : Math.abs(held));
    this.high =
        bounds.map(each -> each.high(column.kind(), system)).filter(Double::isFinite).orElse(far);
    double open = column.kind().mayBeNegative() ? -far : 0;
    this.low = bounds.map(each -> each.low(column.kind(), system)).orElse(open);
    this.points = made();
  }

  /** Says whether only whole numbers make sense. */
  boolean whole() {
    return bounds.map(Bounds::whole).orElse(false);
  }

  private boolean allows(double number) {
    return number >= low
        && number <= high
        && bounds.flatMap(each -> each.problem(number, column.kind(), system)).isEmpty();
  }

  /** Returns the numbers to try first, in their order. */
  double[] points() {
    return points.clone();
  }

  private double[] made() {
    Set<Double> all = new TreeSet<>();
    for (int i = 0; i <= STEPS; i++) {
      add(all, low + (high - low) * i / STEPS);
    }
    factors(all, Math.max(low, Math.min(LEAST, high * LEAST_SHARE)), high, STEPS);
    factors(all, held / NEARBY, held * NEARBY, STEPS_NEARBY);
    add(all, held);
    add(all, high);
    return all.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private void factors(Set<Double> all, double from, double to, int parts) {
    if (from > 0 && to > from) {
      for (double point : NumberSearch.byFactors(from, to, parts)) {
        add(all, point);
      }
    }
  }

  private void add(Set<Double> all, double number) {
    double point = whole() ? Math.rint(number) : number;
    if (allows(point)) {
      all.add(point);
    }
  }

  /** Returns a number of a few digits that gives what is wanted, where such are all alike. */
  double single(NumberSearch search, NumberSearch.Span span) {
    double middle = (span.from() + span.to()) / 2;
    for (int digits = DIGITS - 1; digits <= MOST_DIGITS && !whole(); digits++) {
      double rounded = rounded(middle, digits, RoundingMode.HALF_UP);
      if (allows(rounded) && search.holds(rounded)) {
        return rounded;
      }
    }
    return whole() ? span.from() : middle;
  }

  /**
   * Returns a number of a few digits at the end of a span, safely within it.
   *
   * @param upper whether the greater end is meant
   */
  double within(NumberSearch search, NumberSearch.Span span, boolean upper) {
    double end = upper ? span.to() : span.from();
    if (whole() || end == 0 || (upper ? isGreatest(end) : isLeast(end))) {
      return end;
    }
    boolean outward = upper == end > 0;
    for (int digits = DIGITS; digits <= MOST_DIGITS; digits++) {
      double rounded = rounded(end, digits, outward ? RoundingMode.DOWN : RoundingMode.UP);
      double step = Math.pow(10, Math.floor(Math.log10(Math.abs(end))) + 1 - digits);
      double inner = rounded(rounded + (upper ? -step : step), digits, RoundingMode.HALF_UP);
      for (double each : new double[] {rounded, inner}) {
        double beyond = each + (upper ? INSIDE : -INSIDE) * Math.abs(each);
        boolean inside = each >= span.from() && each <= span.to();
        if (inside && allows(each) && search.holds(each) && search.holds(beyond)) {
          return each;
        }
      }
    }
    return end;
  }

  private static double rounded(double number, int digits, RoundingMode way) {
    return new BigDecimal(Double.toString(number))
        .round(new MathContext(digits, way))
        .doubleValue();
  }

  /** Returns what the cell holds now; not-a-number where it is blank. */
  double held() {
    return held;
  }

  /** Returns the range in words, such as "above 0 and at most 2". */
  String inWords() {
    return bounds
        .filter(each -> Double.isFinite(each.high()))
        .map(each -> each.inWords(column.kind(), system))
        .orElseGet(
            () ->
                "%s to %s %s"
                    .formatted(
                        QuantityText.significant(low, DIGITS),
                        QuantityText.significant(high, DIGITS),
                        column.kind().unit(system).symbol())
                    .strip()
                    .concat(", as far as was looked"));
  }

  /** Says whether a number is the least that is tried. */
  boolean isLeast(double number) {
    return number <= points[0];
  }

  /** Says whether a number is the greatest that is tried. */
  boolean isGreatest(double number) {
    return number >= points[points.length - 1];
  }
}
