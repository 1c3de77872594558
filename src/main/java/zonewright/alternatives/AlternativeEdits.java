package zonewright.alternatives;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.trade.Sheets;

/** Makes, changes and takes the alternatives of a design, each by one edit. */
public final class AlternativeEdits {
  private final Alternatives alternatives;
  private final Book book;

  /** Makes edits for a book whose alternatives were just read. */
  public AlternativeEdits(Alternatives alternatives) {
    this.alternatives = alternatives;
    this.book = alternatives.book();
  }

  /**
   * Has an edit completed by what alternatives need with it: while one is in hand, what the design
   * has instead is noted; one that is renamed or taken out is so everywhere.
   */
  public static Edit completed(Book book, Edit edit) {
    return book.rows(Sheets.ALTERNATIVES) == 0 ? edit : new CompletedEdit(book, edit).edit();
  }

  /**
   * Returns the edit that copies what the sheets hold under a name and puts the copy in hand.
   *
   * @param name one that {@link Alternatives#refused} does not refuse
   */
  public Edit copied(String name) {
    Map<String, List<Change>> others = alternatives.others();
    alternatives.inHand().ifPresent(old -> others.put(old, alternatives.changes(old)));
    return edit(
        "copy as the alternative " + name.strip(),
        alternatives.now(),
        Optional.of(name.strip()),
        alternatives.wayBack(),
        others);
  }

  /** Returns the edit that puts an alternative in hand; the design itself where none is named. */
  public Edit worked(Optional<String> name) {
    Map<String, List<Change>> others = alternatives.others();
    alternatives.inHand().ifPresent(old -> others.put(old, alternatives.changes(old)));
    BookSnapshot design = alternatives.design();
    BookSnapshot sheets = name.map(alternatives::of).orElse(design);
    name.ifPresent(others::remove);
    return edit(
        "work in " + name.map(known -> "the alternative " + known).orElse("the design"),
        sheets,
        name,
        name.isEmpty() ? List.of() : alternatives.between(sheets, design),
        others);
  }

  /**
   * Returns the edit that makes an alternative the design. The others stay what they are.
   *
   * @param kept under which name the design as it was stays as an alternative; none where it goes
   */
  public Edit taken(String name, Optional<String> kept) {
    BookSnapshot sheets = alternatives.of(name);
    Map<String, List<Change>> others = new LinkedHashMap<>();
    for (String other : alternatives.names()) {
      if (!other.equals(name)) {
        others.put(other, alternatives.between(sheets, alternatives.of(other)));
      }
    }
    kept.ifPresent(
        old -> others.put(old.strip(), alternatives.between(sheets, alternatives.design())));
    return edit(name + " taken as the design", sheets, Optional.empty(), List.of(), others);
  }

  /** Returns the edit that takes an alternative away; were it in hand, the design is then. */
  public Edit removed(String name) {
    Map<String, List<Change>> others = alternatives.others();
    others.remove(name);
    boolean held = alternatives.inHand().filter(name::equals).isPresent();
    return edit(
        "removal of the alternative " + name,
        held ? alternatives.design() : alternatives.now(),
        held ? Optional.empty() : alternatives.inHand(),
        held ? List.of() : alternatives.wayBack(),
        others);
  }

  private Edit edit(
      String name,
      BookSnapshot sheets,
      Optional<String> hand,
      List<Change> wayBack,
      Map<String, List<Change>> others) {
    List<String> all =
        Stream.concat(others.keySet().stream(), hand.stream())
            .filter(each -> !each.isEmpty())
            .distinct()
            .toList();
    return new Edit.Several(
        name,
        List.of(
            new Edits(book).becoming(name, sameAlternatives(sheets)),
            listed(name, all, hand),
            changes(book, alternatives.now(), name, wayBack, others)));
  }

