package zonewright.formula;

/**
 * The few rules of arithmetic that all readings share, so that a number is the same from the grid,
 * the workbook and the worked sum.
 *
 * <p>Not-a-number stands for "no number here" and runs through every operation; why there is none
 * is found by explaining the cell.
 */
public final class Numbers {
  /**
   * How near to a whole number counts as whole, in the unit rounded to. A run of 12 minutes reached
   * by two ways that differ in the last bits is 12 minutes in both.
   */
  public static final double WHOLE_ENOUGH = 1e-9;

  /**
   * How near below a half counts as a half where the nearest whole number is wanted. Wide enough
   * for the last bits of ten million in cents, where half a cent too little would show.
   */
  public static final double HALF_ENOUGH = 1e-6;

  /**
   * How far apart, relative to the right side, two numbers may be and still count as equal: sixteen
   * units in the last place.
   */
  public static final double EQUAL_ENOUGH = 0x1p-48;

  private Numbers() {}

  /**
   * Returns the least whole number that {@code value} does not exceed by more than {@link
   * #WHOLE_ENOUGH}, never below 0.
   */
  public static double roundUp(double value) {
    return Math.ceil(Math.max(0, value - WHOLE_ENOUGH));
  }

  /**
   * Returns the greatest whole number that is not above {@code value} by more than {@link
   * #WHOLE_ENOUGH}.
   */
  public static double roundDown(double value) {
    return Math.floor(value + WHOLE_ENOUGH);
  }

  /**
   * Returns the nearest whole number; halves, and what lies below a half by no more than {@link
   * #HALF_ENOUGH}, go up.
   */
  public static double roundNearest(double value) {
    return Math.floor(value + 0.5 + HALF_ENOUGH);
  }

  /** Returns the quotient; no number when dividing by zero. */
  public static double quotient(double above, double below) {
    return finite(above / below);
  }

  /** Returns {@code value}, or no number where it is infinite. */
  public static double finite(double value) {
    return value + 0 * value;
  }

  /** Returns the power, or no number outside its domain; no number to the power 0 stays none. */
  public static double power(double base, double exponent) {
    return Double.isNaN(base) ? base : finite(Math.pow(base, exponent));
  }

  /** Says whether {@code left} is at most {@code right}, equal enough included. */
  public static boolean atMost(double left, double right) {
    return left - right <= EQUAL_ENOUGH * Math.abs(right);
  }

  /** Returns the larger; no number stays so. */
  public static double larger(double left, double right) {
    return Math.max(left, right);
  }

  /** Returns the smaller; no number stays so. */
  public static double smaller(double left, double right) {
    return Math.min(left, right);
  }
}
