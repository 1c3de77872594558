package zonewright.desk.file;

import java.awt.Window;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.SwingUtilities;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.task.LazyPart;
import zonewright.disk.Disk;
import zonewright.recovery.LeftWork;
import zonewright.recovery.UnsavedFile;
import zonewright.recovery.WorkRecord;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Schema;

/** Keeps a record of what is not saved yet, and offers what a crash left over. */
public final class UnsavedWork {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMMM, HH:mm", Locale.ENGLISH);

  private final Window window;
  private final OpenDesign open;
  private final MessageBar messages;
  private final Path spare;
  private final LazyPart<WorkRecord> record;

  /** The design's file as it was read or saved; none for a design in no file. */
  private Optional<WorkRecord.Base> base = Optional.empty();

  /**
   * Begins to keep the record.
   *
   * @param spare the folder for designs without a file
   */
  public UnsavedWork(Window window, OpenDesign open, MessageBar messages, Path spare) {
    this.window = window;
    this.open = open;
    this.messages = messages;
    this.spare = spare;
    record = new LazyPart<>(this::begun);
    open.onChanged(changes -> record.get().changed());
  }

  private WorkRecord begun() {
    WorkRecord begun =
        new WorkRecord(
            open.book().declared(),
            () -> open.book().snapshot(),
            SwingUtilities::invokeLater,
            spare,
            words -> messages.tell(words, List.of()));
    begun.follow(open.file(), open.name(), base);
    return begun;
  }

  /** Returns the folder of the person who is logged in for designs without a file. */
  public static Path usualSpare() {
    return Path.of(System.getProperty("user.home", "."), ".zonewright", "unsaved");
  }

  /**
   * Follows the design that lies on the desk now.
   *
   * @param itsBase its file as it was read; none for a design in no file
   */
  void follow(Optional<WorkRecord.Base> itsBase) {
    base = itsBase;
    if (base.isPresent()) {
      record.get();
    }
    record.ifMade(made -> made.follow(open.file(), open.name(), base));
  }

  /** Returns the design's file as it was read or saved. */
  Optional<WorkRecord.Base> base() {
    return base;
  }

  /** Notes that the design is not what was saved. */
  void changed() {
    record.get().changed();
  }

  /** Notes that the design is about to be saved as it is. */
  void saving(BookSnapshot now) {
    record.ifMade(made -> made.saving(now));
  }

  /** Notes that the design was saved. */
  void saved(Path file, WorkRecord.Base itsBase) {
    base = Optional.of(itsBase);
    record.get().saved(file, open.name(), itsBase, open.unsaved());
  }

  /** Returns what tells this window from others at the same file. */
  String id() {
    return record.get().id();
  }

  /** Returns the records of a file; away from the window's thread. */
  UnsavedFile.Around around(Path file, String digest) {
    return UnsavedFile.around(file, digest, spare);
  }

  /**
   * Returns what the records hold that windows left which are gone.
   *
   * @param password the one that protects their design, if one does
   */
  static List<UnsavedFile.Found> found(
      UnsavedFile.Around around, Schema schema, Optional<String> password) {
    return around.left().stream()
        .flatMap(file -> UnsavedFile.read(file, schema, password).stream())
        .toList();
  }

  /** Takes the file over from another window. */
  void takeOver(UnsavedFile.Head other) {
    record.get().takeOver(other);
  }

  /** Returns when something was, in words. */
  static String words(Instant when) {
    return WHEN.format(when.atZone(ZoneId.systemDefault()));
  }

  /** Offers the latest of the designs that are in no file and whose window is gone. */
  public void offerLeftOver(Consumer<UnsavedFile.Found> bringBack) {
    for (Path file : UnsavedFile.leftWithoutFile(spare)) {
      Optional<UnsavedFile.Found> found = UnsavedFile.read(file, open.book().declared());
      if (found.isPresent() && found.get().untouched()) {
        letGo(file);
      } else if (found.isPresent()) {
        offerWithoutFile(found.get(), bringBack);
        return;
      }
    }
  }

  private void offerWithoutFile(UnsavedFile.Found found, Consumer<UnsavedFile.Found> bringBack) {
    if (found.book().isEmpty()) {
      offerUnreadable(found, () -> {});
      return;
    }
    messages.offer(
        "Changes to “%s” were not saved when the program ended on %s; they are still here.%s"
            .formatted(name(found), words(found.when()), cut(found)),
        false,
        new MessageBar.Offer("Bring them back", () -> bringBack.accept(found)),
        new MessageBar.Offer("Let them go", () -> letGo(found.file())));
  }

