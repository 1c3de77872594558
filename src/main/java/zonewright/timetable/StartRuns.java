package zonewright.timetable;

/** What a start of a program does on a controller that starts programs. */
public enum StartRuns {
  /**
   * It runs every station of the program; stations with other numbers of cycles need a program of
   * their own.
   */
  EVERY_STATION,
  /** It runs one cycle of each station that still needs one this night. */
  STATIONS_STILL_DUE,
  /**
   * It runs all cycles of all stations: the controller goes round the stations in their order,
   * passes over one whose soak is not over, and waits only where none is ready.
   */
  CYCLES_AND_SOAKS
}
