package zonewright.retrofit;

import static zonewright.trade.Sheets.FOUND;
import static zonewright.trade.Sheets.ZONES;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import zonewright.emitters.Emitters;
import zonewright.emitters.FieldTested;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;

/** Copies what was typed about zones between the sheets Found and Zones, in one edit. */
public final class ZoneCopy {
  private static final Set<Reference> FROM_TESTS =
      Set.of(FieldTested.RATE_BY_TEST.reference(), Emitters.DISTRIBUTION_UNIFORMITY.reference());

  private final Book book;
  private final Edits edits;

  /** Makes copies for a book as it is at each call. */
  public ZoneCopy(Book book) {
    this.book = book;
    this.edits = new Edits(book);
  }

  /**
   * Returns the edit that makes the proposed zones of the zones as found: a zone of the same name
   * is overwritten in what both sheets share, others are added, and each zone as found becomes the
   * zone of its name.
   */
  public Edit foundToProposed() {
    List<Edit> parts = new ArrayList<>(copied(FOUND, ZONES).parts());
    List<Edit> links = new ArrayList<>();
    for (int row = 0; row < book.rows(FOUND); row++) {
      Entry name = name(FOUND, row);
      if (name instanceof Entry.Words) {
        links.add(edits.set(AsFound.BECOMES.reference(), row, name));
      }
    }
    parts.add(new Edit.Several("links", links));
    return new Edit.Several("copy of the zones as found", parts);
  }

  /**
   * Returns the edit that takes the zones as they stand now for the zones as found: to start a
   * retrofit of a design that was entered as it is.
   */
  public Edit proposedToFound() {
    return new Edit.Several("copy of the zones to as found", copied(ZONES, FOUND).parts());
  }

  private Edit.Several copied(String from, String to) {
    Map<Column, Column> sources = sources(from, to);
    Map<String, Integer> there = new HashMap<>();
    for (int row = 0; row < book.rows(to); row++) {
      if (name(to, row) instanceof Entry.Words words) {
        there.putIfAbsent(words.text().toLowerCase(Locale.ROOT), row);
      }
    }
    List<Edit> parts = new ArrayList<>();
    List<Map<Column, Entry>> fresh = new ArrayList<>();
    for (int row = 0; row < book.rows(from); row++) {
      if (!(name(from, row) instanceof Entry.Words words)) {
        continue;
      }
      Integer at = there.get(words.text().toLowerCase(Locale.ROOT));
      Map<Column, Entry> entries = new LinkedHashMap<>();
      if (to.equals(FOUND)) {
        entries.put(book.schema().column(AsFound.BECOMES.reference()), words);
      }
      for (Map.Entry<Column, Column> each : sources.entrySet()) {
        entries.put(each.getKey(), taken(each.getValue(), row));
      }
      if (at == null) {
        entries.put(book.schema().table(to).columns().get(0), words);
        fresh.add(entries);
      } else {
        entries.forEach((column, entry) -> parts.add(edits.set(column.reference(), at, entry)));
      }
    }
    if (!fresh.isEmpty()) {
      parts.addAll(appended(to, fresh));
    }
    return new Edit.Several("copy", parts);
  }

  /** Appends rows and fills the rows that will stand alongside them. */
  private List<Edit> appended(String to, List<Map<Column, Entry>> fresh) {
    List<Column> columns = book.schema().table(to).columns();
    Edit.InsertRows rows =
        edits.appended(
            to,
            fresh.stream()
                .map(
                    entries ->
                        columns.stream()
                            .map(column -> entries.getOrDefault(column, Entry.BLANK))
                            .toList())
                .toList());
    List<Edit.Change> beside = new ArrayList<>();
    for (int i = 0; i < fresh.size(); i++) {
      long id = rows.rows().get(i).id();
      fresh
          .get(i)
          .forEach(
              (column, entry) -> {
                String table = column.reference().table();
                if (!table.equals(to) && !entry.equals(Entry.BLANK)) {
                  int position = book.position(column.reference());
                  beside.add(new Edit.Change(table, id, position, Entry.BLANK, entry));
                }
              });
    }
    return List.of(rows, new Edit.SetCells("cells beside them", beside));
  }

  /**
   * What both sides have and can be typed on the second, but for the name: from where to take it.
   */
  private Map<Column, Column> sources(String from, String to) {
    Map<String, Column> first = new HashMap<>();
    for (Column column : columns(from)) {
      first.putIfAbsent(column.reference().column(), column);
    }
    Map<Column, Column> sources = new LinkedHashMap<>();
    for (Column column : columns(to)) {
      Column source = first.get(column.reference().column());
      boolean name =
          column.equals(book.schema().table(column.reference().table()).columns().get(0));
      if (column.takesEntries() && !name && source != null) {
        sources.put(column, source);
      }
    }
    return sources;
  }

  private List<Column> columns(String side) {
    List<String> tables = side.equals(FOUND) ? List.of(FOUND) : AsFound.FROM;
    return tables.stream().flatMap(table -> book.schema().table(table).columns().stream()).toList();
  }

  /** What was typed; of a zone with a catch-can test, what the test found, for it stays with it. */
  private Entry taken(Column source, int row) {
    Entry entry = book.entry(source.reference(), row);
    if (!(entry instanceof Entry.Blank)
        || !FROM_TESTS.contains(source.reference())
        || !(book.number(FieldTested.TESTS_IN_USE.reference(), row) >= 1)) {
      return entry;
    }
    double found = book.number(source.reference(), row);
    return Double.isNaN(found) ? Entry.BLANK : new Entry.Figure(found);
  }

  private Entry name(String table, int row) {
    return book.contents().row(table, row).entry(0);
  }
}
