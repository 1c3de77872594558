package zonewright.formula;

import java.util.List;

/** Kernels of conditions: 1 where it is so, 0 where not, no number where that cannot be said. */
final class ConditionKernels {
  private ConditionKernels() {}

  /** One number held against another. */
  static final class Comparison extends Kernel.Binary {
    private final Comparator comparator;

    Comparison(Comparator comparator, Kernel left, Kernel right) {
      super(left, right);
      this.comparator = comparator;
    }

    private double held(double first, double second) {
      if (Double.isNaN(first) || Double.isNaN(second)) {
        return Double.NaN;
      }
      return comparator.holds(first, second) ? 1 : 0;
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

  /** The position is one of these. */
  static final class OneOf extends Kernel.Unary {
    private final double[] wanted;

    OneOf(List<Integer> positions, Kernel word) {
      super(word);
      this.wanted = positions.stream().mapToDouble(Integer::doubleValue).toArray();
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
    private final double[] second = new double[BlockColumn.BLOCK];

    Choose(Kernel condition, Kernel then, Kernel otherwise) {
      this.condition = condition;
      this.then = then;
      this.otherwise = otherwise;
    }

    @Override
    void prepare() {
      condition.prepare();
      then.prepare();
      otherwise.prepare();
    }

    @Override
    double[] run(int block, int rows, double[] target) {
      double[] held = condition.run(block, rows, scratch());
      double[] first = then.run(block, rows, target);
      double[] other = otherwise.run(block, rows, second);
      for (int i = 0; i < rows; i++) {
        target[i] = held[i] == 1 ? first[i] : held[i] == 0 ? other[i] : Double.NaN;
      }
      return target;
    }
  }
}
