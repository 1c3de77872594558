package zonewright.units;

import com.google.errorprone.annotations.Immutable;

/**
 * What a quantity is made of: powers of length, mass, time, temperature, money and electric
 * current.
 *
 * @param length power of length
 * @param mass power of mass
 * @param time power of time
 * @param temperature power of temperature
 * @param money power of money
 * @param current power of electric current
 */
@Immutable
public record Dimension(int length, int mass, int time, int temperature, int money, int current) {
  /** A pure number. */
  public static final Dimension NONE = new Dimension(0, 0, 0, 0, 0, 0);

  public static final Dimension LENGTH = new Dimension(1, 0, 0, 0, 0, 0);
  public static final Dimension MASS = new Dimension(0, 1, 0, 0, 0, 0);
  public static final Dimension TIME = new Dimension(0, 0, 1, 0, 0, 0);
  public static final Dimension TEMPERATURE = new Dimension(0, 0, 0, 1, 0, 0);
  public static final Dimension MONEY = new Dimension(0, 0, 0, 0, 1, 0);
  public static final Dimension CURRENT = new Dimension(0, 0, 0, 0, 0, 1);

  /** Written out: what a record makes by itself is slow at its first use, which is each start. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Dimension that
        && length == that.length
        && mass == that.mass
        && time == that.time
        && temperature == that.temperature
        && money == that.money
        && current == that.current;
  }

  @Override
  public int hashCode() {
    int hash = 31 * (31 * length + mass) + time;
    return 31 * (31 * (31 * hash + temperature) + money) + current;
  }

  /** Returns the dimension of a product. */
  public Dimension times(Dimension other) {
    return new Dimension(
        length + other.length,
        mass + other.mass,
        time + other.time,
        temperature + other.temperature,
        money + other.money,
        current + other.current);
  }

  /** Returns the dimension of a quotient. */
  public Dimension over(Dimension other) {
    return new Dimension(
        length - other.length,
        mass - other.mass,
        time - other.time,
        temperature - other.temperature,
        money - other.money,
        current - other.current);
  }

  /** Returns the dimension in words a message can use, such as {@code length³/time}. */
  public String inWords() {
    StringBuilder above = new StringBuilder();
    StringBuilder below = new StringBuilder();
    append(above, below, "length", length);
    append(above, below, "mass", mass);
    append(above, below, "time", time);
    append(above, below, "temperature", temperature);
    append(above, below, "money", money);
    append(above, below, "electric current", current);
    if (above.isEmpty() && below.isEmpty()) {
      return "a pure number";
    }
    return (above.isEmpty() ? "1" : above) + (below.isEmpty() ? "" : "/" + below);
  }

  private static void append(StringBuilder above, StringBuilder below, String word, int power) {
    StringBuilder part = power > 0 ? above : below;
    if (power == 0) {
      return;
    }
    if (!part.isEmpty()) {
      part.append('·');
    }
    part.append(word);
    switch (Math.abs(power)) {
      case 1 -> {}
      case 2 -> part.append('²');
      case 3 -> part.append('³');
      default -> part.append('^').append(Math.abs(power));
    }
  }
}
