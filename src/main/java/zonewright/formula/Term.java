package zonewright.formula;

import java.util.Objects;
import zonewright.units.Unit;

/**
 * What equations are made of, and what they are written with: a formula, or a column or its name,
 * which means its cell in the same row or the one cell of a one-row table.
 */
public interface Term {
  /** Returns it as a tree. */
  Formula asFormula();

  default Formula plus(Term other) {
    return arithmetic(Operator.PLUS, other);
  }

  default Formula plus(double other) {
    return plus(Formula.number(other));
  }

  default Formula minus(Term other) {
    return arithmetic(Operator.MINUS, other);
  }

  default Formula minus(double other) {
    return minus(Formula.number(other));
  }

  default Formula times(Term other) {
    return arithmetic(Operator.TIMES, other);
  }

  default Formula times(double other) {
    return times(Formula.number(other));
  }

  default Formula over(Term other) {
    return arithmetic(Operator.OVER, other);
  }

  default Formula over(double other) {
    return over(Formula.number(other));
  }

  private Formula arithmetic(Operator operator, Term other) {
    return new Formula.Arithmetic(operator, asFormula(), other.asFormula());
  }

  /** Returns this pure number to a power. */
  default Formula power(Term exponent) {
    return new Formula.Power(asFormula(), exponent.asFormula());
  }

  /** Returns this pure number to a power. */
  default Formula power(double exponent) {
    return power(Formula.number(exponent));
  }

  /** Returns this rounded up to whole {@code unit}s. */
  default Formula roundedUpTo(Unit unit) {
    return rounded(RoundingWay.UP, unit);
  }

  /** Returns this rounded down to whole {@code unit}s. */
  default Formula roundedDownTo(Unit unit) {
    return rounded(RoundingWay.DOWN, unit);
  }

  /** Returns this rounded to the nearest whole number of {@code unit}s, halves up. */
  default Formula roundedTo(Unit unit) {
    return rounded(RoundingWay.NEAREST, unit);
  }

  private Formula rounded(RoundingWay way, Unit unit) {
    return new Formula.Rounding(way, asFormula(), Objects.requireNonNull(unit));
  }

  /** Returns a function of this number. */
  default Formula apply(FunctionKind kind) {
    return new Formula.Function(kind, asFormula());
  }

  /** Returns how many of {@code unit} this is. */
  default Formula measuredIn(Unit unit) {
    return new Formula.Measure(asFormula(), unit);
  }

  /** Says: this is at most the other; equal included. */
  default Condition atMost(Term other) {
    return compared(Comparator.AT_MOST, other);
  }

  /** Says: this is at most the other; equal included. */
  default Condition atMost(double other) {
    return atMost(Formula.number(other));
  }

  /** Says: this is at least the other; equal included. */
  default Condition atLeast(Term other) {
    return compared(Comparator.AT_LEAST, other);
  }

  /** Says: this is at least the other; equal included. */
  default Condition atLeast(double other) {
    return atLeast(Formula.number(other));
  }

  /** Says: this is above the other. */
  default Condition above(Term other) {
    return compared(Comparator.ABOVE, other);
  }

  /** Says: this is above the other. */
  default Condition above(double other) {
    return above(Formula.number(other));
  }

  /** Says: this is below the other. */
  default Condition below(Term other) {
    return compared(Comparator.BELOW, other);
  }

  /** Says: this is below the other. */
  default Condition below(double other) {
    return below(Formula.number(other));
  }

  private Condition compared(Comparator comparator, Term other) {
    return new Condition.Comparison(comparator, asFormula(), other.asFormula());
  }
}
