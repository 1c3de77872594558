package zonewright.formula;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The numbers of one column, in blocks that a kernel runs through from 0. Not-a-number stands for
 * no number.
 *
 * <p>Blocks are arrays of their own, not slices of one: loops that start at 0 run about twice as
 * fast.
 */
public final class BlockColumn {
  /** Rows in a block. */
  public static final int BLOCK = 256;

  private static final int SMALLEST = 16;

  private double[][] blocks = new double[0][];
  private int rows;

  /** Counts changes: of all blocks, and for each block the count at its last change. */
  private long version;

  private long[] versions = new long[0];

  /** Where the rows stand whose names its cells can hold; none where they hold no such names. */
  private Optional<Map<String, Integer>> names = Optional.empty();

  /**
   * Returns {@code had} where it has room for some rows of a block, or else a new array that has:
   * most designs are small, and whole blocks for each of thousands of parts take long to clear.
   */
  public static double[] space(double[] had, int rows) {
    return had != null && had.length >= rows ? had : new double[room(rows)];
  }

  private static int room(int rows) {
    return Math.min(BLOCK, Math.max(SMALLEST, Integer.highestOneBit(Math.max(1, rows - 1)) << 1));
  }

  /** Makes room for {@code count} rows; new rows hold no number. */
  public void resize(int count) {
    int needed = blocksFor(count);
    if (needed != blocks.length) {
      blocks = Arrays.copyOf(blocks, needed);
      versions = new long[needed];
    }
    for (int block = rows / BLOCK; block < needed; block++) {
      int kept = Math.max(0, rows - block * BLOCK);
      int wanted = Math.min(BLOCK, count - block * BLOCK);
      double[] old = blocks[block];
      if (old == null || old.length < wanted) {
        blocks[block] = new double[room(wanted)];
        if (old != null) {
          System.arraycopy(old, 0, blocks[block], 0, kept);
        }
      }
      if (kept < blocks[block].length) {
        Arrays.fill(blocks[block], kept, blocks[block].length, Double.NaN);
      }
    }
    rows = count;
    version++;
    Arrays.fill(versions, version);
  }

  /** Notes that a block was written to; {@link #set} and {@link #resize} note it themselves. */
  public void changed(int block) {
    version++;
    versions[block] = version;
  }

  /** Returns a number that is another, and larger, after every change. */
  long version() {
    return version;
  }

  /** Returns a number that is another, and larger, after every change of a block. */
  long version(int block) {
    return versions[block];
  }

  /**
   * Says that its numbers are places of rows by their names, which may be others after each edit.
   *
   * @param places the first row of each name, in small letters
   */
  public void follow(Map<String, Integer> places) {
    names = Optional.of(places);
  }

  /** Says whether its numbers are places of rows. */
  boolean follows() {
    return names.isPresent();
  }

  /** Returns the places of the rows of some names as things stand; -1 where there is none. */
  List<Integer> places(List<String> words) {
    return words.stream()
        .map(word -> names.orElseThrow().getOrDefault(word.strip().toLowerCase(Locale.ROOT), -1))
        .toList();
  }

  /** Returns how many blocks hold {@code count} rows. */
  public static int blocksFor(int count) {
    return (count + BLOCK - 1) / BLOCK;
  }

  /** Returns the number of rows. */
  public int rows() {
    return rows;
  }

  /** Returns how many rows of {@code block} are in use. */
  public int rowsIn(int block) {
    return Math.min(BLOCK, rows - block * BLOCK);
  }

  /**
   * Returns the block itself, not a copy, with room for {@link #rowsIn} rows or more; who writes to
   * it calls {@link #changed}. Another array after {@link #resize}.
   */
  public double[] block(int index) {
    return blocks[index];
  }

  /** Returns the number in a row. */
  public double at(int row) {
    return blocks[row / BLOCK][row % BLOCK];
  }

  /** Sets the number in a row. */
  public void set(int row, double value) {
    blocks[row / BLOCK][row % BLOCK] = value;
    changed(row / BLOCK);
  }
}
