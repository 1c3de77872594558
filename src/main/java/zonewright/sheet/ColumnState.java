package zonewright.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import zonewright.formula.BlockColumn;
import zonewright.formula.ColumnProgram;
import zonewright.units.UnitSystem;

/**
 * A column while it is calculated: its numbers, what was entered, and which blocks are out of date.
 */
final class ColumnState {
  final Column column;
  final int position;
  final String table;
  final BlockColumn values = new BlockColumn();

  /** 1 where something was entered, 0 where blank; for columns that take entries. */
  final BlockColumn given = new BlockColumn();

  /** The numbers entered; for columns that calculate unless typed over. */
  final BlockColumn entered = new BlockColumn();

  final BitSet dirty = new BitSet();
  final List<ColumnState> sameRow = new ArrayList<>();
  final List<ColumnState> wholeColumn = new ArrayList<>();

  /** The columns its formula looks at. */
  final List<ColumnState> needs = new ArrayList<>();

  /** Whether it was not yet calculated since all entries were taken over. */
  boolean waits;

  /** None for a column without a formula, and until it is calculated for the first time. */
  ColumnProgram program;

  private double[] buffer;
  private double low = Double.NEGATIVE_INFINITY;
  private double high = Double.POSITIVE_INFINITY;
  private Map<String, Integer> positions = Map.of();

  ColumnState(Column column, int position, String table) {
    this.column = column;
    this.position = position;
    this.table = table;
  }

  /** Gets ready to judge entries in a unit system. */
  void gauge(UnitSystem system, List<String> list) {
    column
        .bounds()
        .ifPresent(
            bounds -> {
              low = bounds.low(column.kind(), system);
              high = bounds.high(column.kind(), system);
            });
    positions = new HashMap<>();
    for (int i = 0; i < list.size(); i++) {
      positions.putIfAbsent(list.get(i).strip().toLowerCase(Locale.ROOT), i);
    }
    if (names() || column.words().filter(WordList.RowsOf.class::isInstance).isPresent()) {
      values.follow(positions);
    }
  }

  /** Says whether it names the rows of its table; its numbers are the first rows of each name. */
  boolean names() {
    return position == 0 && column.content() == Column.Content.WORDS;
  }

  void resize(int rows) {
    values.resize(rows);
    if (column.takesEntries()) {
      given.resize(rows);
    }
    if (column.role() == Column.Role.DEFAULTED) {
      entered.resize(rows);
    }
    allDirty();
  }

  void allDirty() {
    dirty.set(0, BlockColumn.blocksFor(values.rows()));
  }

  /** Takes over an entry; its block is then out of date. */
  void enter(int row, Entry entry) {
    double number = number(entry);
    given.set(row, entry instanceof Entry.Blank ? 0 : 1);
    if (column.role() == Column.Role.DEFAULTED) {
      entered.set(row, number);
    } else {
      values.set(row, number);
    }
    dirty.set(row / BlockColumn.BLOCK);
  }

  private double number(Entry entry) {
    if (entry instanceof Entry.Figure number) {
      double value = number.value();
      boolean fine = value >= low && value <= high;
      if (fine && column.bounds().isPresent()) {
        Bounds bounds = column.bounds().get();
        fine =
            (bounds.lowIncluded() || value > low) && (!bounds.whole() || value == Math.rint(value));
      }
      return fine ? value : Double.NaN;
    }
    if (entry instanceof Entry.Words words
        && (column.content() == Column.Content.CHOICE || names())) {
      Integer position = positions.get(words.text().strip().toLowerCase(Locale.ROOT));
      return position == null ? Double.NaN : position;
    }
    return Double.NaN;
  }

  /**
   * Calculates one block again and adds the rows whose number changed; says whether there are any.
   */
  boolean recalculate(int block, BitSet changed) {
    int rows = values.rowsIn(block);
    buffer = BlockColumn.space(buffer, rows);
    program.run(block, rows, buffer);
    if (column.role() == Column.Role.DEFAULTED) {
      overlay(block, rows);
    }
    double[] current = values.block(block);
    int row = 0;
    // mostly one row of a block changed, or all did
    for (int same = same(current, row, rows); same >= 0; same = same(current, row, rows)) {
      row += same;
      do {
        changed.set(block * BlockColumn.BLOCK + row);
        current[row] = buffer[row];
        row++;
      } while (row < rows && Double.compare(current[row], buffer[row]) != 0);
      values.changed(block);
    }
    return row > 0;
  }

  /** Returns how many numbers from a row on are as they were; -1 where all of them are. */
  private int same(double[] current, int from, int rows) {
    return Arrays.mismatch(current, from, rows, buffer, from, rows);
  }

  /** Calculates one block in place, where nobody asks what changed. */
  void calculate(int block) {
    int rows = values.rowsIn(block);
    if (column.role() == Column.Role.DEFAULTED) {
      buffer = BlockColumn.space(buffer, rows);
      program.run(block, rows, buffer);
      overlay(block, rows);
      System.arraycopy(buffer, 0, values.block(block), 0, rows);
    } else {
      program.run(block, rows, values.block(block));
    }
    values.changed(block);
  }

  private void overlay(int block, int rows) {
    double[] typed = given.block(block);
    double[] numbers = entered.block(block);
    for (int i = 0; i < rows; i++) {
      buffer[i] = typed[i] == 0 ? buffer[i] : numbers[i];
    }
  }
}
