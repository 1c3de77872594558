package zonewright.command;

import java.awt.AWTError;
import java.awt.HeadlessException;
import java.nio.file.Path;
import java.util.Optional;

/** The window, as far as the command line needs it. */
public interface Window {
  /** Says whether there is a display to open it on. */
  boolean possible();

  /** Opens it on a design file, or on the demo garden. */
  void open(Optional<Path> file);

  /** Opens it where there is a display; says whether there is. */
  default boolean opened(Optional<Path> file) {
    if (!possible()) {
      return false;
    }
    try {
      open(file);
      return true;
    } catch (HeadlessException | AWTError | LinkageError noDisplay) {
      return false;
    }
  }
}
