package zonewright.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import zonewright.units.UnitSystem;

/** The only way a book changes: something with a name that can be taken back. */
public sealed interface Edit {
  /** Returns what a person would call it, such as {@code paste of 24 cells}. */
  String name();

  /** Returns the edit that takes it back. */
  Edit inverse();

  /** Says whether the book is the same with it as without. */
  boolean changesNothing();

  /** Has it done; every kind has its own way, so that none is forgotten. */
  void perform(Performer performer);

  /** Knows how each kind of edit is done. */
  interface Performer {
    void set(SetCells set);

    void remark(SetRemarks set);

    void insert(InsertRows insert);

    void remove(RemoveRows remove);

    void reorder(Reorder reorder);

    void switchUnits(SwitchUnits units);
  }

  /**
   * One cell.
   *
   * @param column position in the table
   */
  record Change(String table, long row, int column, Entry before, Entry after) {
    Change swapped() {
      return new Change(table, row, column, after, before);
    }
  }

  /** New entries in some cells, each cell at most once. */
  record SetCells(String name, List<Change> changes) implements Edit {
    public SetCells {
      changes = List.copyOf(changes);
    }

    @Override
    public Edit inverse() {
      return new SetCells(name, changes.stream().map(Change::swapped).toList());
    }

    @Override
    public boolean changesNothing() {
      return changes.isEmpty();
    }

    @Override
    public void perform(Performer performer) {
      performer.set(this);
    }
  }

  /**
   * What a person put on one cell, before and after.
   *
   * @param column its identifier, which stays while columns of one's own come and go
   */
  record RemarkChange(String table, long row, String column, Remark before, Remark after) {
    RemarkChange swapped() {
      return new RemarkChange(table, row, column, after, before);
    }
  }

  /** Notes and colours on some cells, each cell at most once; no number follows from them. */
  record SetRemarks(String name, List<RemarkChange> changes) implements Edit {
    public SetRemarks {
      changes = List.copyOf(changes);
    }

    @Override
    public Edit inverse() {
      return new SetRemarks(name, changes.stream().map(RemarkChange::swapped).toList());
    }

    @Override
    public boolean changesNothing() {
      return changes.isEmpty();
    }

    @Override
    public void perform(Performer performer) {
      performer.remark(this);
    }
  }

  /** Rows put in, the first at position {@code at}. */
  record InsertRows(String name, String table, int at, List<Row> rows) implements Edit {
    public InsertRows {
      rows = List.copyOf(rows);
    }

    @Override
    public Edit inverse() {
      return new RemoveRows(name, table, at, rows);
    }

    @Override
    public boolean changesNothing() {
      return rows.isEmpty();
    }

    @Override
    public void perform(Performer performer) {
      performer.insert(this);
    }
  }

  /** Neighbouring rows taken out, the first at position {@code at}. */
  record RemoveRows(String name, String table, int at, List<Row> rows) implements Edit {
    public RemoveRows {
      rows = List.copyOf(rows);
    }

    @Override
    public Edit inverse() {
      return new InsertRows(name, table, at, rows);
    }

    @Override
    public boolean changesNothing() {
      return rows.isEmpty();
    }

    @Override
    public void perform(Performer performer) {
      performer.remove(this);
    }
  }

  /** Rows put in another order: the row now at {@code order[i]} goes to {@code i}. */
  record Reorder(String name, String table, List<Integer> order) implements Edit {
    public Reorder {
      order = List.copyOf(order);
    }

    @Override
    public Edit inverse() {
      List<Integer> back = new ArrayList<>(Collections.nCopies(order.size(), 0));
      for (int i = 0; i < order.size(); i++) {
        back.set(order.get(i), i);
      }
      return new Reorder(name, table, back);
    }

    @Override
    public boolean changesNothing() {
      return IntStream.range(0, order.size()).allMatch(at -> order.get(at) == at);
    }

    @Override
    public void perform(Performer performer) {
      performer.reorder(this);
    }
  }

  /** The whole book in other units; {@code changes} holds every number before and after. */
  record SwitchUnits(UnitSystem before, UnitSystem after, List<Change> changes) implements Edit {
    public SwitchUnits {
      changes = List.copyOf(changes);
    }

    @Override
    public String name() {
      return "switch to " + after.words();
    }

    @Override
    public Edit inverse() {
      return new SwitchUnits(after, before, changes.stream().map(Change::swapped).toList());
    }

    @Override
    public boolean changesNothing() {
      return before == after && changes.isEmpty();
    }

    @Override
    public void perform(Performer performer) {
      performer.switchUnits(this);
    }
  }

  /** Several edits in one gesture. */
  record Several(String name, List<Edit> parts) implements Edit {
    public Several {
      parts = List.copyOf(parts);
    }

    @Override
    public Edit inverse() {
      List<Edit> back = new ArrayList<>();
      for (Edit part : parts) {
        back.add(0, part.inverse());
      }
      return new Several(name, back);
    }

    @Override
    public boolean changesNothing() {
      return parts.stream().allMatch(Edit::changesNothing);
    }

    @Override
    public void perform(Performer performer) {
      parts.forEach(part -> part.perform(performer));
    }
  }
}
