package zonewright.formula;

import java.util.Arrays;

/**
 * A part of a formula made ready to run over a block of rows. Holds scratch space, so it serves one
 * thread at a time.
 */
abstract class Kernel {
  private double[] scratch;

  /**
   * Calculates a block.
   *
   * @param target where the result may be put
   * @return the array that holds the result: {@code target}, or one that must not be written to
   */
  abstract double[] run(int block, int rows, double[] target);

  /** Gets ready for a run over any blocks: fetches what does not change from row to row. */
  abstract void prepare();

  /** Returns this kernel's own space for what a child calculates. */
  final double[] scratch(int rows) {
    scratch = BlockColumn.space(scratch, rows);
    return scratch;
  }

  /** One number for all rows, fetched when a run is prepared. */
  abstract static class Single extends Kernel {
    private double value = Double.NaN;

    abstract double fetch();

    final double value() {
      return value;
    }

    @Override
    final void prepare() {
      value = fetch();
    }

    @Override
    final double[] run(int block, int rows, double[] target) {
      Arrays.fill(target, 0, rows, value);
      return target;
    }
  }

  /** A part that has the same value in every row because all it is made of has. */
  static final class Same extends Single {
    private final Kernel inner;

    Same(Kernel inner) {
      this.inner = inner;
    }

    @Override
    double fetch() {
      inner.prepare();
      return inner.run(0, 1, scratch(1))[0];
    }
  }

  /** The cells of a column of the same table. */
  static final class Cells extends Kernel {
    private final BlockColumn column;

    Cells(BlockColumn column) {
      this.column = column;
    }

    @Override
    void prepare() {}

    @Override
    double[] run(int block, int rows, double[] target) {
      return column.block(block);
    }
  }

  /** Two parts joined number by number. */
  abstract static class Binary extends Kernel {
    private final Kernel left;
    private final Kernel right;

    Binary(Kernel left, Kernel right) {
      this.left = left;
      this.right = right;
    }

    abstract void join(double[] first, double[] second, double[] target, int rows);

    abstract void join(double first, double[] second, double[] target, int rows);

    abstract void join(double[] first, double second, double[] target, int rows);

    @Override
    final void prepare() {
      left.prepare();
      right.prepare();
    }

    @Override
    final double[] run(int block, int rows, double[] target) {
      if (left instanceof Single single) {
        join(single.value(), right.run(block, rows, target), target, rows);
      } else if (right instanceof Single single) {
        join(left.run(block, rows, target), single.value(), target, rows);
      } else {
        double[] first = left.run(block, rows, target);
        join(first, right.run(block, rows, scratch(rows)), target, rows);
      }
      return target;
    }
  }

  /** One part changed number by number. */
  abstract static class Unary extends Kernel {
    private final Kernel operand;

    Unary(Kernel operand) {
      this.operand = operand;
    }

    abstract void change(double[] values, double[] target, int rows);

    @Override
    void prepare() {
      operand.prepare();
    }

    @Override
    final double[] run(int block, int rows, double[] target) {
      change(operand.run(block, rows, target), target, rows);
      return target;
    }
  }
}
