package zonewright.desk;

import java.awt.Dimension;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.desk.part.Memory;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.picture.Drawing;
import zonewright.desk.picture.PictureFile;
import zonewright.nights.NightsPlan;
import zonewright.recovery.UnsavedFile;
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
final class FileKeeper {
  private static final String SUFFIX = ".xlsx";

  private final OpenDesign open;
  private final Shelf shelf;
  private final Errands errands;
  private final Questions questions;
  private final MessageBar messages;
  private final Memory memory;
  private final Curtain curtain;
  private final UnsavedWork work;

  /** The file as it was when it was read or saved here, or when a person was told it is not. */
  private Optional<FileStamp> stamp = Optional.empty();

  FileKeeper(
      OpenDesign open,
      Shelf shelf,
      Errands errands,
      Questions questions,
      MessageBar messages,
      Memory memory,
      Curtain curtain,
      UnsavedWork work) {
    this.open = open;
    this.shelf = shelf;
    this.errands = errands;
    this.questions = questions;
    this.messages = messages;
    this.memory = memory;
    this.curtain = curtain;
    this.work = work;
  }

  /** What was read, and what a crash had left beside it. */
  private record Read(
      Shelf.Taken taken, Optional<UnsavedFile.Found> left, Optional<FileStamp> stamp) {}

  private record Stored(DesignFile.Written written, Optional<FileStamp> stamp) {}

  /** The file is not the one that was read or saved here. */
  private static final class ChangedMeanwhile extends Exception {}

  /** Runs {@code next} once nothing would be lost by it, or not at all. */
  void whenSafe(Runnable next) {
    if (!open.unsaved()) {
      next.run();
      return;
    }
    switch (questions.unsaved(open.name())) {
      case SAVE -> save(() -> whenSafe(next));
      case LOSE -> next.run();
      case CANCEL -> messages.clear();
    }
  }

  /** Puts an empty design on the desk. */
  void fresh(UnitSystem system) {
    whenSafe(() -> lay(Design.blank(system), "New design"));
  }

  /** Puts a design that belongs to no file on the desk. */
  void lay(Design design, String name) {
    messages.clear();
    stamp = Optional.empty();
    open.replace(design, name);
  }

  /** Puts the demo on the desk. */
  void demo() {
    whenSafe(() -> lay(Demo.libraryGarden(open.book().system()), "Demo: library garden"));
  }

  /** Asks for a file and opens it. */
  void openAsked() {
    whenSafe(() -> questions.fileToOpen().ifPresent(this::read));
  }

  /** Opens a file. */
  void open(Path file) {
    whenSafe(() -> read(file));
  }

  private void read(Path file) {
    String name = file.getFileName().toString();
    curtain.draw();
    errands.runStoppable(
        "Opening " + name + " …",
        progress -> {
          Optional<FileStamp> before = FileStamp.of(file);
          Shelf.Taken taken = shelf.take(file, progress);
          return new Read(taken, work.leftBeside(file, taken.design()), before);
        },
        read -> {
          curtain.lift();
          memory.used(file);
          stamp = read.stamp();
          open.replace(read.taken().design(), file, read.taken().kept(), name);
          told(name, file, read);
        },
        problem -> {
          curtain.lift();
          if (problem instanceof Progress.BrokenOff) {
            messages.tell("“" + name + "” was not opened; nothing has changed.", List.of());
          } else {
            messages.problem(Sentences.of("“" + name + "” was not opened", problem), List.of());
          }
        });
  }

  private void told(String name, Path file, Read read) {
    List<String> notes = new ArrayList<>(read.taken().notes());
    if (read.left().isPresent()) {
      work.offer(read.left().get());
    } else if (UnsavedWork.openElsewhere(file)) {
      messages.tell(
          "“%s” is open in another window too; who saves last replaces the other's work."
              .formatted(name),
          notes);
    } else if (notes.isEmpty()) {
      messages.clear();
    } else {
      messages.tell(opened(name, notes.size()), notes);
    }
  }

  private static String opened(String name, int notes) {
    return "“%s” is open, with %s about what was read."
        .formatted(name, notes == 1 ? "one note" : notes + " notes");
  }

