package zonewright.sheet;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import zonewright.formula.BlockColumn;
import zonewright.formula.ColumnProgram;
import zonewright.formula.Dependencies;
import zonewright.formula.Expressed;
import zonewright.formula.Formula;
import zonewright.formula.Reference;
import zonewright.formula.Workspace;
import zonewright.units.UnitSystem;

/**
 * All numbers of a book, calculated in the order of dependence and again only where an edit
 * reaches.
 *
 * <p>The grain is a block of a column: an edit of one cell calculates its block of each column that
 * depends on it, stops where the numbers come out the same, and goes on to whole columns only
 * through sums and one-row tables.
 */
public final class Calculation implements Workspace {
  private final Blueprint blueprint;
  private final Contents contents;
  private final Map<Reference, ColumnState> states = new LinkedHashMap<>();
  private final List<ColumnState> order = new ArrayList<>();
  private final Map<String, BlockColumn> counted = new HashMap<>();
  private final Map<Reference, Formula> plain = new HashMap<>();
  private UnitSystem compiledFor;

  Calculation(Blueprint blueprint, Contents contents) {
    this.blueprint = blueprint;
    this.contents = contents;
    for (TableDefinition table : blueprint.tables()) {
      counted.put(table.id(), new BlockColumn());
      for (int position = 0; position < table.columns().size(); position++) {
        Column column = table.columns().get(position);
        states.put(column.reference(), new ColumnState(column, position, table.id()));
      }
    }
    blueprint.order().forEach(column -> order.add(states.get(column.reference())));
    order.forEach(this::connect);
  }

  private void connect(ColumnState state) {
    Dependencies needs = blueprint.dependencies(state.column).orElse(null);
    if (needs == null) {
      return;
    }
    for (Reference cell : needs.cells()) {
      ColumnState need = states.get(cell);
      (blueprint.sameRows(cell.table(), state.table) ? need.sameRow : need.wholeColumn).add(state);
    }
    needs.columns().forEach(column -> states.get(column).wholeColumn.add(state));
  }

  /** Calculates everything anew. */
  void rebuild() {
    if (compiledFor != contents.system()) {
      compile();
    }
    for (TableDefinition table : blueprint.tables()) {
      count(table);
    }
    for (ColumnState state : states.values()) {
      state.resize(contents.count(state.table));
      state.gauge(contents.system(), gaugedBy(state));
      if (state.column.takesEntries()) {
        for (int row = 0; row < contents.count(state.table); row++) {
          state.enter(row, contents.row(state.table, row).entry(state.position));
        }
      }
    }
    calculateAll();
  }

  /** Calculates every formula in every row; nothing is compared. */
  public void calculateAll() {
    for (ColumnState state : order) {
      if (state.program != null) {
        state.program.prepare();
        for (int block = 0; block < BlockColumn.blocksFor(state.values.rows()); block++) {
          state.calculate(block);
        }
      }
      state.dirty.clear();
    }
  }

  private void compile() {
    compiledFor = contents.system();
    for (ColumnState state : order) {
      Column column = state.column;
      column
          .formula()
          .ifPresent(
              formula -> {
                Formula numbers =
                    Expressed.in(formula, compiledFor, column.kind().unit(compiledFor));
                plain.put(column.reference(), numbers);
                state.program = ColumnProgram.of(numbers, this);
              });
    }
  }

  private void count(TableDefinition table) {
    BlockColumn counts = counted.get(table.id());
    counts.resize(contents.count(table.id()));
    for (int row = 0; row < counts.rows(); row++) {
      boolean named =
          table.single() || !(contents.row(table.id(), row).entry(0) instanceof Entry.Blank);
      counts.set(row, named ? 1 : 0);
    }
  }

  /** Takes over one cell's entry; {@link #run} then calculates what follows. */
  void entered(String tableId, int row, int position, Map<Reference, BitSet> changed) {
    TableDefinition table = blueprint.table(tableId);
    ColumnState state = states.get(table.columns().get(position).reference());
    state.enter(row, contents.row(tableId, row).entry(position));
    mark(changed, state, row);
    if (position == 0 && !table.single()) {
      renamed(table, changed);
    }
  }

