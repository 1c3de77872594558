package zonewright.command;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import zonewright.design.Design;

/** A command that makes pages of a design. */
abstract class PagesCommand extends Task {
  @Mixin private DesignSource source;
  @Mixin private FileOptions files;

  @Parameters(paramLabel = "PATH", description = "Where to write the pages; ends in .pdf.")
  private Path path;

  /** Returns why a design makes no pages yet; nothing where it does. */
  abstract Optional<String> lacking(Design design);

  /** Returns the pages of a design, a PDF. */
  abstract byte[] pages(Design design);

  @Override
  public final Integer call() {
    PdfFile.mayWrite(path, files.replace());
    Design design = source.design(files.from(), err());
    lacking(design)
        .ifPresent(
            why -> {
              throw new Complaint(ExitCode.FOUND, why);
            });
    out().println(PdfFile.write(path, () -> pages(design)));
    return ExitCode.FINE;
  }
}
