package zonewright.formula;

import java.util.List;

/**
 * The cells of a column: in an equation, the cell of the same row or the one cell of a one-row
 * table, and what can be asked of the column as a whole.
 */
public interface Cells extends Term {
  /** Returns the column's name. */
  Reference reference();

  @Override
  default Formula asFormula() {
    return new Formula.Cell(reference());
  }

  /** Says: the cell is not blank. */
  default Condition given() {
    return new Condition.Given(reference());
  }

  /** Says: the cell holds one of these words. */
  default Condition is(String... words) {
    return is(List.of(words));
  }

  /** Says: the cell holds one of these words. */
  default Condition is(List<String> words) {
    return new Condition.WordIs(reference(), words);
  }

  /** Returns the sum of the column; 0 where it has no rows. */
  default Formula sum() {
    return gathered(Aggregation.SUM);
  }

  /** Returns the largest of the column. */
  default Formula largest() {
    return gathered(Aggregation.LARGEST);
  }

  /** Returns one number from the whole column. */
  default Formula gathered(Aggregation aggregation) {
    return new Formula.Aggregate(aggregation, reference());
  }

  /** Returns the number in the {@code position}-th row of the column, counted from 1. */
  default Formula inRow(Term position) {
    return new Formula.Pick(reference(), position.asFormula());
  }

  /** Returns the number in the {@code position}-th row of the column, counted from 1. */
  default Formula inRow(int position) {
    return inRow(Formula.number(position));
  }

  /** Returns the number in the first row whose name is chosen in the cell {@code word}. */
  default Formula inRowOf(Cells word) {
    return new Formula.RowLookup(reference(), word.reference());
  }
}
