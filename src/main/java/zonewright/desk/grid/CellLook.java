package zonewright.desk.grid;

/**
 * How a cell appears.
 *
 * @param text what stands in it
 * @param standing how that came about
 * @param sentence why there is no number, or what else a pointer resting on it should tell; may be
 *     empty
 */
record CellLook(String text, Standing standing, String sentence) {
  /** How the content of a cell came about. */
  enum Standing {
    /** Typed, or waiting to be typed. */
    ENTERED,
    /** Follows from a formula and may be typed over. */
    DEFAULTED,
    /** Typed over what a formula gives. */
    OVERRIDDEN,
    /** Follows from a formula. */
    CALCULATED,
    /** The question does not arise. */
    NOT_APPLICABLE,
    /** Inputs are missing. */
    MISSING,
    /** What was typed here cannot be used. */
    REFUSED,
    /** Something typed elsewhere cannot be used. */
    REFUSED_ELSEWHERE;

    /** Says whether words in place of a number give the reason why there is none. */
    boolean reason() {
      return this == MISSING || this == REFUSED_ELSEWHERE;
    }
  }

  static final CellLook NOTHING = new CellLook("", Standing.ENTERED, "");
}
