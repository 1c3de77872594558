package zonewright.design;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import zonewright.emitters.Emitters;
import zonewright.formula.Reference;
import zonewright.pipes.Laterals;
import zonewright.pipes.Together;
import zonewright.pipes.Valves;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.Remedy;
import zonewright.sheet.Row;
import zonewright.trade.Sheets;

/**
 * Parts a zone that takes several valves into as many rows, in one edit: whole heads spread evenly,
 * area, flow and plants with them, so that no part draws more than the available flow.
 */
public final class EvenSplit {
  /** The split as a cure of what is found wrong with a zone's flow. */
  public static final Remedy.Maker REMEDY = (book, cell, row) -> edit(book, row);

  /** What is shared out by heads, if it was typed. */
  private static final List<Column> SHARED = List.of(Emitters.AREA, Emitters.ZONE_FLOW);

  /** What may have been typed for the whole and holds for no part of it. */
  private static final List<Column> OF_THE_WHOLE =
      List.of(
          Valves.VALVE_FLOW, Together.MAIN_FLOW, Laterals.COUNT, Laterals.OUTLETS, Laterals.FLOW);

  private static final int LETTERS = 26;

  private EvenSplit() {}

  /** Says whether the zone in a row, counted from 0, is known to need more than one valve. */
  public static boolean helps(Book book, int row) {
    return book.number(Valves.VALVES_NEEDED.reference(), row) > 1;
  }

  /** Returns the edit that splits every zone that needs it; none where no zone does. */
  public static Optional<Edit> ofAll(Book book) {
    List<Edit> parts = new ArrayList<>();
    for (int row = book.rows(Sheets.ZONES) - 1; row >= 0; row--) {
      edit(book, row).ifPresent(parts::add);
    }
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(new Edit.Several("even split of all zones that need it", parts));
  }

  /**
   * Returns the edit that splits the zone in a row, counted from 0; none where it needs no more
   * than one valve, or where that is not known.
   */
  public static Optional<Edit> edit(Book book, int row) {
    if (!helps(book, row)) {
      return Optional.empty();
    }
    int valves = (int) book.number(Valves.VALVES_NEEDED.reference(), row);
    int count = (int) book.number(Emitters.EMITTER_COUNT.reference(), row);
    List<Integer> heads = shares(count, valves);
    List<String> names = names(book, row, heads.size());
    List<Map<Reference, Entry>> parts = new ArrayList<>();
    for (int part = 0; part < heads.size(); part++) {
      Map<Reference, Entry> entries = part(book, row, heads, part);
      entries.put(Facts.ZONE_NAME.reference(), new Entry.Words(names.get(part)));
      parts.add(entries);
    }
    return Optional.of(new Edits(book).divided(Sheets.ZONES, row, parts));
  }

  /** Returns whole numbers that differ by at most one and add up, the greater ones first. */
  static List<Integer> shares(int whole, int parts) {
    List<Integer> shares = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      shares.add(whole / parts + (part < whole % parts ? 1 : 0));
    }
    return shares;
  }

  private static Map<Reference, Entry> part(Book book, int row, List<Integer> heads, int part) {
    Map<Reference, Entry> entries = new HashMap<>();
    double all = heads.stream().mapToInt(Integer::intValue).sum();
    for (Column column : SHARED) {
      if (book.entry(column.reference(), row) instanceof Entry.Figure figure) {
        entries.put(column.reference(), new Entry.Figure(figure.value() * heads.get(part) / all));
      }
    }
    entries.put(Emitters.EMITTER_COUNT.reference(), new Entry.Figure(heads.get(part)));
    Reference plants = Emitters.PLANT_COUNT.reference();
    if (book.entry(plants, row) instanceof Entry.Figure figure && figure.value() >= heads.size()) {
      int mine = shares((int) figure.value(), heads.size()).get(part);
      entries.put(plants, new Entry.Figure(mine));
    }
    OF_THE_WHOLE.forEach(column -> entries.put(column.reference(), Entry.BLANK));
    return entries;
  }

  private static List<String> names(Book book, int row, int parts) {
    Set<String> taken = new HashSet<>();
    for (Row each : book.contents().rows(Sheets.ZONES)) {
      if (each.entry(0) instanceof Entry.Words words) {
        taken.add(words.text().toLowerCase(Locale.ROOT));
      }
    }
    Entry entry = book.entry(Facts.ZONE_NAME.reference(), row);
    String whole = entry instanceof Entry.Words words ? words.text() : Integer.toString(row + 1);
    boolean letters = Character.isDigit(whole.charAt(whole.length() - 1)) && parts <= LETTERS;
    List<String> names = new ArrayList<>();
    for (int part = 1; part <= parts; part++) {
      String plain =
          letters ? whole + (char) ('a' + part - 1) : whole + " " + part + " of " + parts;
      String name = plain;
      for (int more = 2; taken.contains(name.toLowerCase(Locale.ROOT)); more++) {
        name = plain + " (" + more + ")";
      }
      names.add(name);
    }
    return names;
  }
}
