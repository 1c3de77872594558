package zonewright.formula;

/**
 * The loops of arithmetic. Each is written out so that the compiler of the platform turns it into
 * vector instructions; they must agree with {@link Operator} and {@link Numbers}, and a test holds
 * them to it.
 */
final class ArithmeticKernels {
  private ArithmeticKernels() {}

  static Kernel of(Operator operator, Kernel left, Kernel right) {
    return switch (operator) {
      case PLUS -> new Plus(left, right);
      case MINUS -> new Minus(left, right);
      case TIMES -> new Times(left, right);
      case OVER -> new Over(left, right);
    };
  }

  private static final class Plus extends Kernel.Binary {
    Plus(Kernel left, Kernel right) {
      super(left, right);
    }

    @Override
    void join(double[] first, double[] second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = first[i] + second[i];
      }
    }

    @Override
    void join(double first, double[] second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = first + second[i];
      }
    }

    @Override
    void join(double[] first, double second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = first[i] + second;
      }
    }
  }

  private static final class Minus extends Kernel.Binary {
    Minus(Kernel left, Kernel right) {
      super(left, right);
    }

    @Override
    void join(double[] first, double[] second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = first[i] - second[i];
      }
    }

    @Override
    void join(double first, double[] second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = first - second[i];
      }
    }

    @Override
    void join(double[] first, double second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = first[i] - second;
      }
    }
  }

  private static final class Times extends Kernel.Binary {
    Times(Kernel left, Kernel right) {
      super(left, right);
    }

    @Override
    void join(double[] first, double[] second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = first[i] * second[i];
      }
    }

    @Override
    void join(double first, double[] second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = first * second[i];
      }
    }

    @Override
    void join(double[] first, double second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = first[i] * second;
      }
    }
  }

  private static final class Over extends Kernel.Binary {
    Over(Kernel left, Kernel right) {
      super(left, right);
    }

    @Override
    void join(double[] first, double[] second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        double quotient = first[i] / second[i];
        target[i] = quotient + 0 * quotient;
      }
    }

    @Override
    void join(double first, double[] second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        double quotient = first / second[i];
        target[i] = quotient + 0 * quotient;
      }
    }

    @Override
    void join(double[] first, double second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        double quotient = first[i] / second;
        target[i] = quotient + 0 * quotient;
      }
    }
  }

  /** The larger or the smaller of two. */
  static final class Extreme extends Kernel.Binary {
    private final boolean largest;

    Extreme(boolean largest, Kernel left, Kernel right) {
      super(left, right);
      this.largest = largest;
    }

    @Override
    void join(double[] first, double[] second, double[] target, int rows) {
      if (largest) {
        for (int i = 0; i < rows; i++) {
          target[i] = Math.max(first[i], second[i]);
        }
      } else {
        for (int i = 0; i < rows; i++) {
          target[i] = Math.min(first[i], second[i]);
        }
      }
    }

    @Override
    void join(double first, double[] second, double[] target, int rows) {
      if (largest) {
        for (int i = 0; i < rows; i++) {
          target[i] = Math.max(first, second[i]);
        }
      } else {
        for (int i = 0; i < rows; i++) {
          target[i] = Math.min(first, second[i]);
        }
      }
    }

    @Override
    void join(double[] first, double second, double[] target, int rows) {
      join(second, first, target, rows);
    }
  }

  /** Whole numbers, up or down. */
  static final class Rounding extends Kernel.Unary {
    private final RoundingWay way;

    Rounding(RoundingWay way, Kernel operand) {
      super(operand);
      this.way = way;
    }

    @Override
    void change(double[] values, double[] target, int rows) {
      switch (way) {
        case UP -> {
          for (int i = 0; i < rows; i++) {
            target[i] = Numbers.roundUp(values[i]);
          }
        }
        case DOWN -> {
          for (int i = 0; i < rows; i++) {
            target[i] = Numbers.roundDown(values[i]);
          }
        }
        case NEAREST -> {
          for (int i = 0; i < rows; i++) {
            target[i] = Numbers.roundNearest(values[i]);
          }
        }
      }
    }
  }

  /** A function of one number. */
  static final class Function extends Kernel.Unary {
    private final FunctionKind kind;

    Function(FunctionKind kind, Kernel operand) {
      super(operand);
      this.kind = kind;
    }

    @Override
    void change(double[] values, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = kind.of(values[i]);
      }
    }
  }

  /** A power. */
  static final class Power extends Kernel.Binary {
    Power(Kernel base, Kernel exponent) {
      super(base, exponent);
    }

    @Override
    void join(double[] first, double[] second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = Numbers.power(first[i], second[i]);
      }
    }

    @Override
    void join(double first, double[] second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = Numbers.power(first, second[i]);
      }
    }

    @Override
    void join(double[] first, double second, double[] target, int rows) {
      for (int i = 0; i < rows; i++) {
        target[i] = Numbers.power(first[i], second);
      }
    }
  }
}
