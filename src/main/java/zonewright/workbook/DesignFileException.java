package zonewright.workbook;

/** A design file could not be read or written; the message is one sentence for a designer. */
public sealed class DesignFileException extends Exception permits PasswordProtection.Needed {
  DesignFileException(String sentence) {
    super(sentence);
  }

  DesignFileException(String sentence, Throwable cause) {
    super(sentence, cause);
  }

  /** Says whether a password, or another one, would open the file. */
  public boolean wantsPassword() {
    return this instanceof PasswordProtection.Needed;
  }
}
