package zonewright.design;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import zonewright.formula.Formula;
import zonewright.formula.Reference;
import zonewright.nights.NightFinding;
import zonewright.sheet.Book;
import zonewright.sheet.Changes;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/**
 * Looks through a book for what its designer should know. The first look is at everything; after
 * that, only at what an edit reaches.
 */
final class Findings {
  private final Book book;
  private final List<Finder> finders = new ArrayList<>();
  private final Map<Reference, List<Finder>> bySameRow = new HashMap<>();
  private final Map<Reference, List<Finder>> byAnyRow = new HashMap<>();

  /** What the finders look at: columns that come or go, and other units, need finders anew. */
  private Schema readyFor;

  private UnitSystem readyIn;

  Findings(Book book) {
    this.book = book;
    book.listen(this::changed);
  }

  /** Returns all findings, those of the nights too, the worst first and then row by row. */
  List<Finding> all(List<NightFinding> nights) {
    prepare();
    List<Finding> found = new ArrayList<>();
    finders.forEach(finder -> finder.add(found));
    TuningFinding.of(book).ifPresent(found::add);
    ClimateFinding.of(book).ifPresent(found::add);
    found.addAll(AlternativeFinding.of(book));
    found.addAll(OwnTables.findings(book));
    for (NightFinding night : nights) {
      String where = Finder.where(book.cellName(night.column(), night.row()));
      found.add(
          new Finding(
              night.severity(),
              night.column(),
              night.row(),
              new FindingWords.Plain(where, night.sentence(), night.cure(), night.remedy())));
    }
    found.sort(
        Comparator.comparing(Finding::severity)
            .thenComparing(finding -> finding.column().table())
            .thenComparingInt(Finding::row));
    return found;
  }

  private void prepare() {
    if (book.schema().equals(readyFor) && readyIn == book.system()) {
      return;
    }
    readyFor = book.schema();
    readyIn = book.system();
    finders.clear();
    bySameRow.clear();
    byAnyRow.clear();
    for (TableDefinition table : book.schema().tables()) {
      // columns of one name may stand on several sheets; OwnColumnFinder knows where they may not
      boolean named = !table.id().equals(Sheets.OWN_COLUMNS);
      if (named && table.rows() instanceof TableDefinition.Rows.Free) {
        take(new NameFinder(book, table));
      }
      for (Column column : table.columns()) {
        // one of a person's own that cannot be calculated is told where it is defined
        if (!(column.formula().orElse(null) instanceof Formula.Nothing)) {
          take(EntryFinder.of(book, table, column));
        }
      }
    }
    for (Rule rule : IrrigationSheets.rules()) {
      take(RuleFinder.of(book, rule));
    }
    for (Rule rule : OwnColumns.of(book).rules()) {
      take(RuleFinder.of(book, rule));
    }
    take(OwnColumnFinder.of(book));
  }

  private void take(Finder finder) {
    finders.add(finder);
    finder.sameRow().forEach(cell -> bySameRow.computeIfAbsent(cell, Findings::none).add(finder));
    finder.anyRow().forEach(cell -> byAnyRow.computeIfAbsent(cell, Findings::none).add(finder));
  }

  private static List<Finder> none(Reference any) {
    return new ArrayList<>();
  }

  private void changed(Changes changes) {
    if (changes.everything()) {
      finders.forEach(Finder::startAnew);
      return;
    }
    if (!changes.tables().isEmpty()) {
      finders.stream()
          .filter(finder -> finder.looksAt(changes.tables()))
          .forEach(Finder::startAnew);
    }
    for (Map.Entry<Reference, BitSet> cells : changes.cells().entrySet()) {
      bySameRow
          .getOrDefault(cells.getKey(), List.of())
          .forEach(finder -> finder.changed(cells.getValue()));
      byAnyRow.getOrDefault(cells.getKey(), List.of()).forEach(Finder::changed);
    }
  }
}
