package zonewright.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import zonewright.formula.BlockColumn;
import zonewright.formula.Dependencies;
import zonewright.formula.Formula;
import zonewright.formula.KnownRow;
import zonewright.formula.Matching;
import zonewright.formula.Numbers;
import zonewright.formula.Outcome;
import zonewright.formula.RateOfReturn;
import zonewright.formula.Reference;
import zonewright.formula.ReferenceTable;
import zonewright.formula.WhereKind;

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
    return book.blueprint().sameRows(cell.table(), table) ? row : 0;
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
          case LARGEST -> extreme(gather.column(), true);
          case SMALLEST -> extreme(gather.column(), false);
          case POSITION_OF_LARGEST -> positionOfLargest(gather.column());
          case RATE_OF_RETURN ->
              RateOfReturn.of(
                  book.rows(gather.column().table()), at -> book.number(gather.column(), at));
        };
    return Double.isNaN(value)
        ? firstReason(gather.column(), counted(gather.column().table()))
        : new Outcome.Amount(value);
  }

  private List<Integer> counted(String of) {
    return IntStream.range(0, book.rows(of)).filter(at -> book.counts(of, at)).boxed().toList();
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

  private double extreme(Reference column, boolean largest) {
    double extreme = largest ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    for (int at : counted(column.table())) {
      double value = book.number(column, at);
      extreme = largest ? Numbers.larger(extreme, value) : Numbers.smaller(extreme, value);
    }
    return Numbers.finite(extreme);
  }

  private double positionOfLargest(Reference column) {
    double largest = Double.NEGATIVE_INFINITY;
    for (int at = 0; at < book.rows(column.table()); at++) {
      largest = Numbers.larger(largest, book.number(column, at));
    }
    for (int at = 0; at < book.rows(column.table()); at++) {
      if (Numbers.atMost(largest, book.number(column, at))) {
        return at + 1;
      }
    }
    return Double.NaN;
  }

  @Override
  public Outcome matched(Formula.Where where, double than) {
    read.addAll(Dependencies.of(where).columns());
    List<Reference> words = new ArrayList<>();
    List<Double> keys = new ArrayList<>();
    for (Matching.Pair pair : where.matching().pairs()) {
      words.add(pair.word());
      keys.add(book.number(pair.key(), rowFor(pair.key())));
    }
    if (keys.stream().anyMatch(key -> key.isNaN())) {
      return madeOf(where, List.of());
    }
    String other = where.column().table();
    Matching.Limit limit = where.matching().limit().orElse(null);
    if (limit == null) {
      return madeOf(where, book.rowsBy().of(other, words, keys));
    }
    RowsByWords.Sorted sorted =
        book.rowsBy().sorted(other, words, keys, limit.column(), limit.comparator());
    return sorted.broken()
        ? firstReason(limit.column(), sorted.rows())
        : madeOf(where, sorted.within(limit.comparator(), than));
  }

  private Outcome madeOf(Formula.Where where, List<Integer> rows) {
    if (where.kind() == WhereKind.COUNT) {
      return new Outcome.Amount(rows.size());
    }
    double total = where.kind() == WhereKind.SUM || rows.isEmpty() ? 0 : numberOf(where, rows, 0);
    for (int i = 0; i < rows.size() && !Double.isNaN(total); i++) {
      double value = numberOf(where, rows, i);
      total =
          switch (where.kind()) {
            case LARGEST -> Numbers.larger(total, value);
            case SMALLEST -> Numbers.smaller(total, value);
            default -> total + value;
          };
    }
    if (rows.isEmpty() && where.kind() != WhereKind.SUM) {
      return new Outcome.NotApplicable(
          "none", "there is no %s to choose from".formatted(book.rowWord(where.column().table())));
    }
    return Double.isNaN(total) ? firstReason(where.column(), rows) : new Outcome.Amount(total);
  }

  private double numberOf(Formula.Where where, List<Integer> rows, int i) {
    return book.number(where.column(), rows.get(i));
  }

  @Override
  public Outcome found(Formula.Find find) {
    read.add(find.column());
    return needed(find.column(), (int) book.number(find.word(), rowFor(find.word())));
  }

  /** Why a column cannot be added up: the reasons of its rows, all that is missing in one list. */
  private Outcome firstReason(Reference column, List<Integer> rows) {
    List<Outcome.CellName> missing = new ArrayList<>();
    for (int at : rows) {
      if (!Double.isNaN(book.number(column, at))) {
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
    Supplier<String> origin = () -> column.table().origin(at);
    return Double.isNaN(value)
        ? new LookedUp(
            new Outcome.NotApplicable("not given", column.table().name() + " gives none"),
            () -> "not given",
            origin)
        : new LookedUp(
            new Outcome.Amount(value),
            () -> book.withUnit(column.kind(), value),
            () -> "published as " + column.asPublished(at) + ", " + origin.get());
  }
}
