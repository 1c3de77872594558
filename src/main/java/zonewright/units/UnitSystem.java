package zonewright.units;

/** The two systems a design can be kept in. */
public enum UnitSystem {
  /** Inches, square feet, gallons a minute. */
  US("US units"),
  /** Millimetres, square metres, litres a minute. */
  SI("metric units");

  private final String words;

  UnitSystem(String words) {
    this.words = words;
  }

  /** Returns what a person calls it. */
  public String words() {
    return words;
  }
}
