package zonewright.exchange;

/** A list cannot be read or taken; the message is one sentence for a designer. */
public final class ListProblem extends Exception {
  private static final long serialVersionUID = 1;

  ListProblem(String sentence) {
    super(sentence);
  }

  ListProblem(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
