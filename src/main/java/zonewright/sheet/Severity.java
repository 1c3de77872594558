package zonewright.sheet;

/** How much a finding matters; the worst first. */
public enum Severity {
  /** A cell cannot be used as it is. */
  WRONG("wrong"),
  /** Something must still be entered. */
  MISSING("missing"),
  /** The design would not work, or breaks a rule, as it stands. */
  CHECK("check"),
  /** Worth knowing. */
  NOTE("note");

  private final String word;

  Severity(String word) {
    this.word = word;
  }

  /** Returns the word a person reads. */
  public String word() {
    return word;
  }
}
