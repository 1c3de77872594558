package zonewright.recovery;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.sheet.Remark;
import zonewright.sheet.Row;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.units.UnitSystem;

/**
 * What a crash left, as what differs from the design that is open: cell by cell, to take or leave.
 * Only what was typed into the record counts; what the file got otherwise since stays.
 */
public final class LeftWork {
  private final Book book;
  private final BookSnapshot now;
  private final BookSnapshot base;
  private final BookSnapshot left;
  private final BookSnapshot exact;
  private final boolean unchanged;

  /** For each row of the record that is a row of the design, that row. */
  private final Map<String, Map<Long, Long>> known = new HashMap<>();

  /** What tables and columns the record has; found when it is asked for. */
  private Schema ofLeft;

  private final List<Item> items = new ArrayList<>();
  private final List<Consumer<Taking>> actions = new ArrayList<>();

  /**
   * One difference, in words.
   *
   * @param row the name of the row; empty in a sheet with one
   * @param column the heading of the cell; empty where the whole row is meant
   * @param now what the design holds
   * @param left what the record holds
   * @param clashes whether the design was changed at the same place since the record was begun
   */
  public record Item(
      String sheet, String row, String column, String now, String left, boolean clashes) {}

  /** What is taken. */
  private static final class Taking {
    final Map<String, Map<Long, Map<Integer, Entry>>> cells = new HashMap<>();
    final Map<String, Map<Long, Map<String, Remark>>> remarks = new HashMap<>();
    final Map<String, Set<Long>> removed = new HashMap<>();
    final Map<String, Set<Long>> added = new HashMap<>();
    final Set<String> reordered = new HashSet<>();
    boolean units;
  }

  /**
   * Finds the differences.
   *
   * @param book the design as it is
   * @param opened the design as it was read from its file, with the same rows
   * @param base what the file held when the record was begun; none where that is lost
   * @param left what the record holds
   */
  public LeftWork(Book book, BookSnapshot opened, Optional<BookSnapshot> base, BookSnapshot left) {
    this.book = book;
    this.now = book.snapshot();
    this.exact = left;
    this.unchanged = now.sameEntries(base.orElse(opened));
    this.left = in(now.system(), left);
    this.base = in(now.system(), base.orElse(opened));
    UnitSystem before = base.orElse(opened).system();
    if (before != left.system() && now.system() != left.system()) {
      item(
          new Item("", "", "units", now.system().words(), left.system().words(), false),
          taking -> taking.units = true);
    }
    for (TableDefinition table : book.declared().tables()) {
      Map<Long, Long> rows =
          table.other().map(known::get).orElseGet(() -> matched(table, in(now.system(), opened)));
      known.put(table.id(), rows);
      compare(table, rows);
    }
  }

  private BookSnapshot in(UnitSystem system, BookSnapshot snapshot) {
    if (snapshot.system() == system) {
      return snapshot;
    }
    Book other = book.another(snapshot);
    other.start(new Edits(other).switched(system));
    return other.snapshot();
  }

  private void item(Item item, Consumer<Taking> action) {
    items.add(item);
    actions.add(action);
  }

  private Map<Long, Long> matched(TableDefinition table, BookSnapshot opened) {
    List<Row> before = base.rows(table.id());
    List<Row> since = opened.rows(table.id());
    Map<Long, Long> rows = new HashMap<>();
    boolean sameNames = before.size() == since.size();
    for (int i = 0; sameNames && i < before.size(); i++) {
      sameNames = before.get(i).entry(0).equals(since.get(i).entry(0));
    }
    if (sameNames || !(table.rows() instanceof TableDefinition.Rows.Free)) {
      for (int i = 0; i < Math.min(before.size(), since.size()); i++) {
        rows.put(before.get(i).id(), since.get(i).id());
      }
      return rows;
    }
    Map<Entry, Row> names = unique(since);
    unique(before)
        .forEach(
            (name, row) -> {
              if (names.containsKey(name)) {
                rows.put(row.id(), names.get(name).id());
              }
            });
    return rows;
  }

  private static Map<Entry, Row> unique(List<Row> rows) {
    Map<Entry, Row> unique = new HashMap<>();
    Set<Entry> twice = new HashSet<>(Set.of(Entry.BLANK));
    for (Row row : rows) {
      if (unique.put(row.entry(0), row) != null) {
        twice.add(row.entry(0));
      }
    }
    unique.keySet().removeAll(twice);
    return unique;
  }

  private static Map<Long, Row> byId(Collection<Row> rows) {
    Map<Long, Row> byId = new LinkedHashMap<>();
    rows.forEach(row -> byId.put(row.id(), row));
    return byId;
  }

