package zonewright.estimate;

import static zonewright.trade.Sheets.PARTS;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.apache.commons.csv.CSVFormat;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.CsvText;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.sheet.Nearest;
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

  /** Returns the price book as lines of cells as typed, headings first. */
  public List<List<String>> lines() {
    return lines(Entries::typed);
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
   * Returns the edit that takes over a price book of comma-separated text, as {@link #edit(List)}
   * does.
   *
   * @throws Unreadable when it is no price book; nothing is changed then
   */
  public Edit edit(String text) throws Unreadable {
    return edit(lines(text));
  }

  /**
   * Returns the edit that takes a price book over: items of a name known here are changed in what
   * the lines say about them, others are added at the end.
   *
   * @param lines cells as typed, headings first or below some lines about the book
   * @throws Unreadable when it is no price book; nothing is changed then
   */
  public Edit edit(List<List<String>> lines) throws Unreadable {
    int head = head(lines);
    List<Optional<Column>> columns = headings(lines.get(head));
    Map<String, Integer> known = new HashMap<>();
    for (int row = 0; row < book.rows(PARTS); row++) {
      if (book.entry(Parts.ITEM_NAME.reference(), row) instanceof Entry.Words words) {
        known.putIfAbsent(folded(words.text()), row);
      }
    }
    Edits edits = new Edits(book);
    List<Edit> parts = new ArrayList<>();
    Map<String, List<Entry>> fresh = new java.util.LinkedHashMap<>();
    for (int at = head + 1; at < lines.size(); at++) {
      Map<Column, Entry> entries = entries(lines.get(at), at + 1, columns);
      if (!(entries.get(Parts.ITEM_NAME) instanceof Entry.Words name)) {
        if (entries.values().stream().allMatch(Entry.BLANK::equals)) {
          continue;
        }
        throw new Unreadable("Line %s has no item name.".formatted(at + 1));
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
  private static int head(List<List<String>> lines) throws Unreadable {
    if (lines.isEmpty()) {
      throw new Unreadable("The price book is empty.");
    }
    String item = folded(Parts.ITEM_NAME.name());
    for (int line = 0; line < Math.min(lines.size(), LINES_ABOVE); line++) {
      if (lines.get(line).stream().map(PriceBook::folded).anyMatch(item::equals)) {
        return line;
      }
    }
    return 0;
  }

  private static List<List<String>> lines(String text) throws Unreadable {
    String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
    String head = plain.lines().findFirst().orElse("");
    char separator =
        head.chars().filter(c -> c == ';').count() > head.chars().filter(c -> c == ',').count()
            ? ';'
            : ',';
    CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(separator).get();
    try (Reader reader = new StringReader(plain)) {
      return format.parse(reader).getRecords().stream()
          .map(line -> line.stream().map(PriceBook::unquoted).toList())
          .toList();
    } catch (IOException | IllegalStateException | java.io.UncheckedIOException problem) {
      throw new Unreadable("This is not comma-separated text: a quotation mark is left open.");
    }
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

  private Map<Column, Entry> entries(List<String> line, int number, List<Optional<Column>> columns)
      throws Unreadable {
    Map<Column, Entry> entries = new java.util.LinkedHashMap<>();
    for (int at = 0; at < columns.size(); at++) {
      if (columns.get(at).isEmpty()) {
        continue;
      }
      Column column = columns.get(at).get();
      String cell = at < line.size() ? line.get(at) : "";
      Entry entry = Entries.read(column, cell, book.system());
      if (entry instanceof Entry.Unreadable problem) {
        throw new Unreadable("Line %s, %s: %s".formatted(number, column.name(), problem.problem()));
      }
      entries.put(column, entry);
    }
    return entries;
  }

  private List<Entry> row(Map<Column, Entry> entries) {
    return book.blueprint().table(PARTS).columns().stream()
        .map(column -> entries.getOrDefault(column, Entry.BLANK))
        .toList();
  }

  /** Takes the apostrophe away that writing put in front. */
  private static String unquoted(String cell) {
    boolean guarded =
        cell.startsWith("'") && !CsvText.harmless(cell.substring(1)).equals(cell.substring(1));
    return guarded ? cell.substring(1) : cell;
  }

  private static String folded(String words) {
    return words.strip().toLowerCase(Locale.ROOT);
  }
}
