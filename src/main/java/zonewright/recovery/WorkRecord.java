package zonewright.recovery;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.ClosedChannelException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import zonewright.sheet.Blueprint;
import zonewright.sheet.BookSnapshot;

/**
 * Writes down what changes in a book, at most {@link #PAUSE_MILLIS} after it changed, and forces it
 * to the disk.
 *
 * <p>{@link #changed}, {@link #follow} and {@link #saved} are called by the book's own thread; the
 * file is written by another, and forced by a third: a disk may take its time, and what is typed
 * meanwhile should not wait for it in memory, where it would be lost with the process.
 */
public final class WorkRecord implements AutoCloseable {
  /** How long changes are gathered before they are written. */
  static final int PAUSE_MILLIS = 80;

  /** How long another record is kept until this one stands for sure. */
  private static final int SETTLED_MILLIS = 1000;

  private static final Logger LOG = Logger.getLogger(WorkRecord.class.getName());
  private static final Map<String, List<zonewright.sheet.Row>> NOTHING = Map.of();

  private final Blueprint blueprint;
  private final Supplier<BookSnapshot> book;
  private final Executor owner;
  private final Path spare;
  private final ScheduledExecutorService writer =
      Executors.newSingleThreadScheduledExecutor(work -> thread(work, "record of unsaved work"));
  private final ExecutorService forcer =
      Executors.newSingleThreadExecutor(work -> thread(work, "forcing of unsaved work"));

  /** Touched by the book's thread only. */
  private Target target = new Target(Path.of(""), "", Optional.empty());

  private boolean pending;

  /** Touched by the writer only. */
  private BookSnapshot written;

  private FileChannel channel;
  private Path file;

  /** Where to write, and for which design. */
  private record Target(Path file, String name, Optional<Path> design) {}

  /**
   * Makes a record that writes nothing yet.
   *
   * @param book gives the book as it is now; asked by the book's own thread
   * @param owner runs things on the book's own thread
   * @param spare the folder for designs that have no file, or whose folder cannot be written
   */
  public WorkRecord(Blueprint blueprint, Supplier<BookSnapshot> book, Executor owner, Path spare) {
    this.blueprint = blueprint;
    this.book = book;
    this.owner = owner;
    this.spare = spare;
  }

