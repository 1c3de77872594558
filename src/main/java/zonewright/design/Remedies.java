package zonewright.design;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.Nearest;
import zonewright.sheet.Remedy;
import zonewright.sheet.Row;

/** Cures for what can be wrong with an entry of any column. */
final class Remedies {
  /** Gives a row the first free name of its kind. */
  static final Remedy ANOTHER_NAME =
      new Remedy("Give this one another name", Remedies::anotherName);

  private static final Remedy BACK_TO_DEFAULT =
      new Remedy("Go back to the default", Remedies::backToDefault);

  private Remedies() {}

  /** Returns the remedy for an entry that was refused, where there is an obvious one. */
  static Optional<Remedy> ofRefused(Book book, Column column, int row) {
    if (!column.takesEntries()) {
      return Optional.empty();
    }
    Entry entry = book.entry(column.reference(), row);
    List<String> list = book.choices(column);
    if (entry instanceof Entry.Words words
        && column.content() == Column.Content.CHOICE
        && !list.isEmpty()) {
      String nearest = Nearest.to(words.text(), list, 1).get(0);
      return Optional.of(new Remedy("Put “" + nearest + "”", new Put(nearest)));
    }
    boolean defaulted = column.role() == Column.Role.DEFAULTED && !(entry instanceof Entry.Blank);
    return defaulted ? Optional.of(BACK_TO_DEFAULT) : Optional.empty();
  }

  /** Puts a word into the cell. */
  private record Put(String word) implements Remedy.Maker {
    @Override
    public Optional<Edit> edit(Book book, Reference cell, int row) {
      return Optional.of(new Edits(book).typed(cell, row, word));
    }
  }

  private static Optional<Edit> backToDefault(Book book, Reference cell, int row) {
    return Optional.of(new Edits(book).cleared(List.of(cell), List.of(row)));
  }

  private static Optional<Edit> anotherName(Book book, Reference cell, int row) {
    if (!(book.entry(cell, row) instanceof Entry.Words name)) {
      return Optional.empty();
    }
    Set<String> taken = new HashSet<>();
    for (Row other : book.contents().rows(cell.table())) {
      if (other.entry(0) instanceof Entry.Words words) {
        taken.add(words.text().toLowerCase(Locale.ROOT));
      }
    }
    int number = 2;
    while (taken.contains((name.text() + " (" + number + ")").toLowerCase(Locale.ROOT))) {
      number++;
    }
    return Optional.of(new Edits(book).typed(cell, row, name.text() + " (" + number + ")"));
  }
}
