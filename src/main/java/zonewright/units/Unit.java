package zonewright.units;

import com.google.errorprone.annotations.Immutable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A unit of measurement, by its exact size in metres, kilograms, seconds, kelvins and money.
 *
 * @param symbol how it is written after a number and in a heading
 * @param dimension what it measures
 * @param size its size in coherent SI units, exact
 * @param zero how many of it lie between absolute zero and its own zero; 0 for all but scales of
 *     temperature
 */
@Immutable
public record Unit(String symbol, Dimension dimension, Scale size, BigDecimal zero) {
  /** Makes a unit whose zero is the absence of what it measures. */
  public Unit(String symbol, Dimension dimension, Scale size) {
    this(symbol, dimension, size, BigDecimal.ZERO);
  }

  /** Written out: what a record makes by itself is slow at its first use, which is each start. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof Unit that
            && symbol.equals(that.symbol)
            && dimension.equals(that.dimension)
            && size.equals(that.size)
            && zero.equals(that.zero));
  }

  @Override
  public int hashCode() {
    return 31 * symbol.hashCode() + dimension.hashCode();
  }

  /** Returns the symbol for use in a sentence, where “in” would be read as another word. */
  public String inWords() {
    return symbol.equals("in") ? "inches" : symbol;
  }

  /** Returns this unit counted from a zero that lies {@code number} of it above absolute zero. */
  public Unit from(String number, String symbol) {
    return new Unit(symbol, dimension, size, new BigDecimal(number));
  }

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
    if (!dimension.equals(other.dimension)) {
      in(other);
    }
    boolean sameZero = zero.signum() == 0 && other.zero.signum() == 0;
    boolean same = size.same(other.size) && zero.compareTo(other.zero) == 0;
    if (same || Double.isNaN(value) || Double.isInfinite(value)) {
      return value;
    }
    double raw = sameZero ? value * in(other) : shifted(value, other);
    if (Double.isNaN(raw) || Double.isInfinite(raw) || raw == 0) {
      return raw;
    }
    return sameZero
        ? snapped(raw, new BigDecimal(raw).round(new MathContext(12)), raw)
        : snapped(raw, new BigDecimal(raw).setScale(9, RoundingMode.HALF_EVEN), farthest(other));
  }

  /** The plain number where it is as good as {@code raw} for numbers as great as {@code extent}. */
  private static double snapped(double raw, BigDecimal plain, double extent) {
    double near = plain.doubleValue();
    return Math.abs(near - raw) <= 4 * Math.ulp(extent) ? near : raw;
  }

  private double farthest(Unit other) {
    return zero.max(other.zero).doubleValue();
  }

  private double shifted(double value, Unit other) {
    Scale factor = size.over(other.size);
    return new BigDecimal(Double.toString(value))
        .add(zero)
        .multiply(factor.above())
        .divide(factor.below(), MathContext.DECIMAL128)
        .subtract(other.zero)
        .doubleValue();
  }

  /**
   * Returns the reading of this scale at which the other reads 0: 32 for degrees Fahrenheit against
   * Celsius. 0 for units that share their zero.
   */
  public double readingAtZeroOf(Unit other) {
    Scale factor = other.size.over(size);
    return other
        .zero
        .multiply(factor.above())
        .divide(factor.below(), MathContext.DECIMAL128)
        .subtract(zero)
        .doubleValue();
  }
}
