package zonewright.formula;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;

/** Kernels of conditions: 1 where it is so, 0 where not, no number where that cannot be said. */
final class ConditionKernels {
  private ConditionKernels() {}

  /** One number held against another. */
  static final class Comparison extends Kernel.Binary {
    private final boolean swapped;
    private final double yes;
    private final double no;

    Comparison(Comparator comparator, Kernel left, Kernel right) {
      super(left, right);
      swapped = comparator == Comparator.BELOW || comparator == Comparator.AT_LEAST;
      boolean negated = comparator == Comparator.BELOW || comparator == Comparator.ABOVE;
      yes = negated ? 0 : 1;
      no = negated ? 1 : 0;
    }

    /** As {@link Numbers#atMost}; where either is no number so is the answer. */
    private double held(double least, double most) {
      double apart = least - most;
      return (apart <= Numbers.EQUAL_ENOUGH * Math.abs(most) ? yes : no) + 0 * apart;
    }

    @Override
    void join(double[] first, double[] second, double[] target, int rows) {
      double[] least = swapped ? second : first;
      double[] most = swapped ? first : second;
      for (int i = 0; i < rows; i++) {
        target[i] = held(least[i], most[i]);
      }
    }

    @Override
    void join(double first, double[] second, double[] target, int rows) {
      if (swapped) {
        for (int i = 0; i < rows; i++) {
          target[i] = held(second[i], first);
        }
      } else {
        for (int i = 0; i < rows; i++) {
          target[i] = held(first, second[i]);
        }
      }
    }

    @Override
    void join(double[] first, double second, double[] target, int rows) {
      if (swapped) {
        for (int i = 0; i < rows; i++) {
          target[i] = held(second, first[i]);
        }
      } else {
        for (int i = 0; i < rows; i++) {
          target[i] = held(first[i], second);
        }
      }
    }
  }

  /** The position is one of these. */
  static final class OneOf extends Kernel.Unary {
    private final Supplier<List<Integer>> positions;
    private double[] wanted;

    /**
     * Makes it ready.
     *
     * @param positions asked for before each run: names of rows may stand elsewhere by then
     */
    OneOf(Supplier<List<Integer>> positions, Kernel word) {
      super(word);
      this.positions = positions;
    }

    @Override
    void prepare() {
      super.prepare();
      wanted = positions.get().stream().mapToDouble(Integer::doubleValue).toArray();
    }

    @Override
    void change(double[] values, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        double held = Double.isNaN(values[i]) ? Double.NaN : 0;
        for (double position : wanted) {
          if (values[i] == position) {
            held = 1;
          }
        }
        target[i] = held;
      }
    }
  }

  /** Something was entered: 1; blank: 0; entered but no good: no number. */
  static final class Given extends Kernel.Binary {
    Given(Kernel given, Kernel value) {
      super(given, value);
    }

    private static double held(double given, double value) {
      return given == 0 ? 0 : Double.isNaN(value) ? Double.NaN : 1;
    }

    @Override
    void join(double[] first, double[] second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = held(first[i], second[i]);
      }
    }

    @Override
    void join(double first, double[] second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = held(first, second[i]);
      }
    }

    @Override
    void join(double[] first, double second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = held(first[i], second);
      }
    }
  }

  /** Takes one of two by a condition. */
  static final class Choose extends Kernel {
    private final Kernel condition;
    private final Kernel then;
    private final Kernel otherwise;
    private double[] second;

    Choose(Kernel condition, Kernel then, Kernel otherwise) {
      this.condition = condition;
      this.then = then;
      this.otherwise = otherwise;
    }

    @Override
    void prepare() {
      condition.prepare();
      Single whole = condition instanceof Single single ? single : null;
      if (whole == null || whole.value() == 1) {
        then.prepare();
      }
      if (whole == null || whole.value() == 0) {
        otherwise.prepare();
      }
    }

    @Override
    double[] run(int block, int rows, double[] target) {
      if (condition instanceof Single single) {
        return whole(single.value(), block, rows, target);
      }
      double[] held = condition.run(block, rows, scratch(rows));
      double[] first = then.run(block, rows, target);
      second = BlockColumn.space(second, rows);
      double[] other = otherwise.run(block, rows, second);
      for (int i = 0; i < rows; i++) {
        target[i] = blended(held[i], first[i], other[i]);
      }
      return target;
    }

    /** One condition for all rows: only the branch taken is calculated. */
    private double[] whole(double held, int block, int rows, double[] target) {
      if (Double.isNaN(held)) {
        Arrays.fill(target, 0, rows, Double.NaN);
        return target;
      }
      return (held == 1 ? then : otherwise).run(block, rows, target);
    }

    /** Takes one of two without a jump, which mixed rows would make costly. */
    private static double blended(double held, double first, double other) {
      long takeFirst = -(long) held;
      long chosen =
          (Double.doubleToRawLongBits(first) & takeFirst)
              | (Double.doubleToRawLongBits(other) & ~takeFirst);
      return Double.isNaN(held) ? Double.NaN : Double.longBitsToDouble(chosen);
    }
  }
}
