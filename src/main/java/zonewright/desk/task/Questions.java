package zonewright.desk.task;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import zonewright.workbook.pack.PackSheet;

/** What the window must ask a person. */
public interface Questions {
  /** What to do with work that was not saved. */
  enum Unsaved {
    SAVE,
    LOSE,
    CANCEL
  }

  /** Asks what to do with the unsaved design of a name. */
  Unsaved unsaved(String name);

  /** Asks which file to open; none where the person thinks better of it. */
  Optional<Path> fileToOpen();

  /**
   * Asks for the password of a file; none where the person thinks better of it.
   *
   * @param words what to say about it
   */
  Optional<String> password(String words);

  /** Asks which of the sheets to hand over; none where the person thinks better of it. */
  Optional<List<PackSheet>> sheetsToHandOver(List<PackSheet> sheets);

  /** Asks where to save; none where the person thinks better of it. */
  Optional<Path> fileToSave(Path suggestion);

  /** Asks where to save pages to print; none where the person thinks better of it. */
  Optional<Path> pagesToSave(Path suggestion);

  /** Asks where to save a calendar file; none where the person thinks better of it. */
  Optional<Path> calendarToSave(Path suggestion);

  /** Asks where to export a picture; none where the person thinks better of it. */
  Optional<Path> fileToExport(String suggestion);

  /** Asks which list of zones to read; none where the person thinks better of it. */
  Optional<Path> listToRead();

  /** Asks which weather file to read; none where the person thinks better of it. */
  Optional<Path> weatherToRead();

  /** Asks which price book to read; none where the person thinks better of it. */
  Optional<Path> pricesToRead();

  /** Asks where to write the days of a weather file; none where the person thinks better of it. */
  Optional<Path> daysToWrite(String suggestion);

  /** Asks where to write the price book; none where the person thinks better of it. */
  Optional<Path> pricesToWrite(String suggestion);
}
