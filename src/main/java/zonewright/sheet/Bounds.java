package zonewright.sheet;

import java.util.Optional;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;

/**
 * The range an input may have.
 *
 * @param low least value, in {@code unit}
 * @param lowIncluded whether the least value itself is allowed
 * @param high greatest value, in {@code unit}, itself allowed
 * @param whole whether only whole numbers make sense
 * @param unit the unit of both ends
 */
public record Bounds(double low, boolean lowIncluded, double high, boolean whole, Unit unit) {
  /** Significant digits of an end of the range in words: more than anyone measures. */
  private static final int ENOUGH_DIGITS = 6;

  /** Returns the range above {@code low} up to {@code high}. */
  public static Bounds above(double low, double high, Unit unit) {
    return new Bounds(low, false, high, false, unit);
  }

  /** Returns the range from {@code low} to {@code high}, both allowed. */
  public static Bounds from(double low, double high, Unit unit) {
    return new Bounds(low, true, high, false, unit);
  }

  /** Returns the range from {@code low}, allowed, without an upper end. */
  public static Bounds atLeast(double low, Unit unit) {
    return new Bounds(low, true, Double.POSITIVE_INFINITY, false, unit);
  }

  /** Returns the whole numbers of this range. */
  public Bounds wholeNumbers() {
    return new Bounds(low, lowIncluded, high, true, unit);
  }

  /** Returns the least value in the unit of a column. */
  public double low(QuantityKind kind, UnitSystem system) {
    return unit.convert(low, kind.unit(system));
  }

  /** Returns the greatest value in the unit of a column. */
  public double high(QuantityKind kind, UnitSystem system) {
    return unit.convert(high, kind.unit(system));
  }

  /** Returns what is wrong with a value in the unit of a column; empty where it is in range. */
  public Optional<String> problem(double value, QuantityKind kind, UnitSystem system) {
    double least = low(kind, system);
    boolean lowFine = lowIncluded ? value >= least : value > least;
    boolean fine = lowFine && value <= high(kind, system);
    if (fine && (!whole || value == Math.rint(value))) {
      return Optional.empty();
    }
    return Optional.of(
        "%s is out of range; it must be %s"
            .formatted(shown(value, kind, system), inWords(kind, system)));
  }

  /** Returns the range in words, such as {@code above 0 and at most 10000 ft²}. */
  public String inWords(QuantityKind kind, UnitSystem system) {
    String least = end(low(kind, system), kind, system);
    if (Double.isInfinite(high)) {
      return (whole ? "a whole number " : "") + (lowIncluded ? "at least " : "above ") + least;
    }
    String most = end(high(kind, system), kind, system);
    return (whole ? "a whole number " : "")
        + (lowIncluded
            ? "from " + least + " to " + most
            : "above " + least + " and at most " + most);
  }

  /** Returns an end of the range, without digits that only come from another unit. */
  private static String end(double value, QuantityKind kind, UnitSystem system) {
    double scale = Math.pow(10, ENOUGH_DIGITS - 1 - Math.floor(Math.log10(Math.abs(value))));
    boolean rounds = value != 0 && Double.isFinite(scale) && Math.abs(value) < 1e15;
    return shown(rounds ? Math.rint(value * scale) / scale : value, kind, system);
  }

  private static String shown(double value, QuantityKind kind, UnitSystem system) {
    String symbol = kind.unit(system).symbol();
    String number =
        Math.abs(value) < 1e15 ? QuantityText.typed(value, kind) : Double.toString(value);
    return symbol.isEmpty() ? number : number + " " + symbol;
  }
}
