package zonewright.recovery;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import zonewright.design.Design;
import zonewright.sheet.BookSnapshot;
import zonewright.workbook.DesignFile;
import zonewright.workbook.DesignFileException;

/**
 * Opens a design as the window does, types into it, saves it now and then, and goes on until it is
 * killed. Prints each edit's number and when it was done.
 */
final class TypingProcess {
  private TypingProcess() {}

  /** Takes the file and a seed. */
  public static void main(String[] arguments) throws Exception {
    Path file = Path.of(arguments[0]);
    long seed = Long.parseLong(arguments[1]);
    Design design = opened(file);
    design
        .book()
        .perform(
            design.edits().typed(zonewright.design.Facts.PREPARED_BY.reference(), 0, "edit 0"));
    ExecutorService hands = Executors.newSingleThreadExecutor();
    ExecutorService files = Executors.newSingleThreadExecutor();
    WorkRecord record =
        new WorkRecord(
            design.book().blueprint(),
            design.book()::snapshot,
            hands,
            file.resolveSibling("spare"));
    record.follow(Optional.of(file), "garden");
    design.book().listen(changes -> record.changed());
    hands.submit(record::changed).get();
    TypingSteps steps = new TypingSteps(design, seed);
    Random pace = new Random(seed + 1);
    System.out.println("0 " + System.currentTimeMillis());
    // nobody listens any more where the one who wanted to kill it is gone
    while (!System.out.checkError()) {
      int number = hands.submit(steps::next).get();
      System.out.println(number + " " + System.currentTimeMillis());
      if (pace.nextInt(25) == 0) {
        hands.submit(() -> save(design, file, record, hands, files)).get();
      }
      Thread.sleep(pace.nextInt(30));
    }
    System.exit(0);
  }

  /** Returns the design as the window would after “bring them back”. */
  static Design opened(Path file) throws DesignFileException, IOException {
    Design read = DesignFile.read(file).design();
    return UnsavedFile.read(UnsavedFile.beside(file), read.book().blueprint())
        .map(found -> Design.of(found.book()))
        .orElse(read);
  }

  private static void save(
      Design design, Path file, WorkRecord record, ExecutorService hands, ExecutorService files) {
    BookSnapshot now = design.book().snapshot();
    var last = design.book().journal().toUndo();
    files.execute(
        () -> {
          try {
            DesignFile.write(Design.of(now), file);
          } catch (DesignFileException problem) {
            System.err.println(problem.getMessage());
            return;
          }
          hands.execute(
              () -> {
                design.book().journal().saved(last);
                record.saved(file, "garden", design.book().journal().unsaved());
              });
        });
  }
}
