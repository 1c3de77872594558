package zonewright.recovery;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import zonewright.disk.Access;
import zonewright.disk.Disk;
import zonewright.disk.DiskFile;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Schema;

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

  /** How long after a disk refused something it is asked again. */
  private static final int AGAIN_MILLIS = 2000;

  private static final Logger LOG = Logger.getLogger(WorkRecord.class.getName());

  private final Disk disk;
  private final Schema schema;
  private final Supplier<BookSnapshot> book;
  private final Executor owner;
  private final Path spare;
  private final Consumer<String> told;
  private final ScheduledExecutorService writer =
      Executors.newSingleThreadScheduledExecutor(work -> thread(work, "record of unsaved work"));
  private final ExecutorService forcer =
      Executors.newSingleThreadExecutor(work -> thread(work, "forcing of unsaved work"));

  /** The windows whose files were taken over. */
  private final Map<String, Integer> over = new ConcurrentHashMap<>();

  /** Touched by the book's thread only. */
  private Target target = target(Optional.empty(), "", Optional.empty());

  private boolean pending;

  /** Whose names are on the disk already; touched by the forcer only. */
  private final Set<DiskFile> known = new HashSet<>();

  /** Touched by the writer only. */
  private BookSnapshot written;

  private Target standing;
  private DiskFile file;
  private Optional<RecordLock> lock = Optional.empty();
  private Optional<String> lockedBy = Optional.empty();
  private boolean refused;
  private final List<Path> outlived = new ArrayList<>();

  /**
   * The design's file as it was read or saved.
   *
   * @param book what it holds
   * @param digest its {@link UnsavedFile#digest}
   * @param password the one that protects it, and so its record
   */
  public record Base(BookSnapshot book, String digest, Optional<String> password) {}

  /** For which design to write; the window keeps its identity as long as it has the same file. */
  private record Target(
      String id, Instant since, String name, Optional<Path> design, Optional<Base> base) {}

  /**
   * Makes a record that writes nothing yet.
   *
   * @param book gives the book as it is now; asked by the book's own thread
   * @param owner runs things on the book's own thread
   * @param spare the folder for designs that have no file, or whose folder cannot be written
   * @param told is told, on the book's own thread, when nothing can be put on record, and when it
   *     can again
   */
  public WorkRecord(
      Schema schema,
      Supplier<BookSnapshot> book,
      Executor owner,
      Path spare,
      Consumer<String> told) {
    this(Disk.REAL, schema, book, owner, spare, told);
  }

  /** Writes on a disk of its own, for tests. */
  WorkRecord(
      Disk disk,
      Schema schema,
      Supplier<BookSnapshot> book,
      Executor owner,
      Path spare,
      Consumer<String> told) {
    this.disk = disk;
    this.schema = schema;
    this.book = book;
    this.owner = owner;
    this.spare = spare;
    this.told = told;
  }

  private static Thread thread(Runnable work, String name) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    return thread;
  }

  private Target target(Optional<Path> design, String name, Optional<Base> base) {
    boolean same = target != null && design.isPresent() && design.equals(target.design());
    if (!same) {
      over.clear();
    }
    String id = same ? target.id() : UUID.randomUUID().toString();
    return new Target(id, same ? target.since() : Instant.now(), name, design, base);
  }

  /** Returns the identity of the window at this design. */
  public String id() {
    return target.id();
  }

  /**
   * Follows another design from now on: one that is saved, or that nobody has touched yet. What was
   * written of the one before is thrown away: it is saved, or nobody wants it.
   *
   * @param base the file as it was read; none for a design in no file
   */
  public void follow(Optional<Path> design, String name, Optional<Base> base) {
    target = target(design, name, base);
    pending = false;
    Target wanted = target;
    writer.execute(() -> change(wanted, Optional.empty()));
  }

  /** Notes that the book changed. */
  public void changed() {
    if (pending) {
      return;
    }
    pending = true;
    Target wanted = target;
    later(() -> gather(wanted), PAUSE_MILLIS);
  }

  private void later(Runnable work, int millis) {
    var unused = writer.schedule(() -> owner.execute(work), millis, TimeUnit.MILLISECONDS);
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
   * @param base the file as it was saved
   * @param changedSince whether something was entered since
   */
  public void saved(Path design, String name, Base base, boolean changedSince) {
    if (!changedSince) {
      follow(Optional.of(design), name, Optional.of(base));
      return;
    }
    target = target(Optional.of(design), name, Optional.of(base));
    pending = false;
    Target wanted = target;
    BookSnapshot now = book.get();
    writer.execute(() -> change(wanted, Optional.of(now)));
  }

  /**
   * Notes that the book is about to be saved as it is now, so that a record that outlives its
   * window is known to belong to what was saved.
   */
  public void saving(BookSnapshot now) {
    writer.execute(
        () -> {
          if (file != null && written != null) {
            guarded(
                () -> {
                  put(now);
                  note(List.of(UnsavedFile.SAVING));
                });
          }
        });
  }

  /** Lets another record go once what is in the book, and so all of that one, stands in this. */
  public void outlive(Path other) {
    writer.execute(() -> outlived.add(other));
    changed();
  }

  /** Takes over the file from another window. */
  public void takeOver(UnsavedFile.Head other) {
    int turn = 1 + other.over().getOrDefault(id(), 0);
    over.put(other.id(), turn);
    ours();
    writer.execute(
        () -> {
          if (file != null) {
            guarded(() -> append(List.of("over\t" + other.id() + "\t" + turn)));
          }
        });
  }

  private void change(Target wanted, Optional<BookSnapshot> now) {
    Optional<DiskFile> before = Optional.ofNullable(file);
    file = null;
    boolean stands =
        guarded(
            () -> {
              if (wanted.design().isPresent() || now.isPresent()) {
                begin(wanted);
              }
              // what the file held is written before anybody types, who then need not wait for it
              Optional<BookSnapshot> first = now.or(() -> wanted.base().map(Base::book));
              if (first.isPresent()) {
                put(first.get());
              }
            });
    DiskFile fresh = file;
    if (stands || now.isEmpty()) {
      forcer.execute(() -> stands(fresh, before));
    }
  }

  /** Throws one record away once the next stands. */
  private void stands(DiskFile fresh, Optional<DiskFile> before) {
    if (fresh == null || forced(fresh)) {
      before.map(DiskFile::created).ifPresent(this::delete);
    }
    before.ifPresent(WorkRecord::close);
  }

  private void write(Target wanted, BookSnapshot now) {
    boolean stands =
        guarded(
            () -> {
              if (file == null || !Files.exists(file.created())) {
                begin(wanted);
              }
              put(now);
            });
    DiskFile appended = file;
    if (stands) {
      List<Path> gone = List.copyOf(outlived);
      outlived.clear();
      forcer.execute(() -> force(appended, gone));
    } else {
      later(() -> again(wanted), AGAIN_MILLIS);
    }
  }

  @SuppressWarnings("ReferenceEquality") // this very target, not one that looks like it
  private void again(Target wanted) {
    if (wanted == target) {
      changed();
    }
  }

  private void put(BookSnapshot now) throws IOException {
    if (written == null) {
      BookSnapshot nothing = new BookSnapshot(now.system(), Map.of());
      Optional<Base> base = standing.base();
      if (base.isPresent()) {
        List<String> lines =
            new ArrayList<>(UnsavedChange.lines(schema, nothing, base.get().book()));
        lines.add(UnsavedFile.BASE);
        note(lines);
      }
      written = base.map(Base::book).orElse(nothing);
    }
    List<String> lines = UnsavedChange.lines(schema, written, now);
    if (!lines.isEmpty()) {
      note(lines);
    }
    written = now;
  }

  /** Something a disk may refuse. */
  private interface UserAction {
    void run() throws IOException;
  }

  /** Does something; what a disk refuses is told, once, and so is that it no longer does. */
  private boolean guarded(UserAction action) {
    try {
      action.run();
      if (refused) {
        refused = false;
        owner.execute(() -> told.accept("What you type is on record again."));
      }
      return true;
    } catch (IOException problem) {
      LOG.log(Level.FINE, "the record of unsaved work was not written", problem);
      if (!refused) {
        refused = true;
        String sentence = sentence(problem);
        owner.execute(() -> told.accept(sentence));
      }
      return false;
    }
  }

  private static String sentence(IOException problem) {
    String said = String.valueOf(problem.getMessage()).toLowerCase(Locale.ROOT);
    boolean full = said.contains("space") || said.contains("quota");
    return "What you type is not on record now, and a crash would lose it: %s."
        .formatted(
            full
                ? "the disk is full. Make room on it, or save in another folder"
                : "nothing can be written beside the design or in the program's own folder. Save it, here or in another folder");
  }

  private void begin(Target wanted) throws IOException {
    written = null;
    Optional<String> password = wanted.base().flatMap(Base::password);
    if (!password.equals(lockedBy)) {
      lock = password.map(RecordLock::of);
      lockedBy = password;
    }
    UnsavedFile.Head head =
        new UnsavedFile.Head(
            wanted.id(),
            wanted.name(),
            wanted.design(),
            wanted.base().map(Base::digest).orElse(""),
            Person.words(),
            wanted.since(),
            over);
    String mark = UUID.randomUUID().toString();
    Optional<DiskFile> before = Optional.ofNullable(file);
    if (wanted.design().isEmpty()) {
      open(aside(mark), head);
    } else {
      try {
        open(UnsavedFile.beside(UnsavedFile.real(wanted.design().get()), mark), head);
      } catch (IOException notThere) {
        open(aside(mark), head);
      }
    }
    before.ifPresent(gone -> forcer.execute(() -> close(gone)));
    standing = wanted;
  }

  private Path aside(String mark) throws IOException {
    Access.ownFolder(spare);
    return spare.resolve(mark + UnsavedFile.ENDING);
  }

  private void ours() {
    UnsavedFile.OURS.replaceAll(
        (path, head) -> head.id().equals(target.id()) ? withOver(head) : head);
  }

  private UnsavedFile.Head withOver(UnsavedFile.Head head) {
    return new UnsavedFile.Head(
        head.id(), head.name(), head.design(), head.digest(), head.who(), head.since(), over);
  }

  private void open(Path place, UnsavedFile.Head head) throws IOException {
    DiskFile opened = disk.create(place, head.design().filter(Files::exists));
    try {
      UnsavedFile.OURS.put(place.toAbsolutePath(), head);
      List<String> lines = new ArrayList<>(List.of(head.line()));
      over.forEach((id, turn) -> lines.add("over\t" + id + "\t" + turn));
      lock.ifPresent(known -> lines.add(known.line()));
      write(opened, UnsavedFile.HEAD + "\n" + UnsavedFile.group(lines));
    } catch (IOException problem) {
      delete(place);
      close(opened);
      throw problem;
    }
    file = opened;
  }

  /** Adds a group of what is in the book, closed where the design is. */
  private void note(List<String> lines) throws IOException {
    append(lock.isPresent() ? lock.get().closed(lines) : lines);
  }

  /** Adds a group, or nothing at all. */
  private void append(List<String> lines) throws IOException {
    long good = file.length();
    try {
      write(file, UnsavedFile.group(lines));
    } catch (IOException problem) {
      file.cut(good);
      throw problem;
    }
  }

  private void write(DiskFile to, String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    disk.write(to, bytes, 0, bytes.length);
  }

  private void force(DiskFile appended, List<Path> gone) {
    if (forced(appended)) {
      gone.forEach(this::delete);
    }
  }

  private boolean forced(DiskFile appended) {
    try {
      disk.force(appended);
      if (known.add(appended)) {
        disk.forceFolder(appended.created().toAbsolutePath().getParent());
      }
      return true;
    } catch (IOException problem) {
      if (!writer.isShutdown()) {
        writer.execute(
            () ->
                guarded(
                    () -> {
                      throw problem;
                    }));
      }
      return false;
    }
  }

  private void delete(Path record) {
    try {
      disk.delete(record);
      UnsavedFile.OURS.remove(record.toAbsolutePath());
    } catch (IOException stays) {
      LOG.log(Level.FINE, "the record of unsaved work was not taken away", stays);
    }
  }

  private static void close(DiskFile file) {
    try {
      file.close();
    } catch (IOException gone) {
      LOG.log(Level.FINE, "the record of unsaved work was not closed", gone);
    }
  }

  /** Ends in peace: nothing is left behind. */
  @Override
  public void close() {
    if (writer.isShutdown()) {
      return;
    }
    pending = false;
    writer.execute(
        () -> {
          Optional<DiskFile> last = Optional.ofNullable(file);
          file = null;
          forcer.execute(() -> stands(null, last));
          forcer.shutdown();
        });
    writer.shutdown();
    try {
      if (!forcer.awaitTermination(2, TimeUnit.SECONDS)) {
        LOG.fine("the record of unsaved work is still being written");
      }
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
