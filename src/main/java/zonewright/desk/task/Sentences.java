package zonewright.desk.task;

/** Turns what went wrong into a sentence for a person. */
public final class Sentences {
  private Sentences() {}

  /** Returns a sentence, with a full stop; {@code what} names what was not done. */
  public static String of(String what, Exception problem) {
    String message = problem.getMessage();
    if (problem instanceof Refused && message != null && !message.isBlank()) {
      return message.endsWith(".") || message.endsWith("!") ? message : message + ".";
    }
    return "%s: the program met something it was not made for (%s)."
        .formatted(what, problem.getClass().getSimpleName());
  }
}
