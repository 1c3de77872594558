package zonewright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;

/**
 * Searches the numbers for which what follows from them is as wanted. Points of a range are looked
 * at, and where what is wanted begins or ends between two of them, the gap is halved until nothing
 * is left between. Nothing is supposed of how the one follows from the other.
 */
public final class NumberSearch {
  /** When what follows is as wanted. */
  public enum Goal {
    EQUAL(1e-6),
    AT_MOST(1e-9),
    AT_LEAST(1e-9);

    /** By what share of the wanted number a result may be off. */
    private final double exactness;

    Goal(double exactness) {
      this.exactness = exactness;
    }
  }

  /**
   * Numbers side by side that all give what is wanted, as far as was looked.
   *
   * @param from the least; it gives what is wanted
   * @param to the greatest; it does too
   */
  public record Span(double from, double to) {
    /** By what share both ends may differ where a single number is meant. */
    private static final double SAME = 1e-4;

    /** Says whether it is one number, found as exactly as numbers go. */
    public boolean single() {
      return to - from <= SAME * Math.max(Math.abs(from), Math.abs(to));
    }
  }

  /** What share of a step through nothing still is nothing. */
  private static final double NOTHING = 1e-9;

  private static final int HALVINGS = 48;
  private static final int STEPS_TO_A_TURN = 40;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private final DoubleUnaryOperator comes;
  private final Goal goal;
  private final double wanted;
  private final boolean whole;
  private double tolerance;
  private final Map<Double, Double> known = new HashMap<>();

  /**
   * Prepares a search.
   *
   * @param comes what follows from a number; not-a-number where nothing does
   * @param wanted the number to be met
   * @param whole whether only whole numbers make sense to be tried
   */
  public NumberSearch(DoubleUnaryOperator comes, Goal goal, double wanted, boolean whole) {
    this.comes = comes;
    this.goal = goal;
    this.wanted = wanted;
    this.whole = whole;
    this.tolerance = goal.exactness * Math.abs(wanted);
  }

  /** Returns {@code parts + 1} numbers from {@code low} to {@code high}, by one factor each. */
  public static double[] byFactors(double low, double high, int parts) {
    double factor = Math.pow(high / low, 1.0 / parts);
    double[] points = new double[parts + 1];
    for (int i = 0; i < parts; i++) {
      points[i] = low * Math.pow(factor, i);
    }
    points[parts] = high;
    return points;
  }

  /** Returns what follows from a number, worked out once. */
  public double at(double number) {
    return known.computeIfAbsent(number, each -> comes.applyAsDouble(each));
  }

  /** Says whether a number gives what is wanted. */
  public boolean holds(double number) {
    double side = side(number);
    return switch (goal) {
      case EQUAL -> side == 0;
      case AT_MOST -> side <= 0;
      case AT_LEAST -> side >= 0;
    };
  }

  /** Returns how far what follows from a number is from what is wanted; endless where nothing. */
  public double distance(double number) {
    double distance = Math.abs(at(number) - wanted);
    return Double.isNaN(distance) ? Double.POSITIVE_INFINITY : distance;
  }

  /**
   * Returns on which side of what is wanted a number leads; not-a-number where it leads nowhere.
   */
  private double side(double number) {
    double off = at(number) - wanted;
    return Math.abs(off) <= tolerance ? 0 : Math.signum(off);
  }

  /**
   * Returns the first numbers that give what is wanted, looking from point to point only as far as
   * need be.
   *
   * @param points in their order, each greater than the one before
   */
  public Optional<Span> first(double[] points) {
    for (int i = 0; i + 1 < points.length; i++) {
      List<Span> found = spans(new double[] {points[i], points[i + 1]});
      if (!found.isEmpty()) {
        return Optional.of(found.get(0));
      }
    }
    return Optional.empty();
  }

