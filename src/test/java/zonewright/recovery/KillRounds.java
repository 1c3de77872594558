package zonewright.recovery;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.units.UnitSystem;
import zonewright.workbook.DesignFile;
import zonewright.workbook.DesignFileException;

/**
 * Kills a process that types and saves, at a random moment, again and again, and looks at what it
 * left.
 *
 * <pre>mvn -q -Pbench test-compile exec:exec -Dbench.main=zonewright.recovery.KillRounds</pre>
 *
 * <p>runs a thousand rounds, or as many as the first argument says, and prints what was lost.
 */
final class KillRounds {
  private static final int HALF_A_SECOND = 500;

  private final Path file;
  private final Random random;

  /** What the last round left, which is what the next begins with. */
  private Design left;

  /** An edit and when it was done. */
  private record Done(int number, long when) {}

  /**
   * What a round came to.
   *
   * @param typed how many edits were done before the end
   * @param kept how many of them are still there
   * @param lostMillis how long before the end the first lost edit was done; 0 where none was lost
   * @param exact whether what is there is exactly what there was after that many edits
   */
  record Round(int typed, int kept, long lostMillis, boolean exact) {}

  KillRounds(Path folder, long seed) throws DesignFileException {
    file = folder.resolve("garden.xlsx");
    random = new Random(seed);
    left = Demo.libraryGarden(UnitSystem.US);
    DesignFile.write(left, file);
  }

  /** Runs rounds, as many as the first argument says. */
  public static void main(String[] arguments) throws Exception {
    int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1000;
    long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : System.nanoTime();
    Path folder = Files.createTempDirectory("kill-rounds");
    KillRounds killing = new KillRounds(folder, seed);
    long most = 0;
    int late = 0;
    long typed = 0;
    int wrong = 0;
    for (int i = 1; i <= rounds; i++) {
      Round round = killing.round();
      most = Math.max(most, round.lostMillis());
      typed += round.typed();
      wrong += round.exact() ? 0 : 1;
      late += round.lostMillis() > HALF_A_SECOND ? 1 : 0;
      if (!round.exact() || round.lostMillis() > HALF_A_SECOND) {
        System.out.println("round " + i + " of seed " + seed + ": " + round);
      }
      if (i % 10 == 0 || i == rounds) {
        System.out.println(
            "%s rounds, %s edits, most lost %s ms, more than half a second %s, not exact %s"
                .formatted(i, typed, most, late, wrong));
      }
    }
    if (wrong > 0) {
      System.exit(1);
    }
  }

  /** Starts a process, lets it type for a while, kills it and opens what it left. */
  Round round() throws Exception {
    long seed = random.nextLong();
    Process process = started(seed);
    List<Done> done = new ArrayList<>();
    long killed;
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      take(lines.readLine(), done);
      Thread reader = new Thread(() -> readAll(lines, done));
      reader.start();
      Thread.sleep(100 + random.nextInt(1400));
      killed = System.currentTimeMillis();
      process.destroyForcibly();
      process.waitFor(20, TimeUnit.SECONDS);
      reader.join(20_000);
    }
    return judged(seed, done, killed);
  }

  private Process started(long seed) throws IOException {
    List<String> command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-Xshare:auto",
            "-Djava.awt.headless=true",
            "-cp",
            System.getProperty("java.class.path"),
            TypingProcess.class.getName(),
            file.toString(),
            Long.toString(seed));
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }

  private static void readAll(BufferedReader lines, List<Done> done) {
    try {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        take(line, done);
      }
    } catch (IOException ended) {
      take("", done);
    }
  }

  private static void take(String line, List<Done> done) {
    String[] parts = String.valueOf(line).split(" ", -1);
    if (parts.length == 2) {
      synchronized (done) {
        done.add(new Done(Integer.parseInt(parts[0]), Long.parseLong(parts[1])));
      }
    }
  }

  private Round judged(long seed, List<Done> done, long killed) throws Exception {
    Design before = left;
    Design after = TypingProcess.opened(file);
    left = after;
    boolean untouched = before.book().snapshot().sameEntries(after.book().snapshot());
    int kept = untouched ? 0 : TypingSteps.numberIn(after);
    Design again = Design.of(before.book().snapshot());
    again.book().perform(again.edits().typed(Facts.PREPARED_BY.reference(), 0, "edit 0"));
    TypingSteps steps = new TypingSteps(again, seed);
    for (int i = 0; i < kept; i++) {
      steps.next();
    }
    boolean exact = untouched || again.book().snapshot().sameEntries(after.book().snapshot());
    synchronized (done) {
      int typed = done.isEmpty() ? 0 : done.get(done.size() - 1).number();
      long lost =
          done.stream()
              .filter(each -> each.number() > kept)
              .mapToLong(each -> killed - each.when())
              .max()
              .orElse(0);
      return new Round(typed, kept, Math.max(0, lost), exact);
    }
  }
}
