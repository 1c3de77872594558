package zonewright.command;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Which design file a command reads first, and whether what it writes may replace a file. */
final class FileOptions {
  @Option(names = "--from", paramLabel = "FILE", description = "The design file to read first.")
  private Optional<Path> from = Optional.empty();

  @Option(names = "--replace", description = "Replace the file if there is one already.")
  private boolean replace;

  /** Returns the file to read; none where none is named. */
  Optional<Path> from() {
    return from;
  }

  /** Says whether a file that is there may be written over. */
  boolean replace() {
    return replace;
  }
}
