package zonewright.sheet;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
 *
 * <p>A new calculation has calculated nothing: until {@link #settle} each column is made ready,
 * with what it depends on, when its numbers are first asked for. So a window need not wait for what
 * it does not show.
 */
public final class Calculation implements Workspace {
  private final Schema schema;
  private final Contents contents;
  private final Map<Reference, ColumnState> states = new LinkedHashMap<>();
  private final List<ColumnState> order = new ArrayList<>();
  private final Map<String, BlockColumn> counted = new HashMap<>();
  private final Map<Reference, Formula> plain = new HashMap<>();
  private final IdentityHashMap<Formula, Part> parts = new IdentityHashMap<>();
  private UnitSystem compiledFor;

  /** Whether all is calculated, and is so again after each change. */
  private boolean settled;

  /** Whether it is known which rows count. */
  private boolean counts;

  Calculation(Schema schema, Contents contents) {
    this.schema = schema;
    this.contents = contents;
    for (TableDefinition table : schema.tables()) {
      counted.put(table.id(), new BlockColumn());
      for (int position = 0; position < table.columns().size(); position++) {
        Column column = table.columns().get(position);
        states.put(column.reference(), new ColumnState(column, position, table.id()));
      }
    }
    schema.order().forEach(column -> order.add(states.get(column.reference())));
    order.forEach(this::connect);
  }

  private void connect(ColumnState state) {
    Dependencies needs = schema.dependencies(state.column).orElse(null);
    if (needs == null) {
      return;
    }
    for (Reference cell : needs.cells()) {
      ColumnState need = states.get(cell);
      (schema.sameRows(cell.table(), state.table) ? need.sameRow : need.wholeColumn).add(state);
    }
    needs.columns().forEach(column -> states.get(column).wholeColumn.add(state));
    needs.cells().forEach(cell -> state.needs.add(states.get(cell)));
    needs.columns().forEach(column -> state.needs.add(states.get(column)));
  }

  /** Takes over all entries anew; calculates everything, or lets it wait until it is asked for. */
  void rebuild() {
    if (compiledFor != contents.system()) {
      compiledFor = contents.system();
      plain.clear();
      order.forEach(state -> state.program = null);
    }
    counts = false;
    order.forEach(state -> state.waits = true);
    if (settled) {
      settled = false;
      settle();
    }
  }

  /** Says whether all is calculated. */
  boolean settled() {
    return settled;
  }

  /** Calculates whatever nobody asked for yet. */
  void settle() {
    if (!settled) {
      order.forEach(this::makeReady);
      settled = true;
    }
  }

  /** Calculates every formula of some tables in every row; nothing is compared. */
  public void calculateAll(Set<String> tables) {
    order.stream().filter(state -> tables.contains(state.table)).forEach(this::calculate);
  }

  private void makeReady(ColumnState state) {
    if (state.waits) {
      state.waits = false;
      state.needs.forEach(this::makeReady);
      takeOver(state);
      calculate(state);
    }
  }

  private void takeOver(ColumnState state) {
    int rows = contents.count(state.table);
    state.resize(rows);
    state.gauge(contents.system(), gaugedBy(state));
    for (int row = 0; row < rows && state.column.takesEntries(); row++) {
      state.enter(row, contents.row(state.table, row).entry(state.position));
    }
  }

  private void calculate(ColumnState state) {
    compile(state);
    if (state.program != null && state.values.rows() > 0) {
      countAll();
      state.program.prepare();
      for (int block = 0; block < BlockColumn.blocksFor(state.values.rows()); block++) {
        state.calculate(block);
      }
    }
    state.dirty.clear();
  }

  private void compile(ColumnState state) {
    if (state.program == null && state.column.formula().isPresent()) {
      state.program = ColumnProgram.of(plain(state.column.reference()), this);
    }
  }

  /** Finds which rows count, unless that is known. */
  private void countAll() {
    if (!counts) {
      counts = true;
      schema.tables().forEach(this::count);
    }
  }

  private void count(TableDefinition table) {
    BlockColumn counts = counted.get(table.id());
    counts.resize(contents.count(table.id()));
    for (int row = 0; row < counts.rows(); row++) {
      counts.set(row, inUse(table, row) ? 1 : 0);
    }
  }

  /** A row counts where something is entered in it, or in the row it stands alongside. */
  private boolean inUse(TableDefinition table, int row) {
    return table.single()
        || table.rows() instanceof TableDefinition.Rows.Named
        || !contents.row(table.other().orElse(table.id()), row).isBlank();
  }

  /** Takes over one cell's entry; {@link #run} then calculates what follows. */
  void entered(String tableId, int row, int position, Map<Reference, BitSet> changed) {
    TableDefinition table = schema.table(tableId);
    ColumnState state = states.get(table.columns().get(position).reference());
    state.enter(row, contents.row(tableId, row).entry(position));
    mark(changed, state, row);
    if (position == 0 && !table.single()) {
      renamed(table, changed);
    } else if (counts && (counted.get(tableId).at(row) != 0) != inUse(table, row)) {
      countAgain(table);
      schema.alongside(tableId).forEach(this::countAgain);
    }
  }

  /**
   * Takes over tables whose rows came, went or moved; {@link #run} then calculates what follows.
   */
  void rowsChanged(Set<String> tables, Map<Reference, BitSet> changed) {
    countAll();
    for (ColumnState state : states.values()) {
      if (tables.contains(state.table)) {
        takeOver(state);
      }
    }
    tables.forEach(table -> renamed(schema.table(table), changed));
  }

  /** Other rows count now: whatever looks at whole columns of the table is out of date. */
  private void countAgain(TableDefinition table) {
    count(table);
    for (ColumnState state : states.values()) {
      if (state.table.equals(table.id())) {
        state.wholeColumn.forEach(ColumnState::allDirty);
      }
    }
  }

  /**
   * A row has another name: sums may count other rows, and words chosen from the names may mean
   * another row.
   */
  private void renamed(TableDefinition table, Map<Reference, BitSet> changed) {
    countAgain(table);
    for (ColumnState state : states.values()) {
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
    BitSet spare = new BitSet();
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
      BitSet known = changed.get(state.column.reference());
      BitSet rows = known == null ? spare : known;
      for (int block = blocks.nextSetBit(0); block >= 0; block = blocks.nextSetBit(block + 1)) {
        if (state.recalculate(block, rows)) {
          different.set(block);
        }
      }
      if (known == null && !rows.isEmpty()) {
        changed.put(state.column.reference(), rows);
        spare = new BitSet(state.values.rows());
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
  Formula plain(Reference reference) {
    Formula known = plain.get(reference);
    if (known == null) {
      Column column = schema.column(reference);
      Formula formula = column.formula().orElseThrow();
      known = Expressed.in(formula, compiledFor, column.kind().unit(compiledFor));
      plain.put(reference, known);
    }
    return known;
  }

  /** Says whether a row of a table counts in sums. */
  boolean counts(String table, int row) {
    countAll();
    return counted.get(table).at(row) != 0;
  }

  /** Returns the number in a cell, calculated if need be. */
  double number(Reference reference, int row) {
    ColumnState state = states.get(reference);
    makeReady(state);
    return state.values.at(row);
  }

  /**
   * Returns what a part of a formula of plain numbers comes to in a row, by the same kernels that
   * calculate the whole, or not-a-number.
   */
  double part(Formula plain, String table, int row) {
    return parts.computeIfAbsent(plain, any -> new Part(plain)).at(row, contents.count(table));
  }

  /** Forgets what parts came to, for something changed. */
  void forgetParts() {
    parts.clear();
  }

  /** A part of a formula, calculated block by block as its rows are asked for. */
  private final class Part {
    private final ColumnProgram program;
    private final Map<Integer, double[]> blocks = new HashMap<>();

    Part(Formula plain) {
      Dependencies needs = Dependencies.of(plain);
      needs.cells().forEach(cell -> makeReady(states.get(cell)));
      needs.columns().forEach(column -> makeReady(states.get(column)));
      countAll();
      program = ColumnProgram.of(plain, Calculation.this);
      program.prepare();
    }

    double at(int row, int rows) {
      double[] block = blocks.computeIfAbsent(row / BlockColumn.BLOCK, at -> block(at, rows));
      return block[row % BlockColumn.BLOCK];
    }

    private double[] block(int at, int rows) {
      int count = Math.min(BlockColumn.BLOCK, rows - at * BlockColumn.BLOCK);
      double[] numbers = new double[count];
      program.run(at, count, numbers);
      return numbers;
    }
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
    return schema.table(reference.table()).single();
  }

  @Override
  public List<Integer> positions(Reference reference, List<String> words) {
    List<String> list = schema.column(reference).words().flatMap(WordList::constant).orElseThrow();
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
