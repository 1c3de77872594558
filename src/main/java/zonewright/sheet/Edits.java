package zonewright.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import zonewright.formula.Reference;
import zonewright.units.UnitSystem;

/** Makes the edits a person asks for; {@link Book#perform} then does them. */
public final class Edits {
  private final Book book;

  /** Makes edits for a book as it is at each call. */
  public Edits(Book book) {
    this.book = book;
  }

  /** Returns the edit of typing {@code text} into a cell. */
  public Edit typed(Reference column, int row, String text) {
    Entry entry = Entries.read(book.schema().column(column), text, book.system());
    return set(column, row, entry);
  }

  /**
   * Returns the edit of putting an entry into a cell; it changes nothing where the cell is
   * calculated or names a row that is given.
   */
  public Edit set(Reference column, int row, Entry entry) {
    String name = book.cellName(column, row).inWords();
    List<Edit.Change> changes = new ArrayList<>();
    add(changes, column, row, entry);
    String verb = entry instanceof Entry.Blank ? "clearing of " : "typing into ";
    return new Edit.SetCells(verb + name, changes);
  }

  /** Returns the edit of putting a note on a cell, of whatever kind; a blank one takes it away. */
  public Edit noted(Reference column, int row, String words) {
    String name = book.cellName(column, row).inWords();
    boolean gone = words.isBlank();
    return remarked(
        (gone ? "removal of the note on " : "note on ") + name,
        List.of(column),
        List.of(row),
        before -> before.noted(words));
  }

  /** Returns the edit of giving cells a colour. */
  public Edit tinted(List<Reference> columns, List<Integer> rows, Tint tint) {
    String verb = tint == Tint.NONE ? "removal of the colour of " : "colour of ";
    String name = verb + cells(columns.size() * rows.size());
    return remarked(name, columns, rows, before -> before.tinted(tint));
  }

  /**
   * Returns the edit of putting remarks on cells, for whoever reads a file: by row and the
   * identifier of the column.
   */
  public Edit remarked(String table, Map<Integer, Map<String, Remark>> remarks) {
    List<Edit.RemarkChange> changes = new ArrayList<>();
    remarks.forEach(
        (row, ofRow) -> {
          Row there = book.contents().row(table, row);
          ofRow.forEach(
              (column, remark) ->
                  changes.add(
                      new Edit.RemarkChange(
                          table, there.id(), column, there.remark(column), remark)));
        });
    return new Edit.SetRemarks("reading of notes", changes);
  }

  private Edit remarked(
      String name, List<Reference> columns, List<Integer> rows, UnaryOperator<Remark> change) {
    List<Edit.RemarkChange> changes = new ArrayList<>();
    for (Reference column : columns) {
      for (int row : rows) {
        Row there = book.contents().row(column.table(), row);
        Remark before = there.remark(column.column());
        Remark after = change.apply(before);
        if (!after.equals(before)) {
          changes.add(
              new Edit.RemarkChange(column.table(), there.id(), column.column(), before, after));
        }
      }
    }
    return new Edit.SetRemarks(name, changes);
  }

  /** Returns the edit of emptying cells; defaults come back. */
  public Edit cleared(List<Reference> columns, List<Integer> rows) {
    List<Edit.Change> changes = new ArrayList<>();
    for (int row : rows) {
      columns.forEach(column -> add(changes, column, row, Entry.BLANK));
    }
    return new Edit.SetCells("clearing of " + cells(changes.size()), changes);
  }

  /** Returns the edit of filling rows of columns with what the first of the rows holds. */
  public Edit filledDown(List<Reference> columns, List<Integer> rows) {
    List<Edit.Change> changes = new ArrayList<>();
    for (Reference column : columns) {
      Entry first = book.entry(column, rows.get(0));
      rows.forEach(row -> add(changes, column, row, first));
    }
    return new Edit.SetCells("fill of " + cells(changes.size()), changes);
  }

