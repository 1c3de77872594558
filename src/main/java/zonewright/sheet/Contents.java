package zonewright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import zonewright.units.UnitSystem;

/**
 * What was entered: the rows of every table and the unit system they are in. Changes only by edits.
 */
public final class Contents {
  private final Schema schema;
  private final Map<String, List<Row>> rows = new HashMap<>();
  private final Map<String, Map<Long, Integer>> places = new HashMap<>();

  /** What was entered beside rows that are not there now; they may come back. */
  private final Map<String, Map<Long, Row>> setAside = new HashMap<>();

  private UnitSystem system;
  private long nextId = 1;

  /** Told what an edit touched, so that only that is calculated again. */
  interface Touched {
    /** A cell holds another entry. */
    void cell(String table, int row, int column);

    /** Rows of a table came, went or moved. */
    void rows(String table);

    /** Everything has other units. */
    void units();
  }

  Contents(Schema schema, UnitSystem system) {
    this.schema = schema;
    this.system = system;
    for (TableDefinition table : schema.tables()) {
      rows.put(table.id(), new ArrayList<>());
      for (int i = 0; i < startingRows(table); i++) {
        rows.get(table.id()).add(blankRow(table.id()));
      }
      if (table.rows() instanceof TableDefinition.Rows.Named named) {
        nameRows(table.id(), named.names());
      }
    }
  }

  /** Holds what a snapshot holds; rows keep their identities. */
  Contents(Schema schema, BookSnapshot snapshot) {
    this.schema = schema;
    this.system = snapshot.system();
    for (TableDefinition table : schema.tables()) {
      List<Row> list = new ArrayList<>(snapshot.rows(table.id()));
      rows.put(table.id(), list);
      list.forEach(row -> nextId = Math.max(nextId, row.id() + 1));
      if (table.other().isPresent()) {
        follow(table);
      }
    }
  }

  private Contents(Contents other) {
    schema = other.schema;
    system = other.system;
    nextId = other.nextId;
    other.rows.forEach((table, list) -> rows.put(table, new ArrayList<>(list)));
    other.setAside.forEach((table, aside) -> setAside.put(table, new HashMap<>(aside)));
  }

  private static int startingRows(TableDefinition table) {
    if (table.rows() instanceof TableDefinition.Rows.Named named) {
      return named.names().size();
    }
    return table.single() ? 1 : 0;
  }

  private void nameRows(String table, List<String> names) {
    List<Row> list = rows.get(table);
    for (int i = 0; i < names.size(); i++) {
      list.set(i, list.get(i).with(0, new Entry.Words(names.get(i))));
    }
  }

  /** Returns a row with nothing in it, not yet part of the table. */
  Row blankRow(String table) {
    return Row.blank(nextId++, schema.table(table).columns().size());
  }

  /** Returns a copy of a row under an identity of its own, not yet part of the table. */
  Row copyOf(Row row) {
    return row.as(nextId++);
  }

  /** Returns the unit system of all numbers entered. */
  public UnitSystem system() {
    return system;
  }

  /** Returns the rows of a table as they are now; a copy. */
  public List<Row> rows(String table) {
    return List.copyOf(rows.get(table));
  }

  /** Returns all that was entered, as it is now and stays. */
  BookSnapshot snapshot() {
    Map<String, List<Row>> all = new HashMap<>();
    rows.forEach((table, list) -> all.put(table, List.copyOf(list)));
    return new BookSnapshot(system, all);
  }

  /** Returns what was entered in some tables, as it is now and stays. */
  BookSnapshot snapshot(Set<String> tables) {
    Map<String, List<Row>> some = new HashMap<>();
    tables.forEach(table -> some.put(table, rows(table)));
    return new BookSnapshot(system, some);
  }

  /** Returns how many rows a table has. */
  public int count(String table) {
    return rows.get(table).size();
  }

  /** Returns a row by its place, counted from 0. */
  public Row row(String table, int place) {
    return rows.get(table).get(place);
  }

