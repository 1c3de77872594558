package zonewright.formula;

import java.util.List;
import zonewright.units.UnitSystem;

/** What a formula needs to find in order to run: the columns it names. */
public interface Workspace {
  /** Returns the numbers of a column; of a column of words, each word's position in its list. */
  BlockColumn column(Reference reference);

  /**
   * Returns, for a column of inputs, 1 where something was entered and 0 where the cell is blank.
   */
  BlockColumn given(Reference reference);

  /**
   * Returns, for the table of a column, 1 in rows that count in sums (they have a name) and 0
   * elsewhere.
   */
  BlockColumn counted(Reference reference);

  /** Says whether the table of a column has one row for all. */
  boolean single(Reference reference);

  /** Returns the positions that {@code words} have in the list of a column of words. */
  List<Integer> positions(Reference reference, List<String> words);

  /** Returns the unit system of all numbers. */
  UnitSystem system();
}
