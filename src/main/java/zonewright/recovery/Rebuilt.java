package zonewright.recovery;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import zonewright.sheet.Blueprint;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.sheet.TableDefinition;
import zonewright.units.UnitSystem;

/** A book that is put together again from the lines of its differences. */
final class Rebuilt {
  private final Blueprint blueprint;
  private final Map<String, Map<Long, Map<String, Entry>>> cells = new HashMap<>();
  private final Map<String, List<Long>> order = new HashMap<>();
  private Optional<UnitSystem> system = Optional.empty();

  Rebuilt(Blueprint blueprint) {
    this.blueprint = blueprint;
  }

  /**
   * Takes a line in.
   *
   * @throws IllegalArgumentException when it is none of ours
   */
  void take(String line) {
    String[] parts = line.split("\t", -1);
    switch (parts[0]) {
      case "units" -> system = Optional.of(UnitSystem.valueOf(parts[1]));
      case "rows" -> {
        List<Long> ids = new ArrayList<>();
        for (String id : parts[2].split(" ", -1)) {
          if (!id.isEmpty()) {
            ids.add(Long.valueOf(id));
          }
        }
        order.put(parts[1], ids);
      }
      case "cells" -> {
        Map<String, Entry> row =
            cells
                .computeIfAbsent(parts[1], any -> new HashMap<>())
                .computeIfAbsent(Long.valueOf(parts[2]), any -> new HashMap<>());
        for (int i = 3; i + 1 < parts.length; i += 2) {
          row.put(parts[i], EntryText.read(parts[i + 1]));
        }
      }
      default -> throw new IllegalArgumentException("no line of a record: " + parts[0]);
    }
  }

  /** Returns the book; none where nothing was taken in. */
  Optional<BookSnapshot> snapshot() {
    if (system.isEmpty()) {
      return Optional.empty();
    }
    Map<String, List<Row>> tables = new HashMap<>();
    for (TableDefinition table : blueprint.tables()) {
      List<Row> rows = new ArrayList<>();
      for (long id : order.getOrDefault(table.id(), List.of())) {
        Map<String, Entry> known =
            cells.getOrDefault(table.id(), Map.of()).getOrDefault(id, Map.of());
        List<Entry> entries = new ArrayList<>();
        for (Column column : table.columns()) {
          entries.add(known.getOrDefault(column.reference().column(), Entry.BLANK));
        }
        rows.add(Row.of(id, entries));
      }
      tables.put(table.id(), rows);
    }
    return Optional.of(new BookSnapshot(system.get(), tables));
  }
}