  /** Returns where a row stands now, or -1. */
  int place(String table, long id) {
    Map<Long, Integer> known = places.computeIfAbsent(table, this::index);
    return known.getOrDefault(id, -1);
  }

  private Map<Long, Integer> index(String table) {
    Map<Long, Integer> index = new HashMap<>();
    List<Row> list = rows.get(table);
    for (int place = 0; place < list.size(); place++) {
      index.put(list.get(place).id(), place);
    }
    return index;
  }

  /** Returns what would be entered after an edit. */
  BookSnapshot after(Edit edit) {
    Contents then = new Contents(this);
    then.apply(
        edit,
        new Touched() {
          @Override
          public void cell(String table, int row, int column) {
            // nobody calculates what is only tried
          }

          @Override
          public void rows(String table) {
            // nor this
          }

          @Override
          public void units() {
            // nor this
          }
        });
    return then.snapshot();
  }

  void apply(Edit edit, Touched touched) {
    edit.perform(new Doing(touched));
  }

  private final class Doing implements Edit.Performer {
    private final Touched touched;

    Doing(Touched touched) {
      this.touched = touched;
    }

    @Override
    public void set(Edit.SetCells set) {
      for (Edit.Change change : set.changes()) {
        int place = put(change);
        touched.cell(change.table(), place, change.column());
        if (change.column() == 0) {
          rename(change.table(), place, touched);
        }
      }
    }

    @Override
    public void remark(Edit.SetRemarks set) {
      for (Edit.RemarkChange change : set.changes()) {
        int place = place(change.table(), change.row());
        List<Row> list = rows.get(change.table());
        list.set(place, list.get(place).with(change.column(), change.after()));
      }
    }

    @Override
    public void insert(Edit.InsertRows insert) {
      rows.get(insert.table()).addAll(insert.at(), insert.rows());
      restructured(insert.table(), touched);
    }

    @Override
    public void remove(Edit.RemoveRows remove) {
      rows.get(remove.table()).subList(remove.at(), remove.at() + remove.rows().size()).clear();
      restructured(remove.table(), touched);
    }

    @Override
    public void reorder(Edit.Reorder reorder) {
      List<Row> before = List.copyOf(rows.get(reorder.table()));
      for (int i = 0; i < before.size(); i++) {
        rows.get(reorder.table()).set(i, before.get(reorder.order().get(i)));
      }
      restructured(reorder.table(), touched);
    }

    @Override
    public void switchUnits(Edit.SwitchUnits units) {
      system = units.after();
      units.changes().forEach(Contents.this::put);
      touched.units();
    }
  }

  private int put(Edit.Change change) {
    int place = place(change.table(), change.row());
    List<Row> list = rows.get(change.table());
    list.set(place, list.get(place).with(change.column(), change.after()));
    return place;
  }

  private void restructured(String table, Touched touched) {
    places.remove(table);
    touched.rows(table);
    for (TableDefinition beside : schema.alongside(table)) {
      places.remove(beside.id());
      follow(beside);
      touched.rows(beside.id());
    }
  }

  /**
   * Gives a table alongside another the rows of the other, each with what was entered beside it.
   */
  private void follow(TableDefinition table) {
    Map<Long, Row> known = setAside.computeIfAbsent(table.id(), any -> new HashMap<>());
    List<Row> list = rows.get(table.id());
    list.forEach(row -> known.put(row.id(), row));
    list.clear();
    for (Row leading : rows.get(table.other().orElseThrow())) {
      Row own = known.remove(leading.id());
      Row there = own == null ? Row.blank(leading.id(), table.columns().size()) : own;
      list.add(there.named(leading.entry(0)));
    }
    known.values().removeIf(row -> row.named(Entry.BLANK).isBlank() && row.remarks().isEmpty());
  }

  /** The names of the rows alongside are those of the rows they stand beside. */
  private void rename(String table, int place, Touched touched) {
    for (TableDefinition beside : schema.alongside(table)) {
      List<Row> list = rows.get(beside.id());
      list.set(place, list.get(place).named(row(table, place).entry(0)));
      touched.cell(beside.id(), place, 0);
    }
  }
}
