package zonewright.workbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import zonewright.design.Design;
import zonewright.workbook.kit.CellText;
import zonewright.workbook.pack.PackOrder;
import zonewright.workbook.pack.PackSheet;

/** The design file: an .xlsx workbook, written and read. */
public final class DesignFile {
  private DesignFile() {}

  /**
   * A design from a file.
   *
   * @param design the design, calculated anew
   * @param report what was taken, what was left, and what differs
   * @param kept the file itself, for what is a person's own in it
   */
  public record Opened(Design design, ReadingReport report, KeptFile kept) {}

  /**
   * A file that was written.
   *
   * @param kept the file itself, for the next writing
   * @param notes what a person should know, each a sentence; empty where all went as it should
   */
  public record Written(KeptFile kept, List<String> notes) {
    public Written {
      notes = List.copyOf(notes);
    }
  }

  /**
   * Writes a design as a new workbook; all of it or nothing.
   *
   * <p>What stood in the file before is kept beside it: {@code garden.bak.xlsx} for {@code
   * garden.xlsx}.
   *
   * @throws DesignFileException with a sentence that says what to do, when the file is none that
   *     can be written now
   */
  public static Written write(Design design, Path file) throws DesignFileException {
    return save(design, file, Optional.empty());
  }

  /**
   * Writes a design into a copy of the file it came from, with the sheets that stand there; all of
   * it or nothing.
   *
   * @param kept the file the design came from; none for a new workbook
   * @throws DesignFileException with a sentence that says what to do, when the file is none that
   *     can be written now
   */
  public static Written save(Design design, Path file, Optional<KeptFile> kept)
      throws DesignFileException {
    return save(design, file, kept, Progress.UNWATCHED);
  }

  /**
   * The same, watched.
   *
   * @throws DesignFileException as above
   * @throws Progress.BrokenOff where the watcher breaks it off; the file is as it was
   */
  public static Written save(Design design, Path file, Optional<KeptFile> kept, Progress progress)
      throws DesignFileException {
    PackOrder order = PackOrder.again(design, kept.map(KeptFile::made).orElse(Set.of()));
    return write(design, file, order, kept, progress);
  }

  /**
   * Writes a design as a workbook with sheets to hand over beside its own tables; all of it or
   * nothing. It is a design file like any other, and those sheets are not read back. A sheet that
   * cannot be made of this design is left out; {@link PackSheet#lacks} says why. A client's copy is
   * made of what goes to a client alone, and refused where its proposal cannot be made.
   *
   * @param order which sheets
   * @param kept the file the design came from: what is a person's own in it goes into the new one;
   *     none for a new workbook
   * @throws DesignFileException with a sentence that says what to do, when the file is none that
   *     can be written now
   */
  public static Written write(Design design, Path file, PackOrder order, Optional<KeptFile> kept)
      throws DesignFileException {
    return write(design, file, order, kept, Progress.UNWATCHED);
  }

  /**
   * The same, watched.
   *
   * @throws DesignFileException as above
   * @throws Progress.BrokenOff where the watcher breaks it off; the file is as it was
   */
  public static Written write(
      Design design, Path file, PackOrder order, Optional<KeptFile> kept, Progress progress)
      throws DesignFileException {
    if (order.zoneIn(design).isEmpty()) {
      throw new DesignFileException(
          "%s was not saved: there is no zone “%s”.".formatted(file, order.zone().orElse("")));
    }
    Optional<String> refused = order.refused(design);
    if (refused.isPresent()) {
      throw new DesignFileException(refused.get());
    }
    Path name = file.getFileName();
    if (name == null || !name.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
      throw new DesignFileException(
          "A design is saved as an .xlsx workbook; %s has another ending.".formatted(file));
    }
    try {
      return DesignWriting.write(design, file, order, kept, progress);
    } catch (CellText.TooLong problem) {
      throw new DesignFileException(
          "%s was not saved: %s".formatted(file, problem.getMessage()), problem);
    } catch (IOException problem) {
      throw new DesignFileException(
          "%s was not saved: %s".formatted(file, problem.getMessage()), problem);
    }
  }

  /** Returns where {@link #write} keeps the last version of a file. */
  public static Path backup(Path file) {
    return SafeSave.backup(file);
  }

  /**
   * Reads a design from a workbook. Formulas, macros and links in the file are not run; a file of
   * more than 400 MB is not opened.
   *
   * @throws DesignFileException with a sentence that says why, when the file holds no design that
   *     can be read
   */
  public static Opened read(Path file) throws DesignFileException {
    return read(file, Progress.UNWATCHED);
  }

  /**
   * The same, watched.
   *
   * @throws DesignFileException as above
   * @throws Progress.BrokenOff where the watcher breaks it off
   */
  public static Opened read(Path file, Progress progress) throws DesignFileException {
    return read(file, Optional.empty(), progress);
  }

  /**
   * The same of a file that a password may protect.
   *
   * @throws DesignFileException as above; it says whether it {@linkplain
   *     DesignFileException#wantsPassword wants a password}
   * @throws Progress.BrokenOff where the watcher breaks it off
   */
  public static Opened read(Path file, Optional<String> password, Progress progress)
      throws DesignFileException {
    Opened opened =
        WorkbookOpening.with(
            file, password, progress, source -> DesignReader.read(source, file.toString()));
    return new Opened(opened.design(), opened.report(), opened.kept().closedBy(password));
  }
}
