package zonewright.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import zonewright.formula.BlockColumn;
import zonewright.formula.Formula;
import zonewright.formula.KnownRow;
import zonewright.formula.Numbers;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.formula.ReferenceTable;

/** One row of a book, as those who explain a cell of it see it. */
final class BookRow implements KnownRow {
  private final Book book;
  private final String table;
  private final int row;
  private final Set<Reference> read = new HashSet<>();

  BookRow(Book book, String table, int row) {
    this.book = book;
    this.table = table;
    this.row = row;
  }

  private int rowFor(Reference cell) {
    return cell.table().equals(table) ? row : 0;
  }

  /** Says whether a cell was looked at; not where a condition took another way. */
  boolean wasRead(Reference cell) {
    return read.contains(cell);
  }

  @Override
  public Outcome outcome(Reference cell) {
    read.add(cell);
    return needed(cell, rowFor(cell));
  }

  private Outcome needed(Reference cell, int at) {
    Outcome outcome = book.outcome(cell, at);
    return outcome instanceof Outcome.Blank
        ? new Outcome.Missing(List.of(book.cellName(cell, at)))
        : outcome;
  }

  @Override
  public boolean given(Reference cell) {
    read.add(cell);
    return !(book.entry(cell, rowFor(cell)) instanceof Entry.Blank);
  }

  @Override
  public String shown(Reference column, double value) {
    return book.readable(column, value);
  }

  @Override
  public Outcome gathered(Formula.Gather gather) {
    read.add(gather.column());
    return book.gathered(gather, () -> gatheredNow(gather));
  }

  private Outcome gatheredNow(Formula.Gather gather) {
    double value =
        switch (gather.gathering()) {
          case SUM -> total(gather.column());
          case LARGEST, POSITION_OF_LARGEST -> extreme(gather);
        };
    return Double.isNaN(value) ? firstReason(gather.column(), null) : new Outcome.Amount(value);
  }

  /** Adds up as the blocks do, block by block, so that the sums agree to the last bit. */
  private double total(Reference column) {
    double total = 0;
    int rows = book.rows(column.table());
    for (int start = 0; start < rows; start += BlockColumn.BLOCK) {
      double part = 0;
      for (int at = start; at < Math.min(rows, start + BlockColumn.BLOCK); at++) {
        if (book.counts(column.table(), at)) {
          part += book.number(column, at);
        }
      }
      total += part;
    }
    return total;
  }

  private double extreme(Formula.Gather gather) {
    int best = -1;
    for (int at = 0; at < book.rows(gather.column().table()); at++) {
      double value = book.number(gather.column(), at);
      if (Double.isNaN(value)) {
        return Double.NaN;
      }
      if (best < 0 || value > book.number(gather.column(), best)) {
        best = at;
      }
    }
    if (best < 0) {
      return Double.NaN;
    }
    double largest = book.number(gather.column(), best);
    if (gather.gathering().keepsUnit()) {
      return largest;
    }
    int first = 0;
    while (!Numbers.atMost(largest, book.number(gather.column(), first))) {
      first++;
    }
    return first + 1;
  }

  @Override
  public Outcome summed(Formula.SumWhere sum) {
    read.addAll(List.of(sum.column(), sum.word(), sum.key()));
    double total = 0;
    for (int at = 0; at < book.rows(sum.column().table()); at++) {
      if (book.counts(sum.column().table(), at) && book.number(sum.word(), at) == row) {
        total += book.number(sum.column(), at);
      }
    }
    return Double.isNaN(total) ? firstReason(sum.column(), sum.word()) : new Outcome.Amount(total);
  }

  /** Why a column cannot be added up: the reasons of its rows, all that is missing in one list. */
  private Outcome firstReason(Reference column, Reference word) {
    List<Outcome.CellName> missing = new ArrayList<>();
    for (int at = 0; at < book.rows(column.table()); at++) {
      boolean counts =
          book.counts(column.table(), at) && (word == null || book.number(word, at) == row);
      if (!counts || !Double.isNaN(book.number(column, at))) {
        continue;
      }
      Outcome reason = needed(column, at);
      if (!(reason instanceof Outcome.Missing needs)) {
        return reason;
      }
      missing.addAll(needs.needs());
      if (missing.size() > 5) {
        break;
      }
    }
    return missing.isEmpty()
        ? new Outcome.NotApplicable(
            "no rows", "there is no %s yet".formatted(book.rowWord(column.table())))
        : new Outcome.Missing(missing.stream().distinct().toList());
  }

  @Override
  public int rows(Reference column) {
    return book.rows(column.table());
  }

  @Override
  public Outcome picked(Reference column, int position) {
    read.add(column);
    return needed(column, position - 1);
  }

  @Override
  public LookedUp lookedUp(String word, ReferenceTable.Numbers column) {
    int at = column.table().position(word).orElseThrow();
    double value = column.value(at, book.system());
    String origin = column.table().origin(at);
    return Double.isNaN(value)
        ? new LookedUp(
            new Outcome.NotApplicable("not given", column.table().name() + " gives none"),
            "not given",
            origin)
        : new LookedUp(
            new Outcome.Amount(value),
            book.withUnit(column.kind(), value),
            "published as " + column.asPublished(at) + ", " + origin);
  }
}
