package zonewright.formula;

import zonewright.units.QuantityKind;

/**
 * The name of a column, by which formulas mean its cells.
 *
 * @param table identifier of the table it stands in; never changes
 * @param column identifier of the column; never changes
 * @param name what a person calls it; may change
 * @param kind the kind of its numbers; {@link QuantityKind#CHOICE} where it holds words
 */
public record Reference(String table, String column, String name, QuantityKind kind)
    implements Cells {
  @Override
  public Reference reference() {
    return this;
  }

  /** Returns a name that is unique in the whole program. */
  public String key() {
    return table + "." + column;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Reference that
        && table.equals(that.table)
        && column.equals(that.column);
  }

  @Override
  public int hashCode() {
    return table.hashCode() * 31 + column.hashCode();
  }
}
