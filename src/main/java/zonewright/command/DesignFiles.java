package zonewright.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import zonewright.design.Design;
import zonewright.workbook.DesignFile;
import zonewright.workbook.DesignFileException;

/** Design files, with complaints in place of exceptions. */
final class DesignFiles {
  private DesignFiles() {}

  /**
   * Returns the design in a file; what the reader noticed goes to {@code err}.
   *
   * @throws Complaint when there is no such file or it cannot be read
   */
  static Design existing(Path file, PrintWriter err) {
    if (!Files.exists(file)) {
      throw new Complaint(ExitCode.FILE, "There is no file " + file + ".");
    }
    try {
      DesignFile.Opened opened = DesignFile.read(file);
      opened.report().notes().forEach(note -> err.println(note.line()));
      return opened.design();
    } catch (DesignFileException problem) {
      throw new Complaint(ExitCode.FILE, problem.getMessage());
    }
  }

  /**
   * Writes a design.
   *
   * @throws Complaint when that fails
   */
  static void write(Design design, Path path) {
    try {
      DesignFile.write(design, path);
    } catch (DesignFileException problem) {
      throw new Complaint(ExitCode.FILE, problem.getMessage());
    }
  }

  /**
   * Writes a design into a folder that need not be there yet.
   *
   * @throws Complaint when that fails
   */
  static void writeInto(Design design, Path path) {
    try {
      Files.createDirectories(path.toAbsolutePath().getParent());
    } catch (IOException problem) {
      throw new Complaint(ExitCode.FILE, "The folder for " + path + " cannot be made.");
    }
    write(design, path);
  }
}