  private static String name(UnsavedFile.Found found) {
    return found.head().map(UnsavedFile.Head::name).orElse("a design without a name");
  }

  private static String cut(UnsavedFile.Found found) {
    return found.whole()
        ? ""
        : " Their record is damaged or was cut short, so what was typed last may be missing.";
  }

  /**
   * Offers what was left over of the design that is open, one record after the other, the latest
   * first; what the design holds already needs no offer.
   *
   * @param next what else there is to say, once all is answered
   */
  void offer(List<UnsavedFile.Found> left, Runnable next) {
    for (int i = 0; i < left.size(); i++) {
      UnsavedFile.Found found = left.get(i);
      List<UnsavedFile.Found> others = left.subList(i + 1, left.size());
      boolean nothing =
          found.untouched()
              || (found.whole() && found.book().isPresent() && work(found).items().isEmpty());
      if (nothing) {
        letGo(found.file());
      } else if (found.book().isEmpty()) {
        offerUnreadable(found, () -> offer(others, next));
        return;
      } else {
        offer(found, !others.isEmpty(), () -> offer(others, next));
        return;
      }
    }
    next.run();
  }

  private void offerUnreadable(UnsavedFile.Found found, Runnable next) {
    messages.offer(
        (found.locked()
                ? "What was typed into “%s” until %s is on record under the password the design had then; the record is kept as %s."
                : "The record of what was typed into “%s” until %s cannot be read; it is kept as %s.")
            .formatted(name(found), words(found.when()), found.file()),
        true,
        new MessageBar.Offer(
            "Let it go",
            () -> {
              letGo(found.file());
              next.run();
            }));
  }

  private LeftWork work(UnsavedFile.Found found) {
    return new LeftWork(
        open.book(),
        base.orElseThrow().book(),
        moment(found).or(found::base),
        found.book().orElseThrow());
  }

  private Optional<BookSnapshot> moment(UnsavedFile.Found found) {
    return base.flatMap(file -> found.at(file.digest(), file.book()));
  }

  private void offer(UnsavedFile.Found found, boolean more, Runnable next) {
    boolean fits = moment(found).isPresent();
    List<MessageBar.Offer> offers = new ArrayList<>();
    if (fits) {
      offers.add(new MessageBar.Offer("Bring them back", () -> bringBack(found, next)));
    }
    offers.add(new MessageBar.Offer("Look at them …", () -> look(found, next)));
    offers.add(
        new MessageBar.Offer(
            "Let them go",
            () -> {
              letGo(found.file());
              next.run();
            }));
    String sentence =
        fits
            ? "Changes to “%s” were not saved when the program ended on %s; they are still here.%s"
            : "Changes to “%s” of %s were never saved, and the file was saved with others since; nothing was taken from them.%s";
    messages.offer(
        sentence.formatted(
            open.name(),
            words(found.when()),
            cut(found) + (more ? " Those of an earlier ending are asked about next." : "")),
        false,
        offers.toArray(MessageBar.Offer[]::new));
  }

  private void bringBack(UnsavedFile.Found found, Runnable next) {
    LeftWork work = work(found);
    if (work.clashes()) {
      look(found, next);
    } else {
      take(found, work, all(work), next);
    }
  }

  private static Set<Integer> all(LeftWork work) {
    return IntStream.range(0, work.items().size()).boxed().collect(Collectors.toSet());
  }

  private void look(UnsavedFile.Found found, Runnable next) {
    LeftWork work = work(found);
    LeftWorkForm.open(
        window, open.name(), words(found.when()), work, chosen -> take(found, work, chosen, next));
  }

  private void take(UnsavedFile.Found found, LeftWork work, Set<Integer> chosen, Runnable next) {
    open.book().perform(work.taken(chosen));
    record.get().outlive(found.file());
    next.run();
    if (messages.sentence().isEmpty()) {
      messages.tell(
          "“%s” has its changes again. They are not saved yet; Undo takes them out."
              .formatted(open.name()),
          List.of());
    }
  }

  /** Lets a record go once the design on the desk, which holds what it holds, is on record. */
  void outlive(Path file) {
    record.get().outlive(file);
  }

  private void letGo(Path file) {
    try {
      Disk.REAL.delete(file);
    } catch (IOException stays) {
      messages.problem("The record %s cannot be deleted here.".formatted(file), List.of());
    }
  }

  /** Ends in peace: what is not saved by now is not wanted. */
  public void close() {
    record.ifMade(WorkRecord::close);
  }
}
