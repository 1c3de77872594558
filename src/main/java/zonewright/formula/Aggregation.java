package zonewright.formula;

/** What can be made of a whole column. */
public enum Aggregation {
  /** The sum over the rows that have a name. */
  SUM("SUM", "sum of"),
  /** The largest. */
  LARGEST("MAX", "largest of"),
  /** The smallest. */
  SMALLEST("MIN", "smallest of"),
  /**
   * The position, from 1, of the largest; the first where several are equal in all but last bits.
   */
  POSITION_OF_LARGEST("MATCH", "row of the largest of"),
  /** How many rows that have a name hold a number. */
  COUNT("COUNT", "number of rows with"),
  /** The internal rate of return of yearly cash, the first row at the start; a part of one. */
  RATE_OF_RETURN("IRR", "internal rate of return of");

  private final String spreadsheet;
  private final String words;

  Aggregation(String spreadsheet, String words) {
    this.spreadsheet = spreadsheet;
    this.words = words;
  }

  /** Returns the function a spreadsheet has for it. */
  public String spreadsheet() {
    return spreadsheet;
  }

  /** Returns what a person calls it. */
  public String words() {
    return words;
  }

  /** Says whether the result has the column's own unit. */
  public boolean keepsUnit() {
    return this == SUM || this == LARGEST || this == SMALLEST;
  }
}