  /**
   * Returns the edit of carrying on in rows of columns what the first of them begin: numbers by the
   * step from the first to the second, or by one; words that end in a number by that number. What
   * is neither is repeated.
   */
  public Edit filledSeries(List<Reference> columns, List<Integer> rows) {
    List<Edit.Change> changes = new ArrayList<>();
    for (Reference column : columns) {
      Entry first = book.entry(column, rows.get(0));
      Entry second = book.entry(column, rows.get(1));
      Series series = Series.of(first, second);
      for (int i = series.given(); i < rows.size(); i++) {
        add(changes, column, rows.get(i), series.at(i));
      }
    }
    return new Edit.SetCells("series in " + cells(changes.size()), changes);
  }

  /**
   * Returns the edit of carrying on in further rows what given ones hold: the step between the last
   * two numbers, or between words that end in one, and else the pattern again and again.
   *
   * @param given the rows that hold it, in the direction in which it is carried on
   * @param counts whether a single number, or word that ends in one, is counted on or repeated;
   *     names that rows are known by are counted either way
   */
  public Edit carriedOn(
      List<Reference> columns, List<Integer> given, List<Integer> further, boolean counts) {
    List<Edit.Change> changes = new ArrayList<>();
    for (Reference column : columns) {
      Entry last = book.entry(column, given.get(given.size() - 1));
      Entry before = given.size() > 1 ? book.entry(column, given.get(given.size() - 2)) : last;
      boolean names = book.position(column) == 0;
      boolean series = given.size() > 1 ? Series.of(before, last).given() == 2 : counts || names;
      for (int i = 0; i < further.size(); i++) {
        Entry next =
            series
                ? Series.of(before, given.size() > 1 ? last : Entry.BLANK)
                    .at(i + Math.min(2, given.size()))
                : book.entry(column, given.get(i % given.size()));
        add(changes, column, further.get(i), next);
      }
    }
    return new Edit.SetCells("fill of " + cells(changes.size()), changes);
  }

  /**
   * Returns the edit of pasting a block of texts with its upper left corner in a cell.
   *
   * <p>The table grows by rows where it may; what falls outside the columns given, or on calculated
   * cells, is left out.
   */
  public Edit pasted(
      String table, List<Reference> columns, int row, int column, List<List<String>> block) {
    List<Integer> rows = IntStream.range(row, row + block.size()).boxed().toList();
    return pasted(table, columns, rows, column, block);
  }

  /**
   * Returns the edit of pasting a block of texts, each line into a row of its own, beginning with
   * one of the columns given.
   *
   * @param rows the row for each line; those past the end are new
   */
  public Edit pasted(
      String table,
      List<Reference> columns,
      List<Integer> rows,
      int column,
      List<List<String>> block) {
    List<Edit> parts = new ArrayList<>();
    List<Edit.Change> changes = new ArrayList<>();
    List<Row> fresh = new ArrayList<>();
    boolean grows = book.schema().table(table).rows() instanceof TableDefinition.Rows.Free;
    for (int i = 0; i < block.size(); i++) {
      int target = rows.get(i);
      if (target < book.rows(table)) {
        for (int j = 0; j < block.get(i).size() && column + j < columns.size(); j++) {
          Reference reference = columns.get(column + j);
          add(changes, reference, target, read(reference, block.get(i).get(j)));
        }
      } else if (grows) {
        fresh.add(rowOf(table, columns, column, block.get(i), target));
      }
    }
    parts.add(new Edit.SetCells("paste", changes));
    if (!fresh.isEmpty()) {
      parts.add(new Edit.InsertRows("paste", table, book.rows(table), fresh));
    }
    int count = block.stream().mapToInt(List::size).sum();
    return new Edit.Several("paste of " + cells(count), parts);
  }

  private Row rowOf(
      String table, List<Reference> columns, int column, List<String> texts, int place) {
    Row fresh = named(table, place);
    for (int j = 0; j < texts.size() && column + j < columns.size(); j++) {
      Reference reference = columns.get(column + j);
      if (book.schema().column(reference).takesEntries()) {
        fresh = fresh.with(book.position(reference), read(reference, texts.get(j)));
      }
    }
    return fresh;
  }

