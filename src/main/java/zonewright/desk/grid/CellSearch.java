package zonewright.desk.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entries;
import zonewright.sheet.Place;
import zonewright.sheet.TableDefinition;

/** Finds words or figures in what was typed, on all sheets, and replaces them. */
public final class CellSearch {
  private final Book book;

  public CellSearch(Book book) {
    this.book = book;
  }

  /**
   * A cell that holds what is sought.
   *
   * @param text what was typed into it
   */
  public record Hit(Place place, String text) {}

  /** Returns the cells in which something typed holds what is sought, sheet by sheet. */
  public List<Hit> find(String sought) {
    String low = sought.strip().toLowerCase(Locale.ROOT);
    List<Hit> hits = new ArrayList<>();
    for (TableDefinition table : book.schema().tables()) {
      for (int row = 0; row < book.rows(table.id()) && !low.isEmpty(); row++) {
        for (Column column : table.inputs()) {
          String text = Entries.typed(column, book.entry(column.reference(), row));
          if (!text.isEmpty()
              && table.takesEntries(column)
              && text.toLowerCase(Locale.ROOT).contains(low)) {
            hits.add(new Hit(new Place(column.reference(), row), text));
          }
        }
      }
    }
    return hits;
  }

  /** Returns the edit of replacing words in all cells that hold them. */
  public Edit replaced(List<Hit> hits, String sought, String other) {
    List<Edit> parts = new ArrayList<>();
    hits.forEach(hit -> replaced(hit.place(), hit.text(), sought, other).ifPresent(parts::add));
    return new Edit.Several("replacement in " + cells(parts.size()), parts);
  }

  /**
   * Returns the edit of replacing words in a cell; none where what was typed does not hold them.
   */
  Optional<Edit> replaced(Place place, String typed, String sought, String other) {
    Pattern pattern =
        Pattern.compile(
            Pattern.quote(sought.strip()), Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    String after = pattern.matcher(typed).replaceAll(Matcher.quoteReplacement(other));
    return typed.isEmpty() || after.equals(typed)
        ? Optional.empty()
        : Optional.of(new Edits(book).typed(place.column(), place.row(), after));
  }

  /** Returns a number of cells in words. */
  public static String cells(int count) {
    return count == 1 ? "1 cell" : count + " cells";
  }
}
