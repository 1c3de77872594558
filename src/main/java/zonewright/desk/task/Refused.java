package zonewright.desk.task;

/** A file could not be read or written; the message is one whole sentence for a person. */
public class Refused extends Exception {
  public Refused(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
