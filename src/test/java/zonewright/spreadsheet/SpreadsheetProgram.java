package zonewright.spreadsheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.EOFException;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Assumptions;

/**
 * An independent spreadsheet program (LibreOffice), without a screen, that works out every formula
 * of a workbook anew. It is started at the first question and answers all later ones of this
 * process, one after the other.
 */
public final class SpreadsheetProgram {
  private static final List<String> NAMES = List.of("soffice", "libreoffice", "soffice.com");
  private static final List<Path> OTHER_PLACES =
      List.of(
          Path.of("/usr/lib/libreoffice/program/soffice"),
          Path.of("/Applications/LibreOffice.app/Contents/MacOS/soffice"));
  private static final Pattern PRINT_TITLES =
      Pattern.compile("<definedName [^>]*_xlnm\\.Print_Titles.*?</definedName>", Pattern.DOTALL);

  private static final ReentrantLock ONE_AT_A_TIME = new ReentrantLock();

  /** None before the first question, and after one at which the program ended. */
  private static RunningProgram running;

  private SpreadsheetProgram() {}

  /** Skips the calling test, saying what to install, where there is no spreadsheet program. */
  public static void require() {
    Assumptions.assumeTrue(
        installed().isPresent(),
        "This test needs a spreadsheet program; install it with: apt-get install -y libreoffice-calc");
  }

  /** The program's start command, where one is on the path or in its usual place. */
  public static Optional<Path> installed() {
    Stream<Path> onPath =
        Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
            .filter(folder -> !folder.isBlank())
            .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)));
    return Stream.concat(onPath, OTHER_PLACES.stream()).filter(Files::isExecutable).findFirst();
  }

  /**
   * Works out every formula of a workbook anew, whatever results the file carries. The program gets
   * a copy without the rows that are printed on every page, for with them it lays out each sheet on
   * paper, which takes it several times as long as all else.
   *
   * @param workbook an .xlsx file; it is not changed
   * @param folder where the answer goes; made if it is not there
   * @return the same workbook with the program's own results, {@code <name>-recalculated.xlsx}
   */
  public static Path recalculate(Path workbook, Path folder) {
    return convert(workbook, true, folder, "xlsx:Calc MS Excel 2007 XML", "-recalculated.xlsx");
  }

  /**
   * Opens a workbook and saves it, as somebody would with that program, with all that is in it.
   *
   * @param workbook an .xlsx file; it is not changed
   * @param folder where the answer goes; made if it is not there
   * @return what the program saved, {@code <name>-saved.xlsx}
   */
  public static Path save(Path workbook, Path folder) {
    return convert(workbook, false, folder, "xlsx:Calc MS Excel 2007 XML", "-saved.xlsx");
  }

  /**
   * Prints a workbook as it would come out on paper, after working out every formula anew.
   *
   * @param workbook an .xlsx file; it is not changed
   * @param folder where the pages go; made if it is not there
   * @return the pages, {@code <name>.pdf}
   */
  public static Path print(Path workbook, Path folder) {
    return convert(workbook, false, folder, "pdf:calc_pdf_Export", ".pdf");
  }

  private static Path convert(
      Path workbook, boolean numbersOnly, Path folder, String filter, String ending) {
    if (!Files.isRegularFile(workbook)) {
      throw new IllegalArgumentException("There is no workbook " + workbook + " to open.");
    }
    String name = workbook.getFileName().toString().replaceFirst("\\.[^.]*$", "");
    ONE_AT_A_TIME.lock();
    try {
      Path scratch = Files.createTempDirectory("zonewright-spreadsheet");
      try {
        Path asked = scratch.resolve(workbook.getFileName());
        if (numbersOnly) {
          withoutPrintTitles(workbook, asked);
        } else {
          Files.copy(workbook, asked);
        }
        if (running == null || !running.alive()) {
          running =
              RunningProgram.start(
                  installed()
                      .orElseThrow(
                          () -> new IllegalStateException("No spreadsheet program is here.")));
        }
        Path made = running.convert(asked, filter, scratch.resolve("out"));
        Files.createDirectories(folder);
        return Files.move(made, folder.resolve(name + ending), StandardCopyOption.REPLACE_EXISTING);
      } finally {
        RunningProgram.delete(scratch);
      }
    } catch (IOException exception) {
      throw new UncheckedIOException("While converting " + workbook, exception);
    } finally {
      ONE_AT_A_TIME.unlock();
    }
  }

  /** What is no whole archive is left as it is: the program shall say what it makes of it. */
  private static void withoutPrintTitles(Path workbook, Path copy) throws IOException {
    try (ZipInputStream from = new ZipInputStream(Files.newInputStream(workbook));
        ZipOutputStream to = new ZipOutputStream(Files.newOutputStream(copy))) {
      to.setLevel(1);
      for (ZipEntry part = from.getNextEntry(); part != null; part = from.getNextEntry()) {
        to.putNextEntry(new ZipEntry(part.getName()));
        if (part.getName().equals("xl/workbook.xml")) {
          String text = new String(from.readAllBytes(), UTF_8);
          to.write(PRINT_TITLES.matcher(text).replaceAll("").getBytes(UTF_8));
        } else {
          from.transferTo(to);
        }
        to.closeEntry();
      }
    } catch (EOFException | ZipException broken) {
      Files.copy(workbook, copy, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
