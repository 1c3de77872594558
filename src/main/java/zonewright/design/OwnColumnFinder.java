package zonewright.design;

import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Severity;
import zonewright.trade.Sheets;

/** Finds what is wrong with the definitions of one's own columns: each may spoil another. */
final class OwnColumnFinder extends Finder {
  private OwnColumnFinder(Book book, Set<Reference> cells) {
    super(book, Sheets.OWN_COLUMNS, Set.of(), cells);
  }

  static OwnColumnFinder of(Book book) {
    Set<Reference> cells = new LinkedHashSet<>();
    for (Column column : book.schema().table(Sheets.OWN_COLUMNS).columns()) {
      cells.add(column.reference());
    }
    cells.addAll(OwnColumns.of(book).namesAskedFor());
    return new OwnColumnFinder(book, cells);
  }

  @Override
  void ready() {}

  @Override
  void seek(int block, int count, BitSet rows) {
    OwnColumns columns = OwnColumns.of(book());
    for (int row = rows.nextSetBit(0); row >= 0; row = rows.nextSetBit(row + 1)) {
      Optional<OwnColumns.Wrong> wrong = columns.wrong(book(), row);
      if (wrong.isPresent()) {
        found(
            Severity.WRONG,
            wrong.get().column(),
            row,
            withoutStop(wrong.get().sentence()),
            "",
            Optional.empty());
      }
    }
  }

  /** Findings end without a full stop. */
  private static String withoutStop(String sentence) {
    return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
  }
}
