package zonewright.alternatives;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.LongSupplier;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;

/** Makes an alternative out of the design and its changes; what cannot be done is left and told. */
final class AppliedChanges {
  private final Schema schema;
  private final BookSnapshot design;
  private final Map<String, Map<Long, Row>> rows = new HashMap<>();
  private final Map<String, List<Long>> order = new HashMap<>();
  private final Map<String, RowNames> names = new HashMap<>();
  private final Map<Integer, String> problems = new TreeMap<>();

  /** The tables whose rows are others or have other names, which those alongside follow. */
  private final Set<String> rearranged = new HashSet<>();

  private final LongSupplier freshIds;

  private AppliedChanges(Schema schema, BookSnapshot design) {
    this.schema = schema;
    this.design = design;
    this.freshIds = new FreshIds(design);
  }

  /** Gives identities no row of a design has, all below zero. */
  private static final class FreshIds implements LongSupplier {
    private final BookSnapshot design;
    private OptionalLong last = OptionalLong.empty();

    FreshIds(BookSnapshot design) {
      this.design = design;
    }

    @Override
    public long getAsLong() {
      long least =
          last.orElseGet(
              () ->
                  design.tables().values().stream()
                      .flatMap(List::stream)
                      .mapToLong(Row::id)
                      .reduce(0, Math::min));
      last = OptionalLong.of(least - 1);
      return least - 1;
    }
  }

  /**
   * What came of it.
   *
   * @param made the alternative; rows that were put in have identities of their own
   * @param problems for each change that could not be done, by its place in the list, one sentence
   */
  record Made(BookSnapshot made, Map<Integer, String> problems) {}

  /** Does some changes to a design: rows put in first, rows taken out last. */
  static Made of(Schema schema, BookSnapshot design, List<Change> changes) {
    AppliedChanges changed = new AppliedChanges(schema, design);
    changed.each(changes, Change.Kind.ROW_ADDED);
    changed.each(changes, Change.Kind.TYPED);
    changed.each(changes, Change.Kind.CLEARED);
    changed.each(changes, Change.Kind.ROW_GONE);
    return new Made(changed.made(), changed.problems);
  }

  private void each(List<Change> changes, Change.Kind kind) {
    for (int i = 0; i < changes.size(); i++) {
      if (changes.get(i).kind() == kind) {
        Optional<String> problem = perform(changes.get(i));
        if (problem.isPresent()) {
          problems.put(i, problem.get());
        }
      }
    }
  }

  private Optional<String> perform(Change change) {
    Optional<TableDefinition> found =
        schema.tables().stream()
            .filter(table -> table.title().equalsIgnoreCase(change.sheet().strip()))
            .filter(table -> !Differences.about(table))
            .findFirst();
    if (found.isEmpty()) {
      return Optional.of(
          "there is no sheet “%s” that could be otherwise".formatted(change.sheet()));
    }
    TableDefinition table = found.get();
    open(table.other().orElse(table.id()));
    open(table.id());
    return switch (change.kind()) {
      case ROW_ADDED -> add(table, change);
      case TYPED, CLEARED -> type(table, change);
      case ROW_GONE -> remove(table, change);
    };
  }

  private void open(String id) {
    if (!rows.containsKey(id)) {
      Map<Long, Row> byId = new LinkedHashMap<>();
      design.rows(id).forEach(row -> byId.put(row.id(), row));
      rows.put(id, byId);
      if (schema.table(id).other().isEmpty()) {
        order.put(id, new ArrayList<>(byId.keySet()));
        names.put(id, new RowNames(design.rows(id)));
      }
    }
  }

