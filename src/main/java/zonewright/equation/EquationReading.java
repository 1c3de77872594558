package zonewright.equation;

import java.util.List;
import zonewright.formula.Formula;

/** What became of an equation that was typed. */
public sealed interface EquationReading {
  /** It gives what was wanted. */
  record Understood(Formula formula) implements EquationReading {}

  /**
   * It cannot be calculated.
   *
   * @param from where in the text it goes wrong, counted from 0
   * @param to where that ends, exclusive; as {@code from} where something is missing there
   * @param sentence what is wrong and what would be right, for a designer
   * @param offers what could stand between {@code from} and {@code to} instead, the likeliest first
   */
  record Problem(int from, int to, String sentence, List<String> offers)
      implements EquationReading {
    public Problem {
      offers = List.copyOf(offers);
    }
  }
}
