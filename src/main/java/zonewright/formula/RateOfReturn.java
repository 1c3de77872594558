package zonewright.formula;

import java.util.function.IntToDoubleFunction;

/**
 * The internal rate of return of yearly cash: the rate at which all of it, discounted to the start,
 * comes to nothing.
 *
 * <p>Only for cash that is paid first and received later, or the other way round: then there is one
 * rate at most. Where the signs change more than once there may be several, and none is given.
 */
public final class RateOfReturn {
  private static final double LEAST = -0.999_999;
  private static final double MOST = 1e6;

  /** Enough halvings to come from the widest bracket down to the last bits. */
  private static final int HALVINGS = 200;

  private RateOfReturn() {}

  /**
   * Returns the rate as a part of one, or no number where there is none, or not one only.
   *
   * @param years how many amounts there are; the first is at the start
   * @param cash the amount of each year, counted from 0
   */
  public static double of(int years, IntToDoubleFunction cash) {
    if (!changesSignOnce(years, cash)) {
      return Double.NaN;
    }
    boolean paidFirst = valueAt(MOST, years, cash) < 0;
    double low = LEAST;
    double high = 0.1;
    while (valueAt(high, years, cash) > 0 == paidFirst && high < MOST) {
      low = high;
      high = Math.min(MOST, high * 4);
    }
    for (int i = 0; i < HALVINGS && high - low > Math.ulp(high); i++) {
      double middle = low + (high - low) / 2;
      if (valueAt(middle, years, cash) > 0 == paidFirst) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high >= MOST || low <= LEAST ? Double.NaN : low + (high - low) / 2;
  }

  private static boolean changesSignOnce(int years, IntToDoubleFunction cash) {
    int changes = 0;
    double before = 0;
    for (int year = 0; year < years; year++) {
      double sign = Math.signum(cash.applyAsDouble(year));
      if (Double.isNaN(sign)) {
        return false;
      }
      if (sign != 0) {
        changes += before != 0 && sign != before ? 1 : 0;
        before = sign;
      }
    }
    return changes == 1;
  }

  /** What all the cash is worth at the start, by Horner's rule from the last year back. */
  private static double valueAt(double rate, int years, IntToDoubleFunction cash) {
    double value = 0;
    for (int year = years - 1; year >= 0; year--) {
      value = value / (1 + rate) + cash.applyAsDouble(year);
    }
    return value;
  }
}