  /**
   * Returns all numbers that give what is wanted, as far as they can be told by the points.
   *
   * @param points in their order, each greater than the one before
   */
  public List<Span> spans(double[] points) {
    if (wanted == 0 && goal == Goal.EQUAL) {
      tolerance = besideNothing(points);
    }
    List<Span> parts = new ArrayList<>();
    for (int i = 0; i < points.length; i++) {
      if (holds(points[i])) {
        parts.add(new Span(points[i], points[i]));
      }
      if (i + 1 < points.length) {
        between(points[i], points[i + 1]).ifPresent(parts::add);
      }
    }
    return joined(parts);
  }

  /** How far off nothing still is nothing: a share of the smallest step from below it to above. */
  private double besideNothing(double[] points) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i + 1 < points.length; i++) {
      double low = at(points[i]);
      double high = at(points[i + 1]);
      if (low * high < 0) {
        least = Math.min(least, Math.max(Math.abs(low), Math.abs(high)));
      }
    }
    return Double.isInfinite(least) ? 0 : NOTHING * least;
  }

  private Optional<Span> between(double low, double high) {
    if (holds(low) && holds(high)) {
      return Optional.of(new Span(low, high));
    }
    if (holds(low)) {
      return Optional.of(new Span(low, gap(low, high, this::holds).in()));
    }
    if (holds(high)) {
      return Optional.of(new Span(gap(high, low, this::holds).in(), high));
    }
    double side = side(low);
    if (Double.compare(side, side(high)) == 0) {
      return Optional.empty();
    }
    if (Double.isNaN(side)) {
      double begin = gap(high, low, number -> !Double.isNaN(at(number))).in();
      return begin == high ? Optional.empty() : between(begin, high);
    }
    double past = gap(low, high, number -> side(number) == side).out();
    return holds(past)
        ? Optional.of(new Span(past, gap(past, high, this::holds).in()))
        : Optional.empty();
  }

  /** Two numbers with nothing left between: the last that passes a test, and the next. */
  private record Gap(double in, double out) {}

  private Gap gap(double passes, double fails, DoublePredicate test) {
    double in = passes;
    double out = fails;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = snapped((in + out) / 2);
      if (middle == in || middle == out) {
        break;
      }
      if (test.test(middle)) {
        in = middle;
      } else {
        out = middle;
      }
    }
    return new Gap(in, out);
  }

  private double snapped(double number) {
    return whole ? Math.rint(number) : number;
  }

  private static List<Span> joined(List<Span> parts) {
    List<Span> joined = new ArrayList<>();
    for (Span part : parts) {
      int last = joined.size() - 1;
      if (last >= 0 && part.from() <= joined.get(last).to()) {
        double to = Math.max(part.to(), joined.get(last).to());
        joined.set(last, new Span(joined.get(last).from(), to));
      } else {
        joined.add(part);
      }
    }
    return joined;
  }

  /**
   * Returns points with more of them where what follows turns near what is wanted, so that numbers
   * which give it between two points are not passed by.
   *
   * @param points in their order, each greater than the one before
   */
  public double[] withTurns(double[] points) {
    TreeSet<Double> all = new TreeSet<>();
    for (int i = 0; i < points.length; i++) {
      all.add(points[i]);
      if (i > 0 && i + 1 < points.length && !whole && turns(points, i)) {
        all.add(turn(points[i - 1], points[i + 1], side(points[i])));
      }
    }
    return all.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Says whether a point comes nearer than those beside it; whole numbers do so only in steps. */
  private boolean turns(double[] points, int at) {
    double here = distance(points[at]);
    double before = distance(points[at - 1]);
    double after = distance(points[at + 1]);
    return !holds(points[at])
        && here <= before
        && here <= after
        && before != after
        && at(points[at]) != Math.rint(at(points[at]));
  }

  /**
   * Returns where between two numbers what follows goes farthest towards what is wanted, and past
   * it: golden sections (Kiefer, 1953).
   */
  private double turn(double from, double to, double side) {
    double low = from;
    double high = to;
    for (int i = 0; i < STEPS_TO_A_TURN; i++) {
      double left = high - GOLDEN * (high - low);
      double right = low + GOLDEN * (high - low);
      if (side * at(left) < side * at(right)) {
        high = right;
      } else {
        low = left;
      }
    }
    return (low + high) / 2;
  }
}
