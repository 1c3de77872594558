package zonewright.workbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.design.Design;

/** The design file: an .xlsx workbook, written and read. */
public final class DesignFile {
  private DesignFile() {}

  /**
   * A design from a file.
   *
   * @param design the design, calculated anew
   * @param report what was taken, what was left, and what differs
   */
  public record Opened(Design design, ReadingReport report) {}

  /**
   * Writes a design as a workbook; all of it or nothing.
   *
   * <p>What stood in the file before is kept beside it: {@code garden.bak.xlsx} for {@code
   * garden.xlsx}.
   *
   * @throws DesignFileException with a sentence that says what to do, when the file is none that
   *     can be written now
   */
  public static void write(Design design, Path file) throws DesignFileException {
    Path name = file.getFileName();
    if (name == null || !name.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
      throw new DesignFileException(
          "A design is saved as an .xlsx workbook; %s has another ending.".formatted(file));
    }
    try (XSSFWorkbook workbook = DesignWorkbook.of(design)) {
      SafeSave.replace(file, workbook::write);
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
   * more than 100 MB is not opened.
   *
   * @throws DesignFileException with a sentence that says why, when the file holds no design that
   *     can be read
   */
  public static Opened read(Path file) throws DesignFileException {
    return WorkbookOpening.with(
        file, (workbook, macros) -> DesignReader.read(workbook, macros, file.toString()));
  }
}
