package zonewright.command;

import java.nio.file.Path;
import java.util.Optional;

/** The window, as far as the command line needs it. */
public interface Window {
  /** Says whether there is a display to open it on. */
  boolean possible();

  /** Opens it on a design file, or on the demo garden. */
  void open(Optional<Path> file);
}
