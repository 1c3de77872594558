package zonewright.workbook.pack;

/** Whom a sheet is for. */
public enum Audience {
  /** Whoever gets the workbook, the client included. */
  CLIENT,
  /** The designer's own office: left out of a client's copy. */
  OFFICE
}
