package zonewright.formula;

import java.util.List;
import java.util.stream.Stream;

/**
 * Solves an equation for a cell that stands in it once: sums, products, quotients and powers are
 * taken to the other side one after the other. Of a choice every way is taken in which the cell
 * stands; which of them holds must be seen afterwards.
 */
public final class Rearranged {
  private final Reference unknown;

  private Rearranged(Reference unknown) {
    this.unknown = unknown;
  }

  /**
   * Returns what a cell is, by an equation that says what another is.
   *
   * @param equation the right side of an equation
   * @param unknown a cell in it
   * @param left the left side
   * @return a solution for each way of a choice; none where the cell stands there twice, or in
   *     something that cannot be undone
   */
  public static List<Formula> of(Formula equation, Reference unknown, Formula left) {
    return new Rearranged(unknown).solved(equation, left);
  }

  private List<Formula> solved(Formula side, Formula other) {
    if (side instanceof Formula.Cell cell) {
      return cell.reference().equals(unknown) ? List.of(other) : List.of();
    }
    if (side instanceof Formula.Arithmetic sum) {
      return in(sum.left()) == in(sum.right()) ? List.of() : arithmetic(sum, other);
    }
    if (side instanceof Formula.Power power && !in(power.exponent())) {
      return solved(power.base(), other.power(Formula.number(1).over(power.exponent())));
    }
    if (side instanceof Formula.Measure measure) {
      return solved(measure.operand(), other.times(Formula.amount(1, measure.unit())));
    }
    if (side instanceof Formula.Choose choose) {
      return oneOf(choose.then(), choose.otherwise(), other);
    }
    return side instanceof Formula.Extreme extreme
        ? oneOf(extreme.left(), extreme.right(), other)
        : List.of();
  }

  private List<Formula> oneOf(Formula first, Formula second, Formula other) {
    return Stream.of(first, second)
        .filter(this::in)
        .flatMap(way -> solved(way, other).stream())
        .toList();
  }

  private List<Formula> arithmetic(Formula.Arithmetic sum, Formula other) {
    boolean onLeft = in(sum.left());
    Formula side = onLeft ? sum.left() : sum.right();
    Formula known = onLeft ? sum.right() : sum.left();
    return switch (sum.operator()) {
      case PLUS -> solved(side, other.minus(known));
      case TIMES -> solved(side, other.over(known));
      case MINUS -> solved(side, onLeft ? other.plus(known) : known.minus(other));
      case OVER -> solved(side, onLeft ? other.times(known) : known.over(other));
    };
  }

  /** Says whether the cell counts in a formula; what only decides does not. */
  private boolean in(Formula formula) {
    if (formula instanceof Formula.Cell cell) {
      return cell.reference().equals(unknown);
    }
    if (formula instanceof Formula.Choose choose) {
      return in(choose.then()) || in(choose.otherwise());
    }
    if (formula instanceof Formula.Arithmetic sum) {
      return in(sum.left()) || in(sum.right());
    }
    if (formula instanceof Formula.Extreme extreme) {
      return in(extreme.left()) || in(extreme.right());
    }
    return Dependencies.of(formula).cells().contains(unknown);
  }
}
