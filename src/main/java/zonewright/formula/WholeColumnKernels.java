package zonewright.formula;

/** Kernels that look at a whole column of another table, or at a reference table. */
final class WholeColumnKernels {
  private WholeColumnKernels() {}

  /** The one cell of a one-row table. */
  static final class OneCell extends Kernel.Single {
    private final BlockColumn column;

    OneCell(BlockColumn column) {
      this.column = column;
    }

    @Override
    double fetch() {
      return column.rows() == 0 ? Double.NaN : column.at(0);
    }
  }

  /** A number that never changes. */
  static final class Constant extends Kernel.Single {
    private final double value;

    Constant(double value) {
      this.value = value;
    }

    @Override
    double fetch() {
      return value;
    }
  }

  /** One number from a whole column; no number where a row that counts has none. */
  static final class Aggregate extends Kernel.Single {
    private final Aggregation aggregation;
    private final BlockColumn column;
    private final BlockColumn counted;

    /** What each block came to, and when: an edit adds up only the blocks it reached. */
    private double[] parts = new double[0];

    private long[] addedAt = new long[0];

    Aggregate(Aggregation aggregation, BlockColumn column, BlockColumn counted) {
      this.aggregation = aggregation;
      this.column = column;
      this.counted = counted;
    }

    @Override
    double fetch() {
      return switch (aggregation) {
        case SUM -> sum();
        case LARGEST -> extreme(true);
        case SMALLEST -> extreme(false);
        case COUNT -> count();
        case POSITION_OF_LARGEST -> column.rows() == 0 ? Double.NaN : position();
        case RATE_OF_RETURN -> RateOfReturn.of(column.rows(), column::at);
      };
    }

    private double sum() {
      int blocks = BlockColumn.blocksFor(column.rows());
      if (parts.length != blocks) {
        parts = new double[blocks];
        addedAt = new long[blocks];
      }
      double total = 0;
      for (int block = 0; block < blocks; block++) {
        long now = column.version(block) + counted.version(block);
        if (now != addedAt[block]) {
          addedAt[block] = now;
          parts[block] = sum(block);
        }
        total += parts[block];
      }
      return total;
    }

    private double sum(int block) {
      double[] values = column.block(block);
      double[] counts = counted.block(block);
      double sum = 0;
      for (int i = 0; i < column.rowsIn(block); i++) {
        if (counts[i] != 0) {
          sum += values[i];
        }
      }
      return sum;
    }

    private double count() {
      int count = 0;
      for (int row = 0; row < column.rows(); row++) {
        count += counted.at(row) != 0 && !Double.isNaN(column.at(row)) ? 1 : 0;
      }
      return count;
    }

    /** Of the rows that count; no number where one of them has none, or none counts. */
    private double extreme(boolean largest) {
      double extreme = largest ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
      for (int row = 0; row < column.rows(); row++) {
        if (counted.at(row) != 0) {
          double value = column.at(row);
          extreme = largest ? Numbers.larger(extreme, value) : Numbers.smaller(extreme, value);
        }
      }
      return Numbers.finite(extreme);
    }

    private int positionOfLargest() {
      int best = 0;
      for (int row = 0; row < column.rows(); row++) {
        double value = column.at(row);
        if (Double.isNaN(value)) {
          return row;
        }
        if (value > column.at(best)) {
          best = row;
        }
      }
      return best;
    }

    private double position() {
      double largest = column.at(positionOfLargest());
      for (int row = 0; row < column.rows(); row++) {
        if (Numbers.atMost(largest, column.at(row))) {
          return row + 1;
        }
      }
      return Double.NaN;
    }
  }

  /** The number in a row of a list, by a position counted from 0. */
  static final class FromList extends Kernel.Unary {
    private final double[] list;

    FromList(double[] list, Kernel position) {
      super(position);
      this.list = list;
    }

    @Override
    void change(double[] values, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        double position = values[i];
        target[i] = position >= 0 && position < list.length ? list[(int) position] : Double.NaN;
      }
    }
  }

  /** The number in a row and a column of a grid; rows are counted from 0, columns from 1. */
  static final class FromGrid extends Kernel.Binary {
    private final double[][] columns;

    FromGrid(double[][] columns, Kernel row, Kernel position) {
      super(row, position);
      this.columns = columns;
    }

    private double at(double row, double position) {
      boolean inside =
          row >= 0 && position >= 1 && position < columns.length + 1 && row < columns[0].length;
      return inside ? columns[(int) position - 1][(int) row] : Double.NaN;
    }

    @Override
    void join(double[] first, double[] second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = at(first[i], second[i]);
      }
    }

    @Override
    void join(double first, double[] second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = at(first, second[i]);
      }
    }

    @Override
    void join(double[] first, double second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = at(first[i], second);
      }
    }
  }

  /** How many numbers of a row lie below a limit; no number where one of them is missing. */
  static final class CountBelow extends Kernel.Binary {
    private final double[][] columns;

    CountBelow(double[][] columns, Kernel row, Kernel limit) {
      super(row, limit);
      this.columns = columns;
    }

    private double count(double row, double limit) {
      if (!(row >= 0 && row < columns[0].length) || Double.isNaN(limit)) {
        return Double.NaN;
      }
      double below = 0;
      for (double[] column : columns) {
        double value = column[(int) row];
        below += Double.isNaN(value) ? Double.NaN : value < limit ? 1 : 0;
      }
      return below;
    }

    @Override
    void join(double[] first, double[] second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = count(first[i], second[i]);
      }
    }

    @Override
    void join(double first, double[] second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = count(first, second[i]);
      }
    }

    @Override
    void join(double[] first, double second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = count(first[i], second);
      }
    }
  }

  /** The number in a row of another table, by a position. */
  static final class Pick extends Kernel.Unary {
    private final BlockColumn column;
    private final int first;

    /** Prepares; {@code first} is the position of the first row, 0 or 1. */
    Pick(BlockColumn column, Kernel position, int first) {
      super(position);
      this.column = column;
      this.first = first;
    }

    @Override
    void change(double[] values, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        double position = values[i];
        target[i] =
            position >= first && position < column.rows() + first
                ? column.at((int) position - first)
                : Double.NaN;
      }
    }
  }
}
