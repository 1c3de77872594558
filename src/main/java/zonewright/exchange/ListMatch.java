package zonewright.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import zonewright.emitters.Emitters;
import zonewright.estimate.Parts;
import zonewright.estimate.PriceBook;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.CsvText;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.sheet.Headings;
import zonewright.sheet.ListText;
import zonewright.sheet.Nearest;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;
import zonewright.units.DecimalSign;
import zonewright.units.Dimension;
import zonewright.units.Unit;
import zonewright.units.Units;

/** Which column of a list goes into which column of a table, and the rows that come of it. */
public final class ListMatch {
  private final Book book;
  private final TableDefinition table;
  private final ForeignList list;
  private ListText text;
  private final Map<Integer, Column> columns = new LinkedHashMap<>();
  private final Map<Integer, Headings.Found> found = new LinkedHashMap<>();
  private final ListGuess guesses;

  /**
   * Matches by name: capitals, spaces and the unit in parentheses do not matter.
   *
   * @param table identifier of a table that may have any number of rows
   */
  public ListMatch(Book book, String table, ForeignList list) {
    this.book = book;
    this.table = book.schema().table(table);
    this.list = list;
    this.text = money() ? list.text().withoutCurrency() : list.text();
    this.guesses = new ListGuess(book, this.table, list, this::read);
    Headings headings = new Headings(this.table, book.system());
    for (int i = 0; i < list.headings().size(); i++) {
      int at = i;
      headings
          .take(i, list.headings().get(i))
          .filter(Column::takesEntries)
          .ifPresent(
              column -> {
                columns.put(at, column);
                found.put(at, headings.found().get(column));
              });
    }
  }

  /**
   * Returns how many headings of the list name a column of the table, or are another name of one.
   */
  public int headingsKnown() {
    return (int)
        IntStream.range(0, list.headings().size())
            .filter(at -> columns.containsKey(at) || guesses.anotherName(at))
            .count();
  }

  /** Returns the column a column of the list goes into; nothing where it goes nowhere yet. */
  public Optional<Column> target(int position) {
    return Optional.ofNullable(columns.get(position));
  }

  /** Lets a column of the list go into a column of the table, in place of what went there. */
  public void set(int position, Column column) {
    columns.values().removeIf(column::equals);
    columns.put(position, column);
    found.remove(position);
  }

  /** Lets a column of the list go nowhere. */
  public void leave(int position) {
    columns.remove(position);
  }

  /** Says which sign stands before the decimals of the list; none to go by what it shows. */
  public void decimals(Optional<DecimalSign> sign) {
    text = text.with(sign);
  }

