package zonewright.fieldwork;

import static zonewright.trade.Sheets.CANS;
import static zonewright.trade.Sheets.TESTS;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;

/**
 * Makes cans with places out of a block of volumes, written down as the cans stood: the top line is
 * the far row. An empty cell is no can; a 0 is a can that caught nothing.
 */
public final class CanGrid {
  private static final int MOST_CANS = 10_000;

  private CanGrid() {}

  /**
   * Returns the edit that adds a can for each filled cell of a block, as far apart as the test
   * says. None where the block is empty, larger than ten thousand cans, or the test has no name.
   */
  public static Optional<Edit> pasted(Book book, int test, List<List<String>> block) {
    if (test >= book.rows(TESTS)
        || !(book.entry(CatchTests.NAME.reference(), test) instanceof Entry.Words name)) {
      return Optional.empty();
    }
    double across = book.number(CatchTests.SPACING_ACROSS.reference(), test);
    double up = book.number(CatchTests.SPACING_UP.reference(), test);
    Set<String> taken = new HashSet<>();
    for (Row row : book.contents().rows(CANS)) {
      if (row.entry(0) instanceof Entry.Words words) {
        taken.add(words.text());
      }
    }
    List<List<Entry>> rows = new ArrayList<>();
    int number = book.rows(CANS) + 1;
    for (int line = 0; line < block.size(); line++) {
      for (int at = 0; at < block.get(line).size(); at++) {
        String text = block.get(line).get(at).strip();
        if (text.isEmpty()) {
          continue;
        }
        while (!taken.add(Integer.toString(number))) {
          number++;
        }
        rows.add(
            can(
                book,
                Integer.toString(number),
                name,
                place(at * across),
                place((block.size() - 1 - line) * up),
                text));
      }
    }
    if (rows.isEmpty() || rows.size() > MOST_CANS) {
      return Optional.empty();
    }
    String what = rows.size() == 1 ? "1 can" : rows.size() + " cans";
    return Optional.of(
        new Edit.Several("paste of " + what, List.of(new Edits(book).appended(CANS, rows))));
  }

  private static Entry place(double at) {
    return Double.isNaN(at) ? Entry.BLANK : new Entry.Figure(at);
  }

  private static List<Entry> can(
      Book book, String name, Entry test, Entry across, Entry up, String volume) {
    List<Entry> entries = new ArrayList<>();
    for (Column column : Cans.ALL) {
      Entry entry = Entry.BLANK;
      if (column.equals(Cans.CAN)) {
        entry = new Entry.Words(name);
      } else if (column.equals(Cans.TEST)) {
        entry = test;
      } else if (column.equals(Cans.ACROSS)) {
        entry = across;
      } else if (column.equals(Cans.UP)) {
        entry = up;
      } else if (column.equals(Cans.VOLUME)) {
        entry = Entries.read(column, volume, book.system());
      }
      entries.add(entry);
    }
    return entries;
  }
}
