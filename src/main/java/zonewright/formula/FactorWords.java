package zonewright.formula;

import static java.util.Map.entry;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the numbers are that stand in a worked equation though nobody declared them: what its units
 * make of each other.
 */
public final class FactorWords {
  /** The short ones; those of many digits are {@link NamedConstant}s. */
  private static final Map<Double, String> SHORT =
      Map.ofEntries(
          entry(60.0, "minutes in an hour, or seconds in a minute"),
          entry(1440.0, "minutes in a day"),
          entry(12.0, "inches in a foot"),
          entry(96.25, "60 × 231 ÷ 144: gallons a minute on a square foot, as inches an hour"),
          entry(0.06, "60 ÷ 1000: seconds in a minute, by litres and millimetres"),
          entry(0.001, "1 ÷ 1000"),
          entry(1000.0, "1000 of the smaller unit in the greater"),
          entry(0.3048, "metres in a foot"),
          entry(0.44704, "m/s in a mile an hour"),
          entry(25.4, "millimetres in an inch"),
          entry(1.8, "°F in a degree Celsius"),
          entry(32.0, "°F at 0 °C"),
          entry(9.80665, "kPa of a metre of water of 1000 kg/m³"),
          entry(3_600_000.0, "L × kPa that 1 kWh lifts without loss"));

  private FactorWords() {}

  /** Returns what a factor is; nothing where it is no factor between units. */
  static Optional<String> of(double factor) {
    return Optional.ofNullable(SHORT.get(factor))
        .or(() -> NamedConstant.of(factor).map(NamedConstant::words));
  }

  /**
   * Returns a line for each factor that units brought.
   *
   * @param constants the numbers of the equation as it was worked out
   * @param declared the equation of quantities; its own numbers are said by it
   */
  public static List<String> of(Set<Double> constants, Formula declared) {
    Set<Double> own = new HashSet<>();
    Rewriter.parts(
        declared,
        part -> {
          if (part instanceof Formula.Constant constant) {
            own.add(constant.value());
            own.add(constant.value() * constant.unit().size().toDouble());
          }
          return true;
        });
    return constants.stream()
        .filter(constant -> !own.contains(constant))
        .flatMap(
            constant ->
                of(constant).stream()
                    .map(words -> PrintedText.number(constant).words() + " is " + words))
        .toList();
  }
}
