package zonewright.timetable;

/** What a start of a program does on a plain controller. */
public enum StartRuns {
  /**
   * It runs every station of the program; stations with other numbers of cycles need a program of
   * their own.
   */
  EVERY_STATION,
  /** It runs one cycle of each station that still needs one this night. */
  STATIONS_STILL_DUE
}