  /**
   * A row has another name: sums may count other rows, and words chosen from the names may mean
   * another row.
   */
  private void renamed(TableDefinition table, Map<Reference, BitSet> changed) {
    count(table);
    for (ColumnState state : states.values()) {
      if (state.table.equals(table.id())) {
        state.wholeColumn.forEach(ColumnState::allDirty);
      }
      boolean chooses =
          state.column.words().stream()
              .anyMatch(
                  list -> list instanceof WordList.RowsOf rows && rows.table().equals(table.id()));
      boolean names = state.names() && state.table.equals(table.id());
      if (chooses || names) {
        state.gauge(contents.system(), gaugedBy(state));
        for (int row = 0; row < contents.count(state.table); row++) {
          if (state.column.takesEntries()) {
            state.enter(row, contents.row(state.table, row).entry(state.position));
          }
          mark(changed, state, row);
        }
        if (!state.column.takesEntries()) {
          state.allDirty();
        }
      }
    }
  }

  private static void mark(Map<Reference, BitSet> changed, ColumnState state, int row) {
    changed.computeIfAbsent(state.column.reference(), any -> new BitSet()).set(row);
  }

  /** Calculates what is out of date, in order, and adds the cells that changed. */
  void run(Map<Reference, BitSet> changed) {
    for (ColumnState state : order) {
      if (state.dirty.isEmpty()) {
        continue;
      }
      BitSet blocks = (BitSet) state.dirty.clone();
      state.dirty.clear();
      if (state.program == null) {
        spread(state, blocks);
        continue;
      }
      state.program.prepare();
      BitSet different = new BitSet();
      for (int block = blocks.nextSetBit(0); block >= 0; block = blocks.nextSetBit(block + 1)) {
        BitSet rows = state.recalculate(block);
        if (!rows.isEmpty()) {
          different.set(block);
          changed.computeIfAbsent(state.column.reference(), any -> new BitSet()).or(rows);
        }
      }
      spread(state, different);
    }
  }

  private static void spread(ColumnState state, BitSet blocks) {
    if (blocks.isEmpty()) {
      return;
    }
    state.sameRow.forEach(dependent -> dependent.dirty.or(blocks));
    state.wholeColumn.forEach(ColumnState::allDirty);
  }

  /** Returns the words a column of choices can hold, as things stand. */
  List<String> list(Column column) {
    WordList words = column.words().orElse(null);
    if (words == null) {
      return List.of();
    }
    return words instanceof WordList.RowsOf rows
        ? names(rows.table())
        : words.constant().orElseThrow();
  }

  private List<String> names(String table) {
    List<String> names = new ArrayList<>();
    for (Row row : contents.rows(table)) {
      names.add(row.entry(0) instanceof Entry.Words name ? name.text() : "");
    }
    return names;
  }

  /** Returns the words whose places are the numbers of a column; of names, the names themselves. */
  private List<String> gaugedBy(ColumnState state) {
    return state.names() ? names(state.table) : list(state.column);
  }

  /** Returns a column's formula in plain numbers of the system in force. */
  Formula plain(Reference column) {
    return plain.get(column);
  }

  @Override
  public BlockColumn column(Reference reference) {
    return states.get(reference).values;
  }

  @Override
  public BlockColumn given(Reference reference) {
    return states.get(reference).given;
  }

  @Override
  public BlockColumn counted(Reference reference) {
    return counted.get(reference.table());
  }

  @Override
  public boolean single(Reference reference) {
    return blueprint.table(reference.table()).single();
  }

  @Override
  public List<Integer> positions(Reference reference, List<String> words) {
    List<String> list =
        blueprint.column(reference).words().flatMap(WordList::constant).orElseThrow();
    return words.stream()
        .map(
            word -> {
              if (!list.contains(word)) {
                throw new IllegalArgumentException(reference.name() + " cannot be " + word);
              }
              return list.indexOf(word);
            })
        .toList();
  }

  @Override
  public UnitSystem system() {
    return contents.system();
  }
}
