package zonewright.desk;

import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;

/** Turns what went wrong into a sentence for a person. */
final class Sentences {
  private Sentences() {}

  /** Returns a sentence, with a full stop. */
  static String of(Exception problem) {
    if (problem instanceof NoSuchFileException) {
      return "the file or its folder is not there.";
    }
    if (problem instanceof AccessDeniedException) {
      return "the file may not be read or written here.";
    }
    String message = problem.getMessage();
    if (message == null || message.isBlank()) {
      return "something went wrong that has no name (" + problem.getClass().getSimpleName() + ").";
    }
    return message.endsWith(".") || message.endsWith("!") ? message : message + ".";
  }
}
