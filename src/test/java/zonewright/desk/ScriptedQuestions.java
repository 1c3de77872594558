package zonewright.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import zonewright.desk.task.Questions;
import zonewright.workbook.pack.PackSheet;

/** Answers for a person, and notes what was asked. */
final class ScriptedQuestions implements Questions {
  final List<String> asked = new ArrayList<>();
  final List<String> passwords = new ArrayList<>();
  Unsaved answer = Unsaved.CANCEL;
  Path suggested = Path.of("");
  Optional<Path> file = Optional.empty();

  @Override
  public Unsaved unsaved(String name) {
    asked.add(name);
    return answer;
  }

  @Override
  public Optional<String> password(String words) {
    asked.add(words);
    return passwords.isEmpty() ? Optional.empty() : Optional.of(passwords.remove(0));
  }

  @Override
  public Optional<Path> fileToOpen() {
    return file;
  }

  @Override
  public Optional<List<PackSheet>> sheetsToHandOver(List<PackSheet> sheets) {
    return Optional.of(sheets.stream().filter(PackSheet::standing).toList());
  }

  @Override
  public Optional<Path> fileToSave(Path suggestion) {
    suggested = suggestion;
    return file;
  }

  @Override
  public Optional<Path> pagesToSave(Path suggestion) {
    asked.add(suggestion.getFileName().toString());
    return file;
  }

  @Override
  public Optional<Path> calendarToSave(Path suggestion) {
    asked.add(suggestion.getFileName().toString());
    return file;
  }

  @Override
  public Optional<Path> fileToExport(String suggestion) {
    asked.add(suggestion);
    return file;
  }

  @Override
  public Optional<Path> listToRead() {
    return file;
  }

  @Override
  public Optional<Path> weatherToRead() {
    return file;
  }

  @Override
  public Optional<Path> daysToWrite(String suggestion) {
    asked.add(suggestion);
    return file.map(read -> read.resolveSibling(suggestion));
  }

  @Override
  public Optional<Path> pricesToRead() {
    return file;
  }

  @Override
  public Optional<Path> pricesToWrite(String suggestion) {
    asked.add(suggestion);
    return file;
  }
}
