package zonewright.units;

import com.google.errorprone.annotations.Immutable;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * An exact positive ratio, so that a factor such as 231 × 60 ÷ 144 is rounded once, at the very
 * end.
 *
 * @param above numerator, above 0
 * @param below denominator, above 0
 */
@Immutable
public record Scale(BigDecimal above, BigDecimal below) {
  public static final Scale ONE = new Scale(BigDecimal.ONE, BigDecimal.ONE);

  public Scale {
    if (above.signum() <= 0 || below.signum() <= 0) {
      throw new IllegalArgumentException("a scale is above 0, not " + above + "/" + below);
    }
  }

  /** Written out: what a record makes by itself is slow at its first use, which is each start. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof Scale that && above.equals(that.above) && below.equals(that.below));
  }

  @Override
  public int hashCode() {
    return 31 * above.hashCode() + below.hashCode();
  }

  /** Returns the scale of the decimal number written. */
  public static Scale of(String decimal) {
    return new Scale(new BigDecimal(decimal), BigDecimal.ONE);
  }

  /** Returns the product, exactly. */
  public Scale times(Scale other) {
    if (equals(ONE) || other.equals(ONE)) {
      return equals(ONE) ? other : this;
    }
    return new Scale(above.multiply(other.above), below.multiply(other.below));
  }

  /** Returns the quotient, exactly. */
  public Scale over(Scale other) {
    if (other.equals(ONE)) {
      return this;
    }
    return new Scale(above.multiply(other.below), below.multiply(other.above));
  }

  /** Says whether both stand for the same ratio. */
  public boolean same(Scale other) {
    return equals(other) || above.multiply(other.below).compareTo(below.multiply(other.above)) == 0;
  }

  /** Returns the ratio as the nearest double: 34 digits first, then rounded. */
  public double toDouble() {
    return above.divide(below, MathContext.DECIMAL128).doubleValue();
  }
}
