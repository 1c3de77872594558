package zonewright.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import zonewright.design.Design;
import zonewright.handover.Proposal;
import zonewright.handover.ProposalPages;

/** Writes the proposal as pages to send and to sign. */
@Command(
    name = "proposal",
    header = "Write the proposal to the owner as a PDF: scope, price, payments, terms, signatures.",
    description = {
      "",
      "What the office says on it, such as client, number, terms and payments, is typed on the sheet"
          + " Estimate; the price adds up on the page. The pack has the same as a sheet.",
      ""
    },
    footer = {"", "Examples:", "  zonewright proposal offer.pdf --from priced.xlsx"})
final class ProposalCommand extends Task {
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
    Proposal.lacking(design.book())
        .ifPresent(
            why -> {
              throw new Complaint(ExitCode.FOUND, why);
            });
    try {
      Files.write(path, ProposalPages.of(design));
    } catch (IOException problem) {
      throw new Complaint(
          ExitCode.FILE, "%s could not be written: %s".formatted(path, problem.getMessage()));
    }
    out().println("Written: " + path);
    return ExitCode.FINE;
  }
}
