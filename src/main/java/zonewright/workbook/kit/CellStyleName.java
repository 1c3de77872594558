package zonewright.workbook.kit;

/** The ways a cell can look. */
public enum CellStyleName {
  /** The name of the file or of a sheet. */
  TITLE(null, "24443C", 16, true, false, false),
  /** The group a column or a line stands in. */
  BAND("C9D6CC", "24443C", 9, true, false, false),
  HEADING("24443C", "FFFFFF", 9, true, false, true),
  /** A heading over cells that are typed. */
  INPUT_HEADING("7A5A18", "FFFFFF", 9, true, false, true),
  NAME(null, "1F2A26", 10, true, false, false),
  INPUT("FFF1CC", "1F2A26", 10, false, false, false),
  INPUT_WORDS("FFF1CC", "1F2A26", 10, false, false, true),
  /** A formula that may be typed over. */
  DEFAULT("FFFAEB", "5B5337", 10, false, true, false),
  CALCULATED(null, "1F2A26", 10, false, false, false),
  /** A result that counts: a sum, the outcome of a step. */
  TOTAL("E8EFEA", "24443C", 10, true, false, false),
  TABLE(null, "1F2A26", 9, false, false, false),
  SMALL(null, "6B746F", 8, false, false, true),
  PLAIN(null, "1F2A26", 10, false, false, true),
  CAUTION("FBE4DC", "6E2412", 10, false, false, true);

  final String fill;
  final String ink;
  final int points;
  final boolean bold;
  final boolean italic;
  final boolean wrapped;

  CellStyleName(
      String fill, String ink, int points, boolean bold, boolean italic, boolean wrapped) {
    this.fill = fill;
    this.ink = ink;
    this.points = points;
    this.bold = bold;
    this.italic = italic;
    this.wrapped = wrapped;
  }

  /** Says whether its words go on in a line of their own where they are too long. */
  public boolean wrapped() {
    return wrapped;
  }

  /** Returns its fill as six hexadecimal digits, or nothing where it has none. */
  public String fill() {
    return fill;
  }

  /** Says whether a person types into such a cell. */
  public boolean typed() {
    return this == INPUT || this == INPUT_WORDS || this == DEFAULT;
  }

  /** Says whether it stands over a column. */
  public boolean heading() {
    return this == HEADING || this == INPUT_HEADING;
  }
}
