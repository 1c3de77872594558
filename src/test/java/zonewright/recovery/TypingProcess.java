package zonewright.recovery;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
    Opened opened = opened(file);
    Design design = opened.design();
    System.out.println("start " + TypingSteps.mark(design));
    design
        .book()
        .perform(
            design.edits().typed(zonewright.design.Facts.PREPARED_BY.reference(), 0, "edit 0"));
    ExecutorService hands = Executors.newSingleThreadExecutor();
    ExecutorService files = Executors.newSingleThreadExecutor();
    WorkRecord record =
        new WorkRecord(
            design.book().schema(),
            design.book()::snapshot,
            hands,
            file.resolveSibling("spare"),
            System.err::println);
    List<Path> left = records(file);
    WorkRecord.Base base =
        new WorkRecord.Base(opened.read(), UnsavedFile.digest(file), Optional.empty());
    hands.submit(() -> record.follow(Optional.of(file), "garden", Optional.of(base))).get();
    hands.submit(() -> left.forEach(record::outlive)).get();
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

  /**
   * A design with what was brought back.
   *
   * @param read what its file holds
   */
  record Opened(Design design, BookSnapshot read) {}

  /**
   * Returns the records beside a design, the latest first; of those a disk gives the same time, by
   * name, so that whoever looks at a copy sees the same.
   */
  static List<Path> records(Path file) throws IOException {
    try (Stream<Path> files = Files.list(file.getParent())) {
      return files
          .filter(each -> each.getFileName().toString().endsWith(UnsavedFile.ENDING))
          .sorted(
              Comparator.comparing(TypingProcess::time)
                  .reversed()
                  .thenComparing(each -> each.getFileName().toString()))
          .toList();
    }
  }

  private static long time(Path file) {
    try {
      return Files.getLastModifiedTime(file).toMillis(); // copies may have no more
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /** Returns the design as the window would after “bring them back”. */
  static Opened opened(Path file) throws DesignFileException, IOException {
    Design design = DesignFile.read(file).design();
    BookSnapshot read = design.book().snapshot();
    String digest = UnsavedFile.digest(file);
    for (Path record : records(file)) {
      UnsavedFile.Found found = UnsavedFile.read(record, design.book().schema()).orElseThrow();
      Optional<BookSnapshot> moment = found.at(digest, read);
      if (moment.isPresent() && found.book().isPresent()) {
        LeftWork left = new LeftWork(design.book(), read, moment, found.book().get());
        if (!left.items().isEmpty()) {
          design
              .book()
              .perform(
                  left.taken(
                      IntStream.range(0, left.items().size()).boxed().collect(Collectors.toSet())));
          break;
        }
      }
    }
    return new Opened(design, read);
  }

  private static void save(
      Design design, Path file, WorkRecord record, ExecutorService hands, ExecutorService files) {
    BookSnapshot now = design.book().snapshot();
    var last = design.book().journal().toUndo();
    record.saving(now);
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
                record.saved(
                    file,
                    "garden",
                    new WorkRecord.Base(now, UnsavedFile.digest(file), Optional.empty()),
                    design.book().journal().unsaved());
              });
        });
  }
}
