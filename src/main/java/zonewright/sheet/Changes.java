package zonewright.sheet;

import java.util.BitSet;
import java.util.Map;
import zonewright.formula.Reference;

/**
 * What an edit changed, told once when all is calculated.
 *
 * @param edit the edit itself; of one taken back, what took it back
 * @param columns whether there are other columns now, see {@link Book#schema}; then everything is
 *     new
 * @param everything whether rows came, went or moved, or units changed: look at all anew
 * @param cells otherwise, by column, the rows that show something else now
 */
public record Changes(
    Edit edit, boolean columns, boolean everything, Map<Reference, BitSet> cells) {
  public Changes {
    cells = Map.copyOf(cells);
  }

  /** Returns how many cells show something else. */
  public int count() {
    return cells.values().stream().mapToInt(BitSet::cardinality).sum();
  }
}
