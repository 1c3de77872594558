package zonewright.formula;

import java.util.List;

/** What a cell holds: a number, or the reason why there is none. */
public sealed interface Outcome {
  /** A number in the unit of its column. */
  record Amount(double value) implements Outcome {}

  /** Words. */
  record Words(String text) implements Outcome {}

  /** An input with nothing in it. */
  record Blank() implements Outcome {}

  /** No number because inputs are blank; carried on to every cell that depends on them. */
  record Missing(List<CellName> needs) implements Outcome {
    public Missing {
      needs = List.copyOf(needs);
    }
  }

  /**
   * No number because something is wrong in {@code where}; carried on to every cell that depends on
   * it.
   */
  record Refused(CellName where, String because) implements Outcome {}

  /** No number because the question does not arise. */
  record NotApplicable(String shown, String because) implements Outcome {}

  /** A cell as a person would name it: {@code zone 7}, {@code Area}. */
  record CellName(String row, Reference column) {
    /** Returns row and column in words. */
    public String inWords() {
      return row.isEmpty() ? column.name() : row + ", " + column.name();
    }
  }

  /** Returns one sentence for a person; empty for a number, words or a blank. */
  default String sentence() {
    if (this instanceof Missing missing) {
      return "needs " + String.join("; ", missing.needs().stream().map(CellName::inWords).toList());
    }
    if (this instanceof Refused refused) {
      return refused.where().inWords() + ": " + refused.because();
    }
    return this instanceof NotApplicable not ? not.because() : "";
  }

  /** Returns the number, or not-a-number. */
  default double number() {
    return this instanceof Amount amount ? amount.value() : Double.NaN;
  }
}
