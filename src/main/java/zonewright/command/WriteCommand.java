package zonewright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import zonewright.design.Design;

/** Writes a design as a workbook. */
@Command(
    name = "write",
    header = "Write a design as a workbook with live formulas.",
    description = {
      "",
      "The workbook is the design file: open it in the window, or in any spreadsheet program."
          + " Without --from it is the demo garden.",
      ""
    },
    footer = {
      "",
      "Examples:",
      "  zonewright write demo.xlsx",
      "  zonewright write garden-metric.xlsx --from garden.xlsx --units si"
    })
final class WriteCommand extends Task {
  @Mixin private DesignSource source;
  @Mixin private FileOptions files;

  @Parameters(paramLabel = "PATH", description = "Where to write the workbook; ends in .xlsx.")
  private Path path;

  @Override
  public Integer call() {
    PrintWriter err = err();
    DesignFiles.mayWrite(path, files.replace());
    Design design = source.design(files.from(), err);
    DesignFiles.save(design, path, source.kept(), err);
    out().println("Written: " + path);
    return ExitCode.FINE;
  }
}