  private Optional<String> add(TableDefinition table, Change change) {
    if (!(table.rows() instanceof TableDefinition.Rows.Free)) {
      return Optional.of("no row can be put into the sheet " + table.title());
    }
    RowNames told = names.get(table.id());
    OptionalLong above = told.row(change.value());
    if (!change.value().isBlank() && above.isEmpty()) {
      return noRow(table, change.value());
    }
    long fresh = freshIds.getAsLong();
    if (!told.put(change.row().strip(), fresh)) {
      return Optional.of(
          change.row().isBlank()
              ? "the row to put in has no name"
              : "there is a %s “%s” already".formatted(table.rowWord(), change.row()));
    }
    rows.get(table.id()).put(fresh, blank(table, fresh, Entry.words(change.row())));
    List<Long> places = order.get(table.id());
    places.add(above.isEmpty() ? 0 : places.indexOf(above.getAsLong()) + 1, fresh);
    rearranged.add(table.id());
    return Optional.empty();
  }

  private static Row blank(TableDefinition table, long id, Entry name) {
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < table.columns().size(); i++) {
      entries.add(i == 0 ? name : Entry.BLANK);
    }
    return Row.of(id, entries);
  }

  private static Optional<String> noRow(TableDefinition table, String row) {
    return Optional.of("there is no %s “%s” in the design".formatted(table.rowWord(), row));
  }

  /** Returns the row a change means; none where there is none. */
  private Optional<Row> row(TableDefinition table, Change change) {
    String leading = table.other().orElse(table.id());
    if (table.single()) {
      return rows.get(table.id()).values().stream().findFirst();
    }
    OptionalLong id = names.get(leading).row(change.row());
    return id.isEmpty()
        ? Optional.empty()
        : Optional.of(
            rows.get(table.id())
                .computeIfAbsent(
                    id.getAsLong(),
                    fresh -> blank(table, fresh, rows.get(leading).get(fresh).entry(0))));
  }

  private Optional<String> type(TableDefinition table, Change change) {
    Optional<Column> column =
        table.columns().stream()
            .filter(each -> each.name().equalsIgnoreCase(change.column().strip()))
            .findFirst();
    if (column.isEmpty()) {
      return Optional.of(
          "there is no column “%s” on the sheet %s".formatted(change.column(), table.title()));
    }
    if (!table.takesEntries(column.get()) || Differences.about(column.get())) {
      return Optional.of(
          "nothing can be typed into %s by an alternative".formatted(column.get().name()));
    }
    Optional<Row> row = row(table, change);
    if (row.isEmpty()) {
      return noRow(table, change.row());
    }
    Entry entry =
        change.kind() == Change.Kind.CLEARED
            ? Entry.BLANK
            : CellValues.read(column.get(), change.value(), design.system());
    int at = table.columns().indexOf(column.get());
    rows.get(table.id()).put(row.get().id(), with(table, row.get(), at, entry));
    if (at == 0) {
      rearranged.add(table.id());
    }
    return Optional.empty();
  }

  private Optional<String> remove(TableDefinition table, Change change) {
    OptionalLong id = names.get(table.id()).row(change.row());
    if (!(table.rows() instanceof TableDefinition.Rows.Free) || id.isEmpty()) {
      return noRow(table, change.row());
    }
    order.get(table.id()).remove(id.getAsLong());
    rearranged.add(table.id());
    return Optional.empty();
  }

  private BookSnapshot made() {
    Map<String, List<Row>> tables = new HashMap<>(design.tables());
    for (TableDefinition table : schema.tables()) {
      String leading = table.other().orElse(table.id());
      if (rearranged.contains(leading) || rows.containsKey(table.id())) {
        open(table.id());
        tables.put(
            table.id(), order.get(leading).stream().map(id -> row(table, leading, id)).toList());
      }
    }
    return new BookSnapshot(design.system(), tables);
  }

  /** Returns a row as it is now, under the name of the row it stands beside. */
  private Row row(TableDefinition table, String leading, long id) {
    Entry name = rows.get(leading).get(id).entry(0);
    Row own = rows.get(table.id()).get(id);
    return own == null
        ? blank(table, id, name)
        : own.entry(0).equals(name) ? own : with(table, own, 0, name);
  }

  private static Row with(TableDefinition table, Row row, int at, Entry entry) {
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < table.columns().size(); i++) {
      entries.add(i == at ? entry : row.entry(i));
    }
    return Row.of(row.id(), entries, row.remarks());
  }
}
