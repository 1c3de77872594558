package zonewright.estimate;

import static zonewright.trade.Sheets.PARTS;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.CsvText;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.sheet.ListText;
import zonewright.sheet.Nearest;
import zonewright.units.DecimalSign;
import zonewright.units.UnitSystem;

/**
 * The price book as lines of a list: a line an item, headings as on the sheet with their unit in
 * parentheses, and only what a person types.
 *
 * <p>In comma-separated text, words that a spreadsheet program would take for a formula are written
 * with an apostrophe in front, which reading takes away again.
 */
public final class PriceBook {
  /** Headings may stand below a title and a few words about the book. */
  private static final int LINES_ABOVE = 20;

  private final Book book;

  /** What reading found wrong, in one sentence that names the line. */
  public static final class Unreadable extends Exception {
    private static final long serialVersionUID = 1;

    Unreadable(String sentence) {
      super(sentence);
    }
  }

  /** Reads and writes the price book of a design. */
  public PriceBook(Book book) {
    this.book = book;
  }

  /** Returns the columns of a price book: those a person types into. */
  public static List<Column> columns() {
    return Parts.columns().stream()
        .filter(Column::takesEntries)
        .filter(column -> !column.equals(Parts.COUNT))
        .toList();
  }

  /** Returns the price book as comma-separated text, headings first. */
  public String text() {
    StringBuilder text = new StringBuilder();
    lines(PriceBook::harmless).forEach(line -> text.append(CsvText.line(line)));
    return text.toString();
  }

  /** Returns the price book as lines of cells, headings first, no number of which is in doubt. */
  public List<List<String>> lines() {
    return lines(
        (column, entry) ->
            entry instanceof Entry.Figure figure && !column.kind().percent()
                ? DecimalSign.unmistakable(figure.value())
                : Entries.typed(column, entry));
  }

  private List<List<String>> lines(BiFunction<Column, Entry, String> cell) {
    List<List<String>> lines = new ArrayList<>();
    List<Column> columns = columns();
    lines.add(columns.stream().map(this::heading).toList());
    for (int row = 0; row < book.rows(PARTS); row++) {
      List<String> cells = new ArrayList<>();
      for (Column column : columns) {
        cells.add(cell.apply(column, book.entry(column.reference(), row)));
      }
      if (cells.stream().anyMatch(each -> !each.isEmpty())) {
        lines.add(cells);
      }
    }
    return lines;
  }

  private String heading(Column column) {
    return column.heading(book.system());
  }

  private static String harmless(Column column, Entry entry) {
    String typed = Entries.typed(column, entry);
    return entry instanceof Entry.Figure ? typed : CsvText.harmless(typed);
  }

  /**
   * Returns the edit that takes over a price book of comma-separated text, as {@link
   * #edit(ListText)} does.
   *
   * @throws Unreadable when it is no price book; nothing is changed then
   */
  public Edit edit(String text) throws Unreadable {
    try {
      return edit(ListText.of(text, "The price book"));
    } catch (ListText.Problem problem) {
      throw new Unreadable(problem.getMessage());
    }
  }

  /**
   * Returns the edit that takes a price book over: items of a name known here are changed in what
   * the lines say about them, others are added at the end.
   *
   * @param text headings first or below some lines about the book
   * @throws Unreadable when it is no price book, or holds a number that is none or can be read two
   *     ways; nothing is changed then
   */
  public Edit edit(ListText text) throws Unreadable {
    int head = head(text.lines());
    List<Optional<Column>> columns = headings(text.lines().get(head).cells());
    List<ListText.Line> lines = text.lines().subList(head + 1, text.lines().size());
    List<Map<Column, Entry>> items = new ArrayList<>();
    for (ListText.Line line : lines) {
      items.add(entries(text, line, columns));
    }
    Taking taking = taking(items);
    if (!taking.nameless().isEmpty()) {
      throw new Unreadable(
          "Line %s has no item name.".formatted(lines.get(taking.nameless().get(0)).number()));
    }
    return taking.edit();
  }

