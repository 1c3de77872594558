package zonewright.workbook.kit;

import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Keeps the library for the files from logging what it throws or works around anyway: a person is
 * told in a sentence, never in a trace.
 */
public final class Quiet {
  /** Held, for a logger nobody holds forgets its level. */
  private static final Logger LIBRARY = Logger.getLogger("org.apache.poi");

  private Quiet() {}

  /** Makes it so for the whole program. */
  public static void please() {
    LIBRARY.setLevel(Level.OFF);
  }
}
