package zonewright.desk;

import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.swing.JButton;
import javax.swing.JFrame;
import javax.swing.JTable;
import javax.swing.RepaintManager;
import zonewright.Zonewright;

/**
 * Measures the time from the start of the process to the first painted window, on a real display,
 * and to the moment when all parts of it are filled:
 *
 * <pre>mvn -q -Pbench -DskipTests package exec:exec -Dbench.main=zonewright.desk.StartSpeed</pre>
 *
 * <p>Starts the program as the README says, and a bare window of the same look from the same jars,
 * in turn, both with and without the archive of classes that the build makes; prints medians.
 */
final class StartSpeed {
  private static final Path OPTIONS = Path.of("target", "start");
  private static final int ROUNDS = 9;

  private StartSpeed() {}

  /** Measures; with the argument {@code bare} or {@code demo}, is what is measured. */
  public static void main(String[] arguments) throws Exception {
    if (arguments.length > 0) {
      window(arguments[0].equals("demo"));
      return;
    }
    Path home = Files.createTempDirectory("start-speed");
    started(home, true, "demo");
    String[] kinds = {"bare", "demo", "bare", "demo"};
    double[][] painted = new double[4][ROUNDS];
    double[][] filled = new double[4][ROUNDS];
    for (int round = 0; round < ROUNDS; round++) {
      for (int kind = 0; kind < kinds.length; kind++) {
        double[] times = started(home, kind >= 2, kinds[kind]);
        painted[kind][round] = times[0];
        filled[kind][round] = times[1];
      }
    }
    double bare = median(painted[0]);
    double bareFromArchive = median(painted[2]);
    say("bare window", bare, bare, bareFromArchive);
    say("bare window, with the archive", bareFromArchive, bare, bareFromArchive);
    say("demo, first picture", median(painted[1]), bare, bareFromArchive);
    say("demo, all parts filled", median(filled[1]), bare, bareFromArchive);
    say("demo with the archive, first picture", median(painted[3]), bare, bareFromArchive);
    say("demo with the archive, all parts filled", median(filled[3]), bare, bareFromArchive);
  }

  private static double median(double[] times) {
    double[] sorted = times.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private static void say(String what, double millis, double bare, double bareFromArchive) {
    System.out.printf(
        Locale.ROOT,
        "%-40s %5.0f ms, %.2f times the bare window, %.2f times the bare window with the archive%n",
        what,
        millis,
        millis / bare,
        millis / bareFromArchive);
  }

  /** Returns the beginning of a command that starts with nothing that this machine remembers. */
  static List<String> java(Path home) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Duser.home=" + home);
    command.add("-Djava.util.prefs.userRoot=" + home);
    return command;
  }

  /** Returns the jar of the program, as the options of the start name it. */
  static String jar() throws IOException {
    return Files.readAllLines(OPTIONS).stream()
        .filter(line -> line.startsWith("-jar "))
        .map(line -> line.substring(5).strip())
        .findFirst()
        .orElseThrow();
  }

  /** Returns the jar, and behind it the classes of the tests. */
  static String classPath() throws IOException {
    return jar() + System.getProperty("path.separator") + Path.of("target", "test-classes");
  }

  /** Returns the milliseconds to the first picture and to the last part. */
  private static double[] started(Path home, boolean archive, String what) throws IOException {
    List<String> command = java(home);
    Files.readAllLines(OPTIONS).stream()
        .filter(line -> line.startsWith("-X"))
        .filter(line -> archive || !line.startsWith("-XX:SharedArchiveFile"))
        .forEach(command::add);
    command.addAll(List.of("-cp", classPath(), StartSpeed.class.getName(), what));
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    double painted = -1;
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        if (line.startsWith("painted ")) {
          painted = Double.parseDouble(line.substring(8));
        } else if (line.startsWith("filled ")) {
          return new double[] {painted, Double.parseDouble(line.substring(7))};
        }
      }
    }
    throw new IOException("the window was never painted");
  }

  private static void window(boolean demo) {
    // Beside the start, for setting it brings the toolkit up, which the program does in its own
    // time.
    new Thread(() -> RepaintManager.setCurrentManager(new Watching(demo)), "watching").start();
    if (demo) {
      Zonewright.main(new String[0]);
    } else {
      EventQueue.invokeLater(
          () -> {
            FlatLightLaf.setup();
            JFrame frame = new JFrame("bare");
            frame.add(new JTable(12, 12));
            frame.setSize(1400, 900);
            frame.setVisible(true);
          });
    }
  }

  /** Says when something was painted, and ends the process when there is nothing more to come. */
  private static final class Watching extends RepaintManager {
    private final boolean demo;
    private boolean painted;

    Watching(boolean demo) {
      this.demo = demo;
    }

    @Override
    public void paintDirtyRegions() {
      super.paintDirtyRegions();
      if (Arrays.stream(JFrame.getFrames()).noneMatch(java.awt.Window::isShowing)) {
        return;
      }
      Toolkit.getDefaultToolkit().sync();
      long since = ManagementFactory.getRuntimeMXBean().getStartTime();
      long millis = System.currentTimeMillis() - since;
      if (!painted) {
        painted = true;
        System.out.println("painted " + millis);
      }
      if (!demo || filled(JFrame.getFrames()[0])) {
        System.out.println("filled " + millis);
        System.exit(0);
      }
    }

    /** Says whether working, findings and picture show something. */
    private static boolean filled(Container frame) {
      return find(frame, "working page") instanceof Container page
          && page.getComponentCount() > 3
          && find(frame, "findings list") instanceof JTable list
          && list.getRowCount() > 3
          && find(frame, "choose picture") instanceof JButton picture
          && !picture.getText().isBlank();
    }

    private static Component find(Container container, String name) {
      for (Component component : container.getComponents()) {
        if (name.equals(component.getName())) {
          return component;
        }
        if (component instanceof Container inner && find(inner, name) != null) {
          return find(inner, name);
        }
      }
      return null;
    }
  }
}