  /**
   * A cell of an item known here that a price book changes.
   *
   * @param item the name of the item
   */
  public record Change(String item, Column column, Entry before, Entry after) {
    /** Returns it in words, such as {@code Valve, Price: 20 → 21.5}. */
    public String line() {
      return "%s, %s: %s → %s"
          .formatted(item, column.name(), said(before), Entries.typed(column, after));
    }

    private String said(Entry entry) {
      String typed = Entries.typed(column, entry);
      return typed.isEmpty() ? "blank" : typed;
    }
  }

  /**
   * What comes of a price book.
   *
   * @param edit the edit that takes it over
   * @param changes the cells of items known here that change
   * @param added the names of items that are new here, in their order
   * @param same how many items stand here already as the price book has them
   * @param nameless which of the lines say something, and not of which item, counted from 0
   */
  public record Taking(
      Edit edit, List<Change> changes, List<String> added, int same, List<Integer> nameless) {
    public Taking {
      changes = List.copyOf(changes);
      added = List.copyOf(added);
      nameless = List.copyOf(nameless);
    }

    /** Returns how many items known here change. */
    public int changed() {
      return (int) changes.stream().map(Change::item).distinct().count();
    }
  }

  /**
   * Returns what comes of the items of a price book. An item is the one here of its number (SKU),
   * else of its name; capitals do not matter. A blank cell, or one that cannot be read, leaves what
   * stands here, but a price whose currency is said to be none is money of the job; an item that is
   * not known here is added at the end.
   */
  public Taking taking(List<Map<Column, Entry>> items) {
    Map<String, Integer> known = new HashMap<>();
    for (int row = 0; row < book.rows(PARTS); row++) {
      for (Column column : List.of(Parts.SKU, Parts.ITEM_NAME)) {
        int at = row;
        key(column, book.entry(column.reference(), row))
            .ifPresent(key -> known.putIfAbsent(key, at));
      }
    }
    List<Edit> parts = new ArrayList<>();
    List<Change> changes = new ArrayList<>();
    Map<String, Map<Column, Entry>> fresh = new LinkedHashMap<>();
    List<Integer> nameless = new ArrayList<>();
    int same = 0;
    for (int at = 0; at < items.size(); at++) {
      Map<Column, Entry> item = items.get(at);
      Optional<String> sku = key(Parts.SKU, item.getOrDefault(Parts.SKU, Entry.BLANK));
      Optional<String> name = key(Parts.ITEM_NAME, item.getOrDefault(Parts.ITEM_NAME, Entry.BLANK));
      Optional<Integer> row =
          sku.map(known::get)
              .or(() -> name.map(known::get).filter(here -> sku.isEmpty() || numberless(here)));
      if (row.isPresent()) {
        List<Change> some = changes(row.get(), item);
        some.forEach(
            change ->
                parts.add(
                    new Edits(book).set(change.column().reference(), row.get(), change.after())));
        changes.addAll(some);
        same += some.isEmpty() ? 1 : 0;
      } else if (name.isPresent()) {
        fresh.put(sku.orElse(name.get()), item);
      } else if (!item.values().stream().allMatch(Entry.BLANK::equals)) {
        nameless.add(at);
      }
    }
    if (!fresh.isEmpty()) {
      parts.add(new Edits(book).appended(PARTS, fresh.values().stream().map(this::row).toList()));
    }
    return new Taking(
        new Edit.Several("reading of a price book", parts),
        changes,
        fresh.values().stream()
            .map(item -> Entries.typed(Parts.ITEM_NAME, item.get(Parts.ITEM_NAME)))
            .toList(),
        same,
        nameless);
  }

  private boolean numberless(int row) {
    return book.entry(Parts.SKU.reference(), row).equals(Entry.BLANK);
  }

  private static Optional<String> key(Column column, Entry entry) {
    return entry instanceof Entry.Words words
        ? Optional.of(column.reference().key() + " " + folded(words.text()))
        : Optional.empty();
  }