  /** Returns the position of a heading of the list; capitals and spaces do not matter. */
  public OptionalInt position(String heading) {
    for (int i = 0; i < list.headings().size(); i++) {
      if (Headings.plain(list.headings().get(i)).equals(Headings.plain(heading))) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  /** Returns the columns a person types into, to choose from. */
  public List<Column> choices() {
    return table.inputs();
  }

  /** Returns the columns of the table that are most like a heading, the likeliest first. */
  public List<Column> suggestions(int position) {
    Set<Column> suggestions = new LinkedHashSet<>();
    guesses.likely(position, columns).forEach(guess -> suggestions.add(guess.column()));
    String plain = list.headings().get(position).replaceAll("\\s*\\([^()]*\\)\\s*$", "");
    List<String> names = table.inputs().stream().map(Column::name).toList();
    Nearest.to(plain, names, 3)
        .forEach(name -> suggestions.add(table.inputs().get(names.indexOf(name))));
    return suggestions.stream().limit(3).toList();
  }

  /**
   * Lets each column of the list that goes nowhere yet go where it most likely belongs; one of
   * which little can be told still goes nowhere.
   *
   * @return the positions for which that was a guess, not a name both have
   */
  public Set<Integer> guess() {
    Set<Integer> guessed = new LinkedHashSet<>();
    List.copyOf(columns.entrySet()).stream()
        .filter(each -> guesses.hollow(each.getValue(), each.getKey()))
        .forEach(each -> hollow(each.getKey(), each.getValue()));
    for (Optional<Fit> best = best(); best.isPresent(); best = best()) {
      columns.put(best.get().position(), best.get().guess().column());
      guessed.add(best.get().position());
    }
    tellFlowsApart(guessed);
    return guessed;
  }

  /**
   * Beside a number of emitters a flow may be that of each: then it does not grow with the number.
   */
  private void tellFlowsApart(Set<Integer> guessed) {
    Optional<Integer> count = positionOf(Emitters.EMITTER_COUNT);
    Optional<Integer> flow = positionOf(Emitters.ZONE_FLOW).filter(guessed::contains);
    if (count.isEmpty() || flow.isEmpty() || positionOf(Emitters.EMITTER_FLOW).isPresent()) {
      return;
    }
    List<Double> alone = new ArrayList<>();
    List<Double> shared = new ArrayList<>();
    for (int row = 0; row < list.rows().size(); row++) {
      if (entry(count.get(), row) instanceof Entry.Figure heads
          && entry(flow.get(), row) instanceof Entry.Figure gallons
          && heads.value() > 0
          && gallons.value() > 0) {
        alone.add(Math.log(gallons.value()));
        shared.add(Math.log(gallons.value() / heads.value()));
      }
    }
    if (alone.size() > 1 && spread(alone) < spread(shared)) {
      table.inputs().stream()
          .filter(column -> alike(column, Emitters.EMITTER_FLOW))
          .forEach(column -> columns.put(flow.get(), column));
    }
  }

  /** Zones and zones as found have columns of one identifier. */
  private static boolean alike(Column one, Column zones) {
    return one.reference().column().equals(zones.reference().column());
  }

  private Optional<Integer> positionOf(Column column) {
    return columns.entrySet().stream()
        .filter(each -> alike(each.getValue(), column))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  private static double spread(List<Double> values) {
    double mean = values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    return values.stream().mapToDouble(value -> (value - mean) * (value - mean)).sum();
  }

  private record Fit(int position, ListGuess.Guess guess) {}

  /** Returns the surest of all guesses that are left, of equally sure ones the first. */
  private Optional<Fit> best() {
    Fit best = null;
    for (int position : unmatched()) {
      ListGuess.Guess guess = guesses.likely(position, columns).stream().findFirst().orElse(null);
      if (guess != null && (best == null || guess.score() > best.guess().score())) {
        best = new Fit(position, guess);
      }
    }
    return Optional.ofNullable(best);
  }

  /** Gives up a match by name where another column takes what stands there. */
  private void hollow(int position, Column column) {
    columns.remove(position);
    if (guesses.likely(position, columns).isEmpty()) {
      columns.put(position, column);
    } else {
      found.remove(position);
    }
  }

  /** Returns the list. */
  public ForeignList list() {
    return list;
  }

  /** Returns the tables of the design the rows go into. */
  public Schema schema() {
    return book.schema();
  }

  /** Returns the table the rows go into. */
  public TableDefinition table() {
    return table;
  }

  /** Returns the unit a heading names, where the column it goes into takes it. */
  public Optional<Unit> unit(int position) {
    return target(position)
        .filter(column -> column.content() == Column.Content.NUMBER)
        .flatMap(column -> unit(column, position));
  }

  /** Returns what comes of a cell of the list in the column it goes into; blank where in none. */
  public Entry entry(int position, int row) {
    return target(position)
        .map(column -> read(column, position, list.rows().get(row).get(position)))
        .orElse(Entry.BLANK);
  }

  /** Returns the positions of columns that hold something and go nowhere. */
  public List<Integer> unmatched() {
    List<Integer> unmatched = new ArrayList<>();
    for (int i = 0; i < list.headings().size(); i++) {
      int at = i;
      boolean holds = list.rows().stream().anyMatch(row -> !row.get(at).isBlank());
      if (!columns.containsKey(i) && holds) {
        unmatched.add(i);
      }
    }
    return unmatched;
  }

  /**
   * What comes of a list.
   *
   * @param edit the edit that puts its rows below those that are there, or into them
   * @param rows how many rows it adds or changes
   * @param changes what rows that are there already will be, and which are added, each a line
   * @param notes what was read in another way than it stands, or cannot be read, each a sentence
   */
  public record Taken(Edit edit, int rows, List<String> changes, List<String> notes) {
    public Taken {
      changes = List.copyOf(changes);
      notes = List.copyOf(notes);
    }
  }

  /** Returns what comes of the list as it is matched now. */
  public Taken taken() {
    List<String> notes = new ArrayList<>(list.notes());
    columns.forEach((position, column) -> told(position, column, notes));
    List<Map<Column, Entry>> rows = new ArrayList<>();
    for (int i = 0; i < list.rows().size(); i++) {
      List<String> cells = list.rows().get(i);
      Map<Column, Entry> entries = new LinkedHashMap<>();
      int line = list.line(i);
      columns.forEach(
          (position, column) ->
              entries.put(column, entry(column, position, cells.get(position), line, notes)));
      rows.add(entries);
    }
    return money() ? priced(rows, notes) : appended(rows, notes);
  }

  private Taken appended(List<Map<Column, Entry>> rows, List<String> notes) {
    List<List<Entry>> entries =
        rows.stream()
            .map(
                row ->
                    table.columns().stream()
                        .map(column -> row.getOrDefault(column, Entry.BLANK))
                        .toList())
            .toList();
    Edit edit =
        new Edit.Several(
            "list of %s rows".formatted(rows.size()),
            List.of(new Edits(book).appended(table.id(), entries)));
    return new Taken(edit, rows.size(), List.of(), notes);
  }

  /** What comes of a price book: items known are changed, others added. */
  private Taken priced(List<Map<Column, Entry>> items, List<String> notes) {
    ListCurrencies currencies = new ListCurrencies(book);
    for (int i = 0; i < items.size(); i++) {
      currencies.put(items.get(i), price(list.rows().get(i)));
    }
    currencies.tell(notes);
    PriceBook.Taking taking = new PriceBook(book).taking(items);
    taking
        .nameless()
        .forEach(at -> notes.add("Line %s names no item; left out.".formatted(list.line(at))));
    List<String> changes = new ArrayList<>();
    changes.add(
        "%s to change, %s to add, %s as they are."
            .formatted(
                items(taking.changed()), items(taking.added().size()), items(taking.same())));
    taking.changes().forEach(change -> changes.add(change.line()));
    taking.added().forEach(name -> changes.add(name + ": new"));
    return new Taken(
        currencies.with(taking.edit()), taking.changed() + taking.added().size(), changes, notes);
  }

  private String price(List<String> cells) {
    return columns.entrySet().stream()
        .filter(each -> each.getValue().equals(Parts.PRICE))
        .map(each -> cells.get(each.getKey()))
        .findFirst()
        .orElse("");
  }

  private static String items(int count) {
    return count == 1 ? "1 item" : count + " items";
  }

  /** Says whether the list is a price book: items known are changed, and amounts are money. */
  private boolean money() {
    return table.id().equals(Sheets.PARTS);
  }

  /** Tells what was read otherwise than some would have meant it. */
  private void told(int position, Column column, List<String> notes) {
    if (column.content() != Column.Content.NUMBER) {
      return;
    }
    String heading = list.headings().get(position);
    if (text.said().isEmpty() && text.shownIn(position).size() > 1) {
      notes.add(
          "%s: some numbers have a decimal comma and some a decimal point; each was read for itself."
              .formatted(heading));
    }
    List<String> bare =
        list.rows().stream()
            .map(row -> row.get(position).strip())
            .filter(cell -> cell.matches("[\\d.,]*\\d"))
            .toList();
    if (column.kind().percent()
        && !heading.contains("%")
        && !bare.isEmpty()
        && bare.stream().allMatch(cell -> cell.matches("0?[.,]\\d+|0|1"))) {
      notes.add(
          "%s: plain numbers were read as percent, so that %s is %s %%; write 70 %% where seven tenths are meant."
              .formatted(heading, bare.get(0), bare.get(0)));
    }
  }

  private Entry entry(Column column, int position, String text, int line, List<String> notes) {
    Entry entry = read(column, position, text);
    if (entry instanceof Entry.Unreadable unreadable) {
      notes.add(
          "Line %s, %s: %s; %s."
              .formatted(
                  line,
                  list.headings().get(position),
                  unreadable.problem(),
                  money() ? "what stood here stays" : "kept as it stands"));
    }
    if (entry instanceof Entry.Words words && unknown(column, words.text())) {
      return known(column, position, words, line, notes);
    }
    return entry;
  }

  /** A word that is another name of one of ours becomes ours; any other stays, and is told. */
  private Entry known(
      Column column, int position, Entry.Words words, int line, List<String> notes) {
    String heading = list.headings().get(position);
    Optional<String> ours = column.words().flatMap(all -> all.alsoCalled(words.text()));
    if (ours.isEmpty()) {
      notes.add(
          "Line %s, %s: “%s” is none of the words for %s; kept as it stands, choose another in the grid."
              .formatted(line, heading, words.text(), column.name()));
      return words;
    }
    String told = "%s: “%s” was read as “%s”.".formatted(heading, words.text().strip(), ours.get());
    if (!notes.contains(told)) {
      notes.add(told);
    }
    return new Entry.Words(ours.get());
  }

  private boolean unknown(Column column, String word) {
    return column.content() == Column.Content.CHOICE
        && !column.equals(Parts.PRICE_IN)
        && book.choices(column).stream().noneMatch(each -> each.equalsIgnoreCase(word.strip()));
  }

  private Entry read(Column column, int position, String cell) {
    if (column.content() != Column.Content.NUMBER) {
      return Entries.read(column, CsvText.asWritten(cell), book.system());
    }
    String unit = unit(column, position).map(Unit::symbol).orElse("");
    String number = money() ? ListText.withoutCurrency(cell) : cell;
    return text.read(column, number, position, numbers(), unit, book.system());
  }

  private List<Integer> numbers() {
    return columns.entrySet().stream()
        .filter(each -> each.getValue().content() == Column.Content.NUMBER)
        .filter(each -> !each.getValue().kind().onCalendar())
        .map(Map.Entry::getKey)
        .toList();
  }

  private Optional<Unit> unit(Column column, int position) {
    Headings.Found known = found.get(position);
    if (known != null && known.unitKnown()) {
      boolean percent = list.headings().get(position).contains("%");
      return column.kind().percent() && percent
          ? Optional.of(Units.PERCENT)
          : Optional.of(known.unit()).filter(unit -> !unit.symbol().isEmpty());
    }
    String heading = list.headings().get(position);
    Dimension taken = column.kind().unit(book.system()).dimension();
    return ListGuess.named(heading)
        .filter(unit -> unit.dimension().equals(taken))
        .or(() -> ListGuess.among(heading, taken));
  }
}
