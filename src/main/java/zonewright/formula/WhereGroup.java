package zonewright.formula;

import java.util.Optional;

/** The rows of a table that have one key, and what comes of the first so many of them. */
final class WhereGroup {
  private final int[] rows;

  /** The limited numbers in the order in which rows come in; empty without a limit. */
  private final double[] limited;

  /** What comes of none, of the first, of the first two rows, and so on. */
  private final double[] running;

  private final int[] order;
  private final Matching.Limit limit;
  private final boolean broken;

  private WhereGroup(
      int[] rows,
      double[] limited,
      double[] running,
      int[] order,
      Matching.Limit limit,
      boolean broken) {
    this.rows = rows;
    this.limited = limited;
    this.running = running;
    this.order = order;
    this.limit = limit;
    this.broken = broken;
  }

  /** Makes a group all of whose rows count. */
  static WhereGroup of(WhereKind kind, BlockColumn column, int[] rows) {
    double all = kind.ofNone();
    for (int i = 0; i < rows.length; i++) {
      all = kind.with(all, value(kind, column, rows[i]), i == 0);
    }
    return new WhereGroup(rows, new double[0], new double[] {all}, new int[0], null, false);
  }

  /**
   * Makes a group whose rows count as far as a number of theirs keeps to a limit.
   *
   * @param before the group of this key before the last change, if any: its order nearly fits
   */
  static WhereGroup of(
      WhereKind kind,
      BlockColumn column,
      int[] rows,
      BlockColumn limited,
      Matching.Limit limit,
      Optional<WhereGroup> before) {
    double[] numbers = new double[rows.length];
    boolean broken = false;
    for (int i = 0; i < rows.length; i++) {
      numbers[i] = limited.at(rows[i]);
      broken |= Double.isNaN(numbers[i]);
    }
    boolean rising = limit.fromBelow();
    int[] order =
        before
            .map(group -> StableOrder.again(numbers, rising, group.order, group.limited))
            .orElseGet(() -> StableOrder.of(numbers, rising));
    double[] ordered = new double[order.length];
    double[] running = new double[order.length + 1];
    running[0] = kind.ofNone();
    for (int i = 0; i < order.length; i++) {
      ordered[i] = numbers[order[i]];
      running[i + 1] = kind.with(running[i], value(kind, column, rows[order[i]]), i == 0);
    }
    return new WhereGroup(rows, ordered, running, order, limit, broken);
  }

  private static double value(WhereKind kind, BlockColumn column, int row) {
    return kind == WhereKind.COUNT ? 1 : column.at(row);
  }

  /** Returns what comes of the rows that keep to the limit; no number where one cannot be told. */
  double within(double than) {
    if (limit == null) {
      return running[0];
    }
    if (broken) {
      return Double.NaN;
    }
    int inside = 0;
    int outside = limited.length;
    while (inside < outside) {
      int middle = (inside + outside) >>> 1;
      if (limit.comparator().holds(limited[middle], than)) {
        inside = middle + 1;
      } else {
        outside = middle;
      }
    }
    return running[inside];
  }

  /**
   * Puts into the place of each row of the group what {@link #within} its own number is: going
   * through the rows in their order, the next answer is never far from the last.
   */
  void withinOwn(double[] target) {
    Comparator comparator = limit.comparator();
    int inside = 0;
    for (int i = 0; i < order.length; i++) {
      double than = limited[i];
      while (inside < limited.length && comparator.holds(limited[inside], than)) {
        inside++;
      }
      while (inside > 0 && !comparator.holds(limited[inside - 1], than)) {
        inside--;
      }
      target[rows[order[i]]] = broken ? Double.NaN : running[inside];
    }
  }
}
