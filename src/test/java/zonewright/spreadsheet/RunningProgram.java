package zonewright.spreadsheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The spreadsheet program (LibreOffice) in a process that stays: a later start command with the
 * same profile hands its files to it and waits until it is done with them.
 *
 * <p>The profile is new and thrown away, so a person's own settings neither change an answer nor
 * are changed.
 */
final class RunningProgram {
  private static final long LONGEST_SECONDS = 600;

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

  private final Path command;
  private final Path home;
  private final Process process;

  private RunningProgram(Path command, Path home) throws IOException {
    this.command = command;
    this.home = home;
    // With a workbook open it does not end when it has nothing to do.
    Path open = home.resolve("open.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream file = Files.newOutputStream(open)) {
      workbook.createSheet();
      workbook.write(file);
    }
    process = command("program.log", open.toString());
    Runtime.getRuntime().addShutdownHook(new Thread(this::end));
  }

  /**
   * Starts the program and waits until it takes files.
   *
   * @param command its start command
   */
  static RunningProgram start(Path command) throws IOException {
    Path home = Files.createTempDirectory("zonewright-spreadsheet-program");
    Path settings = home.resolve("profile").resolve("user").resolve("registrymodifications.xcu");
    Files.createDirectories(settings.getParent());
    Files.writeString(settings, ALWAYS_RECALCULATE, UTF_8);
    RunningProgram program = new RunningProgram(command, home);
    // It listens before it opens a file, and what it has open it locks.
    Path lock = home.resolve(".~lock.open.xlsx#");
    long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(LONGEST_SECONDS);
    while (!Files.exists(lock)) {
      if (ended(program.process, 20, TimeUnit.MILLISECONDS) || System.nanoTime() > until) {
        String said = program.said();
        program.end();
        throw new IllegalStateException(command + " did not start; it said: " + said);
      }
    }
    return program;
  }

  boolean alive() {
    return process.isAlive();
  }

  /**
   * Has a file converted.
   *
   * @param filter the ending of what is made, a colon, and the program's name for the format
   * @param folder where it is made
   * @return what was made
   */
  Path convert(Path file, String filter, Path folder) throws IOException {
    Process asking =
        command(
            "question.log",
            "--convert-to",
            filter,
            "--outdir",
            folder.toString(),
            file.toAbsolutePath().toString());
    if (!ended(asking, LONGEST_SECONDS, TimeUnit.SECONDS)) {
      end(asking);
      end();
      throw new IllegalStateException(
          "%s was stopped before it was done with %s (it may take %s s); it said: %s"
              .formatted(command, file, LONGEST_SECONDS, said()));
    }
    String name = file.getFileName().toString().replaceFirst("\\.[^.]*$", "");
    Path made = folder.resolve(name + "." + filter.substring(0, filter.indexOf(':')));
    if (!Files.isRegularFile(made)) {
      throw new IllegalStateException(
          command + " made nothing of " + file + "; it said: " + said());
    }
    return made;
  }

  private Process command(String log, String... arguments) throws IOException {
    List<String> words =
        new ArrayList<>(
            List.of(
                command.toString(),
                "-env:UserInstallation=" + home.resolve("profile").toUri(),
                "--headless",
                "--norestore",
                "--nologo",
                "--nodefault",
                "--nolockcheck"));
    words.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(words);
    // Memory that was given back is soon wanted again: to keep it saves a third of the time.
    builder
        .environment()
        .putAll(
            Map.of(
                "LC_ALL", "C.UTF-8",
                "HOME", home.toString(),
                "SAL_USE_VCLPLUGIN", "svp",
                "MALLOC_TRIM_THRESHOLD_", "1000000000",
                "MALLOC_MMAP_THRESHOLD_", "1000000000",
                "MALLOC_TOP_PAD_", "64000000"));
    builder.environment().remove("DISPLAY");
    Process started =
        builder.redirectErrorStream(true).redirectOutput(home.resolve(log).toFile()).start();
    started.getOutputStream().close();
    return started;
  }

  private String said() throws IOException {
    String said = Files.readString(home.resolve("program.log"), UTF_8).strip();
    return said.isEmpty() ? "nothing" : said;
  }

  private static boolean ended(Process process, long within, TimeUnit unit) {
    try {
      return process.waitFor(within, unit);
    } catch (InterruptedException exception) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Interrupted while the spreadsheet program was at work.");
    }
  }

  private void end() {
    end(process);
    try {
      delete(home);
    } catch (IOException left) {
      System.err.println("Left behind: " + home);
    }
  }

  /** The start command is a script: the program itself is among its descendants. */
  private static void end(Process process) {
    List<ProcessHandle> family =
        Stream.concat(process.descendants(), Stream.of(process.toHandle())).toList();
    family.forEach(ProcessHandle::destroyForcibly);
    family.forEach(member -> member.onExit().join());
  }

  /** Deletes a folder and what is in it, where it is still there. */
  static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    List<Path> deepestFirst;
    try (Stream<Path> paths = Files.walk(folder)) {
      deepestFirst = paths.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path path : deepestFirst) {
      Files.deleteIfExists(path);
    }
  }
}
