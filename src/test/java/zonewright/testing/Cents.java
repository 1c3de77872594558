package zonewright.testing;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Amounts of money as decimal numbers, to hold them against sums worked out exactly. */
public final class Cents {
  private Cents() {}

  /** Returns an amount to the hundredth. */
  public static BigDecimal of(double amount) {
    return BigDecimal.valueOf(amount).setScale(2, RoundingMode.HALF_UP);
  }
}
