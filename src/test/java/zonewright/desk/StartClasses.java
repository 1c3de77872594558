package zonewright.desk;

import java.awt.EventQueue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import zonewright.Zonewright;

/**
 * Writes the classes that the start needs into {@code src/start/classes.txt}, from which the build
 * makes its archive:
 *
 * <pre>mvn -q -Pbench -DskipTests package exec:exec -Dbench.main=zonewright.desk.StartClasses</pre>
 *
 * <p>Needs a display, and the jar that the build makes. A list that has grown old costs a little
 * time at each start and nothing else.
 */
final class StartClasses {
  private static final Path LIST = Path.of("src", "start", "classes.txt");

  /** Long enough for the window to be filled and the nights to be placed. */
  private static final long MILLIS = 15_000;

  /** What is made anew at each start and cannot be kept. */
  private static final Predicate<String> KEPT =
      Pattern.compile(
              "zonewright/desk/StartClasses|/\\$Proxy|GeneratedMethodAccessor|LambdaForm\\$|^#")
          .asPredicate()
          .negate();

  private StartClasses() {}

  /** Writes the list; with an argument, is the program that is watched. */
  public static void main(String[] arguments) throws Exception {
    if (arguments.length > 0) {
      Zonewright.main(new String[0]);
      Thread.sleep(MILLIS);
      EventQueue.invokeLater(() -> System.exit(0));
      return;
    }
    Path home = Files.createTempDirectory("start-classes");
    Set<String> classes = new LinkedHashSet<>(List.of("# Made by zonewright.desk.StartClasses"));
    classes.addAll(loaded(home, "-cp", StartSpeed.classPath(), StartClasses.class.getName(), "x"));
    classes.addAll(loaded(home, "-jar", StartSpeed.jar(), "findings"));
    Files.write(LIST, classes);
    System.out.println(classes.size() + " lines in " + LIST);
  }

  private static List<String> loaded(Path home, String... what)
      throws IOException, InterruptedException {
    Path list = Files.createTempFile(home, "classes", ".txt");
    List<String> command = StartSpeed.java(home);
    command.add("-Xshare:off");
    command.add("-XX:DumpLoadedClassList=" + list);
    command.addAll(List.of(what));
    new ProcessBuilder(command)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start()
        .waitFor();
    return Files.readAllLines(list).stream().filter(KEPT).toList();
  }
}
