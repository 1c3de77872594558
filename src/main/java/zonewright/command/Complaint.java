package zonewright.command;

/** Ends a command with a sentence for a person and a code for a script. */
final class Complaint extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final int code;

  /**
   * Makes a complaint.
   *
   * @param code one of {@link ExitCode}
   * @param sentence what is wrong and what would be right
   */
  Complaint(int code, String sentence) {
    super(sentence);
    this.code = code;
  }

  int code() {
    return code;
  }
}
