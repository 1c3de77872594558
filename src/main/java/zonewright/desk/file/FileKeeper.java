package zonewright.desk.file;

import java.awt.Dimension;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.UserPreferences;
import zonewright.desk.picture.Drawing;
import zonewright.desk.picture.PictureFile;
import zonewright.desk.task.BackgroundTasks;
import zonewright.desk.task.Curtain;
import zonewright.desk.task.Questions;
import zonewright.desk.task.Refused;
import zonewright.desk.task.Sentences;
import zonewright.nights.NightsPlan;
import zonewright.recovery.UnsavedFile;
import zonewright.recovery.UnsavedFile.Head;
import zonewright.recovery.WorkRecord;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Edit;
import zonewright.sheet.Entry;
import zonewright.units.UnitSystem;
import zonewright.workbook.DesignFile;
import zonewright.workbook.KeptFile;
import zonewright.workbook.Progress;

/**
 * Opens, saves and replaces the design on the desk, and never loses one.
 *
 * <p>Files are read and written away from the window's thread, on a design of their own.
 */
public final class FileKeeper {
  private static final String SUFFIX = ".xlsx";

  private final OpenDesign open;
  private final Shelf shelf;
  private final BackgroundTasks tasks;
  private final Questions questions;
  private final MessageBar messages;
  private final UserPreferences memory;
  private final Curtain curtain;
  private final UnsavedWork work;

  /** The file as it was when it was read or saved here. */
  private Optional<FileStamp> stamp = Optional.empty();

  /** How the file was when a person was told that it is another, and who has it in hand. */
  private Optional<FileStamp> toldStamp = Optional.empty();

  private Optional<Head> toldHolder = Optional.empty();

  /** What waits for a save that is going on. */
  private Optional<Runnable> afterSaving = Optional.empty();

  private boolean saving;
  private Edit savedUpTo;

  public FileKeeper(
      OpenDesign open,
      Shelf shelf,
      BackgroundTasks tasks,
      Questions questions,
      MessageBar messages,
      UserPreferences memory,
      Curtain curtain,
      UnsavedWork work) {
    this.open = open;
    this.shelf = shelf;
    this.tasks = tasks;
    this.questions = questions;
    this.messages = messages;
    this.memory = memory;
    this.curtain = curtain;
    this.work = work;
  }

  /** What was read, what a crash had left of it, and who has it in hand. */
  private record Read(
      Shelf.Taken taken,
      Optional<FileStamp> stamp,
      WorkRecord.Base base,
      List<UnsavedFile.Found> left,
      Optional<Head> holder) {}

  private record Stored(
      DesignFile.Written written, Optional<FileStamp> stamp, WorkRecord.Base base) {}

  /** A design on the desk with what belongs to it, to put it there again. */
  private record Laid(
      Design design,
      Optional<Path> file,
      Optional<KeptFile> kept,
      String name,
      Optional<FileStamp> stamp,
      Optional<WorkRecord.Base> base) {}

  /** The file is not the one that was read or saved here. */
  private static final class ChangedMeanwhile extends RuntimeException {
    private final transient Optional<FileStamp> now;
    private final transient Optional<Head> holder;

    ChangedMeanwhile(Optional<FileStamp> now, Optional<Head> holder) {
      this.now = now;
      this.holder = holder;
    }
  }

  /** Another window comes before this one in working on the file. */
  private static final class InHand extends RuntimeException {
    private final transient Head holder;

    InHand(Head holder) {
      this.holder = holder;
    }
  }

  /** Runs {@code next} once nothing would be lost by it, or not at all. */
  public void whenSafe(Runnable next) {
    if (!open.unsaved()) {
      next.run();
      return;
    }
    if (saving && savedUpTo == open.book().journal().toUndo().orElse(null)) {
      afterSaving = Optional.of(() -> whenSafe(next));
      return;
    }
    switch (questions.unsaved(open.name())) {
      case SAVE -> save(() -> whenSafe(next));
      case LOSE -> next.run();
      case CANCEL -> messages.clear();
    }
  }

  /** Puts an empty design on the desk. */
  public void fresh(UnitSystem system) {
    whenSafe(() -> lay(Design.blank(system), "New design"));
  }

  /** Puts a design that belongs to no file on the desk. */
  public void lay(Design design, String name) {
    messages.clear();
    stamp = Optional.empty();
    open.replace(design, name);
    work.follow(Optional.empty());
  }

  /** Puts the demo on the desk. */
  public void demo() {
    whenSafe(() -> lay(Demo.libraryGarden(open.book().system()), "Demo: library garden"));
  }

