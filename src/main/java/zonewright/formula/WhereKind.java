package zonewright.formula;

/** What can be made of those rows of a table that match this one. */
public enum WhereKind {
  SUM("sum of"),
  LARGEST("largest of"),
  SMALLEST("smallest of"),
  COUNT("number of rows");

  private final String words;

  WhereKind(String words) {
    this.words = words;
  }

  /** Returns what a person calls it. */
  public String words() {
    return words;
  }

  /** Says whether the result has the column's own unit. */
  public boolean keepsUnit() {
    return this != COUNT;
  }

  /** Returns what comes of no rows: 0, or no number where there is none to choose from. */
  public double ofNone() {
    return this == SUM || this == COUNT ? 0 : Double.NaN;
  }

  /** Returns what comes of one row more; no number stays so. */
  double with(double sofar, double value, boolean first) {
    return switch (this) {
      case SUM -> sofar + value;
      case COUNT -> sofar + 1;
      case LARGEST -> first ? value : Numbers.larger(sofar, value);
      case SMALLEST -> first ? value : Numbers.smaller(sofar, value);
    };
  }
}
