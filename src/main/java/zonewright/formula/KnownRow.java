package zonewright.formula;

import java.util.function.Supplier;

/** What is known in one row, for whoever explains a cell of it. */
public interface KnownRow {
  /** Returns what a cell of this row, or of a one-row table, holds. */
  Outcome outcome(Reference cell);

  /** Says whether something was entered in an input cell. */
  boolean given(Reference cell);

  /** Returns a number of a column as a person reads it, with its unit. */
  String shown(Reference column, double value);

  /** Returns what a whole column comes to. */
  Outcome gathered(Formula.Aggregate aggregate);

  /**
   * Returns what the rows that match this one come to.
   *
   * @param than the number of the limit; any where there is none
   */
  Outcome matched(Formula.Where where, double than);

  /** Returns what the row of the name in {@code lookup}'s cell holds; the cell holds a name. */
  Outcome found(Formula.RowLookup lookup);

  /** Returns how many rows the table of a column has. */
  int rows(Reference column);

  /** Returns what another table's row holds, counted from 1 up to {@link #rows}. */
  Outcome picked(Reference column, int position);

  /** Returns the number a reference table gives for a word, and where it comes from. */
  LookedUp lookedUp(String word, ReferenceTable.Numbers column);

  /**
   * What was found in a reference table. The words are put together when somebody reads them.
   *
   * @param outcome the number, in the unit of the system
   * @param shown the number with its unit, or that there is none
   * @param published how the table writes it, where that is otherwise
   * @param origin source and status of the row
   */
  record LookedUp(
      Outcome outcome,
      Supplier<String> shown,
      Supplier<String> published,
      Supplier<String> origin) {}
}