  private void compare(TableDefinition table, Map<Long, Long> rows) {
    Map<Long, Row> before = byId(base.rows(table.id()));
    Map<Long, Row> here = byId(now.rows(table.id()));
    Map<Long, Row> then = byId(left.rows(table.id()));
    boolean leading = table.rows() instanceof TableDefinition.Rows.Free;
    for (Row row : then.values()) {
      Row old = before.get(row.id());
      Row there = old == null ? null : here.get(rows.getOrDefault(row.id(), 0L));
      if (there != null) {
        cells(table, old, there, row);
        remarks(table, old, there, row);
      } else if (leading && (old == null || !old.sameEntries(row) || beside(table, row))) {
        added(table, row, old != null);
      }
    }
    if (leading) {
      for (Row old : before.values()) {
        Row there = here.get(rows.getOrDefault(old.id(), 0L));
        if (there != null && !then.containsKey(old.id())) {
          item(
              new Item(
                  table.title(),
                  name(table, there),
                  "",
                  "is there",
                  "taken out",
                  !there.sameEntries(old)),
              taking ->
                  taking
                      .removed
                      .computeIfAbsent(table.id(), any -> new HashSet<>())
                      .add(there.id()));
        }
      }
      order(table, rows, here, before, then);
    }
  }

  /** Says whether something beside a row was changed in the record. */
  private boolean beside(TableDefinition table, Row row) {
    return book.declared().alongside(table.id()).stream()
        .anyMatch(
            other -> {
              Row old = byId(base.rows(other.id())).get(row.id());
              Row own = byId(left.rows(other.id())).get(row.id());
              return old != null && own != null && !old.sameEntries(own);
            });
  }

  private void remarks(TableDefinition table, Row old, Row there, Row row) {
    Set<String> others = row.remarkedOtherwise(old);
    others.retainAll(row.remarkedOtherwise(there));
    // most rows have none, and to learn which columns of one's own the record has takes a while
    for (Column column : others.isEmpty() ? List.<Column>of() : columns(table)) {
      String at = column.reference().column();
      if (!others.contains(at)) {
        continue;
      }
      Remark remark = row.remark(at);
      item(
          new Item(
              table.title(),
              name(table, there),
              "note on " + column.heading(now.system()),
              there.remark(at).inWords(),
              remark.inWords(),
              !there.remark(at).equals(old.remark(at))),
          taking ->
              taking
                  .remarks
                  .computeIfAbsent(table.id(), any -> new HashMap<>())
                  .computeIfAbsent(there.id(), any -> new HashMap<>())
                  .put(at, remark));
    }
  }

  /** Returns the columns a table has in the record, those of one's own too. */
  private List<Column> columns(TableDefinition table) {
    if (ofLeft == null) {
      ofLeft = book.another(left).schema();
    }
    return ofLeft.table(table.id()).columns();
  }

  private void cells(TableDefinition table, Row old, Row there, Row row) {
    for (int i = table.givenNames() ? 1 : 0; i < table.columns().size(); i++) {
      Entry entry = row.entry(i);
      if (entry.equals(old.entry(i)) || entry.equals(there.entry(i))) {
        continue;
      }
      Column column = table.columns().get(i);
      int at = i;
      item(
          new Item(
              table.title(),
              name(table, there),
              column.heading(now.system()),
              text(column, there.entry(i)),
              text(column, entry),
              !there.entry(i).equals(old.entry(i))),
          taking ->
              taking
                  .cells
                  .computeIfAbsent(table.id(), any -> new HashMap<>())
                  .computeIfAbsent(there.id(), any -> new HashMap<>())
                  .put(at, entry));
    }
  }

  private void added(TableDefinition table, Row row, boolean goneHere) {
    boolean again = now.rows(table.id()).stream().anyMatch(row::sameEntries);
    if (!again) {
      List<String> filled = new ArrayList<>();
      for (int i = 1; i < table.columns().size() && filled.size() < 4; i++) {
        if (!text(table.columns().get(i), row.entry(i)).isEmpty()) {
          filled.add(
              table.columns().get(i).name() + " " + text(table.columns().get(i), row.entry(i)));
        }
      }
      String words = filled.isEmpty() ? "added" : "added: " + String.join(", ", filled);
      item(
          new Item(
              table.title(), name(table, row), "", goneHere ? "not there" : "", words, goneHere),
          taking -> taking.added.computeIfAbsent(table.id(), any -> new HashSet<>()).add(row.id()));
    }
  }

  private void order(
      TableDefinition table,
      Map<Long, Long> rows,
      Map<Long, Row> here,
      Map<Long, Row> before,
      Map<Long, Row> then) {
    List<Long> theirs = shared(then.keySet(), before, then, rows, here);
    List<Long> original = shared(before.keySet(), before, then, rows, here);
    List<Long> ours = here.keySet().stream().filter(new HashSet<>(theirs)::contains).toList();
    if (!theirs.equals(original) && !theirs.equals(ours)) {
      item(
          new Item(
              table.title(),
              "",
              "order of the rows",
              "as it is",
              "another",
              !ours.equals(original)),
          taking -> taking.reordered.add(table.id()));
    }
  }

