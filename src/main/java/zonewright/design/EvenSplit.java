package zonewright.design;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import zonewright.emitters.Emitters;
import zonewright.formula.Reference;
import zonewright.pipes.Laterals;
import zonewright.pipes.Valves;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Entry;
import zonewright.sheet.Remedy;
import zonewright.sheet.Row;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.trade.Sheets;

/**
 * Parts a zone that takes several valves into as many rows, in one edit: whole heads spread evenly,
 * area, flow and plants with them, so that no part draws more than the available flow.
 */
public final class EvenSplit {
  /** The split as a cure of what is found wrong with a zone's flow. */
  public static final Remedy.Maker REMEDY = (book, cell, row) -> edit(book, row);

  /** What is shared out by heads. */
  private static final List<Column> SHARED = List.of(Emitters.AREA, Emitters.ZONE_FLOW);

  /** What was typed for the whole and holds for no part of it. */
  private static final Set<Reference> OF_THE_WHOLE =
      Set.of(
          Valves.VALVE_FLOW.reference(),
          Valves.MAIN_FLOW.reference(),
          Laterals.COUNT.reference(),
          Laterals.OUTLETS.reference(),
          Laterals.FLOW.reference());

  private final Book book;
  private final int row;
  private final List<Integer> heads;
  private final List<String> names;

  private EvenSplit(Book book, int row, int parts) {
    this.book = book;
    this.row = row;
    this.heads = shares((int) book.number(Emitters.EMITTER_COUNT.reference(), row), parts);
    this.names = names(parts);
  }

  /**
   * Returns the edit that splits the zone in a row, counted from 0; none where it needs no more
   * than one valve, or where that is not known.
   */
  public static Optional<Edit> edit(Book book, int row) {
    double valves = book.number(Valves.VALVES_NEEDED.reference(), row);
    return valves > 1 ? Optional.of(new EvenSplit(book, row, (int) valves).edit()) : Optional.empty();
  }

  /** Returns whole numbers that differ by at most one and add up, the greater ones first. */
  static List<Integer> shares(int whole, int parts) {
    List<Integer> shares = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      shares.add(whole / parts + (part < whole % parts ? 1 : 0));
    }
    return shares;
  }

  private Edit edit() {
    Row whole = book.contents().row(Sheets.ZONES, row);
    String name = "split into " + heads.size() + " zones";
    List<Edit.Change> changes = new ArrayList<>();
    List<Row> fresh = new ArrayList<>();
    for (int part = 0; part < heads.size(); part++) {
      Row shared = part(part == 0 ? whole : book.contents().copyOf(whole), part);
      if (part > 0) {
        fresh.add(shared);
      }
      for (int i = 0; part == 0 && i < columns(Sheets.ZONES).size(); i++) {
        add(changes, Sheets.ZONES, whole.id(), i, whole.entry(i), shared.entry(i));
      }
    }
    List<Edit.Change> beside = new ArrayList<>();
    for (TableDefinition table : book.blueprint().alongside(Sheets.ZONES)) {
      beside(table, fresh, beside);
    }
    mentions(changes, whole.entry(0));
    return new Edit.Several(
        name,
        List.of(
            new Edit.InsertRows(name, Sheets.ZONES, row + 1, fresh),
            new Edit.SetCells(name, changes),
            new Edit.SetCells(name, beside)));
  }

  private List<Column> columns(String table) {
    return book.blueprint().table(table).columns();
  }

  private Row part(Row whole, int part) {
    Row shared = whole.with(0, new Entry.Words(names.get(part)));
    double all = heads.stream().mapToInt(Integer::intValue).sum();
    for (Column column : SHARED) {
      int at = book.position(column.reference());
      if (whole.entry(at) instanceof Entry.Figure figure) {
        shared = shared.with(at, new Entry.Figure(figure.value() * heads.get(part) / all));
      }
    }
    int count = book.position(Emitters.EMITTER_COUNT.reference());
    shared = shared.with(count, new Entry.Figure(heads.get(part)));
    int plants = book.position(Emitters.PLANT_COUNT.reference());
    if (whole.entry(plants) instanceof Entry.Figure figure && figure.value() >= heads.size()) {
      int mine = shares((int) figure.value(), heads.size()).get(part);
      shared = shared.with(plants, new Entry.Figure(mine));
    }
    return shared;
  }

  /** Every part has the pipes of the whole, but not the counts and flows typed for it. */
  private void beside(TableDefinition table, List<Row> fresh, List<Edit.Change> changes) {
    Row own = book.contents().row(table.id(), row);
    for (int i = 1; i < table.columns().size(); i++) {
      Entry entry = own.entry(i);
      if (OF_THE_WHOLE.contains(table.columns().get(i).reference())) {
        add(changes, table.id(), own.id(), i, entry, Entry.BLANK);
        continue;
      }
      for (Row part : fresh) {
        add(changes, table.id(), part.id(), i, Entry.BLANK, entry);
      }
    }
  }

  /** Where the zone is chosen by its name, its first part takes its place. */
  private void mentions(List<Edit.Change> changes, Entry name) {
    if (!(name instanceof Entry.Words words)) {
      return;
    }
    for (TableDefinition table : book.blueprint().tables()) {
      for (int i = 0; i < table.columns().size(); i++) {
        boolean names =
            table.columns().get(i).words().orElse(null) instanceof WordList.RowsOf list
                && list.table().equals(Sheets.ZONES);
        for (Row each : names ? book.contents().rows(table.id()) : List.<Row>of()) {
          if (each.entry(i) instanceof Entry.Words chosen
              && chosen.text().equalsIgnoreCase(words.text())) {
            Entry first = new Entry.Words(this.names.get(0));
            add(changes, table.id(), each.id(), i, chosen, first);
          }
        }
      }
    }
  }

  private static void add(
      List<Edit.Change> changes, String table, long row, int column, Entry before, Entry after) {
    if (!before.equals(after)) {
      changes.add(new Edit.Change(table, row, column, before, after));
    }
  }

  private List<String> names(int parts) {
    Set<String> taken = new HashSet<>();
    for (Row each : book.contents().rows(Sheets.ZONES)) {
      if (each.entry(0) instanceof Entry.Words words) {
        taken.add(words.text().toLowerCase(Locale.ROOT));
      }
    }
    Entry entry = book.contents().row(Sheets.ZONES, row).entry(0);
    String whole = entry instanceof Entry.Words words ? words.text() : Integer.toString(row + 1);
    boolean number = Character.isDigit(whole.charAt(whole.length() - 1));
    List<String> names = new ArrayList<>();
    for (int part = 1; part <= parts; part++) {
      String plain = whole + (number ? ", " : " ") + part + " of " + parts;
      String name = plain;
      for (int more = 2; taken.contains(name.toLowerCase(Locale.ROOT)); more++) {
        name = plain + " (" + more + ")";
      }
      names.add(name);
    }
    return names;
  }
}
