package zonewright.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.SwingUtilities;
import zonewright.design.Design;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.recovery.UnsavedFile;
import zonewright.recovery.WorkRecord;

/** Keeps a record of what is not saved yet, and offers what a crash left over. */
final class UnsavedWork {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMMM, HH:mm", Locale.ENGLISH);

  private final OpenDesign open;
  private final MessageBar messages;
  private final Path spare;
  private final Late<WorkRecord> record;

  /**
   * Begins to keep the record.
   *
   * @param spare the folder for designs without a file
   */
  UnsavedWork(OpenDesign open, MessageBar messages, Path spare) {
    this.open = open;
    this.messages = messages;
    this.spare = spare;
    record = new Late<>(this::begun);
    open.onReplaced(() -> record.ifMade(this::follow));
    open.onChanged(changes -> record.get().changed());
  }

  private WorkRecord begun() {
    WorkRecord begun =
        new WorkRecord(
            open.book().blueprint(),
            () -> open.book().snapshot(),
            SwingUtilities::invokeLater,
            spare);
    follow(begun);
    return begun;
  }

  private void follow(WorkRecord following) {
    following.follow(open.file(), open.name());
  }

  /** Returns the folder of the person who is logged in for designs without a file. */
  static Path usualSpare() {
    return Path.of(System.getProperty("user.home", "."), ".zonewright", "unsaved");
  }

  /** Notes that the design is not what was saved. */
  void changed() {
    record.get().changed();
  }

  /** Notes that the design was saved. */
  void saved(Path file) {
    record.get().saved(file, open.name(), open.unsaved());
  }

  /** Offers the first of the designs that were never saved and whose window is gone. */
  void offerLeftOver() {
    for (Path file : UnsavedFile.leftOver(spare)) {
      Optional<UnsavedFile.Found> found = UnsavedFile.read(file, open.book().blueprint());
      if (found.isPresent()) {
        offer(found.get());
        return;
      }
    }
  }

  /**
   * Takes what a crash left beside a file out of the way of the record to come; none where nothing
   * was left, or no more than the file holds itself. Away from the window's thread.
   *
   * @param read the design as the file holds it
   */
  Optional<UnsavedFile.Found> leftBeside(Path file, Design read) throws IOException {
    Path record = UnsavedFile.beside(file);
    if (!Files.exists(record) || UnsavedFile.isOurs(record) || UnsavedFile.inUseElsewhere(record)) {
      return Optional.empty();
    }
    Optional<UnsavedFile.Found> found = UnsavedFile.read(record, read.book().blueprint());
    boolean more =
        found.filter(left -> !left.book().sameEntries(read.book().snapshot())).isPresent();
    if (!more) {
      Files.deleteIfExists(record);
      return Optional.empty();
    }
    Files.createDirectories(spare);
    Path aside = spare.resolve("left-" + System.nanoTime() + ".unsaved");
    Files.move(record, aside);
    return UnsavedFile.read(aside, read.book().blueprint());
  }

  /** Says whether another window is working on a file. */
  static boolean openElsewhere(Path file) {
    return UnsavedFile.inUseElsewhere(UnsavedFile.beside(file));
  }

  /** Offers what was left over, in a line. */
  void offer(UnsavedFile.Found found) {
    String when = WHEN.format(found.when().atZone(ZoneId.systemDefault()));
    messages.offer(
        "Changes to “%s” were not saved when the program ended on %s; they are still here."
            .formatted(found.name(), when),
        false,
        new MessageBar.Offer("Bring them back", () -> bringBack(found)),
        new MessageBar.Offer("Let them go", () -> letGo(found)));
  }

  private void bringBack(UnsavedFile.Found found) {
    Design design = Design.of(found.book());
    design.book().journal().neverSaved();
    boolean same = found.design().equals(open.file());
    open.replace(design, found.design(), same ? open.kept() : Optional.empty(), found.name());
    record.get().changed();
    record.get().discardLater(found.file());
    messages.tell("“" + found.name() + "” is as it was; save it to keep it.", List.of());
  }

  private void letGo(UnsavedFile.Found found) {
    record.get().discardLater(found.file());
  }

  /** Ends in peace: what is not saved by now is not wanted. */
  void close() {
    record.ifMade(WorkRecord::close);
  }
}
