package zonewright.retrofit;

import static zonewright.trade.Sheets.FOUND;
import static zonewright.trade.Sheets.ZONES;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.TableDefinition;

/** Copies what was typed about zones between the sheets Found and Zones, in one edit. */
public final class ZoneCopy {
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
    Edit.Several copy = copied(ZONES, FOUND);
    return new Edit.Several("copy of the zones to as found", copy.parts());
  }

  private Edit.Several copied(String from, String to) {
    List<Column> shared = shared(from, to);
    Map<String, Integer> there = new HashMap<>();
    for (int row = 0; row < book.rows(to); row++) {
      if (name(to, row) instanceof Entry.Words words) {
        there.putIfAbsent(words.text().toLowerCase(Locale.ROOT), row);
      }
    }
    List<Edit> parts = new ArrayList<>();
    List<List<Entry>> fresh = new ArrayList<>();
    for (int row = 0; row < book.rows(from); row++) {
      if (!(name(from, row) instanceof Entry.Words words)) {
        continue;
      }
      Integer at = there.get(words.text().toLowerCase(Locale.ROOT));
      if (at == null) {
        fresh.add(newRow(from, row, to, words));
      } else {
        for (Column column : shared) {
          parts.add(edits.set(in(to, column), at, book.entry(in(from, column), row)));
        }
        if (to.equals(FOUND)) {
          parts.add(edits.set(AsFound.BECOMES.reference(), at, words));
        }
      }
    }
    if (!fresh.isEmpty()) {
      parts.add(edits.appended(to, fresh));
    }
    return new Edit.Several("copy", parts);
  }

  private List<Entry> newRow(String from, int row, String to, Entry name) {
    List<Entry> entries = new ArrayList<>();
    for (Column column : book.blueprint().table(to).columns()) {
      if (column.reference().equals(AsFound.BECOMES.reference())) {
        entries.add(name);
      } else {
        Reference there = in(from, column);
        entries.add(holds(from, there) ? book.entry(there, row) : Entry.BLANK);
      }
    }
    return entries;
  }

  /** The inputs both sheets have, but for the name. */
  private List<Column> shared(String from, String to) {
    TableDefinition table = book.blueprint().table(to);
    return table.inputs().stream()
        .filter(column -> !column.equals(table.columns().get(0)))
        .filter(column -> holds(from, in(from, column)))
        .toList();
  }

  private boolean holds(String table, Reference reference) {
    return book.blueprint().table(table).columns().stream()
        .anyMatch(column -> column.reference().equals(reference));
  }

  private static Reference in(String table, Column column) {
    Reference own = column.reference();
    return new Reference(table, own.column(), own.name(), own.kind());
  }

  private Entry name(String table, int row) {
    return book.contents().row(table, row).entry(0);
  }
}
