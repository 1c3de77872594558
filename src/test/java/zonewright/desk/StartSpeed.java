package zonewright.desk;

import com.formdev.flatlaf.FlatLightLaf;
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
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.JTable;
import javax.swing.RepaintManager;

/**
 * Measures the time from the start of the process to the first painted window, on a real display:
 *
 * <pre>mvn -q -Pbench test-compile exec:exec -Dbench.main=zonewright.desk.StartSpeed</pre>
 *
 * <p>Starts a bare window of the same look and the program with its demo in turn, with and without
 * an archive of classes, and prints medians and their ratios.
 */
final class StartSpeed {
  private static final int ROUNDS = 7;

  private StartSpeed() {}

  /** Measures; with the argument {@code bare} or {@code demo}, is what is measured. */
  public static void main(String[] arguments) throws Exception {
    if (arguments.length > 0) {
      window(arguments[0].equals("demo"));
      return;
    }
    Path archive = Files.createTempDirectory("start-speed").resolve("classes.jsa");
    started("demo", "-XX:ArchiveClassesAtExit=" + archive);
    double[][] times = new double[4][ROUNDS];
    for (int i = 0; i < ROUNDS; i++) {
      times[0][i] = started("bare");
      times[1][i] = started("demo");
      times[2][i] = started("bare", "-XX:SharedArchiveFile=" + archive);
      times[3][i] = started("demo", "-XX:SharedArchiveFile=" + archive);
    }
    Arrays.stream(times).forEach(Arrays::sort);
    int middle = ROUNDS / 2;
    System.out.printf(
        Locale.ROOT,
        "bare window %5.0f ms, demo %5.0f ms: %.2f times%n",
        times[0][middle],
        times[1][middle],
        times[1][middle] / times[0][middle]);
    System.out.printf(
        Locale.ROOT,
        "with an archive of classes: bare window %5.0f ms, demo %5.0f ms: %.2f times%n",
        times[2][middle],
        times[3][middle],
        times[3][middle] / times[2][middle]);
  }

  private static double started(String what, String... options) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-XX:TieredStopAtLevel=1");
    command.add("-XX:+UseSerialGC");
    command.addAll(List.of(options));
    command.addAll(
        List.of("-cp", System.getProperty("java.class.path"), StartSpeed.class.getName(), what));
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        if (line.startsWith("painted ")) {
          double millis = Double.parseDouble(line.substring(8));
          reader.readLine();
          return millis;
        }
      }
    }
    throw new IOException("the window was never painted");
  }

  private static void window(boolean demo) throws Exception {
    EventQueue.invokeAndWait(
        () ->
            RepaintManager.setCurrentManager(
                new RepaintManager() {
                  @Override
                  public void paintDirtyRegions() {
                    super.paintDirtyRegions();
                    if (Arrays.stream(JFrame.getFrames()).anyMatch(java.awt.Window::isShowing)) {
                      Toolkit.getDefaultToolkit().sync();
                      long since = ManagementFactory.getRuntimeMXBean().getStartTime();
                      System.out.println("painted " + (System.currentTimeMillis() - since));
                      System.exit(0);
                    }
                  }
                }));
    if (demo) {
      Desk.open(Optional.empty());
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
}
