package zonewright.formula;

import zonewright.units.CalendarText;

/** Functions of one number, for all but one a pure number; angles in radians. */
public enum FunctionKind {
  SQUARE_ROOT("SQRT", "√"),
  EXPONENTIAL("EXP", "exp"),
  NATURAL_LOGARITHM("LN", "ln"),
  SINE("SIN", "sin"),
  COSINE("COS", "cos"),
  TANGENT("TAN", "tan"),
  ARC_COSINE("ACOS", "arccos"),
  /** The amount without its sign; the only one that takes amounts of any kind. */
  ABSOLUTE("ABS", "absolute value of "),
  /** The month, 1 to 12, of a date in days as spreadsheets count them. */
  MONTH("MONTH", "month of ");

  private final String spreadsheet;
  private final String words;

  FunctionKind(String spreadsheet, String words) {
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

  /** Says whether the result has the unit of what it is taken of. */
  public boolean keepsUnit() {
    return this == ABSOLUTE;
  }

  /** Returns the value, or no number outside its domain. */
  public double of(double x) {
    double value =
        switch (this) {
          case SQUARE_ROOT -> Math.sqrt(x);
          case EXPONENTIAL -> Math.exp(x);
          case NATURAL_LOGARITHM -> Math.log(x);
          case SINE -> Math.sin(x);
          case COSINE -> Math.cos(x);
          case TANGENT -> Math.tan(x);
          case ARC_COSINE -> Math.acos(x);
          case ABSOLUTE -> Math.abs(x);
          case MONTH -> CalendarText.isDate(x) ? CalendarText.date(x).getMonthValue() : Double.NaN;
        };
    return Numbers.finite(value);
  }
}
