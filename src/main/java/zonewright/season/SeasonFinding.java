package zonewright.season;

/**
 * Something to tell the designer of a season.
 *
 * @param row the zone's row on its sheet; -1 for the whole site
 * @param where what it is of, such as {@code zone 3}
 * @param sentence what is wrong, following {@code where}
 * @param cure what would help, and what it would give; tried, not guessed
 */
public record SeasonFinding(int row, String where, String sentence, String cure) {
  /** Returns it as one line. */
  public String line() {
    return where + " " + sentence + (cure.isEmpty() ? "" : " — " + cure);
  }
}
