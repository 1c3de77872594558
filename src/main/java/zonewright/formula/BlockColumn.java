package zonewright.formula;

import java.util.Arrays;

/**
 * The numbers of one column, in blocks that a kernel runs through from 0. Not-a-number stands for
 * no number.
 *
 * <p>Blocks are arrays of their own, not slices of one: loops that start at 0 run about twice as
 * fast.
 */
public final class BlockColumn {
  /** Rows in a block. */
  public static final int BLOCK = 1024;

  private double[][] blocks = new double[0][];
  private int rows;
  private long version;

  /** Makes room for {@code count} rows; new rows hold no number. */
  public void resize(int count) {
    int needed = blocksFor(count);
    int had = blocks.length;
    blocks = Arrays.copyOf(blocks, needed);
    for (int block = had; block < needed; block++) {
      blocks[block] = new double[BLOCK];
      Arrays.fill(blocks[block], Double.NaN);
    }
    for (int row = rows; row < count && row < had * BLOCK; row++) {
      set(row, Double.NaN);
    }
    rows = count;
    changed();
  }

  /** Notes that a block was written to; {@link #set} and {@link #resize} note it themselves. */
  public void changed() {
    version++;
  }

  /** Returns a number that is another, and larger, after every change. */
  long version() {
    return version;
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

  /** Returns the block itself, not a copy; who writes to it calls {@link #changed}. */
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
    changed();
  }
}
