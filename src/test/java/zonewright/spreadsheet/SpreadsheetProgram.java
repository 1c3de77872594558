package zonewright.spreadsheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/**
 * An independent spreadsheet program (LibreOffice), run without a screen, that works out every
 * formula of a workbook anew.
 *
 * <p>Each run has a profile of its own that is thrown away, so a person's own settings neither
 * change the answer nor are changed. Runs wait for each other: the program is heavy.
 */
public final class SpreadsheetProgram {
  private static final long TIMEOUT_SECONDS = 600;
  private static final List<String> NAMES = List.of("soffice", "libreoffice", "soffice.com");
  private static final List<Path> OTHER_PLACES =
      List.of(
          Path.of("/usr/lib/libreoffice/program/soffice"),
          Path.of("/Applications/LibreOffice.app/Contents/MacOS/soffice"));
  private static final ReentrantLock ONE_AT_A_TIME = new ReentrantLock();

  /**
   * The program trusts the results a file carries unless told otherwise; 0 means "always
   * recalculate". Source: the schema of its registry, org.openoffice.Office.Calc, Formula/Load.
   */
  private static final String ALWAYS_RECALCULATE =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <oor:items xmlns:oor="http://openoffice.org/2001/registry"
          xmlns:xs="http://www.w3.org/2001/XMLSchema"
          xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
        <item oor:path="/org.openoffice.Office.Calc/Formula/Load">
          <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop>
        </item>
      </oor:items>
      """;

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
   * Works out every formula of a workbook anew, whatever results the file carries.
   *
   * @param workbook an .xlsx file; it is not changed
   * @param folder where the answer goes; made if it is not there
   * @return the same workbook with the program's own results, {@code <name>-recalculated.xlsx}
   */
  public static Path recalculate(Path workbook, Path folder) {
    return convert(workbook, folder, "xlsx:Calc MS Excel 2007 XML", "-recalculated.xlsx");
  }

  /**
   * Prints a workbook as it would come out on paper, after working out every formula anew.
   *
   * @param workbook an .xlsx file; it is not changed
   * @param folder where the pages go; made if it is not there
   * @return the pages, {@code <name>.pdf}
   */
  public static Path print(Path workbook, Path folder) {
    return convert(workbook, folder, "pdf:calc_pdf_Export", ".pdf");
  }

  private static Path convert(Path workbook, Path folder, String filter, String ending) {
    if (!Files.isRegularFile(workbook)) {
      throw new IllegalArgumentException("There is no workbook " + workbook + " to open.");
    }
    Path program =
        installed().orElseThrow(() -> new IllegalStateException("No spreadsheet program is here."));
    String name = workbook.getFileName().toString().replaceFirst("\\.[^.]*$", "");
    ONE_AT_A_TIME.lock();
    try {
      Path scratch = Files.createTempDirectory("zonewright-spreadsheet");
      try {
        String said = run(program, workbook, filter, scratch);
        Path made =
            scratch.resolve("out").resolve(name + "." + filter.substring(0, filter.indexOf(':')));
        if (!Files.isRegularFile(made)) {
          throw new IllegalStateException(
              program + " made nothing of " + workbook + "; it said: " + said);
        }
        Files.createDirectories(folder);
        return Files.move(made, folder.resolve(name + ending), StandardCopyOption.REPLACE_EXISTING);
      } finally {
        delete(scratch);
      }
    } catch (IOException exception) {
      throw new UncheckedIOException("While converting " + workbook, exception);
    } finally {
      ONE_AT_A_TIME.unlock();
    }
  }

  private static String run(Path program, Path workbook, String filter, Path scratch)
      throws IOException {
    Path profile = scratch.resolve("profile");
    Path settings = profile.resolve("user").resolve("registrymodifications.xcu");
    Files.createDirectories(settings.getParent());
    Files.writeString(settings, ALWAYS_RECALCULATE, UTF_8);
    Path log = scratch.resolve("log");
    ProcessBuilder builder =
        new ProcessBuilder(
            program.toString(),
            "-env:UserInstallation=" + profile.toUri(),
            "--headless",
            "--norestore",
            "--nologo",
            "--nodefault",
            "--nolockcheck",
            "--convert-to",
            filter,
            "--outdir",
            scratch.resolve("out").toString(),
            workbook.toAbsolutePath().toString());
    builder
        .environment()
        .putAll(
            Map.of("LC_ALL", "C.UTF-8", "HOME", scratch.toString(), "SAL_USE_VCLPLUGIN", "svp"));
    builder.environment().remove("DISPLAY");
    Process process = builder.redirectErrorStream(true).redirectOutput(log.toFile()).start();
    process.getOutputStream().close();
    boolean ended;
    try {
      ended = process.waitFor(TIMEOUT_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException exception) {
      Thread.currentThread().interrupt();
      ended = false;
    }
    if (!ended) {
      // The start command is a script: the program itself is among its descendants.
      List<ProcessHandle> family =
          Stream.concat(process.descendants(), Stream.of(process.toHandle())).toList();
      family.forEach(ProcessHandle::destroyForcibly);
      family.forEach(member -> member.onExit().join());
    }
    String said = Files.readString(log, UTF_8).strip();
    if (!ended) {
      throw new IllegalStateException(
          String.format(
              Locale.ROOT,
              "%s was stopped before it was done with %s (it may take %d s); it said: %s",
              program,
              workbook,
              TIMEOUT_SECONDS,
              said));
    }
    if (process.exitValue() != 0) {
      throw new IllegalStateException(
          program + " ended with " + process.exitValue() + " for " + workbook + ": " + said);
    }
    return said.isEmpty() ? "nothing" : said;
  }

  private static void delete(Path folder) throws IOException {
    List<Path> deepestFirst;
    try (Stream<Path> paths = Files.walk(folder)) {
      deepestFirst = paths.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path path : deepestFirst) {
      Files.deleteIfExists(path);
    }
  }
}