  /** Asks for a file and opens it. */
  public void openAsked() {
    whenSafe(() -> questions.fileToOpen().ifPresent(this::read));
  }

  /** Opens a file. */
  public void open(Path file) {
    whenSafe(() -> read(file));
  }

  private void read(Path file) {
    read(file, Optional.empty());
  }

  private void read(Path file, Optional<String> password) {
    String name = file.getFileName().toString();
    curtain.draw();
    String id = work.id();
    tasks.runAbandonable(
        "Opening " + name + " …",
        progress -> read(file, password, id, progress),
        read -> {
          curtain.lift();
          memory.used(file);
          lay(file, name, read);
          told(name, read);
        },
        problem -> {
          curtain.lift();
          if (problem instanceof Progress.BrokenOff) {
            notOpened(name);
          } else if (problem instanceof Shelf.Protected) {
            String words =
                password.isEmpty()
                    ? "“" + name + "” is protected by a password."
                    : "That is not the password of “" + name + "”.";
            questions
                .password(words)
                .ifPresentOrElse(word -> read(file, Optional.of(word)), () -> notOpened(name));
          } else {
            messages.problem(Sentences.of("“" + name + "” was not opened", problem), List.of());
          }
        });
  }

  private void notOpened(String name) {
    messages.tell("“" + name + "” was not opened; nothing has changed.", List.of());
  }

  private Read read(Path file, Optional<String> password, String id, Progress progress)
      throws Refused {
    Optional<FileStamp> before = FileStamp.of(file);
    Shelf.Taken taken = shelf.take(file, password, progress);
    String digest = UnsavedFile.digest(file);
    UnsavedFile.Around around = work.around(file, digest);
    return new Read(
        taken,
        before,
        new WorkRecord.Base(taken.design().book().snapshot(), digest, taken.kept().password()),
        UnsavedWork.found(around, taken.design().book().declared(), taken.kept().password()),
        around.holder(id));
  }

  private void lay(Path file, String name, Read read) {
    lay(
        new Laid(
            read.taken().design(),
            Optional.of(file),
            Optional.of(read.taken().kept()),
            name,
            read.stamp(),
            Optional.of(read.base())));
  }

  private void lay(Laid laid) {
    stamp = laid.stamp();
    toldStamp = Optional.empty();
    toldHolder = Optional.empty();
    open.replace(laid.design(), laid.file(), laid.kept(), laid.name());
    work.follow(laid.base());
  }

  private Laid laid() {
    return new Laid(open.design(), open.file(), open.kept(), open.name(), stamp, work.base());
  }

  private void told(String name, Read read) {
    messages.clear();
    List<String> notes = read.taken().notes();
    Runnable told =
        () -> {
          if (!notes.isEmpty()) {
            messages.tell(opened(name, notes.size()), notes);
          }
        };
    Runnable left = () -> work.offer(read.left(), told);
    toldHolder = read.holder();
    read.holder()
        .ifPresentOrElse(
            other ->
                messages.offer(
                    "“%s” is being worked on in another window (%s, since %s). You are looking on; saving over it asks first."
                        .formatted(name, other.who(), UnsavedWork.words(other.since())),
                    false,
                    takeOver("Take over", other, left),
                    new MessageBar.Offer("Look on", left)),
            left);
  }

  private MessageBar.Offer takeOver(String label, Head other, Runnable next) {
    return new MessageBar.Offer(
        label,
        () -> {
          work.takeOver(other);
          toldHolder = Optional.empty();
          next.run();
        });
  }

  /** Brings a design back that is in no file and that a crash left over. */
  public void bringBack(UnsavedFile.Found found) {
    whenSafe(
        () -> {
          Laid before = laid();
          Design design = Design.of(found.book().orElseThrow());
          String name = found.head().map(Head::name).orElse("New design");
          lay(
              new Laid(
                  design,
                  Optional.empty(),
                  Optional.empty(),
                  name,
                  Optional.empty(),
                  Optional.empty()));
          neverSaved();
          work.outlive(found.file());
          messages.offer(
              "“" + name + "” is as it was. It is not saved yet.",
              false,
              new MessageBar.Offer("Take that back", () -> takeBack(before)));
        });
  }

  private void neverSaved() {
    open.book().journal().neverSaved();
    work.changed();
    open.saidAnew();
  }

  private static String opened(String name, int notes) {
    return "“%s” is open, with %s about what was read."
        .formatted(name, notes == 1 ? "one note" : notes + " notes");
  }

