package zonewright.desk;

import java.awt.Dimension;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.desk.picture.Drawing;
import zonewright.desk.picture.PictureFile;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Edit;
import zonewright.units.UnitSystem;

/**
 * Opens, saves and replaces the design on the desk, and never loses one.
 *
 * <p>Files are read and written away from the window's thread, on a design of their own.
 */
final class FileKeeper {
  private final OpenDesign open;
  private final Shelf shelf;
  private final Errands errands;
  private final Questions questions;
  private final MessageBar messages;
  private final Memory memory;
  private final Curtain curtain;

  FileKeeper(
      OpenDesign open,
      Shelf shelf,
      Errands errands,
      Questions questions,
      MessageBar messages,
      Memory memory,
      Curtain curtain) {
    this.open = open;
    this.shelf = shelf;
    this.errands = errands;
    this.questions = questions;
    this.messages = messages;
    this.memory = memory;
    this.curtain = curtain;
  }

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
    whenSafe(
        () -> {
          messages.clear();
          open.replace(Design.blank(system), Optional.empty(), "New design");
        });
  }

  /** Puts the demo on the desk. */
  void demo() {
    whenSafe(
        () -> {
          messages.clear();
          open.replace(
              Demo.libraryGarden(open.book().system()), Optional.empty(), "Demo: library garden");
        });
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
    errands.run(
        "Opening " + name + " …",
        () -> shelf.take(file),
        taken -> {
          curtain.lift();
          memory.used(file);
          open.replace(taken.design(), Optional.of(file), name);
          if (taken.notes().isEmpty()) {
            messages.clear();
          } else {
            messages.tell(opened(name, taken.notes().size()), taken.notes());
          }
        },
        problem -> {
          curtain.lift();
          messages.problem(Sentences.of("“" + name + "” was not opened", problem), List.of());
        });
  }

  private static String opened(String name, int notes) {
    return "“%s” is open, with %s about what was read."
        .formatted(name, notes == 1 ? "one note" : notes + " notes");
  }

  /** Saves to the file it belongs to, or asks for one, and then runs {@code next}. */
  void save(Runnable next) {
    open.file().ifPresentOrElse(file -> write(file, next), () -> saveAs(next));
  }

  /** Asks where to save, saves, and then runs {@code next}. */
  void saveAs(Runnable next) {
    String suggestion =
        open.file().map(path -> path.getFileName().toString()).orElse("garden.xlsx");
    questions.fileToSave(suggestion).ifPresent(file -> write(file, next));
  }

  private void write(Path file, Runnable next) {
    BookSnapshot snapshot = open.book().snapshot();
    Optional<Edit> last = open.book().journal().toUndo();
    Design saving = open.design();
    String name = file.getFileName().toString();
    errands.run(
        "Saving " + name + " …",
        () -> {
          shelf.put(Design.of(snapshot), file);
          return file;
        },
        written -> {
          memory.used(written);
          messages.clear();
          if (saving == open.design()) {
            open.saved(written, last);
          }
          next.run();
        },
        problem ->
            messages.problem(
                Sentences.of("“" + name + "” was not saved", problem) + " Your work is still here.",
                List.of()));
  }

  /** Asks where to export a drawing, and writes it there. */
  void export(Drawing drawing, Dimension size) {
    String suggestion =
        drawing.title().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    questions
        .fileToExport(suggestion)
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
                            "“"
                                + file.getFileName()
                                + "” was not exported: the folder takes no"
                                + " such file.",
                            List.of())));
  }
}
