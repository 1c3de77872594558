package zonewright.desk.grid;

import zonewright.formula.Reference;

/**
 * A cell of a book.
 *
 * @param column its column
 * @param row its row, counted from 0
 */
public record CellPlace(Reference column, int row) {
  /** Written out: what a record makes by itself is slow at its first use, which is each start. */
  @Override
  public boolean equals(Object other) {
    return other instanceof CellPlace that && row == that.row && column.equals(that.column);
  }

  @Override
  public int hashCode() {
    return 31 * column.hashCode() + row;
  }
}
