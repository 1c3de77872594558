package zonewright.design;

import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import zonewright.formula.BlockColumn;
import zonewright.formula.CarriedOn;
import zonewright.formula.ColumnProgram;
import zonewright.formula.Expressed;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.sheet.Severity;
import zonewright.sheet.TableDefinition;

/** Finds the cells of one column that are blank and should not be, or hold what cannot be used. */
final class EntryFinder extends Finder implements CarriedOn.Cells {
  private final TableDefinition table;
  private final Column column;
  private final CarriedOn carriedOn = new CarriedOn(this);
  private final Optional<ColumnProgram> lacking;
  private final double[] lacks = new double[BlockColumn.BLOCK];

  /** The row that is judged. */
  private int judged;

  private EntryFinder(
      Book book,
      TableDefinition table,
      Column column,
      Set<Reference> sameRow,
      Set<Reference> anyRow) {
    super(book, table.id(), sameRow, anyRow);
    this.table = table;
    this.column = column;
    this.lacking =
        column
            .formula()
            .map(formula -> Expressed.in(formula, book.system(), column.kind().unit(book.system())))
            .map(plain -> ColumnProgram.lacking(plain, book.calculation()));
  }

  /** Returns the finder of a column, in the units of the book as they are now. */
  static EntryFinder of(Book book, TableDefinition table, Column column) {
    Set<Reference> sameRow = new LinkedHashSet<>();
    Set<Reference> anyRow = new LinkedHashSet<>();
    sameRow.add(column.reference());
    sameRow.add(table.columns().get(0).reference());
    if (table.takesEntries(column) && !column.isOptional()) {
      // a blank is missed once anything else stands in its row
      table.inputs().forEach(input -> sameRow.add(input.reference()));
    }
    book.schema()
        .dependencies(column)
        .ifPresent(
            found -> {
              for (Reference cell : found.cells()) {
                boolean beside = book.schema().sameRows(cell.table(), table.id());
                (beside ? sameRow : anyRow).add(cell);
              }
              anyRow.addAll(found.columns());
            });
    return new EntryFinder(book, table, column, sameRow, anyRow);
  }

  @Override
  void ready() {
    lacking.ifPresent(ColumnProgram::prepare);
  }

  @Override
  void seek(int block, int count, BitSet rows) {
    BlockColumn numbers = book().calculation().column(column.reference());
    boolean looked = false;
    for (int row = rows.nextSetBit(0); row >= 0; row = rows.nextSetBit(row + 1)) {
      if (!Double.isNaN(numbers.at(row))) {
        continue;
      }
      boolean blank = book().entry(column.reference(), row) instanceof Entry.Blank;
      if (blank && lacking.isPresent()) {
        if (!looked) {
          looked = true;
          lacking.get().run(block, count, lacks);
        }
        if (!Double.isNaN(lacks[row % BlockColumn.BLOCK])) {
          continue;
        }
      }
      judge(row, blank);
    }
  }

  private void judge(int row, boolean blank) {
    boolean words = column.content() == Column.Content.WORDS;
    Reference reference = column.reference();
    if (table.takesEntries(column) && blank && !column.isOptional()) {
      Row own = book().contents().row(table.id(), row);
      if (words || !own.isBlank()) {
        found(Severity.MISSING, reference, row, column.name() + " is blank", "", Optional.empty());
      }
    } else if (!words
        && !(blank && carriedOn(row))
        && book().outcome(reference, row) instanceof Outcome.Refused refused
        && refused.where().column().equals(reference)) {
      found(
          Severity.WRONG,
          reference,
          row,
          column.name() + ": " + refused.because(),
          "",
          Remedies.ofRefused(book(), column, row));
    }
  }

  /** Says whether a cell lacks its number because one it needs does: the fault lies upstream. */
  private boolean carriedOn(int row) {
    judged = row;
    return column.formula().map(formula -> formula.accept(carriedOn)).orElse(false);
  }

  private int rowOf(Reference cell) {
    return book().schema().sameRows(cell.table(), table.id()) ? judged : 0;
  }

  @Override
  public double number(Reference cell) {
    return book().number(cell, rowOf(cell));
  }

  @Override
  public boolean given(Reference cell) {
    return !(book().entry(cell, rowOf(cell)) instanceof Entry.Blank);
  }
}