  /** Reads the file anew and gives up what was not saved; one click takes that back. */
  void revert() {
    if (open.file().isEmpty()) {
      messages.tell("This design was never saved, so there is nothing to go back to.", List.of());
      return;
    }
    Path file = open.file().get();
    String name = open.name();
    Design before = open.design();
    Optional<KeptFile> kept = open.kept();
    curtain.draw();
    errands.runStoppable(
        "Reading " + name + " …",
        progress -> new Read(shelf.take(file, progress), Optional.empty(), FileStamp.of(file)),
        read -> {
          curtain.lift();
          stamp = read.stamp();
          open.replace(read.taken().design(), file, read.taken().kept(), name);
          messages.offer(
              "“" + name + "” is as it was saved last.",
              false,
              new MessageBar.Offer("Take that back", () -> takeBack(before, file, kept, name)));
        },
        problem -> {
          curtain.lift();
          if (!(problem instanceof Progress.BrokenOff)) {
            messages.problem(Sentences.of("“" + name + "” was not read", problem), List.of());
          }
        });
  }

  private void takeBack(Design before, Path file, Optional<KeptFile> kept, String name) {
    open.replace(before, Optional.of(file), kept, name);
    before.book().journal().neverSaved();
    work.changed();
    open.saidAnew();
  }

  /** Tells a person where the file is no longer the one that was read or saved here. */
  void lookAtFile() {
    open.file()
        .filter(file -> stamp.isPresent())
        .ifPresent(
            file ->
                errands.quietly(
                    () -> FileStamp.of(file),
                    found -> {
                      boolean other = found.isPresent() && !found.equals(stamp);
                      if (other && open.file().equals(Optional.of(file))) {
                        stamp = found;
                        changedOnDisk();
                      }
                    }));
  }

  private void changedOnDisk() {
    messages.offer(
        "“" + open.name() + "” was changed by another program since it was read here.",
        true,
        new MessageBar.Offer("Read it again", this::revert),
        new MessageBar.Offer("Keep what is here", () -> {}));
  }

  /** Saves to the file it belongs to, or asks for one, and then runs {@code next}. */
  void save(Runnable next) {
    open.file().ifPresentOrElse(file -> write(file, stamp, next), () -> saveAs(next));
  }

  /** Asks where to save, saves, and then runs {@code next}. */
  void saveAs(Runnable next) {
    questions.fileToSave(suggestion()).ifPresent(file -> write(file, Optional.empty(), next));
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

  /** Writes; where {@code expected} is given, only over a file that still has that stamp. */
  private void write(Path file, Optional<FileStamp> expected, Runnable next) {
    BookSnapshot snapshot = open.book().snapshot();
    Optional<NightsPlan> known = open.design().nights().known();
    Optional<Edit> last = open.book().journal().toUndo();
    Design saving = open.design();
    Optional<KeptFile> kept = open.kept();
    String name = file.getFileName().toString();
    errands.runStoppable(
        "Saving " + name + " …",
        progress -> {
          Optional<FileStamp> now = FileStamp.of(file);
          if (expected.isPresent() && now.isPresent() && !now.equals(expected)) {
            throw new ChangedMeanwhile();
          }
          Design copy = Design.of(snapshot);
          known.ifPresent(copy.nights()::learn);
          DesignFile.Written put = shelf.put(copy, file, kept, progress);
          return new Stored(put, FileStamp.of(file));
        },
        stored -> {
          DesignFile.Written written = stored.written();
          memory.used(file);
          messages.clear();
          if (!written.notes().isEmpty()) {
            messages.tell("“" + name + "” is saved, with a note.", written.notes());
          }
          if (saving == open.design()) {
            stamp = stored.stamp();
            open.saved(file, written.kept(), last);
            work.saved(file);
          }
          next.run();
        },
        problem -> notWritten(file, problem, next));
  }

  private void notWritten(Path file, Exception problem, Runnable next) {
    String name = file.getFileName().toString();
    if (problem instanceof Progress.BrokenOff) {
      messages.tell(
          "“%s” was not saved; the file is as it was, and your work is still here.".formatted(name),
          List.of());
      return;
    }
    if (problem instanceof ChangedMeanwhile) {
      messages.offer(
          "“%s” was not saved: another program changed it since it was read here.".formatted(name),
          true,
          new MessageBar.Offer("Save over it", () -> write(file, Optional.empty(), next)),
          new MessageBar.Offer("Save as …", () -> saveAs(next)));
      return;
    }
    messages.problem(
        Sentences.of("“" + name + "” was not saved", problem) + " Your work is still here.",
        List.of());
  }

  /** Asks where to export a drawing, and writes it there. */
  void export(Drawing drawing, Dimension size) {
    questions
        .fileToExport(plain(drawing.title()))
        .ifPresent(
            file ->
                errands.run(
                    "Exporting " + file.getFileName() + " …",
                    () -> {
                      PictureFile.write(drawing, size, file);
                      return file;
                    },
                    written -> messages.tell("Exported to “" + written + "”.", List.of()),
                    problem ->
                        messages.problem(
                            "“%s” was not exported: nothing can be written there."
                                .formatted(file.getFileName()),
                            List.of())));
  }
}
