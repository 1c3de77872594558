package zonewright.formula;

/**
 * Ways to hold one number against another; numbers that differ in their last bits only count as
 * equal.
 */
public enum Comparator {
  AT_MOST("<=", "≤") {
    @Override
    public boolean holds(double first, double second) {
      return Numbers.atMost(first, second);
    }
  },
  BELOW("<", "<") {
    @Override
    public boolean holds(double first, double second) {
      return !Numbers.atMost(second, first);
    }
  },
  AT_LEAST(">=", "≥") {
    @Override
    public boolean holds(double first, double second) {
      return Numbers.atMost(second, first);
    }
  },
  ABOVE(">", ">") {
    @Override
    public boolean holds(double first, double second) {
      return !Numbers.atMost(first, second);
    }
  };

  private final String typed;
  private final String printed;

  Comparator(String typed, String printed) {
    this.typed = typed;
    this.printed = printed;
  }

  /** Says whether it is so; both sides must be numbers. */
  public abstract boolean holds(double first, double second);

  /** Returns the sign a spreadsheet takes. */
  public String typed() {
    return typed;
  }

  /** Returns the sign a person reads. */
  public String printed() {
    return printed;
  }

  /** Returns the comparison that holds where this does not. */
  Comparator opposite() {
    return switch (this) {
      case AT_MOST -> ABOVE;
      case BELOW -> AT_LEAST;
      case AT_LEAST -> BELOW;
      case ABOVE -> AT_MOST;
    };
  }
}
