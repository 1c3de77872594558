package zonewright.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import zonewright.design.Design;
import zonewright.handover.HandoverPages;
import zonewright.trade.Sheets;

/** Writes the handover pack as pages to print. */
@Command(
    name = "handover",
    header =
        "Write the handover pack as a PDF: program cards, facts for the controller, checklist.",
    description = {
      "",
      "One page for each program as it is keyed in, then what a weather-based controller asks zone"
          + " by zone, the peak climate value and the months, and the list to go through on the day."
          + " The same design makes the same file.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright handover garden.pdf --from garden.xlsx",
      "  zonewright handover garden.pdf --sample library-garden --replace"
    })
final class HandoverCommand extends Task {
  @Mixin private DesignSource source;
  @Mixin private FileOptions files;

  @Parameters(paramLabel = "PATH", description = "Where to write the pages; ends in .pdf.")
  private Path path;

  @Override
  public Integer call() {
    if (!path.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
      throw new Complaint(
          ExitCode.USAGE, "Pages are written as PDF; end the path in .pdf: " + path);
    }
    if (!files.replace() && Files.exists(path)) {
      throw new Complaint(
          ExitCode.FILE, path + " is there already; say --replace to write over it.");
    }
    Design design = source.design(files.from(), err());
    if (design.book().rows(Sheets.ZONES) == 0) {
      throw new Complaint(
          ExitCode.FOUND, "There is nothing to hand over: the design has no zones.");
    }
    try {
      Files.write(path, HandoverPages.of(design));
    } catch (IOException problem) {
      throw new Complaint(
          ExitCode.FILE, "%s could not be written: %s".formatted(path, problem.getMessage()));
    }
    out().println("Written: " + path);
    return ExitCode.FINE;
  }
}
