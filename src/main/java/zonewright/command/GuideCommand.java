package zonewright.command;

import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import zonewright.help.HelpBook;

/** Writes the help pages into a folder. */
@Command(
    name = "guide",
    header = "Write the help pages into a folder.",
    description = {
      "",
      "Pages of plain HTML: how to use the program, what every column means, the published tables, and the published values the"
          + " program is held against.",
      ""
    },
    footer = {"", "Example:", "  zonewright guide help"})
final class GuideCommand extends Task {
  @Parameters(paramLabel = "FOLDER", description = "Where to write the pages; made if need be.")
  private Path folder;

  @Override
  public Integer call() {
    try {
      HelpBook.write(folder);
    } catch (IOException problem) {
      throw new Complaint(
          ExitCode.FILE,
          "The pages cannot be written into %s; is the folder open to you?".formatted(folder));
    }
    out().println("Written: " + folder);
    return ExitCode.FINE;
  }
}
