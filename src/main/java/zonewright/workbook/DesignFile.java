package zonewright.workbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.design.Design;
import zonewright.workbook.kit.CellText;
import zonewright.workbook.pack.PackSheet;
import zonewright.workbook.pack.PackSheets;

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
    write(design, file, PackSheets.standing());
  }

  /**
   * Writes a design as a workbook with sheets to hand over beside its own tables; all of it or
   * nothing. It is a design file like any other, and those sheets are not read back. A sheet that
   * cannot be made of this design is left out; {@link PackSheet#lacks} says why.
   *
   * @param sheets which sheets, such as {@link PackSheets#all} or {@link PackSheets#forClient}
   * @throws DesignFileException with a sentence that says what to do, when the file is none that
   *     can be written now
   */
  public static void write(Design design, Path file, List<PackSheet> sheets)
      throws DesignFileException {
    Path name = file.getFileName();
    if (name == null || !name.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
      throw new DesignFileException(
          "A design is saved as an .xlsx workbook; %s has another ending.".formatted(file));
    }
    try (XSSFWorkbook workbook = DesignWorkbook.of(design, sheets)) {
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
