package zonewright.desk.file;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import zonewright.design.Design;
import zonewright.design.OfficeTables;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.UserPreferences;
import zonewright.desk.task.BackgroundTasks;
import zonewright.desk.task.Questions;
import zonewright.desk.task.Sentences;
import zonewright.units.UnitSystem;

/**
 * The workbook of the office: which one it is, and what new designs and the open one take from it.
 */
public final class OfficeDesk {
  private static final String KEPT = "office";

  private final OpenDesign open;
  private final Shelf shelf;
  private final BackgroundTasks tasks;
  private final Questions questions;
  private final MessageBar messages;
  private final UserPreferences memory;

  public OfficeDesk(
      OpenDesign open,
      Shelf shelf,
      BackgroundTasks tasks,
      Questions questions,
      MessageBar messages,
      UserPreferences memory) {
    this.open = open;
    this.shelf = shelf;
    this.tasks = tasks;
    this.questions = questions;
    this.messages = messages;
    this.memory = memory;
  }

  /** Returns the office's workbook; none where none was chosen or it is gone. */
  private Optional<Path> workbook() {
    try {
      return Optional.of(memory.word(KEPT, ""))
          .filter(word -> !word.isEmpty())
          .map(Path::of)
          .filter(Files::isRegularFile);
    } catch (InvalidPathException unreadable) {
      return Optional.empty();
    }
  }

  /** Asks which workbook it is; new designs begin with it from then on. */
  public void choose() {
    questions
        .fileToOpen()
        .ifPresent(
            file ->
                read(
                    file,
                    office -> {
                      memory.keep(KEPT, file.toAbsolutePath().normalize().toString());
                      messages.tell(
                          "New designs begin with what “%s” holds.".formatted(name(file)),
                          List.of());
                    }));
  }

  /** Has new designs begin blank again. */
  public void forget() {
    memory.keep(KEPT, "");
    messages.tell("New designs begin blank.", List.of());
  }

  /**
   * Has a new design made as the office begins it.
   *
   * @param made is given the design; none where there is no workbook of the office
   */
  public void begin(UnitSystem system, Consumer<Optional<Design>> made) {
    Optional<Path> file = workbook();
    if (file.isEmpty()) {
      made.accept(Optional.empty());
    } else {
      read(
          file.get(),
          office -> made.accept(Optional.of(OfficeTables.begun(office, name(file.get()), system))));
    }
  }

  /** Takes into the open design what it has not of the office's, as one edit. */
  public void take() {
    Optional<Path> file = workbook().or(questions::fileToOpen);
    file.ifPresent(from -> read(from, office -> take(office, name(from))));
  }

  private void take(Design office, String name) {
    OfficeTables.Taken taken = OfficeTables.taken(open.book(), office.book(), name, false);
    open.book().perform(taken.edit());
    List<String> lines = new ArrayList<>(taken.told());
    taken
        .differing()
        .forEach(words -> lines.add("Here with other values, and left: %s.".formatted(words)));
    messages.tell(
        taken.told().isEmpty()
            ? "“%s” holds nothing the design has not.".formatted(name)
            : "Taken from “%s”; Undo takes it back.".formatted(name),
        lines);
  }

  private void read(Path file, Consumer<Design> read) {
    tasks.runAbandonable(
        "Reading " + name(file) + " …",
        progress -> shelf.take(file, Optional.empty(), progress).design(),
        read,
        problem ->
            messages.problem(
                Sentences.of("“" + name(file) + "” was not read", problem), List.of()));
  }

  private static String name(Path file) {
    return file.getFileName().toString();
  }
}