  /** Reads the file anew and gives up what was not saved; one click takes that back. */
  public void revert() {
    if (open.file().isEmpty()) {
      messages.tell("This design was never saved, so there is nothing to go back to.", List.of());
      return;
    }
    Path file = open.file().get();
    String name = open.name();
    Laid before = laid();
    String id = work.id();
    curtain.draw();
    tasks.runAbandonable(
        "Reading " + name + " …",
        progress -> read(file, before.kept().flatMap(KeptFile::password), id, progress),
        read -> {
          curtain.lift();
          lay(file, name, read);
          messages.offer(
              "“" + name + "” is as it was saved last.",
              false,
              new MessageBar.Offer("Take that back", () -> takeBack(before)));
        },
        problem -> {
          curtain.lift();
          if (!(problem instanceof Progress.BrokenOff)) {
            messages.problem(Sentences.of("“" + name + "” was not read", problem), List.of());
          }
        });
  }

  private void takeBack(Laid before) {
    lay(before);
    neverSaved();
  }

  /** How the file is, and who has it in hand before this window. */
  private record Seen(Optional<FileStamp> stamp, Optional<Head> holder) {}

  /** Tells a person where the file is no longer the one that was read here, or no longer theirs. */
  public void lookAtFile() {
    open.file()
        .filter(file -> stamp.isPresent())
        .ifPresent(
            file -> {
              String id = work.id();
              tasks.quietly(
                  () -> new Seen(FileStamp.of(file), work.around(file, "").holder(id)),
                  seen -> {
                    if (open.file().equals(Optional.of(file))) {
                      tellSeen(seen);
                    }
                  });
            });
  }

  /** Returns who has a file in hand, and how often it has gone back and forth. */
  private String turn(Head holder) {
    return holder.id() + holder.over().getOrDefault(work.id(), 0);
  }

  /** Says who changed the file, as far as that can be seen. */
  private static String by(Optional<Head> holder) {
    return holder
        .map(other -> "saved in another window (%s)".formatted(other.who()))
        .orElse("changed by another program");
  }

  private void tellSeen(Seen seen) {
    boolean taken =
        seen.holder().isPresent()
            && !seen.holder().map(this::turn).equals(toldHolder.map(this::turn));
    boolean other =
        seen.stamp().isPresent() && !seen.stamp().equals(stamp) && !seen.stamp().equals(toldStamp);
    toldHolder = seen.holder();
    if (other) {
      toldStamp = seen.stamp();
      messages.offer(
          "“%s” was %s since it was read here.".formatted(open.name(), by(seen.holder())),
          true,
          new MessageBar.Offer("Read it again", this::revert),
          new MessageBar.Offer("Keep what is here", () -> {}));
    } else if (taken) {
      Head holder = seen.holder().get();
      messages.offer(
          "“%s” was taken over in another window (%s). What you typed is still here; saving over it asks first."
              .formatted(open.name(), holder.who()),
          true,
          takeOver("Take it back", holder, () -> {}),
          new MessageBar.Offer("Look on", () -> {}));
    }
  }

  /** Saves to the file it belongs to, or asks for one, and then runs {@code next}. */
  public void save(Runnable next) {
    open.file()
        .ifPresentOrElse(file -> write(file, stamp, Optional.empty(), next), () -> saveAs(next));
  }

  /** Asks where to save, saves, and then runs {@code next}. */
  public void saveAs(Runnable next) {
    questions
        .fileToSave(suggestion())
        .ifPresent(
            file ->
                write(
                    file,
                    open.file().equals(Optional.of(file)) ? stamp : Optional.empty(),
                    Optional.empty(),
                    next));
  }

  /** Returns the file's own name, or one made of what the project is called. */
  private Path suggestion() {
    if (open.file().isPresent()) {
      return open.file().get();
    }
    Entry project = open.book().entry(Facts.PROJECT_NAME.reference(), 0);
    String words = project instanceof Entry.Words named ? named.text() : open.name();
    return Path.of(plain(words) + SUFFIX);
  }

  /** Returns a name that every disk takes. */
  private static String plain(String words) {
    String plain =
        words.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
    return plain.isEmpty() ? "design" : plain;
  }

