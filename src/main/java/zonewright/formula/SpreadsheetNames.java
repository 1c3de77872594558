package zonewright.formula;

import java.util.List;
import java.util.Optional;

/**
 * What a spreadsheet calls the cells, columns and lists a formula means, and what makes a typed
 * cell good to calculate with.
 */
public interface SpreadsheetNames {
  /** Returns the name of the cell in the same row, or of the one cell of a one-row table. */
  String cell(Reference reference);

  /**
   * Returns what comes to the number of the row a cell of another table stands in, where it is one
   * that has a row for each row of this; none for cells of this row or of a one-row table.
   */
  Optional<String> place(Reference reference);

  /** Returns the name of a whole column. */
  String column(Reference reference);

  /** Returns the name of the column that names the rows of the table {@code reference} is in. */
  String rowNames(Reference reference);

  /** Returns the name of a whole column of a reference table. */
  String published(ReferenceTable.Numbers column);

  /** Returns the name of the columns of a reference table from one to another. */
  String published(ReferenceTable.Numbers first, ReferenceTable.Numbers last);

  /** Returns the name of the key column of a reference table. */
  String keys(ReferenceTable table);

  /** Returns the range a number must keep to before it counts; none for calculated cells. */
  Optional<Range> range(Reference reference);

  /** Says whether the cell holds a formula unless something was typed over it. */
  boolean defaulted(Reference reference);

  /** Returns the words a cell may hold; none where any will do. */
  Optional<Words> words(Reference reference);

  /**
   * A range of numbers in the unit of the column.
   *
   * @param low least number
   * @param lowIncluded whether the least itself is allowed
   * @param high greatest number, itself allowed
   * @param whole whether only whole numbers are allowed
   * @param typedOnly whether it binds only what was typed over a default
   */
  record Range(double low, boolean lowIncluded, double high, boolean whole, boolean typedOnly) {}

  /** The words a cell may hold. */
  sealed interface Words {
    /**
     * Those that stand in cells the spreadsheet has a name for.
     *
     * @param typed whether people type them, so that they may hold any sign
     */
    record InCells(String name, boolean typed) implements Words {}

    /** A few. */
    record These(List<String> words) implements Words {
      public These {
        words = List.copyOf(words);
      }
    }
  }
}
