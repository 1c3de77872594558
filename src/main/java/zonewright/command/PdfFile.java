package zonewright.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Supplier;

/** Pages as a file of their own. */
final class PdfFile {
  private PdfFile() {}

  /**
   * Makes sure that pages may be written to a path.
   *
   * @throws Complaint where it names no PDF, or a file that is there and must not be written over
   */
  static void mayWrite(Path path, boolean replace) {
    if (!path.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
      throw new Complaint(
          ExitCode.USAGE, "Pages are written as PDF; end the path in .pdf: " + path);
    }
    DesignFiles.mayReplace(path, replace);
  }

  /**
   * Writes pages.
   *
   * @return what is said of it
   * @throws Complaint when that fails
   */
  static String write(Path path, Supplier<byte[]> pages) {
    try {
      Files.write(path, pages.get());
      return "Written: " + path;
    } catch (IOException problem) {
      throw new Complaint(
          ExitCode.FILE, "%s could not be written: %s".formatted(path, problem.getMessage()));
    }
  }
}