  /**
   * Writes; where {@code expected} is given, only over a file that still has that stamp.
   *
   * @param overruled a window that may have it in hand all the same
   */
  private void write(
      Path file, Optional<FileStamp> expected, Optional<Head> overruled, Runnable next) {
    BookSnapshot snapshot = open.book().snapshot();
    Optional<NightsPlan> known = open.design().nights().known();
    Optional<Edit> last = open.book().journal().toUndo();
    Design written = open.design();
    Optional<KeptFile> kept = open.kept();
    String name = file.getFileName().toString();
    String id = work.id();
    boolean elsewhere = !open.file().equals(Optional.of(file));
    work.saving(snapshot);
    saving = true;
    savedUpTo = last.orElse(null);
    tasks.runStoppable(
        "Saving " + name + " …",
        progress -> {
          Runnable still = () -> stillOurs(file, expected, overruled, id);
          still.run();
          Design copy = Design.of(snapshot);
          known.ifPresent(copy.nights()::learn);
          DesignFile.Written put = shelf.put(copy, file, kept, watching(progress, still));
          return new Stored(
              put,
              FileStamp.of(file),
              new WorkRecord.Base(snapshot, UnsavedFile.digest(file), put.kept().password()));
        },
        stored -> {
          DesignFile.Written put = stored.written();
          memory.used(file);
          messages.clear();
          if (elsewhere) {
            String said = put.notes().isEmpty() ? "” is saved." : "” is saved, with a note.";
            messages.wrote("“" + name + said, file, put.notes());
          } else if (!put.notes().isEmpty()) {
            messages.tell("“" + name + "” is saved, with a note.", put.notes());
          }
          if (written == open.design()) {
            stamp = stored.stamp();
            open.saved(file, put.kept(), last);
            work.saved(file, stored.base());
          }
          saving = false;
          Optional<Runnable> waiting = afterSaving;
          afterSaving = Optional.empty();
          next.run();
          waiting.ifPresent(Runnable::run);
        },
        problem -> {
          saving = false;
          afterSaving = Optional.empty();
          notWritten(file, problem, next);
        });
  }

  /** Looks before the writing and again before the file is replaced, which may be long after. */
  private static Progress watching(Progress progress, Runnable still) {
    return new Progress() {
      @Override
      public void at(long done, long of) {
        progress.at(done, of);
      }

      @Override
      public void replacing() {
        still.run();
      }
    };
  }

  /** Ends a saving where the file is another by now, or in somebody else's hands. */
  private void stillOurs(
      Path file, Optional<FileStamp> expected, Optional<Head> overruled, String id) {
    Optional<FileStamp> now = FileStamp.of(file);
    Optional<Head> holder = work.around(file, "").holder(id);
    if (expected.isPresent() && now.isPresent() && !now.equals(expected)) {
      throw new ChangedMeanwhile(now, holder);
    }
    if (holder.isPresent() && !holder.map(Head::id).equals(overruled.map(Head::id))) {
      throw new InHand(holder.get());
    }
  }

  private void notWritten(Path file, Exception problem, Runnable next) {
    String name = file.getFileName().toString();
    if (problem instanceof Progress.BrokenOff) {
      messages.tell(
          "“%s” was not saved; the file is as it was, and your work is still here.".formatted(name),
          List.of());
      return;
    }
    if (problem instanceof ChangedMeanwhile changed) {
      messages.offer(
          "“%s” was not saved: it was %s since it was read here. Your work is still here."
              .formatted(name, by(changed.holder)),
          true,
          new MessageBar.Offer(
              "Save over it", () -> write(file, changed.now, Optional.empty(), next)),
          new MessageBar.Offer("Save as …", () -> saveAs(next)));
      return;
    }
    if (problem instanceof InHand inHand) {
      messages.offer(
          "“%s” was not saved: it is being worked on in another window (%s). Your work is still here."
              .formatted(name, inHand.holder.who()),
          true,
          takeOver(
              "Take over and save",
              inHand.holder,
              () -> write(file, stamp, Optional.of(inHand.holder), next)),
          new MessageBar.Offer("Save as …", () -> saveAs(next)));
      return;
    }
    messages.problem(
        Sentences.of("“" + name + "” was not saved", problem) + " Your work is still here.",
        List.of());
  }

  /** Asks where to export a drawing, and writes it there. */
  public void export(Drawing drawing, Dimension size) {
    questions
        .fileToExport(plain(drawing.title()))
        .ifPresent(
            file ->
                tasks.run(
                    "Exporting " + file.getFileName() + " …",
                    () -> {
                      PictureFile.write(drawing, size, file);
                      return file;
                    },
                    written ->
                        messages.wrote(
                            "“" + written.getFileName() + "” was exported.", written, List.of()),
                    problem ->
                        messages.problem(
                            "“%s” was not exported: nothing can be written there."
                                .formatted(file.getFileName()),
                            List.of())));
  }
}
