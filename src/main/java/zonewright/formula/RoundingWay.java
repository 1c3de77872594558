package zonewright.formula;

/** Ways to round to a whole number; see {@link Numbers}. */
public enum RoundingWay {
  UP("rounded up") {
    @Override
    public double of(double value) {
      return Numbers.roundUp(value);
    }
  },
  DOWN("rounded down") {
    @Override
    public double of(double value) {
      return Numbers.roundDown(value);
    }
  },
  NEAREST("rounded") {
    @Override
    public double of(double value) {
      return Numbers.roundNearest(value);
    }
  };

  private final String words;

  RoundingWay(String words) {
    this.words = words;
  }

  /** Returns the whole number. */
  public abstract double of(double value);

  /** Returns what a person calls it. */
  public String words() {
    return words;
  }
}
