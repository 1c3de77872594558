package zonewright.workbook;

import java.util.List;

/**
 * What became of a file that was opened.
 *
 * @param taken what was taken, a sentence for each table
 * @param notes what was left, changed, or differs
 */
public record ReadingReport(List<String> taken, List<Note> notes) {
  public ReadingReport {
    taken = List.copyOf(taken);
    notes = List.copyOf(notes);
  }

  /**
   * Something worth knowing about a place in the file.
   *
   * @param sheet the sheet; empty where it is about the whole file
   * @param cell the cell, such as {@code D7}; empty where it is about the whole sheet
   * @param sentence what happened there
   */
  public record Note(String sheet, String cell, String sentence) {
    /** Returns the place and the sentence as one line. */
    public String line() {
      if (sheet.isEmpty()) {
        return sentence;
      }
      return (cell.isEmpty() ? sheet : sheet + "!" + cell) + ": " + sentence;
    }
  }

  /** Says whether everything in the file was taken just as it stands. */
  public boolean smooth() {
    return notes.isEmpty();
  }

  /** Returns everything as lines of text. */
  public List<String> lines() {
    return java.util.stream.Stream.concat(taken.stream(), notes.stream().map(Note::line)).toList();
  }
}
