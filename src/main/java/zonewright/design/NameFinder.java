package zonewright.design;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Severity;
import zonewright.sheet.TableDefinition;

/**
 * Finds rows that have the name of another: they cannot be told apart by whoever chooses or reads
 * it.
 */
final class NameFinder extends Finder {
  private final Column names;

  /** The first row of each name. */
  private final Map<String, Integer> first = new HashMap<>();

  NameFinder(Book book, TableDefinition table) {
    super(book, table.id(), Set.of(), Set.of(table.columns().get(0).reference()));
    this.names = table.columns().get(0);
  }

  @Override
  void ready() {
    first.clear();
  }

  @Override
  void seek(int block, int count, BitSet rows) {
    for (int row = rows.nextSetBit(0); row >= 0; row = rows.nextSetBit(row + 1)) {
      if (book().entry(names.reference(), row) instanceof Entry.Words name) {
        Integer other = first.putIfAbsent(name.text().toLowerCase(Locale.ROOT), row);
        if (other != null) {
          found(
              Severity.CHECK,
              names.reference(),
              row,
              "has the same name as row " + (other + 1),
              "give one of the two another name",
              Optional.of(Remedies.ANOTHER_NAME));
        }
      }
    }
  }
}