  private List<Change> changes(int row, Map<Column, Entry> item) {
    String name = Entries.typed(Parts.ITEM_NAME, book.entry(Parts.ITEM_NAME.reference(), row));
    List<Change> changes = new ArrayList<>();
    item.forEach(
        (column, entry) -> {
          Entry before = book.entry(column.reference(), row);
          boolean says =
              entry instanceof Entry.Words
                  || entry instanceof Entry.Figure
                  || (column.equals(Parts.PRICE_IN) && priced(item));
          boolean sameName =
              column.equals(Parts.ITEM_NAME) && key(column, before).equals(key(column, entry));
          if (says && !sameName && !before.equals(entry)) {
            changes.add(new Change(name, column, before, entry));
          }
        });
    return changes;
  }

  /** Says whether a price is told; then a blank currency is that of the job. */
  private static boolean priced(Map<Column, Entry> item) {
    return item.get(Parts.PRICE) instanceof Entry.Figure;
  }

  /** Returns where the headings stand: the first line of some that names the item, or the first. */
  private static int head(List<ListText.Line> lines) throws Unreadable {
    if (lines.isEmpty()) {
      throw new Unreadable("The price book is empty.");
    }
    String item = folded(Parts.ITEM_NAME.name());
    for (int line = 0; line < Math.min(lines.size(), LINES_ABOVE); line++) {
      if (lines.get(line).cells().stream().map(PriceBook::folded).anyMatch(item::equals)) {
        return line;
      }
    }
    return 0;
  }

  private List<Optional<Column>> headings(List<String> line) throws Unreadable {
    Map<String, Column> known = new HashMap<>();
    for (Column column : columns()) {
      known.put(folded(column.name()), column);
      known.put(folded(column.heading(UnitSystem.US)), column);
      known.put(folded(column.heading(UnitSystem.SI)), column);
    }
    List<Optional<Column>> columns = new ArrayList<>();
    for (String heading : line) {
      Column column = known.get(folded(heading));
      if (column == null && !heading.isBlank()) {
        List<String> names = columns().stream().map(Column::name).toList();
        throw new Unreadable(
            "The price book has a column “%s”; did you mean “%s”? Leave out what is not on the sheet Parts."
                .formatted(heading.strip(), Nearest.to(heading, names, 1).get(0)));
      }
      columns.add(Optional.ofNullable(column));
    }
    if (!columns.contains(Optional.of(Parts.ITEM_NAME))) {
      throw new Unreadable("The price book has no column “Item”.");
    }
    return columns;
  }

  private Map<Column, Entry> entries(
      ListText text, ListText.Line line, List<Optional<Column>> columns) throws Unreadable {
    List<Integer> numbers =
        IntStream.range(0, columns.size())
            .filter(at -> columns.get(at).filter(PriceBook::number).isPresent())
            .boxed()
            .toList();
    Map<Column, Entry> entries = new LinkedHashMap<>();
    for (int at = 0; at < columns.size(); at++) {
      if (columns.get(at).isEmpty()) {
        continue;
      }
      Column column = columns.get(at).get();
      String cell = CsvText.asWritten(line.cell(at));
      Entry entry =
          number(column)
              ? text.read(column, cell, at, numbers, "", book.system())
              : Entries.read(column, cell, book.system());
      if (entry instanceof Entry.Unreadable problem) {
        throw new Unreadable(
            "Line %s, %s: %s.".formatted(line.number(), column.name(), problem.problem()));
      }
      entries.put(column, entry);
    }
    return entries;
  }

  private static boolean number(Column column) {
    return column.content() == Column.Content.NUMBER;
  }

  private List<Entry> row(Map<Column, Entry> entries) {
    return book.schema().table(PARTS).columns().stream()
        .map(column -> entries.getOrDefault(column, Entry.BLANK))
        .toList();
  }

  private static String folded(String words) {
    return words.strip().toLowerCase(Locale.ROOT);
  }
}
