package zonewright.design;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import zonewright.formula.BlockColumn;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Remedy;
import zonewright.sheet.Severity;

/**
 * Looks through the rows of one table for one kind of finding, and remembers what it found: a row
 * is looked at again only when something changed on which its finding depends.
 */
abstract class Finder {
  private final Book book;
  private final String table;
  private final Set<Reference> sameRow;
  private final Set<Reference> anyRow;
  private final List<Finding[]> blocks = new ArrayList<>();
  private final BitSet stale = new BitSet();

  /**
   * Makes a finder that has looked at nothing yet.
   *
   * @param sameRow the columns whose cell in a row counts for the finding of that row
   * @param anyRow the columns any cell of which counts for the findings of all rows
   */
  Finder(Book book, String table, Set<Reference> sameRow, Set<Reference> anyRow) {
    this.book = book;
    this.table = table;
    this.sameRow = sameRow;
    this.anyRow = anyRow;
    startAnew();
  }

  final Set<Reference> sameRow() {
    return sameRow;
  }

  final Set<Reference> anyRow() {
    return anyRow;
  }

  final Book book() {
    return book;
  }

  /** Says whether what it finds may follow from a cell of some tables. */
  final boolean looksAt(Set<String> tables) {
    return tables.contains(table)
        || Stream.of(sameRow, anyRow)
            .flatMap(Set::stream)
            .anyMatch(cell -> tables.contains(cell.table()));
  }

  /** Forgets all that was found. */
  final void startAnew() {
    blocks.clear();
    int rows = book.rows(table);
    for (int block = 0; block < BlockColumn.blocksFor(rows); block++) {
      blocks.add(null);
    }
    stale.clear();
    stale.set(0, rows);
  }

  /** Has some rows looked at again. */
  final void changed(BitSet rows) {
    stale.or(rows);
  }

  /** Has all rows looked at again. */
  final void changed() {
    stale.set(0, book.rows(table));
  }

  /** Has a row looked at again when findings are asked for next. */
  final void unsure(int row) {
    stale.set(row);
  }

  /** Looks at what changed, and adds all there is, row by row. */
  final void add(List<Finding> found) {
    if (!stale.isEmpty()) {
      BitSet rows = (BitSet) stale.clone();
      stale.clear();
      ready();
      for (int row = rows.nextSetBit(0); row >= 0; ) {
        int block = row / BlockColumn.BLOCK;
        int end = Math.min(book.rows(table), (block + 1) * BlockColumn.BLOCK);
        BitSet some = new BitSet();
        for (; row >= 0 && row < end; row = rows.nextSetBit(row + 1)) {
          some.set(row);
          keep(row, null);
        }
        seek(block, end - block * BlockColumn.BLOCK, some);
      }
    }
    for (Finding[] block : blocks) {
      for (int i = 0; block != null && i < block.length; i++) {
        if (block[i] != null) {
          found.add(block[i]);
        }
      }
    }
  }

  /** Gets ready to look at rows. */
  abstract void ready();

  /**
   * Looks at some rows of a block.
   *
   * @param count how many rows the block has
   * @param rows the rows to look at, counted from the first of the table
   */
  abstract void seek(int block, int count, BitSet rows);

  /** Remembers the finding of a row. */
  final void found(
      Severity severity,
      Reference column,
      int row,
      String sentence,
      String cure,
      Optional<Remedy> remedy) {
    found(
        severity,
        column,
        row,
        new FindingWords.Plain(where(book.cellName(column, row)), sentence, cure, remedy));
  }

  /** Remembers the finding of a row. */
  final void found(Severity severity, Reference column, int row, FindingWords words) {
    keep(row, new Finding(severity, column, row, words));
  }

  /** Returns the row of a cell in words, as findings begin. */
  static String where(Outcome.CellName cell) {
    return cell.row() + ":";
  }

  private void keep(int row, Finding finding) {
    int block = row / BlockColumn.BLOCK;
    if (blocks.get(block) == null) {
      if (finding == null) {
        return;
      }
      blocks.set(block, new Finding[BlockColumn.BLOCK]);
    }
    blocks.get(block)[row % BlockColumn.BLOCK] = finding;
  }
}
