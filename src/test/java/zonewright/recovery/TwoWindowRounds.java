package zonewright.recovery;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.sheet.Schema;
import zonewright.units.UnitSystem;
import zonewright.workbook.DesignFile;

/**
 * Kills two windows at one file at a random moment, again and again, and looks at what they left:
 * what each typed must stand in its own record, or in the file where it saved it.
 *
 * <pre>
 * mvn -q -Pbench test-compile exec:exec -Dbench.main=zonewright.recovery.TwoWindowRounds
 * </pre>
 */
final class TwoWindowRounds {
  private static final int HALF_A_SECOND = 500;

  private final Path original;
  private final Path folder;
  private final Random random;

  /**
   * What a round came to, both windows together.
   *
   * @param typed how many edits were done before the end
   * @param saved how many savings were done
   * @param asked how often a saving asked first, for the file was another or in other hands
   * @param lostMillis how long before the end the first lost edit was done; 0 where none was lost
   * @param wrong what there is that neither window ever had; empty where all is exact
   */
  record Round(int typed, int saved, int asked, long lostMillis, List<String> wrong) {}

  /** A window that was killed. */
  private static final class Killed {
    final long seed;
    final Map<Integer, Long> done = new HashMap<>();
    String id = "";
    int saved;
    int asked;

    Killed(long seed) {
      this.seed = seed;
    }

    void take(String line) {
      String[] parts = line.split(" ", -1);
      if (parts.length != 2) {
        return;
      }
      switch (parts[0]) {
        case "window" -> id = parts[1];
        case "saved" -> saved++;
        case "asked" -> asked++;
        default -> done.put(Integer.valueOf(parts[0]), Long.valueOf(parts[1]));
      }
    }

    int last() {
      return done.keySet().stream().mapToInt(each -> each).max().orElse(0);
    }
  }

  TwoWindowRounds(Path folder, long seed) throws Exception {
    this.folder = folder;
    random = new Random(seed);
    original = folder.resolve("original.xlsx");
    DesignFile.write(Demo.libraryGarden(UnitSystem.US), original);
  }

  /** Runs rounds, as many as the first argument says. */
  public static void main(String[] arguments) throws Exception {
    int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 300;
    long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : System.nanoTime();
    TwoWindowRounds two = new TwoWindowRounds(Files.createTempDirectory("two-windows"), seed);
    int wrong = 0;
    int late = 0;
    long most = 0;
    long typed = 0;
    long saved = 0;
    long asked = 0;
    for (int i = 1; i <= rounds; i++) {
      Round round = two.round();
      typed += round.typed();
      saved += round.saved();
      asked += round.asked();
      wrong += round.wrong().isEmpty() ? 0 : 1;
      late += round.lostMillis() > HALF_A_SECOND ? 1 : 0;
      most = Math.max(most, round.lostMillis());
      if (!round.wrong().isEmpty() || round.lostMillis() > HALF_A_SECOND) {
        System.out.println("round " + i + " of seed " + seed + ": " + round);
      }
      if (i % 10 == 0 || i == rounds) {
        System.out.println(
            "%s rounds, %s edits, %s savings, asked %s times, most lost %s ms, more than half a second %s, not exact %s"
                .formatted(i, typed, saved, asked, most, late, wrong));
      }
    }
    if (wrong > 0) {
      System.exit(1);
    }
  }

  /** Lets two windows type for a while, kills both and looks at what they left. */
  Round round() throws Exception {
    Path file = folder.resolve("garden.xlsx");
    for (Path record : TypingProcess.records(file)) {
      Files.delete(record);
    }
    Files.copy(original, file, StandardCopyOption.REPLACE_EXISTING);
    List<Killed> windows = List.of(new Killed(random.nextLong()), new Killed(random.nextLong()));
    List<Process> processes = new ArrayList<>();
    List<Thread> readers = new ArrayList<>();
    for (Killed window : windows) {
      Process process =
          new ProcessBuilder(WindowProcess.command(file, window.seed))
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start();
      processes.add(process);
      BufferedReader lines =
          new BufferedReader(
              new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
      window.take(String.valueOf(lines.readLine()));
      window.take(String.valueOf(lines.readLine()));
      Thread reader = new Thread(() -> readAll(lines, window));
      reader.start();
      readers.add(reader);
    }
    Thread.sleep(100 + random.nextInt(3000));
    long killed = System.currentTimeMillis();
    processes.forEach(Process::destroyForcibly);
    for (int i = 0; i < processes.size(); i++) {
      processes.get(i).waitFor(20, TimeUnit.SECONDS);
      readers.get(i).join(20_000);
    }
    return judged(file, windows, killed);
  }

  private static void readAll(BufferedReader lines, Killed window) {
    try (lines) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        window.take(line);
      }
    } catch (IOException ended) {
      window.take("");
    }
  }

  private Round judged(Path file, List<Killed> windows, long killed) throws Exception {
    Design left = DesignFile.read(file).design();
    Schema schema = left.book().schema();
    String inFile = TypingSteps.mark(left);
    List<UnsavedFile.Found> records = new ArrayList<>();
    for (Path record : TypingProcess.records(file)) {
      UnsavedFile.read(record, schema).ifPresent(records::add);
    }
    List<String> wrong = new ArrayList<>();
    boolean known = inFile.equals(TypingSteps.mark(DesignFile.read(original).design()));
    long lost = 0;
    for (Killed window : windows) {
      Map<String, Integer> moments = moments(window);
      int kept = moments.getOrDefault(inFile, -1);
      known |= kept >= 0;
      for (UnsavedFile.Found found : records) {
        Optional<String> owner = found.head().map(UnsavedFile.Head::id);
        if (owner.equals(Optional.of(window.id)) && found.book().isPresent()) {
          Integer moment = moments.get(TypingSteps.mark(schema, found.book().get()));
          if (moment == null) {
            wrong.add("a record holds what its window never had");
          } else {
            kept = Math.max(kept, moment);
          }
        }
      }
      int all = kept;
      lost =
          Math.max(
              lost,
              window.done.entrySet().stream()
                  .filter(each -> each.getKey() > all)
                  .mapToLong(each -> killed - each.getValue())
                  .max()
                  .orElse(0));
    }
    if (!known) {
      wrong.add("the file holds what no window had");
    }
    for (UnsavedFile.Found found : records) {
      if (found.head().isEmpty() && !found.empty()) {
        wrong.add("a record is nobody's");
      }
    }
    return new Round(
        windows.stream().mapToInt(Killed::last).sum(),
        windows.stream().mapToInt(each -> each.saved).sum(),
        windows.stream().mapToInt(each -> each.asked).sum(),
        lost,
        wrong);
  }

  /** Returns what the design was after each of a window's edits; before the first it is -1. */
  private Map<String, Integer> moments(Killed window) throws Exception {
    Design again = DesignFile.read(original).design();
    Map<String, Integer> moments = new HashMap<>();
    moments.put(TypingSteps.mark(again), -1);
    again.book().perform(again.edits().typed(Facts.PREPARED_BY.reference(), 0, "edit 0"));
    moments.put(TypingSteps.mark(again), 0);
    TypingSteps steps = new TypingSteps(again, window.seed);
    for (int i = 0; i <= window.last(); i++) { // one may have been done and not told
      moments.put(TypingSteps.mark(again), steps.next() - 1);
    }
    moments.put(TypingSteps.mark(again), window.last() + 1);
    return moments;
  }
}