  private static Thread thread(Runnable work, String name) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    return thread;
  }

  /** Follows another design from now on: one that is saved, or that nobody has touched yet. */
  public void follow(Optional<Path> design, String name) {
    aim(design, name);
    writer.execute(this::discard);
  }

  private void aim(Optional<Path> design, String name) {
    Path own =
        spare.resolve(ProcessHandle.current().pid() + "-" + System.nanoTime() + UnsavedFile.ENDING);
    target = new Target(design.map(UnsavedFile::beside).orElse(own), name, design);
    pending = false;
  }

  /** Notes that the book changed. */
  public void changed() {
    if (pending) {
      return;
    }
    pending = true;
    Target wanted = target;
    var unused =
        writer.schedule(
            () -> owner.execute(() -> gather(wanted)), PAUSE_MILLIS, TimeUnit.MILLISECONDS);
  }

  @SuppressWarnings("ReferenceEquality") // this very target, not one that looks like it
  private void gather(Target wanted) {
    if (wanted != target || !pending) {
      return;
    }
    pending = false;
    BookSnapshot now = book.get();
    writer.execute(() -> write(wanted, now));
  }

  /**
   * Notes that the design was saved to a file as it was at a moment; what was entered since is
   * written anew before what is saved is thrown away.
   *
   * @param changedSince whether something was entered since
   */
  public void saved(Path design, String name, boolean changedSince) {
    if (!changedSince) {
      follow(Optional.of(design), name);
      return;
    }
    aim(Optional.of(design), name);
    Target wanted = target;
    BookSnapshot now = book.get();
    writer.execute(() -> restart(wanted, now));
  }

  private void restart(Target wanted, BookSnapshot now) {
    Optional<Path> before = Optional.ofNullable(file);
    try {
      if (channel != null) {
        channel.close();
      }
      begin(wanted, now);
      written = now;
      if (before.isPresent() && !before.get().equals(file)) {
        Files.deleteIfExists(before.get());
      }
    } catch (IOException problem) {
      LOG.log(Level.FINE, "the record of unsaved work was not written", problem);
      discard();
    }
  }

  private void write(Target wanted, BookSnapshot now) {
    try {
      if (channel == null) {
        begin(wanted, now);
      } else {
        List<String> lines = Difference.lines(blueprint, written, now);
        if (!lines.isEmpty()) {
          append(channel, lines);
          FileChannel appended = channel;
          forcer.execute(() -> force(appended));
        }
      }
      written = now;
    } catch (IOException problem) {
      LOG.log(Level.FINE, "the record of unsaved work was not written", problem);
      discard();
    }
  }

  private void begin(Target wanted, BookSnapshot now) throws IOException {
    try {
      open(wanted.file(), wanted, now);
    } catch (IOException notThere) {
      Files.createDirectories(spare);
      open(spare.resolve(wanted.file().getFileName()), wanted, now);
    }
  }

  /** Writes all of a book beside the place first, so that a record is whole or not there. */
  private void open(Path place, Target wanted, BookSnapshot now) throws IOException {
    if (place.startsWith(spare)) {
      Files.createDirectories(spare);
    }
    Path fresh = place.resolveSibling(place.getFileName() + ".part");
    FileChannel opened =
        FileChannel.open(
            fresh,
            StandardOpenOption.WRITE,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING);
    try {
      put(opened, UnsavedFile.head(wanted.name(), wanted.design()) + "\n");
      append(opened, Difference.lines(blueprint, new BookSnapshot(now.system(), NOTHING), now));
      try {
        Files.move(fresh, place, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException noMatter) {
        Files.move(fresh, place, StandardCopyOption.REPLACE_EXISTING);
      }
    } catch (IOException problem) {
      opened.close();
      Files.deleteIfExists(fresh);
      throw problem;
    }
    channel = opened;
    file = place;
    forcer.execute(() -> force(opened));
  }

  private static void append(FileChannel to, List<String> lines) throws IOException {
    List<String> all = new ArrayList<>(lines);
    all.add(UnsavedFile.closing(lines));
    put(to, String.join("\n", all) + "\n");
  }

  private static void force(FileChannel written) {
    try {
      written.force(false);
    } catch (ClosedChannelException replaced) {
      LOG.log(Level.FINEST, "another record took the place of this one", replaced);
    } catch (IOException problem) {
      LOG.log(Level.FINE, "the record of unsaved work was not forced to the disk", problem);
    }
  }

  private static void put(FileChannel to, String text) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
    while (bytes.hasRemaining()) {
      to.write(bytes);
    }
  }

  /** Deletes another record once this one has had time to be written. */
  public void discardLater(Path other) {
    var unused =
        writer.schedule(
            () -> {
              try {
                return Files.deleteIfExists(other);
              } catch (IOException stays) {
                return false;
              }
            },
            SETTLED_MILLIS,
            TimeUnit.MILLISECONDS);
  }

  /** Throws away what was written: it is saved, or nobody wants it. */
  private void discard() {
    try {
      if (channel != null) {
        channel.close();
      }
      if (file != null) {
        Files.deleteIfExists(file);
      }
    } catch (IOException stays) {
      LOG.log(Level.FINE, "the record of unsaved work was not taken away", stays);
    }
    channel = null;
    file = null;
    written = null;
  }

  /** Ends in peace: nothing is left behind. */
  @Override
  public void close() {
    pending = false;
    writer.execute(this::discard);
    writer.shutdown();
    forcer.shutdown();
    try {
      if (!writer.awaitTermination(2, TimeUnit.SECONDS)) {
        LOG.fine("the record of unsaved work is still being written");
      }
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
