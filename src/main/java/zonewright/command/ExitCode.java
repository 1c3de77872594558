package zonewright.command;

/** What a command tells the script that called it. */
final class ExitCode {
  /** Done. */
  static final int FINE = 0;

  /** Done, and something about the design is wrong or to be looked at. */
  static final int FOUND = 1;

  /** The command or the values given with it cannot be understood. */
  static final int USAGE = 2;

  /** A file cannot be read or written. */
  static final int FILE = 3;

  /** The program itself is at fault. */
  static final int FAULT = 4;

  private ExitCode() {}
}
