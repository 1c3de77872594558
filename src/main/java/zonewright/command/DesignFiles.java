package zonewright.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import zonewright.design.Design;
import zonewright.workbook.DesignFile;
import zonewright.workbook.DesignFileException;
import zonewright.workbook.FileSize;
import zonewright.workbook.KeptFile;
import zonewright.workbook.pack.PackOrder;

/** Design files, with complaints in place of exceptions. */
final class DesignFiles {
  private static final int MOST_TRIES = 3;

  private DesignFiles() {}

  /**
   * Returns the design in a file with the file itself; what the reader noticed goes to {@code err}.
   *
   * @param terminal where a password is asked for, three times
   * @throws Complaint when there is no such file or it cannot be read
   */
  static DesignFile.Opened existing(Path file, PrintWriter err, Terminal terminal) {
    if (!Files.exists(file)) {
      throw new Complaint(ExitCode.FILE, "There is no file " + file + ".");
    }
    Optional<String> password = Optional.empty();
    for (int tries = 0; ; tries++) {
      try {
        DesignFile.Opened opened =
            DesignFile.read(file, password, SlowWork.telling("Reading " + file, err));
        opened.report().notes().forEach(note -> err.println(note.line()));
        return opened;
      } catch (DesignFileException problem) {
        if (password.isPresent() && tries < MOST_TRIES) {
          err.println(problem.getMessage());
        }
        boolean ask = problem.wantsPassword() && tries < MOST_TRIES;
        password = ask ? terminal.password(err) : Optional.empty();
        if (password.isEmpty()) {
          throw complaint(problem);
        }
      }
    }
  }

  /** Returns the complaint about a file; where memory was lacking, the file is not at fault. */
  static Complaint complaint(DesignFileException problem) {
    boolean memory = Program.lackedMemory(problem);
    return new Complaint(memory ? ExitCode.FAULT : ExitCode.FILE, problem.getMessage());
  }

  /**
   * Makes sure that a design into which a list was taken can be written and opened again.
   *
   * @throws Complaint when it cannot
   */
  static void mayTake(Design design) {
    FileSize.refused(design.book())
        .ifPresent(
            sentence -> {
              throw new Complaint(
                  ExitCode.FILE, "The list is too long for the design. " + sentence);
            });
  }

  /**
   * Makes sure that a workbook may be written.
   *
   * @param replace whether a file that is there may be written over
   * @throws Complaint when it may not, or when its name has another ending
   */
  static void mayWrite(Path path, boolean replace) {
    if (!path.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
      throw new Complaint(
          ExitCode.USAGE, "A workbook's name ends in .xlsx; write for example " + path + ".xlsx.");
    }
    mayReplace(path, replace);
  }

  /**
   * Makes sure that a file may be written over, if it is there.
   *
   * @throws Complaint when it may not
   */
  static void mayReplace(Path path, boolean replace) {
    if (Files.exists(path) && !replace) {
      throw new Complaint(
          ExitCode.FILE,
          "%s is there already; add --replace to write over it, or choose another name."
              .formatted(path));
    }
  }

  /**
   * Writes a design into a copy of the file it came from.
   *
   * @param kept that file; none for a new workbook
   * @param err takes what a person should know about the writing
   * @throws Complaint when that fails
   */
  static void save(Design design, Path path, Optional<KeptFile> kept, PrintWriter err) {
    try {
      DesignFile.save(design, path, kept, SlowWork.telling("Writing " + path, err))
          .notes()
          .forEach(err::println);
    } catch (DesignFileException problem) {
      throw complaint(problem);
    }
  }

  /**
   * Writes a design with sheets beside it.
   *
   * @param kept the file it came from, for what is a person's own in it
   * @param err takes what a person should know about the writing
   * @throws Complaint when that fails
   */
  static void write(
      Design design, Path path, PackOrder order, Optional<KeptFile> kept, PrintWriter err) {
    try {
      DesignFile.write(design, path, order, kept, SlowWork.telling("Writing " + path, err))
          .notes()
          .forEach(err::println);
    } catch (DesignFileException problem) {
      throw complaint(problem);
    }
  }

  /**
   * Writes a design into a folder that need not be there yet.
   *
   * @throws Complaint when that fails
   */
  static void writeInto(Design design, Path path, PrintWriter err) {
    try {
      Files.createDirectories(path.toAbsolutePath().getParent());
    } catch (IOException problem) {
      throw new Complaint(ExitCode.FILE, "The folder for " + path + " cannot be made.");
    }
    save(design, path, Optional.empty(), err);
  }
}