  /** Returns the rows of the design that base, record and design share, in the order given. */
  private static List<Long> shared(
      Collection<Long> ids,
      Map<Long, Row> before,
      Map<Long, Row> then,
      Map<Long, Long> rows,
      Map<Long, Row> here) {
    return ids.stream()
        .filter(id -> before.containsKey(id) && then.containsKey(id))
        .map(rows::get)
        .filter(id -> id != null && here.containsKey(id))
        .toList();
  }

  private static String name(TableDefinition table, Row row) {
    return table.single()
        ? ""
        : row.entry(0) instanceof Entry.Words words ? words.text() : "(no name)";
  }

  private static String text(Column column, Entry entry) {
    return Entries.typed(column, entry);
  }

  /** Returns the differences; none where the design holds all that was typed. */
  public List<Item> items() {
    return List.copyOf(items);
  }

  /** Says whether something was changed in the design where the record changed it too. */
  public boolean clashes() {
    return items.stream().anyMatch(Item::clashes);
  }

  /** Returns the edit that brings some of the differences into the design. */
  public Edit taken(Set<Integer> chosen) {
    if (unchanged && chosen.size() == items.size()) {
      return becoming(exactly());
    }
    Taking taking = new Taking();
    chosen.forEach(each -> actions.get(each).accept(taking));
    Map<String, List<Row>> tables = new HashMap<>();
    for (TableDefinition table : book.declared().tables()) {
      tables.put(table.id(), rows(table, taking));
    }
    BookSnapshot target = new BookSnapshot(now.system(), tables);
    return becoming(taking.units ? in(exact.system(), target) : target);
  }

  private Edit becoming(BookSnapshot target) {
    return new Edits(book).becoming("bringing back what was not saved", target);
  }

  /** Returns what the record holds, bit for bit, with the rows that are rows of the design. */
  private BookSnapshot exactly() {
    Map<String, List<Row>> tables = new HashMap<>();
    for (TableDefinition table : book.declared().tables()) {
      Map<Long, Long> same = known.get(table.id());
      List<Row> rows = new ArrayList<>();
      for (Row row : exact.rows(table.id())) {
        Long own = same.get(row.id());
        int columns = table.columns().size();
        rows.add(own == null ? as(row, columns) : changed(row, own, Map.of(), Map.of(), columns));
      }
      tables.put(table.id(), rows);
    }
    return new BookSnapshot(exact.system(), tables);
  }

  private List<Row> rows(TableDefinition table, Taking taking) {
    Map<Long, Map<Integer, Entry>> cells = taking.cells.getOrDefault(table.id(), Map.of());
    Map<Long, Map<String, Remark>> remarks = taking.remarks.getOrDefault(table.id(), Map.of());
    String leading = table.other().orElse(table.id());
    Set<Long> removed = taking.removed.getOrDefault(leading, Set.of());
    Set<Long> added = taking.added.getOrDefault(leading, Set.of());
    Map<Long, Long> same = known.get(table.id());
    List<Row> rows = new ArrayList<>();
    for (Row row : now.rows(table.id())) {
      if (!removed.contains(row.id())) {
        rows.add(
            changed(
                row,
                row.id(),
                cells.getOrDefault(row.id(), Map.of()),
                remarks.getOrDefault(row.id(), Map.of()),
                table.columns().size()));
      }
    }
    if (taking.reordered.contains(leading)) {
      reorder(rows, left.rows(table.id()), same);
    }
    int after = -1;
    for (Row row : left.rows(table.id())) {
      if (added.contains(row.id())) {
        after++;
        rows.add(after, as(row, table.columns().size()));
      } else {
        int at = place(rows, same.getOrDefault(row.id(), 0L));
        after = at < 0 ? after : at;
      }
    }
    return rows;
  }

  private static int place(List<Row> rows, long id) {
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).id() == id) {
        return i;
      }
    }
    return -1;
  }

  /**
   * Brings the rows that both have into the order of the record; the others stay where they are.
   */
  private static void reorder(List<Row> rows, List<Row> theirs, Map<Long, Long> same) {
    Map<Long, Row> here = byId(rows);
    List<Row> ordered = new ArrayList<>();
    for (Row row : theirs) {
      Row own = here.get(same.getOrDefault(row.id(), 0L));
      if (own != null) {
        ordered.add(own);
      }
    }
    Set<Row> moved = new HashSet<>(ordered);
    int next = 0;
    for (int i = 0; i < rows.size(); i++) {
      if (moved.contains(rows.get(i))) {
        rows.set(i, ordered.get(next));
        next++;
      }
    }
  }

  /** A row of the record is none of the design's, whatever its identity was there. */
  private static Row as(Row row, int columns) {
    return changed(row, -1 - Math.abs(row.id()), Map.of(), Map.of(), columns);
  }

  private static Row changed(
      Row row, long id, Map<Integer, Entry> cells, Map<String, Remark> remarks, int columns) {
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < columns; i++) {
      entries.add(cells.getOrDefault(i, row.entry(i)));
    }
    Map<String, Remark> on = new HashMap<>(row.remarks());
    on.putAll(remarks);
    return Row.of(id, entries, on);
  }
}
