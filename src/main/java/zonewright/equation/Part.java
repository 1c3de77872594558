package zonewright.equation;

import zonewright.formula.Condition;
import zonewright.formula.Formula;
import zonewright.sheet.Column;
import zonewright.units.Dimension;

/** A part of an equation as far as it was read, and where it stands in the text. */
sealed interface Part {
  /** Returns where it begins. */
  int from();

  /** Returns where it ends, exclusive. */
  int to();

  /** Returns the same part where it stands with its brackets. */
  Part at(int from, int to);

  /**
   * A number.
   *
   * @param any whether it fits any kind, as words in place of a number do
   */
  record Amount(Formula formula, Dimension dimension, boolean any, int from, int to)
      implements Part {
    static Amount of(Formula formula, Dimension dimension, int from, int to) {
      return new Amount(formula, dimension, false, from, to);
    }

    @Override
    public Amount at(int start, int end) {
      return new Amount(formula, dimension, any, start, end);
    }
  }

  /** Something that is so or is not. */
  record Truth(Condition condition, int from, int to) implements Part {
    @Override
    public Truth at(int start, int end) {
      return new Truth(condition, start, end);
    }
  }

  /** What always is so or never is: TRUE and FALSE. */
  record Certain(boolean so, int from, int to) implements Part {
    @Override
    public Certain at(int start, int end) {
      return new Certain(so, start, end);
    }
  }

  /** The name of a column, whose cell or whose whole is meant. */
  record Named(Column column, int from, int to) implements Part {
    @Override
    public Named at(int start, int end) {
      return new Named(column, start, end);
    }
  }

  /** Words in quotation marks. */
  record Quote(String words, int from, int to) implements Part {
    @Override
    public Quote at(int start, int end) {
      return new Quote(words, start, end);
    }
  }
}
