package zonewright.desk.grid;

/** How large a sheet stands on paper. */
public enum PageScale {
  /** Smaller where that brings all columns on one page and they can still be read. */
  AS_IT_FITS("as it fits", 0),
  /** As small as it takes to bring all columns on one page. */
  TO_THE_WIDTH("to the width", 0),
  FULL("100 %", 1),
  LARGE("85 %", 0.85),
  MIDDLING("70 %", 0.70),
  SMALL("55 %", 0.55);

  private final String words;
  private final double scale;

  PageScale(String words, double scale) {
    this.words = words;
    this.scale = scale;
  }

  /** Returns a fixed scale, 1 for full size; 0 for one that follows from the columns. */
  double scale() {
    return scale;
  }

  @Override
  public String toString() {
    return words;
  }
}
