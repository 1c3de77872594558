package zonewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import zonewright.formula.Reference;

/** Makes the edit that puts several rows in the place of one. */
final class RowDivision {
  private final Book book;
  private final TableDefinition table;
  private final int at;
  private final List<Map<Reference, Entry>> parts;
  private final List<Edit.Change> changes = new ArrayList<>();

  RowDivision(Book book, String table, int at, List<Map<Reference, Entry>> parts) {
    this.book = book;
    this.table = book.schema().table(table);
    this.at = at;
    this.parts = parts;
  }

  Edit edit() {
    String name =
        "division of a " + book.rowWord(table.id()) + " into " + parts.size() + " of them";
    Row whole = book.contents().row(table.id(), at);
    List<Row> fresh = new ArrayList<>();
    for (Map<Reference, Entry> part : parts.subList(1, parts.size())) {
      fresh.add(changed(book.contents().copyOf(whole), part));
    }
    record(table, whole, changed(whole, parts.get(0)));
    for (TableDefinition beside : book.schema().alongside(table.id())) {
      beside(beside, fresh);
    }
    renamed(whole.entry(0), parts.get(0).get(table.columns().get(0).reference()));
    return new Edit.Several(
        name,
        List.of(
            new Edit.InsertRows(name, table.id(), at + 1, fresh),
            new Edit.SetCells(name, changes)));
  }

  private Row changed(Row row, Map<Reference, Entry> entries) {
    Row changed = row;
    for (int i = 0; i < table.columns().size(); i++) {
      Entry entry = entries.get(table.columns().get(i).reference());
      changed = entry == null ? changed : changed.with(i, entry);
    }
    return changed;
  }

  private void record(TableDefinition where, Row before, Row after) {
    for (int i = 0; i < where.columns().size(); i++) {
      record(where, before.id(), i, before.entry(i), after.entry(i));
    }
  }

  private void record(TableDefinition where, long row, int column, Entry before, Entry after) {
    if (!before.equals(after)) {
      changes.add(new Edit.Change(where.id(), row, column, before, after));
    }
  }

  private void beside(TableDefinition beside, List<Row> fresh) {
    Row whole = book.contents().row(beside.id(), at);
    for (int i = 1; i < beside.columns().size(); i++) {
      Reference column = beside.columns().get(i).reference();
      Entry entry = whole.entry(i);
      record(beside, whole.id(), i, entry, parts.get(0).getOrDefault(column, entry));
      for (int part = 1; part < parts.size(); part++) {
        Entry own = parts.get(part).getOrDefault(column, entry);
        record(beside, fresh.get(part - 1).id(), i, Entry.BLANK, own);
      }
    }
  }

  /** Where the row is chosen by its name, its first part takes its place. */
  private void renamed(Entry before, Entry after) {
    if (!(before instanceof Entry.Words name) || after == null) {
      return;
    }
    for (TableDefinition other : book.schema().tables()) {
      for (int i = 0; i < other.columns().size(); i++) {
        boolean chooses =
            other.columns().get(i).words().orElse(null) instanceof WordList.RowsOf list
                && list.table().equals(table.id());
        for (Row row : chooses ? book.contents().rows(other.id()) : List.<Row>of()) {
          boolean meant =
              row.entry(i) instanceof Entry.Words chosen
                  && chosen.text().equalsIgnoreCase(name.text());
          if (meant) {
            record(other, row.id(), i, row.entry(i), after);
          }
        }
      }
    }
  }
}
