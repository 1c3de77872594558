package zonewright.uncertainty;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import zonewright.formula.Dependencies;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;

/**
 * The sheets of a book as far as some answers need them: a copy with these alone is calculated many
 * times in a fraction of what the whole takes. What is typed is kept also where no answer needs it,
 * since rows count by it.
 */
final class NeededSheets {
  private final Schema whole;
  private final Set<Reference> needed = new HashSet<>();
  private final Set<Column> further = new LinkedHashSet<>();

  private NeededSheets(Schema whole) {
    this.whole = whole;
  }

  /**
   * Returns a book of its own with what {@code answers} follow from, all calculated.
   *
   * @param whole all there is; it stays as it is
   * @param answers columns of the book, or calculated ones that stand in the copy alone
   * @param known calculated columns that are typed in it
   */
  static Book of(Book whole, List<Column> answers, Set<Reference> known) {
    NeededSheets sheets = new NeededSheets(whole.schema());
    answers.stream()
        .filter(each -> !whole.schema().has(each.reference()))
        .forEach(sheets.further::add);
    answers.forEach(sheets::need);
    int before;
    do {
      before = sheets.needed.size();
      sheets.whole.tables().forEach(sheets::needEntries);
    } while (sheets.needed.size() > before);
    return sheets.book(whole.snapshot(), known);
  }

  private void need(Column column) {
    if (needed.add(column.reference())) {
      dependencies(column).stream()
          .flatMap(needs -> Stream.concat(needs.cells().stream(), needs.columns().stream()))
          .map(whole::column)
          .forEach(this::need);
      column
          .words()
          .filter(WordList.RowsOf.class::isInstance)
          .map(list -> whole.table(((WordList.RowsOf) list).table()).columns().get(0))
          .ifPresent(this::need);
    }
  }

  private Optional<Dependencies> dependencies(Column column) {
    return whole.has(column.reference())
        ? whole.dependencies(column)
        : column.formula().map(Dependencies::of);
  }

  private void needEntries(TableDefinition table) {
    if (table.columns().stream().anyMatch(column -> needed.contains(column.reference()))) {
      need(table.columns().get(0));
      table.inputs().forEach(this::need);
      table.other().map(whole::table).ifPresent(other -> other.inputs().forEach(this::need));
    }
  }

  private Book book(BookSnapshot snapshot, Set<Reference> known) {
    List<TableDefinition> tables = new ArrayList<>();
    Map<String, List<Row>> rows = new HashMap<>();
    for (TableDefinition table : whole.tables()) {
      List<Column> columns =
          Stream.concat(table.columns().stream(), furtherOf(table))
              .filter(each -> needed.contains(each.reference()))
              .toList();
      if (!columns.isEmpty()) {
        tables.add(
            new TableDefinition(table.id(), table.title(), table.rowWord(), table.rows(), columns));
        int[] places =
            columns.stream().mapToInt(table.columns()::indexOf).filter(at -> at >= 0).toArray();
        rows.put(
            table.id(), snapshot.rows(table.id()).stream().map(row -> part(row, places)).toList());
      }
    }
    Book book =
        new Book(new Schema(tables).withInputs(known), new BookSnapshot(snapshot.system(), rows));
    book.settle();
    return book;
  }

  private Stream<Column> furtherOf(TableDefinition table) {
    return further.stream().filter(each -> each.reference().table().equals(table.id()));
  }

  private static Row part(Row row, int[] places) {
    List<Entry> entries = new ArrayList<>(places.length);
    for (int place : places) {
      entries.add(row.entry(place));
    }
    return Row.of(row.id(), entries);
  }
}
