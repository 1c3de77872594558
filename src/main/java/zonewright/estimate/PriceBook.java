package zonewright.estimate;

import static zonewright.trade.Sheets.PARTS;

import java.util.ArrayList;
import java.util.HashMap;
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
    Map<String, Integer> known = new HashMap<>();
    for (int row = 0; row < book.rows(PARTS); row++) {
      if (book.entry(Parts.ITEM_NAME.reference(), row) instanceof Entry.Words words) {
        known.putIfAbsent(folded(words.text()), row);
      }
    }
    Edits edits = new Edits(book);
    List<Edit> parts = new ArrayList<>();
    Map<String, List<Entry>> fresh = new java.util.LinkedHashMap<>();
    for (ListText.Line line : text.lines().subList(head + 1, text.lines().size())) {
      Map<Column, Entry> entries = entries(text, line, columns);
      if (!(entries.get(Parts.ITEM_NAME) instanceof Entry.Words name)) {
        if (entries.values().stream().allMatch(Entry.BLANK::equals)) {
          continue;
        }
        throw new Unreadable("Line %s has no item name.".formatted(line.number()));
      }
      Integer row = known.get(folded(name.text()));
      if (row == null) {
        fresh.put(folded(name.text()), row(entries));
      } else {
        entries.forEach((column, entry) -> parts.add(edits.set(column.reference(), row, entry)));
      }
    }
    if (!fresh.isEmpty()) {
      parts.add(edits.appended(PARTS, List.copyOf(fresh.values())));
    }
    return new Edit.Several("reading of a price book", parts);
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
    Map<Column, Entry> entries = new java.util.LinkedHashMap<>();
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
