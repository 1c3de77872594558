package zonewright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import zonewright.design.Design;
import zonewright.retrofit.ZoneCopy;
import zonewright.trade.Sheets;

/** Copies zones between the sheets of a retrofit. */
@Command(
    name = "retrofit",
    header = "Copy the zones as found to the proposed zones, or the other way round.",
    description = {
      "",
      "A retrofit holds its zones twice: as found on the sheet Found, as proposed on the sheet Zones."
          + " Enter them on one, copy them to the other, and change there what is to change. Zones of"
          + " the same name are written over in what both sheets have.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright retrofit --as-found survey-both.xlsx --from survey.xlsx",
      "  zonewright retrofit --as-proposed proposal.xlsx --from survey-both.xlsx"
    })
final class RetrofitCommand extends Task {
  @Mixin private DesignSource source;
  @Mixin private FileOptions files;

  @Option(
      names = "--as-found",
      description = "Take the zones as they stand on the sheet Zones for the zones as found.")
  private boolean asFound;

  @Option(
      names = "--as-proposed",
      description = "Make the proposed zones of the zones as found; the usual way.")
  private boolean asProposed;

  @Parameters(paramLabel = "PATH", description = "Where to write the workbook; ends in .xlsx.")
  private Path path;

  @Override
  public Integer call() {
    if (asFound && asProposed) {
      throw new Complaint(ExitCode.USAGE, "Choose --as-found or --as-proposed, not both.");
    }
    DesignFiles.mayWrite(path, files.replace());
    PrintWriter err = err();
    Design design = source.design(files.from(), err);
    ZoneCopy copy = new ZoneCopy(design.book());
    String filled = asFound ? Sheets.ZONES : Sheets.FOUND;
    if (design.book().rows(filled) == 0) {
      throw new Complaint(
          ExitCode.FOUND,
          "The sheet %s holds no zones to copy."
              .formatted(design.book().schema().table(filled).title()));
    }
    design.book().perform(asFound ? copy.proposedToFound() : copy.foundToProposed());
    DesignFiles.save(design, path, source.kept(), err());
    out().println("Written: " + path);
    return ExitCode.FINE;
  }
}
