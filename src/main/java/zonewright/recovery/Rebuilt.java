package zonewright.recovery;

import java.nio.file.FileSystem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.Remark;
import zonewright.sheet.Row;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.Tint;
import zonewright.units.UnitSystem;

/** A book that is put together again from the lines of its differences. */
final class Rebuilt {
  private final Schema schema;
  private final Map<String, Map<Long, Map<String, Entry>>> cells = new HashMap<>();
  private final Map<String, Map<Long, Map<String, Remark>>> remarks = new HashMap<>();
  private final Map<String, List<Long>> order = new HashMap<>();
  private final Map<String, Integer> over = new HashMap<>();
  private Optional<UnitSystem> system = Optional.empty();
  private final List<BookSnapshot> saves = new ArrayList<>();
  private Optional<BookSnapshot> base = Optional.empty();
  private Optional<String> head = Optional.empty();
  private final Optional<String> password;
  private Optional<RecordLock> lock = Optional.empty();
  private boolean understood = true;
  private boolean locked;

  Rebuilt(Schema schema) {
    this(schema, Optional.empty());
  }

  /**
   * Makes a book of nothing yet.
   *
   * @param password opens the groups that are closed
   */
  Rebuilt(Schema schema, Optional<String> password) {
    this.schema = schema;
    this.password = password;
  }

  /** Takes the lines of a group in; a line that is none of ours is left out. */
  void takeAll(List<String> lines) {
    if (RecordLock.closes(lines)) {
      Optional<List<String>> open = lock.flatMap(known -> known.opened(lines));
      locked |= open.isEmpty();
      open.ifPresent(this::takeEach);
    } else {
      takeEach(lines);
    }
  }

  private void takeEach(List<String> lines) {
    for (String line : lines) {
      try {
        take(line);
      } catch (IllegalArgumentException | IndexOutOfBoundsException strange) {
        understood = false;
      }
    }
  }

  /**
   * Takes a line in.
   *
   * @throws IllegalArgumentException or IndexOutOfBoundsException when it is none of ours
   */
  void take(String line) {
    String[] parts = line.split("\t", -1);
    switch (parts[0]) {
      case RecordLock.LOCKED -> lock = password.map(word -> RecordLock.of(word, line));
      case "for" -> head = Optional.of(line);
      case "over" -> UnsavedFile.over(parts, over);
      case UnsavedFile.BASE -> base = snapshot();
      case UnsavedFile.SAVING -> snapshot().ifPresent(saves::add);
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
        Map<String, Entry> row = row(cells, parts);
        for (int i = 3; i + 1 < parts.length; i += 2) {
          row.put(parts[i], EntryText.read(parts[i + 1]));
        }
      }
      case "remarks" -> {
        Map<String, Remark> row = row(remarks, parts);
        for (int i = 3; i + 2 < parts.length; i += 3) {
          row.put(
              EntryText.plain(parts[i]),
              new Remark(EntryText.plain(parts[i + 2]), Tint.valueOf(parts[i + 1])));
        }
      }
      default -> throw new IllegalArgumentException("no line of a record: " + parts[0]);
    }
  }

  private static <T> Map<String, T> row(
      Map<String, Map<Long, Map<String, T>>> tables, String[] parts) {
    return tables
        .computeIfAbsent(parts[1], any -> new HashMap<>())
        .computeIfAbsent(Long.valueOf(parts[2]), any -> new HashMap<>());
  }

  /** Says whether every line taken in was one of ours. */
  boolean understood() {
    return understood && !locked;
  }

  /** Says whether there are groups that the password does not open. */
  boolean locked() {
    return locked;
  }

  /**
   * Returns whose the record is; none where that was not taken in.
   *
   * @param disk where its design lies
   */
  Optional<UnsavedFile.Head> head(FileSystem disk) {
    try {
      return head.map(line -> UnsavedFile.Head.read(line, over, disk));
    } catch (IllegalArgumentException | IndexOutOfBoundsException strange) {
      return Optional.empty();
    }
  }

  /** Returns the book as the design's file held it. */
  Optional<BookSnapshot> base() {
    return base;
  }

  /** Returns the book as it was about to be saved, each time. */
  List<BookSnapshot> saves() {
    return List.copyOf(saves);
  }

  /** Returns the book; none where nothing was taken in. */
  Optional<BookSnapshot> snapshot() {
    if (system.isEmpty()) {
      return Optional.empty();
    }
    Map<String, List<Row>> tables = new HashMap<>();
    for (TableDefinition table : schema.tables()) {
      List<Row> rows = new ArrayList<>();
      for (long id : order.getOrDefault(table.id(), List.of())) {
        Map<String, Entry> known =
            cells.getOrDefault(table.id(), Map.of()).getOrDefault(id, Map.of());
        Map<String, Remark> noted =
            remarks.getOrDefault(table.id(), Map.of()).getOrDefault(id, Map.of());
        List<Entry> entries = new ArrayList<>();
        for (Column column : table.columns()) {
          String name = column.reference().column();
          entries.add(known.getOrDefault(name, Entry.BLANK));
        }
        rows.add(Row.of(id, entries, noted));
      }
      tables.put(table.id(), whole(table, rows));
    }
    return Optional.of(new BookSnapshot(system.get(), tables));
  }

  /** A table that has the same rows in every design has them here too, whatever was lost. */
  private static List<Row> whole(TableDefinition table, List<Row> rows) {
    List<String> names =
        table.rows() instanceof TableDefinition.Rows.Named named
            ? named.names()
            : table.single() ? List.of("") : List.of();
    for (int i = rows.size(); i < names.size(); i++) {
      List<Entry> entries =
          new ArrayList<>(Collections.nCopies(table.columns().size(), Entry.BLANK));
      entries.set(0, Entry.words(names.get(i)));
      rows.add(Row.of(-1L - i, entries));
    }
    return names.isEmpty() ? rows : rows.subList(0, names.size());
  }
}
