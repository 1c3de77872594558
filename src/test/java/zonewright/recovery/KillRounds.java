package zonewright.recovery;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
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
final class KillRounds implements AutoCloseable {
  private static final int HALF_A_SECOND = 500;

  private final Path file;
  private final Random random;

  /** What the last round left, which is what the next begins with. */
  private Design left;

  /** The process that types on what the last round left; none before the first round. */
  private Typing running;

  /** A process, and what its edits are made from. */
  private record Typing(Process process, long seed) {}

  /** An edit and when it was done. */
  private record Done(int number, long when) {}

  /**
   * What a round came to.
   *
   * @param typed how many edits were done before the end
   * @param kept how many of them are still there
   * @param lostMillis how long before the end the first lost edit was done; 0 where none was lost
   * @param exact whether what is there is exactly what there was after that many edits
   * @param same whether the process began with what was judged to be left; where not, the rounds
   *     themselves are at fault, not what they look at
   */
  record Round(int typed, int kept, long lostMillis, boolean exact, boolean same) {}

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
    long most = 0;
    int late = 0;
    long typed = 0;
    int wrong = 0;
    int other = 0;
    try (KillRounds killing = new KillRounds(folder, seed)) {
      for (int i = 1; i <= rounds; i++) {
        Round round = killing.round();
        most = Math.max(most, round.lostMillis());
        typed += round.typed();
        wrong += round.exact() ? 0 : 1;
        other += round.same() ? 0 : 1;
        late += round.lostMillis() > HALF_A_SECOND ? 1 : 0;
        if (!round.exact() || !round.same() || round.lostMillis() > HALF_A_SECOND) {
          System.out.println("round " + i + " of seed " + seed + ": " + round);
        }
        if (i % 10 == 0 || i == rounds) {
          System.out.println(
              "%s rounds, %s edits, most lost %s ms, more than half a second %s, not exact %s, begun otherwise %s"
                  .formatted(i, typed, most, late, wrong, other));
        }
      }
    }
    if (wrong > 0) {
      System.exit(1);
    }
  }

  /**
   * Lets a process type for a while, kills it and opens what it left. The next process starts
   * meanwhile on what this one left; what is judged is a copy.
   */
  Round round() throws Exception {
    Typing typing = running == null ? started() : running;
    List<Done> done = new ArrayList<>();
    long killed;
    String begun;
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(typing.process().getInputStream(), StandardCharsets.UTF_8))) {
      begun = String.valueOf(lines.readLine());
      take(lines.readLine(), done);
      Thread reader = new Thread(() -> readAll(lines, done));
      reader.start();
      Thread.sleep(100 + random.nextInt(1400));
      killed = System.currentTimeMillis();
      typing.process().destroyForcibly();
      typing.process().waitFor(20, TimeUnit.SECONDS);
      reader.join(20_000);
    }
    Path copy = copyOf(file);
    running = started();
    boolean same = begun.equals("start " + TypingSteps.mark(left));
    return judged(copy, typing.seed(), done, killed, same);
  }

  /** Ends the process that was started last. */
  @Override
  public void close() {
    if (running != null) {
      running.process().destroyForcibly().onExit().join();
    }
  }

  /** Copies a design with the records of unsaved work beside it. */
  static Path copyOf(Path file) throws IOException {
    Path folder = Files.createDirectories(file.resolveSibling("copy"));
    Path copy = folder.resolve(file.getFileName());
    Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
    for (Path old : TypingProcess.records(copy)) {
      Files.delete(old);
    }
    for (Path record : TypingProcess.records(file)) {
      Files.copy(record, folder.resolve(record.getFileName()), StandardCopyOption.COPY_ATTRIBUTES);
    }
    return copy;
  }

  private Typing started() throws IOException {
    long seed = random.nextLong();
    List<String> command = command(TypingProcess.class, file, seed);
    return new Typing(
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start(), seed);
  }

  /** Returns the command that starts a process on a file. */
  static List<String> command(Class<?> program, Path file, long seed) {
    return List.of(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-XX:TieredStopAtLevel=1",
        "-XX:+UseSerialGC",
        "-Xmn24m",
        "-Xshare:auto",
        "-Djava.awt.headless=true",
        "-cp",
        System.getProperty("java.class.path"),
        program.getName(),
        file.toString(),
        Long.toString(seed));
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

  private Round judged(Path copy, long seed, List<Done> done, long killed, boolean same)
      throws Exception {
    Design before = left;
    Design after = TypingProcess.opened(copy).design();
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
      return new Round(typed, kept, Math.max(0, lost), exact, same);
    }
  }
}
