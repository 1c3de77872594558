package zonewright.design;

import java.util.Objects;
import java.util.Optional;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.sheet.Remedy;
import zonewright.sheet.Severity;

/**
 * Something to tell the designer. Never changes, so any thread may read it; its words are put
 * together when they are asked for, since of thousands of findings few are read.
 */
public final class Finding {
  private final Severity severity;
  private final Reference column;
  private final int row;
  private final FindingWords words;

  Finding(Severity severity, Reference column, int row, FindingWords words) {
    this.severity = severity;
    this.column = column;
    this.row = row;
    this.words = words;
  }

  /** Returns how much it matters. */
  public Severity severity() {
    return severity;
  }

  /** Returns the column to go to. */
  public Reference column() {
    return column;
  }

  /** Returns the row to go to, counted from 0. */
  public int row() {
    return row;
  }

  /** Returns the row in words. */
  public String where() {
    return words.where();
  }

  /** Returns what is wrong. */
  public String sentence() {
    return words.sentence();
  }

  /** Returns what to do about it; empty where the sentence says it. */
  public String cure() {
    return words.cure();
  }

  /** Returns what the program can do about it by itself, if anything. */
  public Optional<Remedy> remedy() {
    return words.remedy();
  }

  /** Returns the edit that carries the remedy out on a book as it is now; none where none helps. */
  public Optional<Edit> mend(Book book) {
    return remedy().flatMap(found -> found.edit(book, column, row));
  }

  /** Returns the finding as one line. */
  public String line() {
    String head = where().isEmpty() ? sentence() : where() + " " + sentence();
    return cure().isEmpty() ? head : head + " — " + cure();
  }

  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof Finding that
            && severity == that.severity
            && row == that.row
            && column.equals(that.column)
            && words.equals(that.words));
  }

  @Override
  public int hashCode() {
    return Objects.hash(severity, column, row);
  }

  @Override
  public String toString() {
    return line();
  }
}
