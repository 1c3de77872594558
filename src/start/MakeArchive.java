import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * Makes what the program starts fast with: an archive of the classes it needs at its start, read
 * and checked once and then only mapped, and the file of options that {@code java @target/start}
 * reads. Needs no display. Where the archive cannot be made, that is said, and the program starts
 * without it.
 *
 * <p>The build runs this file as it stands: {@code java src/start/MakeArchive.java NAME-OF-JAR}
 * from the folder of the project. The classes stand in {@code src/start/classes.txt}; the program
 * {@code zonewright.desk.StartClasses} in the tests writes them anew.
 */
final class MakeArchive {
  private static final Path CLASSES = Path.of("src", "start", "classes.txt");
  private static final long PATIENCE_MINUTES = 5;

  private MakeArchive() {}

  public static void main(String[] arguments) throws Exception {
    // As it stands in the options, so that the archive is made for the very same path.
    String jar = "target/" + arguments[0] + ".jar";
    String archive = "target/" + arguments[0] + ".jsa";
    Files.write(
        Path.of("target", "start"),
        List.of(
            "# Options to start with, from the folder of the project: java @target/start",
            "# The archive of classes; where it does not fit, the program just starts more slowly.",
            "-XX:SharedArchiveFile=" + archive,
            "-Xshare:auto",
            "-Xlog:disable",
            "-Xlog:all=error:stderr",
            "# What runs often only at the start is not worth compiling; long work still is, soon.",
            "-XX:CompileThresholdScaling=6",
            "# Little room for what is new: with thousands of zones a collection is over before it is seen.",
            "-Xmn64m",
            "-jar " + jar),
        StandardCharsets.UTF_8);
    String problem;
    try {
      problem = dump(jar, archive);
    } catch (IOException fault) {
      problem = fault.getMessage();
    }
    if (problem.isEmpty()) {
      System.out.println("The classes of the start are in " + archive);
    } else {
      Files.deleteIfExists(Path.of(archive));
      System.err.println(
          "The archive of the start's classes could not be made; the program runs without it and"
              + " starts more slowly. The reason: "
              + problem);
    }
  }

  /** Has the archive made; returns what went wrong, or nothing. */
  private static String dump(String jar, String archive) throws IOException, InterruptedException {
    Files.deleteIfExists(Path.of(archive));
    Path log = Path.of("target", "archive.log");
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Xshare:dump");
    command.add("-XX:SharedClassListFile=" + CLASSES);
    command.add("-XX:SharedArchiveFile=" + archive);
    command.add("-cp");
    command.add(jar);
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
    if (!process.waitFor(PATIENCE_MINUTES, TimeUnit.MINUTES)) {
      process.destroy();
      return "it took longer than " + PATIENCE_MINUTES + " minutes; see " + log;
    }
    return process.exitValue() == 0 && Files.exists(Path.of(archive)) ? "" : "see " + log;
  }
}
