package zonewright.desk.grid;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import zonewright.sheet.Book;
import zonewright.sheet.Row;

/**
 * Which rows of a table are shown. Rows hidden by a filter stay hidden wherever they move; rows
 * that come later are shown, so that nobody loses what they have just typed from sight.
 */
final class RowsShown {
  private final Book book;
  private final String table;
  private final Set<Long> hidden = new HashSet<>();
  private List<Integer> shown = List.of();

  RowsShown(Book book, String table) {
    this.book = book;
    this.table = table;
  }

  /** Says whether rows are hidden. */
  boolean filtered() {
    return !hidden.isEmpty();
  }

  /** Returns how many rows are shown. */
  int count() {
    return filtered() ? shown.size() : book.rows(table);
  }

  /** Returns the row of the book that is shown at a place; past the end, as far past its end. */
  int bookRow(int place) {
    if (!filtered() || place < 0) {
      return place;
    }
    return place < shown.size() ? shown.get(place) : book.rows(table) + place - shown.size();
  }

  /** Returns the place at which a row of the book is shown, or -1. */
  int place(int bookRow) {
    return filtered() ? shown.indexOf(bookRow) : bookRow;
  }

  /** Shows only the rows that pass. */
  void only(IntPredicate passes) {
    hidden.clear();
    List<Row> rows = book.contents().rows(table);
    for (int row = 0; row < rows.size(); row++) {
      if (!passes.test(row)) {
        hidden.add(rows.get(row).id());
      }
    }
    reload();
  }

  /** Shows all rows. */
  void all() {
    hidden.clear();
    reload();
  }

  /** Shows a row that a filter hides. */
  void reveal(int bookRow) {
    hidden.remove(book.contents().row(table, bookRow).id());
    reload();
  }

  /** Takes over which rows there are. */
  void reload() {
    List<Integer> places = new ArrayList<>();
    if (filtered()) {
      List<Row> rows = book.contents().rows(table);
      for (int row = 0; row < rows.size(); row++) {
        if (!hidden.contains(rows.get(row).id())) {
          places.add(row);
        }
      }
    }
    shown = places;
  }
}
