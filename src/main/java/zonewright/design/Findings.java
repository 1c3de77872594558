package zonewright.design;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import zonewright.formula.BlockColumn;
import zonewright.formula.ColumnProgram;
import zonewright.formula.Condition;
import zonewright.formula.Dependencies;
import zonewright.formula.Expressed;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.nights.NightFinding;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Remedy;
import zonewright.sheet.Row;
import zonewright.sheet.Rule;
import zonewright.sheet.Severity;
import zonewright.sheet.TableDefinition;
import zonewright.units.UnitSystem;

/** Looks through a book for what its designer should know. */
final class Findings {
  private final Book book;
  private final List<Ready> ready = new ArrayList<>();
  private final Map<Reference, ColumnProgram> lacking = new HashMap<>();
  private UnitSystem readyFor;

  /** A rule made ready for the unit system in force. */
  private record Ready(
      Rule rule,
      ColumnProgram program,
      MessageFormat sentence,
      MessageFormat cure,
      Optional<MessageFormat> remedy) {}

  Findings(Book book) {
    this.book = book;
  }

  /** Returns all findings, those of the nights too, the worst first and then row by row. */
  List<Finding> all(List<NightFinding> nights) {
    List<Finding> found = new ArrayList<>();
    prepare();
    for (TableDefinition table : book.blueprint().tables()) {
      List<Row> rows = book.contents().rows(table.id());
      names(table, rows, found);
      for (Column column : table.columns()) {
        entries(table, column, rows, found);
      }
    }
    for (Ready each : ready) {
      rule(each, found);
    }
    TuningFinding.of(book).ifPresent(found::add);
    for (NightFinding night : nights) {
      add(
          found,
          night.severity(),
          night.column(),
          night.row(),
          night.sentence(),
          night.cure(),
          night.remedy());
    }
    found.sort(
        Comparator.comparing(Finding::severity)
            .thenComparing(finding -> finding.column().table())
            .thenComparingInt(Finding::row));
    return found;
  }

  private void prepare() {
    if (readyFor == book.system()) {
      return;
    }
    readyFor = book.system();
    ready.clear();
    lacking.clear();
    for (Rule rule : IrrigationSheets.rules()) {
      book.blueprint().typedInto(rule.id(), Dependencies.of(rule.when()));
      Condition plain = Expressed.in(rule.when(), readyFor);
      ready.add(
          new Ready(
              rule,
              ColumnProgram.of(plain, book.calculation()),
              template(rule.sentence()),
              template(rule.cure()),
              rule.remedy().map(remedy -> template(remedy.name()))));
    }
  }

  /** Two rows of one name cannot be told apart by whoever chooses or reads it. */
  private void names(TableDefinition table, List<Row> rows, List<Finding> found) {
    if (!(table.rows() instanceof TableDefinition.Rows.Free)) {
      return;
    }
    Map<String, Integer> first = new HashMap<>();
    for (int row = 0; row < rows.size(); row++) {
      if (rows.get(row).entry(0) instanceof Entry.Words name) {
        Integer other = first.putIfAbsent(name.text().toLowerCase(Locale.ROOT), row);
        if (other != null) {
          add(
              found,
              Severity.CHECK,
              table.columns().get(0).reference(),
              row,
              "has the same name as row " + (other + 1),
              "give one of the two another name",
              Optional.of(Remedies.ANOTHER_NAME));
        }
      }
    }
  }

  private void entries(TableDefinition table, Column column, List<Row> rows, List<Finding> found) {
    Reference reference = column.reference();
    int position = book.position(reference);
    boolean words = column.content() == Column.Content.WORDS;
    BlockColumn numbers = book.calculation().column(reference);
    Set<Reference> needs =
        column.formula().map(formula -> Dependencies.alwaysOf(formula).cells()).orElse(Set.of());
    double[] lacking = new double[BlockColumn.BLOCK];
    int looked = -1;
    for (int row = 0; row < rows.size(); row++) {
      if (!Double.isNaN(numbers.at(row))) {
        continue;
      }
      boolean blank = rows.get(row).entry(position) instanceof Entry.Blank;
      if (blank && column.formula().isPresent()) {
        int block = row / BlockColumn.BLOCK;
        if (looked != block) {
          looked = block;
          lacking(column).run(block, numbers.rowsIn(block), lacking);
        }
        if (!Double.isNaN(lacking[row % BlockColumn.BLOCK])) {
          continue;
        }
      }
      if (table.takesEntries(column) && blank && !column.isOptional()) {
        if (words || !rows.get(row).isBlank()) {
          add(
              found,
              Severity.MISSING,
              reference,
              row,
              column.name() + " is blank",
              "",
              Optional.empty());
        }
      } else if (!words
          && !(blank && carriedOn(table, needs, row))
          && book.outcome(reference, row) instanceof Outcome.Refused refused
          && refused.where().column().equals(reference)) {
        add(
            found,
            Severity.WRONG,
            reference,
            row,
            column.name() + ": " + refused.because(),
            "",
            Remedies.ofRefused(book, column, row));
      }
    }
  }

  /** Returns what tells cells that lack something from those whose question does not arise. */
  private ColumnProgram lacking(Column column) {
    ColumnProgram program =
        lacking.computeIfAbsent(
            column.reference(),
            any ->
                ColumnProgram.lacking(
                    Expressed.in(
                        column.formula().orElseThrow(), readyFor, column.kind().unit(readyFor)),
                    book.calculation()));
    program.prepare();
    return program;
  }

  /**
   * Says whether a cell lacks its number because one it always needs does: then the fault lies
   * upstream.
   */
  private boolean carriedOn(TableDefinition table, Set<Reference> needs, int row) {
    for (Reference need : needs) {
      if (Double.isNaN(
          book.number(need, book.blueprint().sameRows(need.table(), table.id()) ? row : 0))) {
        return true;
      }
    }
    return false;
  }

  private void rule(Ready ready, List<Finding> found) {
    Rule rule = ready.rule();
    int rows = book.rows(rule.table());
    double[] held = new double[BlockColumn.BLOCK];
    ready.program().prepare();
    for (int block = 0; block < BlockColumn.blocksFor(rows); block++) {
      int count = Math.min(BlockColumn.BLOCK, rows - block * BlockColumn.BLOCK);
      ready.program().run(block, count, held);
      for (int i = 0; i < count; i++) {
        if (held[i] == 1) {
          int row = block * BlockColumn.BLOCK + i;
          Object[] values = values(rule, row);
          add(
              found,
              rule.severity(),
              rule.cell(),
              row,
              ready.sentence().format(values),
              ready.cure().format(values),
              rule.remedy()
                  .map(remedy -> remedy.named(ready.remedy().orElseThrow().format(values))));
        }
      }
    }
  }

  private static MessageFormat template(String sentence) {
    return new MessageFormat(sentence.replace("'", "''"), Locale.ROOT);
  }

  /** Returns the values a rule's sentences name, in one row. */
  private Object[] values(Rule rule, int row) {
    Object[] values = new Object[rule.shown().size()];
    for (int i = 0; i < values.length; i++) {
      Reference column = rule.shown().get(i);
      int at = book.blueprint().sameRows(column.table(), rule.table()) ? row : 0;
      values[i] = book.shown(column, book.outcome(column, at));
    }
    return values;
  }

  private void add(
      List<Finding> found,
      Severity severity,
      Reference column,
      int row,
      String sentence,
      String cure,
      Optional<Remedy> remedy) {
    String where = book.cellName(column, row).row();
    found.add(new Finding(severity, column, row, where + ":", sentence, cure, remedy));
  }
}
