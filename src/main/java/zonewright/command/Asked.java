package zonewright.command;

import zonewright.sheet.Column;
import zonewright.sheet.ColumnFinder;

/** The column a person names on the command line. */
final class Asked {
  private Asked() {}

  /**
   * Returns the column a name means.
   *
   * @throws Complaint where it means none or several
   */
  static Column column(ColumnFinder finder, String name) {
    ColumnFinder.Found found = finder.find(name);
    if (found instanceof ColumnFinder.Unclear unclear) {
      throw new Complaint(ExitCode.USAGE, unclear.sentence());
    }
    return ((ColumnFinder.One) found).column();
  }
}
