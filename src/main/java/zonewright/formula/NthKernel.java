package zonewright.formula;

import java.util.List;

/** One of several by its position, counted from 1; no number where there is no such. */
final class NthKernel extends Kernel {
  private final Kernel position;
  private final List<Kernel> options;
  private final boolean fixed;
  private final double[] values;
  private final double[][] spaces;

  NthKernel(Kernel position, List<Kernel> options) {
    this.position = position;
    this.options = List.copyOf(options);
    this.fixed = options.stream().allMatch(Single.class::isInstance);
    this.values = new double[options.size()];
    this.spaces = fixed ? new double[0][] : new double[options.size()][];
  }

  @Override
  void prepare() {
    position.prepare();
    for (int i = 0; i < values.length; i++) {
      options.get(i).prepare();
      values[i] = options.get(i) instanceof Single single ? single.value() : Double.NaN;
    }
  }

  @Override
  double[] run(int block, int rows, double[] target) {
    double[] at = position.run(block, rows, scratch(rows));
    return fixed ? fixed(at, rows, target) : each(at, block, rows, target);
  }

  private double[] fixed(double[] at, int rows, double[] target) {
    for (int row = 0; row < rows; row++) {
      double which = at[row];
      target[row] = which >= 1 && which < values.length + 1 ? values[(int) which - 1] : Double.NaN;
    }
    return target;
  }

  private double[] each(double[] at, int block, int rows, double[] target) {
    double[][] found = new double[values.length][];
    for (int i = 0; i < found.length; i++) {
      spaces[i] = BlockColumn.space(spaces[i], rows);
      found[i] = options.get(i).run(block, rows, spaces[i]);
    }
    for (int row = 0; row < rows; row++) {
      double which = at[row];
      target[row] =
          which >= 1 && which < values.length + 1 ? found[(int) which - 1][row] : Double.NaN;
    }
    return target;
  }
}
