package zonewright.formula;

import java.util.List;
import java.util.Optional;

/**
 * What a spreadsheet calls the cells, columns and lists a formula means. Each cell that may be
 * calculated with holds a good number, a word of its list, or the error {@code #N/A}, so that a
 * formula need not ask.
 */
public interface SpreadsheetNames {
  /** Returns the name of the cell in the same row, or of the one cell of a one-row table. */
  String cell(Reference reference);

  /** Returns the name of the cell a person types into. */
  String typed(Reference reference);

  /** Returns the name of a whole column. */
  String column(Reference reference);

  /** Returns the name of the cell that holds in which row of its list the word of a cell stands. */
  String row(Reference word);

  /** Returns the name of the cell that holds in which row of a table the word of a cell stands. */
  String row(Reference word, ReferenceTable table);

  /** Returns the name of the cell that holds which row of a column's table bears a cell's word. */
  String row(Reference word, Reference column);

  /** Returns the name of the whole column of the cells of {@link #row(Reference)}. */
  String rows(Reference word);

  /** Says whether the words of a column are found by the row of a list, not by themselves. */
  boolean listed(Reference word);

  /**
   * Returns the name of the column that holds 1 in the rows of a column's table that count; none
   * where all do.
   */
  Optional<String> counted(Reference column);

  /** Returns the name of a whole column of a reference table. */
  String published(ReferenceTable.Numbers column);

  /** Returns the name of the columns of a reference table from one to another. */
  String published(ReferenceTable.Numbers first, ReferenceTable.Numbers last);

  /** Returns the name under which a number stands in a cell of its own; none for most. */
  default Optional<String> constant(double value) {
    return Optional.empty();
  }

  /**
   * Returns the cells of this row in several columns as one range; none where others lie between.
   */
  default Optional<String> across(List<Reference> columns) {
    return Optional.empty();
  }

  /** Returns several whole columns as one range; none where others lie between. */
  default Optional<String> neighbours(List<Reference> columns) {
    return Optional.empty();
  }
}
