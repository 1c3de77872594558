package zonewright.workbook;

/** A design file could not be read or written; the message is one sentence for a designer. */
public final class DesignFileException extends Exception {
  DesignFileException(String sentence) {
    super(sentence);
  }

  DesignFileException(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
