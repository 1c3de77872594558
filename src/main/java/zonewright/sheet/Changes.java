package zonewright.sheet;

import java.util.BitSet;
import java.util.Map;
import java.util.Set;
import zonewright.formula.Reference;

/**
 * What an edit changed, told once when all is calculated.
 *
 * @param edit the edit itself; of one taken back, what took it back
 * @param columns whether there are other columns now, see {@link Book#schema}; then everything is
 *     new
 * @param everything whether columns or units are others: look at all anew
 * @param tables otherwise, the tables whose rows came, went or moved: look at those anew
 * @param cells in the other tables, by column, the rows that show something else now
 */
public record Changes(
    Edit edit,
    boolean columns,
    boolean everything,
    Set<String> tables,
    Map<Reference, BitSet> cells) {
  public Changes {
    tables = Set.copyOf(tables);
    cells = Map.copyOf(cells);
  }

  /** Says whether a table is to be looked at anew: no cell of it need be where it was. */
  public boolean anew(String table) {
    return everything || tables.contains(table);
  }

  /** Returns how many cells show something else. */
  public int count() {
    return cells.values().stream().mapToInt(BitSet::cardinality).sum();
  }
}
