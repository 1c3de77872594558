package zonewright.design;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import zonewright.formula.BlockColumn;
import zonewright.formula.ColumnProgram;
import zonewright.formula.Dependencies;
import zonewright.formula.Expressed;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Wording;

/** Finds the rows in which the condition of a rule holds. */
final class RuleFinder extends Finder {
  private final Rule rule;
  private final ColumnProgram program;
  private final Wording wording;
  private final double[] held = new double[BlockColumn.BLOCK];

  private RuleFinder(Book book, Rule rule, Set<Reference> sameRow, Set<Reference> anyRow) {
    super(book, rule.table(), sameRow, anyRow);
    this.rule = rule;
    this.program =
        ColumnProgram.of(
            Expressed.in(book.schema().meant(rule.when()), book.system()), book.calculation());
    this.wording = book.wording();
  }

  /** Returns the finder of a rule, in the units of the book as they are now. */
  static RuleFinder of(Book book, Rule rule) {
    Dependencies needs = Dependencies.of(rule.when());
    book.schema().typedInto(rule.id(), needs);
    Set<Reference> sameRow = new LinkedHashSet<>();
    Set<Reference> anyRow = new LinkedHashSet<>(needs.columns());
    Set<Reference> cells = new LinkedHashSet<>(needs.cells());
    cells.addAll(rule.shown());
    cells.add(book.schema().table(rule.table()).columns().get(0).reference());
    for (Reference cell : cells) {
      boolean beside = book.schema().sameRows(cell.table(), rule.table());
      (beside ? sameRow : anyRow).add(cell);
    }
    return new RuleFinder(book, rule, sameRow, anyRow);
  }

  @Override
  void ready() {
    program.prepare();
  }

  @Override
  void seek(int block, int count, BitSet rows) {
    program.run(block, count, held);
    for (int row = rows.nextSetBit(0); row >= 0; row = rows.nextSetBit(row + 1)) {
      if (held[row % BlockColumn.BLOCK] == 1) {
        String where = where(book().cellName(rule.cell(), row));
        found(
            rule.severity(),
            rule.cell(),
            row,
            new FindingWords.OfRule(where, rule, values(row), wording));
      }
    }
  }

  /** Returns what the cells hold that the rule's sentences name. */
  private List<Outcome> values(int row) {
    List<Outcome> values = new ArrayList<>(rule.shown().size());
    for (Reference column : rule.shown()) {
      int at = book().schema().sameRows(column.table(), rule.table()) ? row : 0;
      Outcome outcome = book().outcome(column, at);
      boolean number = book().schema().column(column).content() == Column.Content.NUMBER;
      if (number && !(outcome instanceof Outcome.Amount)) {
        // why a number is not there may lie further up than the cells that are watched
        unsure(row);
      }
      values.add(outcome);
    }
    return values;
  }
}
