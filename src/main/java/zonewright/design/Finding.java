package zonewright.design;

import java.util.Optional;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.sheet.Remedy;
import zonewright.sheet.Severity;

/**
 * Something to tell the designer.
 *
 * @param severity how much it matters
 * @param column the column to go to
 * @param row the row to go to, counted from 0
 * @param where the row in words
 * @param sentence what is wrong
 * @param cure what to do about it; empty where the sentence says it
 * @param remedy what the program can do about it by itself, if anything
 */
public record Finding(
    Severity severity,
    Reference column,
    int row,
    String where,
    String sentence,
    String cure,
    Optional<Remedy> remedy) {
  /** Returns the edit that carries the remedy out on a book as it is now; none where none helps. */
  public Optional<Edit> mend(Book book) {
    return remedy.flatMap(found -> found.edit(book, column, row));
  }

  /** Returns the finding as one line. */
  public String line() {
    String head = where.isEmpty() ? sentence : where + " " + sentence;
    return cure.isEmpty() ? head : head + " — " + cure;
  }
}
