package zonewright.equation;

import java.util.List;
import zonewright.formula.Formula;
import zonewright.formula.Reference;

/** What became of an equation that was typed. */
public sealed interface EquationReading {
  /**
   * It gives what was wanted.
   *
   * @param names where it names columns, from left to right
   */
  record Understood(Formula formula, List<Name> names) implements EquationReading {
    public Understood {
      names = List.copyOf(names);
    }
  }

  /**
   * A column as an equation names it.
   *
   * @param from where the name begins in the text, its sheet and brackets with it
   * @param to where it ends, exclusive
   */
  record Name(Reference column, int from, int to) {}

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
