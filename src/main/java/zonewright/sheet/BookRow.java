package zonewright.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import zonewright.formula.Dependencies;
import zonewright.formula.Formula;
import zonewright.formula.KnownRow;
import zonewright.formula.Matching;
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
    return book.schema().sameRows(cell.table(), table) ? row : 0;
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

  /** Returns a number with its unit; one that was typed with the decimals it was typed with. */
  @Override
  public String shown(Reference column, double value) {
    Column shown = book.schema().column(column);
    boolean typed =
        shown.takesEntries()
            && (book.schema().sameRows(column.table(), table)
                || book.schema().table(column.table()).single())
            && book.entry(column, rowFor(column)) instanceof Entry.Figure figure
            && figure.value() == value;
    return typed ? book.typedWithUnit(shown, value) : book.readable(column, value);
  }

  @Override
  public Outcome gathered(Formula.Aggregate gather) {
    read.add(gather.column());
    return book.gathered(gather, () -> gatheredNow(gather));
  }

  private Outcome gatheredNow(Formula.Aggregate gather) {
    double value = book.part(gather, table, row);
    return Double.isNaN(value)
        ? firstReason(gather.column(), counted(gather.column().table()))
        : new Outcome.Amount(value);
  }

  private List<Integer> counted(String of) {
    return IntStream.range(0, book.rows(of)).filter(at -> book.counts(of, at)).boxed().toList();
  }

  @Override
  public Outcome matched(Formula.Where where, double than) {
    read.addAll(Dependencies.of(where).columns());
    double value = book.part(where, table, row);
    return Double.isNaN(value) ? whyNoMatch(where, than) : new Outcome.Amount(value);
  }

  private Outcome whyNoMatch(Formula.Where where, double than) {
    List<Integer> rows = book.rowsBy().of(where.column().table(), where.matching(), this::key);
    Matching.Limit limit = where.matching().limit().orElse(null);
    if (limit != null) {
      if (rows.stream().anyMatch(at -> Double.isNaN(book.number(limit.column(), at)))) {
        return firstReason(limit.column(), rows);
      }
      rows =
          rows.stream()
              .filter(at -> limit.comparator().holds(book.number(limit.column(), at), than))
              .toList();
    }
    return rows.isEmpty()
        ? new Outcome.NotApplicable(
            "none", "there is no %s to choose from".formatted(book.rowWord(where.column().table())))
        : firstReason(where.column(), rows);
  }

  private double key(Reference word) {
    return book.number(word, rowFor(word));
  }

  @Override
  public Outcome found(Formula.RowLookup find) {
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
            () -> "",
            origin)
        : new LookedUp(
            new Outcome.Amount(value),
            () -> book.withUnit(column.kind(), value),
            () -> published(column, at, value),
            origin);
  }

  /** Returns what stands in the table where that is written otherwise than here. */
  private String published(ReferenceTable.Numbers column, int at, double value) {
    String there = column.asPublished(at);
    return there.equals(book.withUnit(column.kind(), value)) ? "" : ", published as " + there;
  }
}
