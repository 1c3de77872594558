package zonewright.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Option;

/** The options of a command that prints, or writes pages where a path for them is named. */
final class PdfOption {
  @Option(names = "--pdf", paramLabel = "PATH", description = "Write a page to print, a PDF.")
  private Optional<Path> pdf = Optional.empty();

  @Option(names = "--replace", description = "Replace the file if there is one already.")
  private boolean replace;

  /**
   * Says whether pages are asked for.
   *
   * @throws Complaint where they cannot be written there
   */
  boolean asked() {
    pdf.ifPresent(path -> PdfFile.mayWrite(path, replace));
    return pdf.isPresent();
  }

  /** Writes the pages asked for, and returns what is said of it. */
  String write(Supplier<byte[]> pages) {
    return PdfFile.write(pdf.orElseThrow(), pages);
  }
}