  /** Returns the sheets with the alternatives as they are now: those are changed beside. */
  private BookSnapshot sameAlternatives(BookSnapshot sheets) {
    Map<String, List<Row>> tables = new LinkedHashMap<>(sheets.tables());
    for (String table : List.of(Sheets.ALTERNATIVES, Sheets.CHANGES)) {
      tables.put(table, alternatives.now().rows(table));
    }
    return new BookSnapshot(sheets.system(), tables);
  }

  /** Makes the sheet of alternatives list those wanted and no others, one of them marked. */
  private Edit listed(String name, List<String> wanted, Optional<String> hand) {
    Edits edits = new Edits(book);
    List<Edit> parts = new ArrayList<>();
    List<String> there = new ArrayList<>();
    List<Row> rows = alternatives.now().rows(Sheets.ALTERNATIVES);
    for (int row = rows.size() - 1; row >= 0; row--) {
      String own = Alternatives.text(rows.get(row).entry(0));
      if (own.isEmpty() || wanted.contains(own)) {
        there.add(own);
        parts.add(0, edits.set(AlternativeSheets.IN_HAND.reference(), row, mark(own, hand)));
      } else {
        parts.add(edits.removed(Sheets.ALTERNATIVES, row, 1));
      }
    }
    List<Row> fresh =
        edits
            .appended(
                Sheets.ALTERNATIVES,
                wanted.stream()
                    .filter(each -> !there.contains(each))
                    .map(each -> List.of(Entry.words(each), mark(each, hand)))
                    .toList())
            .rows();
    parts.add(new Edit.InsertRows(name, Sheets.ALTERNATIVES, there.size(), fresh));
    return new Edit.Several(name, parts);
  }

  private static Entry mark(String name, Optional<String> hand) {
    boolean held = hand.filter(name::equals).isPresent();
    return Entry.words(held ? AlternativeSheets.Words.YES : "");
  }

  /** Returns the edit after which the sheet of changes says so; rows that say it already stay. */
  static Edit changes(
      Book book,
      BookSnapshot now,
      String name,
      List<Change> wayBack,
      Map<String, List<Change>> others) {
    List<List<Entry>> wanted = new ArrayList<>();
    wayBack.forEach(change -> wanted.add(change.entries(Alternatives.DESIGN)));
    others.forEach((of, changes) -> changes.forEach(each -> wanted.add(each.entries(of))));
    List<Row> rows = now.rows(Sheets.CHANGES);
    int same = 0;
    while (same < Math.min(rows.size(), wanted.size())
        && said(rows.get(same)).equals(wanted.get(same))) {
      same++;
    }
    int below = 0;
    while (below < Math.min(rows.size(), wanted.size()) - same
        && said(rows.get(rows.size() - 1 - below)).equals(wanted.get(wanted.size() - 1 - below))) {
      below++;
    }
    List<Row> gone = rows.subList(same, rows.size() - below);
    int number = 0;
    for (Row row : rows) {
      String told = Alternatives.text(row.entry(0));
      number = told.matches("\\d{1,9}") ? Math.max(number, Integer.parseInt(told)) : number;
    }
    List<List<Entry>> fresh = new ArrayList<>();
    for (List<Entry> each : wanted.subList(same, wanted.size() - below)) {
      number++;
      List<Entry> row = new ArrayList<>(each);
      row.add(0, Entry.words(Integer.toString(number)));
      fresh.add(row);
    }
    List<Row> put = new Edits(book).appended(Sheets.CHANGES, fresh).rows();
    return new Edit.Several(
        name,
        List.of(
            new Edit.RemoveRows(name, Sheets.CHANGES, same, gone),
            new Edit.InsertRows(name, Sheets.CHANGES, same, put)));
  }

  /** Returns what a row of the sheet of changes says, but its number. */
  private static List<Entry> said(Row row) {
    List<Entry> entries = new ArrayList<>();
    for (int i = 1; i < AlternativeSheets.changeColumns().size(); i++) {
      entries.add(row.entry(i));
    }
    return entries;
  }
}
