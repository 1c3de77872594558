package zonewright.recovery;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.workbook.DesignFile;
import zonewright.workbook.Progress;

/**
 * One of two windows at a file: opens it, types, and saves as a window does, which looks first
 * whether the file is still the one it read and whether another window has it in hand. Now and then
 * it takes the file over, or saves over what another saved, as a person who was asked may. Prints
 * each edit's number and when it was done, and each saving.
 */
final class WindowProcess {
  private final Path file;
  private final Design design;
  private final WorkRecord record;
  private final Random person;
  private final ExecutorService hands = Executors.newSingleThreadExecutor();
  private final ExecutorService files = Executors.newSingleThreadExecutor();

  /** Touched by the hands only. */
  private String digest;

  private WindowProcess(Path file, long seed) throws Exception {
    this.file = file;
    this.design = DesignFile.read(file).design();
    this.digest = UnsavedFile.digest(file);
    this.person = new Random(seed + 1);
    this.record =
        new WorkRecord(
            design.book().schema(),
            design.book()::snapshot,
            hands,
            file.resolveSibling("spare"),
            System.err::println);
  }

  /** Takes the file and a seed. */
  public static void main(String[] arguments) throws Exception {
    long seed = Long.parseLong(arguments[1]);
    new WindowProcess(Path.of(arguments[0]), seed).type(seed);
  }

  private void type(long seed) throws Exception {
    WorkRecord.Base base = new WorkRecord.Base(design.book().snapshot(), digest, Optional.empty());
    hands.submit(() -> record.follow(Optional.of(file), "garden", Optional.of(base))).get();
    design.book().listen(changes -> record.changed());
    hands
        .submit(
            () ->
                design
                    .book()
                    .perform(design.edits().typed(Facts.PREPARED_BY.reference(), 0, "edit 0")))
        .get();
    System.out.println("window " + record.id());
    TypingSteps steps = new TypingSteps(design, seed);
    System.out.println("0 " + System.currentTimeMillis());
    while (!System.out.checkError()) {
      int number = hands.submit(steps::next).get();
      System.out.println(number + " " + System.currentTimeMillis());
      if (person.nextInt(25) == 0) {
        hands.submit(() -> save(number)).get();
      }
      Thread.sleep(person.nextInt(30));
    }
    System.exit(0);
  }

  /** As the window does: what another has in hand or saved is saved over only when asked. */
  private static final class Asked extends RuntimeException {
    private final transient Optional<UnsavedFile.Head> holder;

    Asked(Optional<UnsavedFile.Head> holder) {
      super("asked", null, false, false);
      this.holder = holder;
    }
  }

  private void save(int number) {
    Design now = Design.of(design.book().snapshot());
    var last = design.book().journal().toUndo();
    boolean saysYes = person.nextInt(3) == 0;
    String before = digest;
    record.saving(now.book().snapshot());
    files.execute(
        () -> {
          try {
            look(before);
            DesignFile.save(now, file, Optional.empty(), watching(before));
          } catch (Asked asked) {
            System.out.println("asked " + number);
            if (saysYes) {
              hands.execute(
                  () -> {
                    asked.holder.ifPresent(record::takeOver);
                    digest = UnsavedFile.digest(file);
                  });
            }
            return;
          } catch (Exception problem) {
            System.err.println(problem.getMessage());
            return;
          }
          String written = UnsavedFile.digest(file);
          hands.execute(
              () -> {
                digest = written;
                design.book().journal().saved(last);
                record.saved(
                    file,
                    "garden",
                    new WorkRecord.Base(now.book().snapshot(), written, Optional.empty()),
                    design.book().journal().unsaved());
                System.out.println("saved " + number);
              });
        });
  }

  private Progress watching(String before) {
    return new Progress() {
      @Override
      public void at(long done, long of) {}

      @Override
      public void replacing() {
        look(before);
      }
    };
  }

  private void look(String before) {
    Optional<UnsavedFile.Head> holder =
        UnsavedFile.around(file, "", file.resolveSibling("spare")).holder(record.id());
    if (holder.isPresent() || !UnsavedFile.digest(file).equals(before)) {
      throw new Asked(holder);
    }
  }

  /** Returns the command that starts one. */
  static List<String> command(Path file, long seed) {
    return KillRounds.command(WindowProcess.class, file, seed);
  }
}
