package zonewright.exchange;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.TableDefinition;
import zonewright.units.Dimension;
import zonewright.units.Unit;
import zonewright.units.Units;

/**
 * Guesses which column somebody means by a heading of their own: by other names of ours, by the
 * words it shares with ours, by its unit, and by whether what stands below is what ours takes.
 * Where little speaks for a column there is no guess.
 */
final class ListGuess {
  private static final Pattern UNIT = Pattern.compile("[(\\[]([^()\\[\\]]*)[)\\]]$");
  private static final int ENOUGH = 2;
  private static final int SHARED_WORD = 2;
  private static final int WORDS_OF_THE_LIST = 3;
  private static final int ANOTHER_NAME = 8;
  private static final int ROWS_LOOKED_AT = 200;
  private static final int STEM = 4;

  /** Shorter ones, such as in and m, are words or letters too. */
  private static final int SHORTEST_UNIT = 3;

  private static final int WORDS_OF_A_UNIT = 2;

  /** Reads a cell of the list for a column. */
  interface Reading {
    Entry of(Column column, int position, String text);
  }

  private final Book book;
  private final TableDefinition table;
  private final ForeignList list;
  private final Reading reading;

  ListGuess(Book book, TableDefinition table, ForeignList list, Reading reading) {
    this.book = book;
    this.table = table;
    this.list = list;
    this.reading = reading;
  }

  /**
   * A column that may be meant.
   *
   * @param score how much speaks for it; only of use beside another
   */
  record Guess(Column column, int score) {}

  /** Returns the columns that may be meant, the likeliest first; a column matched is none. */
  List<Guess> likely(int position, Map<Integer, Column> matched) {
    return table.inputs().stream()
        .filter(column -> !matched.containsValue(column))
        .map(column -> new Guess(column, score(column, position)))
        .filter(guess -> guess.score() >= ENOUGH)
        .sorted(Comparator.comparingInt(guess -> -guess.score()))
        .toList();
  }

  /** Says whether a heading is another name of a column. */
  boolean anotherName(int position) {
    String heading = withoutUnit(list.headings().get(position));
    return table.inputs().stream().anyMatch(column -> ListHeadings.means(column, heading));
  }

  private int score(Column column, int position) {
    String heading = list.headings().get(position);
    Optional<Unit> unit = named(heading);
    boolean number = column.content() == Column.Content.NUMBER;
    if (unit.isPresent()
        && (!number
            || !unit.get().dimension().equals(column.kind().unit(book.system()).dimension()))) {
      return 0;
    }
    boolean anotherName = ListHeadings.means(column, withoutUnit(heading));
    // Words that are none of our list yet are told, and put right in the grid.
    boolean words = anotherName && !number;
    if (!words && !takes(column, position)) {
      return 0;
    }
    if (anotherName) {
      return ANOTHER_NAME;
    }
    int shared = shared(column.name(), heading);
    int score = SHARED_WORD * shared;
    score += column.content() == Column.Content.CHOICE ? WORDS_OF_THE_LIST : 0;
    // A number alone fits nearly anywhere: a name it shares in part only counts for less.
    score += number ? (unit.isPresent() ? 1 : 0) - (words(column.name()).size() - shared) : 0;
    return score;
  }

  /** Says whether most of what stands below a heading is what a column takes. */
  private boolean takes(Column column, int position) {
    List<String> values = values(position);
    long fit = fit(column, position);
    boolean choice = column.content() == Column.Content.CHOICE;
    return !values.isEmpty() && (choice ? fit * 2 >= values.size() : fit * 5 >= values.size() * 4L);
  }

  private long fit(Column column, int position) {
    return values(position).stream().filter(text -> fits(column, position, text)).count();
  }

  /**
   * Says whether a column of the same name is meant otherwise: it takes nothing of what is there.
   */
  boolean hollow(Column column, int position) {
    return !values(position).isEmpty() && fit(column, position) == 0;
  }

  private List<String> values(int position) {
    return list.rows().stream()
        .limit(ROWS_LOOKED_AT)
        .map(row -> row.get(position).strip())
        .filter(text -> !text.isEmpty())
        .toList();
  }

  private boolean fits(Column column, int position, String text) {
    Entry entry = reading.of(column, position, text);
    if (column.content() == Column.Content.NUMBER) {
      return entry instanceof Entry.Figure figure
          && column
              .bounds()
              .flatMap(bounds -> bounds.problem(figure.value(), column.kind(), book.system()))
              .isEmpty();
    }
    return column.content() == Column.Content.WORDS
        || column.words().orElseThrow().constant().orElse(List.of()).stream()
            .anyMatch(word -> word.equalsIgnoreCase(text));
  }

  /** Returns the unit a heading names in parentheses or brackets. */
  static Optional<Unit> named(String heading) {
    Matcher matcher = UNIT.matcher(heading.strip());
    return matcher.find() ? Units.named(matcher.group(1)) : Optional.empty();
  }

  private static String withoutUnit(String heading) {
    return UNIT.matcher(heading.strip()).replaceFirst("");
  }

  /**
   * Returns the unit that a heading names in one of its words or several in a row, as in {@code GPM
   * per head} and {@code Square feet}: one that the column takes.
   */
  static Optional<Unit> among(String heading, Dimension taken) {
    List<String> words = List.of(heading.strip().split("[\\s_]+"));
    for (int length = WORDS_OF_A_UNIT; length > 0; length--) {
      for (int from = 0; from + length <= words.size(); from++) {
        String name = String.join(" ", words.subList(from, from + length));
        Optional<Unit> unit =
            Units.named(name)
                .filter(any -> name.length() >= SHORTEST_UNIT)
                .filter(any -> any.dimension().equals(taken));
        if (unit.isPresent()) {
          return unit;
        }
      }
    }
    return Optional.empty();
  }

  /** How many words two names share; endings do not matter. */
  private static int shared(String name, String heading) {
    List<String> theirs = words(withoutUnit(heading));
    int shared = 0;
    for (String ours : words(name)) {
      shared += theirs.stream().anyMatch(word -> alike(word, ours)) ? 1 : 0;
    }
    return shared;
  }

  private static boolean alike(String one, String other) {
    return one.equals(other)
        || (one.length() >= STEM
            && other.length() >= STEM
            && one.substring(0, STEM).equals(other.substring(0, STEM)));
  }

  private static List<String> words(String text) {
    return List.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")).stream()
        .filter(word -> word.length() > 2)
        .toList();
  }
}
