package zonewright.workbook;

/** The result a file carries beside a formula; used to compare, never to calculate. */
final class ShownNumber {
  private static final double TOLERANCE = 1e-9;

  private ShownNumber() {}

  /** Says whether the file's number and ours are worth telling apart; ours may be no number. */
  static boolean differs(double file, double ours) {
    if (Double.isNaN(ours)) {
      return true;
    }
    return Math.abs(file - ours) > TOLERANCE * Math.max(Math.abs(file), Math.abs(ours));
  }
}