  private Entry read(Reference reference, String text) {
    return Entries.read(book.schema().column(reference), text, book.system());
  }

  /**
   * Returns the edit of putting {@code count} new rows in before place {@code at}, each with a name
   * of its own.
   */
  public Edit inserted(String table, int at, int count) {
    List<Row> fresh = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      fresh.add(named(table, book.rows(table) + i));
    }
    String word = book.rowWord(table);
    String name = count == 1 ? "new " + word : count + " new " + word + "s";
    return new Edit.InsertRows(name, table, at, fresh);
  }

  /** Returns a blank row named by the first free number from its place on. */
  private Row named(String table, int place) {
    Row blank = book.contents().blankRow(table);
    List<String> taken = book.contents().rows(table).stream().map(Edits::name).toList();
    int number = place + 1;
    while (taken.contains(Integer.toString(number))) {
      number++;
    }
    return blank.with(0, new Entry.Words(Integer.toString(number)));
  }

  /** Returns the edit of putting ready rows of entries at the end, for whoever reads a file. */
  public Edit.InsertRows appended(String table, List<List<Entry>> rows) {
    List<Row> fresh = new ArrayList<>();
    for (List<Entry> entries : rows) {
      Row row = book.contents().blankRow(table);
      for (int i = 0; i < entries.size(); i++) {
        row = row.with(i, entries.get(i));
      }
      fresh.add(row);
    }
    return new Edit.InsertRows(
        "reading of " + fresh.size() + " rows", table, book.rows(table), fresh);
  }

  /** Returns the edit of taking {@code count} rows out from place {@code at} on. */
  public Edit removed(String table, int at, int count) {
    List<Row> gone = book.contents().rows(table).subList(at, at + count);
    String word = book.rowWord(table);
    String name = count == 1 ? "deletion of a " + word : "deletion of " + count + " " + word + "s";
    return new Edit.RemoveRows(name, table, at, gone);
  }

  /** Returns the edit of taking rows out, wherever they stand. */
  public Edit removed(String table, List<Integer> rows) {
    List<Integer> down = rows.stream().sorted(Comparator.reverseOrder()).toList();
    int first = down.get(down.size() - 1);
    if (down.get(0) - first == down.size() - 1) {
      return removed(table, first, down.size());
    }
    List<Edit> parts = new ArrayList<>();
    for (int row : down) {
      parts.add(
          new Edit.RemoveRows("deletion", table, row, List.of(book.contents().row(table, row))));
    }
    return new Edit.Several("deletion of " + down.size() + " " + book.rowWord(table) + "s", parts);
  }

  /** Returns the edit of copying rows to just below the last of them. */
  public Edit duplicated(String table, List<Integer> rows) {
    Set<String> taken = new HashSet<>();
    book.contents().rows(table).forEach(row -> taken.add(name(row)));
    List<Row> copies =
        rows.stream()
            .map(row -> book.contents().copyOf(book.contents().row(table, row)))
            .map(copy -> withFreeName(copy, taken))
            .toList();
    int count = copies.size();
    String name = "copy of " + count + " " + book.rowWord(table) + (count == 1 ? "" : "s");
    Edit inserted = new Edit.InsertRows(name, table, rows.get(count - 1) + 1, copies);
    return withBeside(name, inserted, table, rows, copies);
  }

  /** Adds to the insertion of copies what stands alongside the rows they are copies of. */
  private Edit withBeside(
      String name, Edit inserted, String table, List<Integer> originals, List<Row> copies) {
    List<Edit.Change> changes = new ArrayList<>();
    for (TableDefinition other : book.schema().alongside(table)) {
      for (int i = 0; i < copies.size(); i++) {
        Row own = book.contents().row(other.id(), originals.get(i));
        for (int column = 1; column < other.columns().size(); column++) {
          Entry entry = own.entry(column);
          if (!(entry instanceof Entry.Blank)) {
            changes.add(
                new Edit.Change(other.id(), copies.get(i).id(), column, Entry.BLANK, entry));
          }
        }
      }
    }
    return changes.isEmpty()
        ? inserted
        : new Edit.Several(name, List.of(inserted, new Edit.SetCells(name, changes)));
  }

  /**
   * Returns the edit of putting several rows in the place of one, each like it but for some cells.
   *
   * <p>What stands alongside the row goes with each part. Where the row is chosen by its name, the
   * first part is chosen from then on.
   *
   * @param parts for each row its own entries, by column, of this table or one alongside it; the
   *     name among them
   */
  public Edit divided(String table, int row, List<Map<Reference, Entry>> parts) {
    return new RowDivision(book, table, row, parts).edit();
  }

  /**
   * Returns the edit of putting copies of a row just below it, each with some entries of its own.
   *
   * @param own for each copy the entries that differ
   */
  public Edit copiedBelow(String table, int row, List<Map<Reference, Entry>> own) {
    Set<String> taken = new HashSet<>();
    book.contents().rows(table).forEach(each -> taken.add(name(each)));
    List<Row> copies = new ArrayList<>();
    for (Map<Reference, Entry> entries : own) {
      Row copy = book.contents().copyOf(book.contents().row(table, row));
      for (Map.Entry<Reference, Entry> entry : entries.entrySet()) {
        copy = copy.with(book.position(entry.getKey()), entry.getValue());
      }
      copies.add(withFreeName(copy, taken));
    }
    Edit inserted = new Edit.InsertRows("copies", table, row + 1, copies);
    return withBeside("copies", inserted, table, Collections.nCopies(copies.size(), row), copies);
  }

  private static String name(Row row) {
    return row.entry(0) instanceof Entry.Words words ? words.text() : "";
  }

  /** Names a copy after its original, by a name that is not taken yet. */
  private static Row withFreeName(Row copy, Set<String> taken) {
    if (name(copy).isEmpty()) {
      return copy;
    }
    String plain = name(copy) + " copy";
    String free = plain;
    for (int number = 2; !taken.add(free); number++) {
      free = plain + " " + number;
    }
    return copy.with(0, new Entry.Words(free));
  }

  /** Returns the edit of bringing all rows into another order. */
  public Edit reordered(String table, String name, List<Integer> order) {
    return new Edit.Reorder(name, table, order);
  }

  /**
   * Returns the edit of moving rows to beside another one.
   *
   * @param neighbour a row that is none of them
   * @param above whether they come above it; else below
   */
  public Edit moved(String table, List<Integer> rows, int neighbour, boolean above) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < book.rows(table); i++) {
      order.add(i);
    }
    order.removeAll(new HashSet<>(rows));
    order.addAll(order.indexOf(neighbour) + (above ? 0 : 1), rows);
    String word = book.rowWord(table);
    return new Edit.Reorder("move of a " + word, table, order);
  }

  /**
   * Returns the edit after which the book holds what another moment held.
   *
   * @param name what to call it
   * @param wanted what it is to hold; a row with an identity that no row here has is a new one
   */
  public Edit becoming(String name, BookSnapshot wanted) {
    List<Edit> parts = new ArrayList<>();
    Differences changes = new Differences(new ArrayList<>(), new ArrayList<>());
    Map<String, Map<Long, Long>> fresh = new HashMap<>();
    parts.add(new Edit.SwitchUnits(book.system(), wanted.system(), List.of()));
    for (TableDefinition table : book.schema().tables()) {
      List<Row> now = book.contents().rows(table.id());
      List<Row> then = wanted.rows(table.id());
      Map<Long, Row> known = new HashMap<>();
      now.forEach(row -> known.put(row.id(), row));
      if (table.rows() instanceof TableDefinition.Rows.Free) {
        Map<Long, Long> ids = fresh.computeIfAbsent(table.id(), any -> new HashMap<>());
        List<Row> rows = new ArrayList<>();
        for (Row row : then) {
          Row own = known.containsKey(row.id()) ? row : book.contents().copyOf(row);
          ids.put(row.id(), own.id());
          rows.add(own);
        }
        if (now.stream().map(Row::id).toList().equals(rows.stream().map(Row::id).toList())) {
          for (int i = 0; i < rows.size(); i++) {
            change(changes, table, now.get(i), rows.get(i), rows.get(i).id());
          }
        } else {
          parts.add(new Edit.RemoveRows(name, table.id(), 0, now));
          parts.add(new Edit.InsertRows(name, table.id(), 0, rows));
        }
      } else if (table.other().isPresent()) {
        Map<Long, Long> ids = fresh.get(table.other().get());
        Row blank = Row.blank(0, table.columns().size());
        for (Row row : then) {
          if (ids.containsKey(row.id())) {
            change(changes, table, known.getOrDefault(row.id(), blank), row, ids.get(row.id()));
          }
        }
      } else {
        for (int i = 0; i < Math.min(now.size(), then.size()); i++) {
          change(changes, table, now.get(i), then.get(i), now.get(i).id());
        }
      }
    }
    parts.add(new Edit.SetCells(name, changes.cells()));
    parts.add(new Edit.SetRemarks(name, changes.remarks()));
    return new Edit.Several(name, parts);
  }

  /** What differs between two rows. */
  private record Differences(List<Edit.Change> cells, List<Edit.RemarkChange> remarks) {}

  private static void change(
      Differences changes, TableDefinition table, Row from, Row to, long id) {
    for (int column = 0; column < table.columns().size(); column++) {
      boolean named = column == 0 && table.givenNames();
      if (!named && !from.entry(column).equals(to.entry(column))) {
        changes
            .cells()
            .add(new Edit.Change(table.id(), id, column, from.entry(column), to.entry(column)));
      }
    }
    for (String column : to.remarkedOtherwise(from)) {
      changes
          .remarks()
          .add(
              new Edit.RemarkChange(
                  table.id(), id, column, from.remark(column), to.remark(column)));
    }
  }

  /**
   * Returns the edit of keeping the whole book in another unit system.
   *
   * <p>A number that came out of that system by the last switch, and was not touched since, goes
   * back to exactly what it was, also where converting twice would lose its last digit.
   */
  public Edit switched(UnitSystem to) {
    List<Edit.Change> changes = new ArrayList<>();
    Map<Cell, Edit.Change> earlier = new HashMap<>();
    book.journal()
        .lastSwitch()
        .filter(last -> last.before() == to && last.after() == book.system())
        .ifPresent(
            last ->
                last.changes()
                    .forEach(
                        change ->
                            earlier.put(
                                new Cell(change.table(), change.row(), change.column()), change)));
    for (TableDefinition table : book.schema().tables()) {
      for (Row row : book.contents().rows(table.id())) {
        for (int i = 0; i < table.columns().size(); i++) {
          Entry before = row.entry(i);
          Edit.Change came = earlier.get(new Cell(table.id(), row.id(), i));
          Entry after =
              came != null && came.after().equals(before)
                  ? came.before()
                  : Entries.converted(table.columns().get(i), before, book.system(), to);
          if (!after.equals(before)) {
            changes.add(new Edit.Change(table.id(), row.id(), i, before, after));
          }
        }
      }
    }
    return new Edit.SwitchUnits(book.system(), to, changes);
  }

  /** Which cell, also after its row moved. */
  private record Cell(String table, long row, int column) {}

  private void add(List<Edit.Change> changes, Reference column, int row, Entry after) {
    TableDefinition table = book.schema().table(column.table());
    if (!table.takesEntries(book.schema().column(column))) {
      return;
    }
    Entry before = book.entry(column, row);
    if (!before.equals(after)) {
      long id = book.contents().row(column.table(), row).id();
      changes.add(new Edit.Change(column.table(), id, book.position(column), before, after));
    }
  }

  private static String cells(int count) {
    return count == 1 ? "1 cell" : count + " cells";
  }
}
