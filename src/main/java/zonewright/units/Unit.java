package zonewright.units;

import com.google.errorprone.annotations.Immutable;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A unit of measurement, by its exact size in metres, kilograms, seconds and money.
 *
 * @param symbol how it is written after a number and in a heading
 * @param dimension what it measures
 * @param size its size in coherent SI units, exact
 */
@Immutable
public record Unit(String symbol, Dimension dimension, Scale size) {
  /** Returns the unit that is {@code number} of this one. */
  public Unit multiple(String number, String symbol) {
    return new Unit(symbol, dimension, size.times(Scale.of(number)));
  }

  /** Returns the product of both units. */
  public Unit times(Unit other, String symbol) {
    return new Unit(symbol, dimension.times(other.dimension), size.times(other.size));
  }

  /** Returns the quotient of both units. */
  public Unit per(Unit other, String symbol) {
    return new Unit(symbol, dimension.over(other.dimension), size.over(other.size));
  }

  /**
   * Returns how many of {@code other} one of this is.
   *
   * @throws IllegalArgumentException when the two measure different things
   */
  public double in(Unit other) {
    if (!dimension.equals(other.dimension)) {
      throw new IllegalArgumentException(
          "%s is %s and %s is %s"
              .formatted(symbol, dimension.inWords(), other.symbol, other.dimension.inWords()));
    }
    return size.over(other.size).toDouble();
  }

  /**
   * Returns {@code value} of this unit as a number of {@code other}.
   *
   * <p>A result within a few last bits of a number of at most 12 digits becomes that number, so
   * that a value converted and converted back is the value typed: 12 gpm is 45.424941408 L/min is
   * 12 gpm.
   */
  public double convert(double value, Unit other) {
    if (size.same(other.size) && dimension.equals(other.dimension)) {
      return value;
    }
    double raw = value * in(other);
    if (Double.isNaN(raw) || Double.isInfinite(raw) || raw == 0) {
      return raw;
    }
    double plain = new BigDecimal(raw).round(new MathContext(12)).doubleValue();
    return Math.abs(plain - raw) <= 4 * Math.ulp(raw) ? plain : raw;
  }
}
