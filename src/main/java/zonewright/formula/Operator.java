package zonewright.formula;

/** The four rules of arithmetic, with their rank and their signs. */
public enum Operator {
  PLUS("+", "+", 1) {
    @Override
    public double of(double left, double right) {
      return left + right;
    }
  },
  MINUS("-", "−", 1) {
    @Override
    public double of(double left, double right) {
      return left - right;
    }
  },
  TIMES("*", "×", 2) {
    @Override
    public double of(double left, double right) {
      return left * right;
    }
  },
  OVER("/", "÷", 2) {
    @Override
    public double of(double left, double right) {
      return Numbers.quotient(left, right);
    }
  };

  private final String typed;
  private final String printed;
  private final int rank;

  Operator(String typed, String printed, int rank) {
    this.typed = typed;
    this.printed = printed;
    this.rank = rank;
  }

  /** Returns the result; a quotient by zero is no number. */
  public abstract double of(double left, double right);

  /** Returns the sign a spreadsheet takes. */
  public String typed() {
    return typed;
  }

  /** Returns the sign a person reads. */
  public String printed() {
    return printed;
  }

  /** Returns how tightly it binds: 1 for sums, 2 for products. */
  public int rank() {
    return rank;
  }
}
