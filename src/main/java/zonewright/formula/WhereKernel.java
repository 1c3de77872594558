package zonewright.formula;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * For each row of this table, one number from the rows of another that match it. Sorts the other
 * table by its words once, and by the limited number, so that each row is a look-up.
 */
final class WhereKernel extends Kernel {
  /** Words of a pair of columns make one key; no list is longer than this. */
  private static final long LONGEST_LIST = 1L << 31;

  private final WhereKind kind;
  private final BlockColumn column;
  private final BlockColumn counted;
  private final List<BlockColumn> words;
  private final List<Kernel> keys;
  private final double[][] spaces;
  private final Limited limited;

  /** The rows of each key, and what comes of them: kept until a number behind them changes. */
  private final Map<Long, int[]> sorted = new HashMap<>();

  private final Map<Long, WhereGroup> groups = new HashMap<>();
  private long sortedAt = -1;
  private long gatheredAt = -1;

  /** What stands beside each row, where rows are held against rows of their own table and key. */
  private double[] beside = new double[0];

  /**
   * The limit made ready.
   *
   * @param own whether the number of each row is held against the same number of the others
   */
  record Limited(BlockColumn column, Matching.Limit limit, Kernel than, boolean own) {}

  WhereKernel(
      WhereKind kind,
      BlockColumn column,
      BlockColumn counted,
      List<BlockColumn> words,
      List<Kernel> keys,
      Limited limited) {
    this.kind = kind;
    this.column = column;
    this.counted = counted;
    this.words = List.copyOf(words);
    this.keys = List.copyOf(keys);
    this.spaces = new double[keys.size()][];
    this.limited = limited;
  }

  @Override
  void prepare() {
    keys.forEach(Kernel::prepare);
    if (limited != null) {
      limited.than().prepare();
    }
    long wanted = counted.version() + words.stream().mapToLong(BlockColumn::version).sum();
    boolean sortedAnew = wanted != sortedAt;
    if (sortedAnew) {
      sortedAt = wanted;
      sort();
    }
    long numbers = column.version() + (limited == null ? 0 : limited.column().version());
    if (sortedAnew || numbers != gatheredAt) {
      gatheredAt = numbers;
      groups.keySet().retainAll(sorted.keySet());
      sorted.forEach(
          (key, rows) -> groups.put(key, group(rows, Optional.ofNullable(groups.get(key)))));
      if (limited != null && limited.own()) {
        beside = new double[counted.rows()];
        groups.values().forEach(group -> group.withinOwn(beside));
      }
    }
  }

  /** Finds the rows of each key. */
  private void sort() {
    Map<Long, IntStream.Builder> found = new HashMap<>();
    for (int row = 0; row < counted.rows(); row++) {
      long key = 0;
      for (BlockColumn word : words) {
        key = joined(key, word.at(row));
      }
      if (counted.at(row) != 0 && key >= 0) {
        found.computeIfAbsent(key, any -> IntStream.builder()).add(row);
      }
    }
    sorted.clear();
    found.forEach((key, rows) -> sorted.put(key, rows.build().toArray()));
  }

  private WhereGroup group(int[] rows, Optional<WhereGroup> before) {
    return limited == null
        ? WhereGroup.of(kind, column, rows)
        : WhereGroup.of(kind, column, rows, limited.column(), limited.limit(), before);
  }

  /** Returns a key with one more word, or -1 where a word is none of its list. */
  private static long joined(long key, double position) {
    return key < 0 || Double.isNaN(position) ? -1 : key * LONGEST_LIST + (long) position;
  }

  @Override
  double[] run(int block, int rows, double[] target) {
    double[][] found = new double[keys.size()][];
    for (int i = 0; i < found.length; i++) {
      spaces[i] = BlockColumn.space(spaces[i], rows);
      found[i] = keys.get(i).run(block, rows, spaces[i]);
    }
    double[] than = limited == null ? null : limited.than().run(block, rows, scratch(rows));
    for (int row = 0; row < rows; row++) {
      long key = 0;
      for (double[] each : found) {
        key = joined(key, each[row]);
      }
      double limit = than == null ? 0 : than[row];
      if (key < 0 || Double.isNaN(limit)) {
        target[row] = Double.NaN;
      } else if (known(block * BlockColumn.BLOCK + row)) {
        target[row] = beside[block * BlockColumn.BLOCK + row];
      } else {
        WhereGroup group = groups.get(key);
        target[row] = group == null ? kind.ofNone() : group.within(limit);
      }
    }
    return target;
  }

  /** Says whether a row is one of those it is held against. */
  private boolean known(int row) {
    return limited != null && limited.own() && counted.at(row) != 0;
  }
}
