package zonewright.design;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import zonewright.climate.Climate;
import zonewright.climate.PlaceFinder;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.sheet.Remedy;
import zonewright.sheet.Row;
import zonewright.sheet.TableDefinition;
import zonewright.units.Units;

/** Cures for what can be wrong with an entry of any column. */
final class Remedies {
  /** Gives a row the first free name of its kind. */
  static final Remedy ANOTHER_NAME =
      new Remedy("Give this one another name", Remedies::anotherName);

  private static final Remedy NO_HEADINGS =
      new Remedy("Take the row with the headings out", Remedies::headingsOut);

  private static final Remedy BACK_TO_DEFAULT =
      new Remedy("Go back to the default", Remedies::backToDefault);

  private Remedies() {}

  /** Returns the remedy for an entry that was refused, where there is an obvious one. */
  static Optional<Remedy> ofRefused(Book book, Column column, int row) {
    if (!column.takesEntries()) {
      return Optional.empty();
    }
    Entry entry = book.entry(column.reference(), row);
    if (holdsHeadings(book, column.reference().table(), row)) {
      return Optional.of(NO_HEADINGS);
    }
    Optional<PlaceFinder.Found> place =
        column.equals(Climate.PLACE) ? PlaceTaken.named(book) : Optional.empty();
    if (place.isPresent()) {
      return place.map(
          found ->
              new Remedy(
                  "Take the weather of %s, %s".formatted(found.place(), found.region()),
                  (now, cell, at) ->
                      PlaceTaken.named(now).map(same -> PlaceTaken.edit(now, same))));
    }
    if (entry instanceof Entry.Words words && column.content() == Column.Content.CHOICE) {
      Optional<String> near = Entries.meant(column, words.text(), book.choices(column));
      return near.map(word -> new Remedy("Put “" + word + "”", new Put(word)));
    }
    boolean defaulted = column.role() == Column.Role.DEFAULTED && !(entry instanceof Entry.Blank);
    return defaulted ? Optional.of(BACK_TO_DEFAULT) : Optional.empty();
  }

  /** Says whether a row holds the headings of a list, which somebody pasted together with it. */
  private static boolean holdsHeadings(Book book, String id, int row) {
    TableDefinition table = book.schema().table(id);
    return table.rows() instanceof TableDefinition.Rows.Free
        && table.inputs().stream().filter(column -> holdsHeading(book, column, row)).count() > 1;
  }

  /** Says whether a cell holds a word of its own column's name, or a unit of its numbers. */
  private static boolean holdsHeading(Book book, Column column, int row) {
    Entry entry = book.entry(column.reference(), row);
    String text = Entries.typed(column, entry).toLowerCase(Locale.ROOT);
    boolean named =
        !text.isBlank()
            && !(entry instanceof Entry.Figure)
            && (column.name().toLowerCase(Locale.ROOT).startsWith(text)
                || text.startsWith(column.name().toLowerCase(Locale.ROOT)));
    return named
        || Units.named(text)
            .filter(unit -> unit.dimension().equals(column.kind().dimension()))
            .isPresent();
  }

  private static Optional<Edit> headingsOut(Book book, Reference cell, int row) {
    return holdsHeadings(book, cell.table(), row)
        ? Optional.of(new Edits(book).removed(cell.table(), List.of(row)))
        : Optional.empty();
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
