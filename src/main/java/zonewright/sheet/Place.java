package zonewright.sheet;

import zonewright.formula.Reference;

/**
 * Where a cell stands.
 *
 * @param column its column
 * @param row its row, counted from 0
 */
public record Place(Reference column, int row) {
  /** Written out: what a record makes by itself is slow at its first use, which is each start. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Place that && row == that.row && column.equals(that.column);
  }

  @Override
  public int hashCode() {
    return 31 * column.hashCode() + row;
  }
}
