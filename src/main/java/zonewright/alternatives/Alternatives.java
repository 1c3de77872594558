package zonewright.alternatives;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Entry;
import zonewright.sheet.Row;
import zonewright.trade.Sheets;

/**
 * The alternatives of a design as they are at one moment.
 *
 * <p>An alternative is what it does otherwise than the design: what is typed into the design holds
 * for all of them, but where they differ. One may be in hand: then the sheets hold it, what is
 * typed is its own, and what the design has instead is noted as the way back.
 */
public final class Alternatives {
  /** What the design itself is called beside its alternatives. */
  public static final String DESIGN = "The design";

  private static final String NO_HAND =
      "the design has this instead of an alternative, but none is marked as on the sheets";

  private static final String NONE_SUCH =
      "there is no alternative “%s” on the sheet Alternatives; name one that is there, or “"
          + DESIGN
          + "”";

  /** Where the mark stands in a row of the sheet of alternatives. */
  static final int MARK = 1;

  private final Book book;
  private final BookSnapshot now;
  private final List<String> names = new ArrayList<>();
  private final Optional<String> inHand;
  private final List<Change> wayBack = new ArrayList<>();
  private final Map<String, List<Change>> others = new LinkedHashMap<>();

  /** For each change the row it has on the sheet of changes. */
  private final IdentityHashMap<Change, Integer> rows = new IdentityHashMap<>();

  private Optional<BookSnapshot> design = Optional.empty();

  /** Reads the alternatives of a book as it is now. */
  public Alternatives(Book book) {
    this.book = book;
    this.now = book.snapshot();
    now.rows(Sheets.ALTERNATIVES).stream()
        .map(row -> text(row.entry(0)))
        .filter(name -> !name.isEmpty())
        .forEach(names::add);
    this.inHand = inHand(now);
    names.forEach(name -> others.put(name, new ArrayList<>()));
    List<Row> changes = now.rows(Sheets.CHANGES);
    for (int at = 0; at < changes.size(); at++) {
      Row row = changes.get(at);
      List<String> texts =
          AlternativeSheets.changeColumns().stream()
              .map(column -> text(row.entry(book.position(column.reference()))))
              .toList();
      Optional<Change> change = Change.of(texts);
      if (change.isPresent()) {
        String of = texts.get(1);
        rows.put(change.get(), at);
        (of.equalsIgnoreCase(DESIGN)
                ? wayBack
                : others.computeIfAbsent(known(of), any -> new ArrayList<>()))
            .add(change.get());
      }
    }
    inHand.ifPresent(others::remove);
  }

  /** Returns the name of an alternative as it stands on its sheet. */
  private String known(String written) {
    return names.stream().filter(written::equalsIgnoreCase).findFirst().orElse(written);
  }

  /** Returns the alternative whose values some sheets hold; none where they hold the design. */
  public static Optional<String> inHand(BookSnapshot sheets) {
    return sheets.rows(Sheets.ALTERNATIVES).stream()
        .filter(Alternatives::marked)
        .map(row -> text(row.entry(0)))
        .filter(name -> !name.isEmpty())
        .findFirst();
  }

  /** Says whether a row of the sheet of alternatives is marked as the one on the sheets. */
  static boolean marked(Row row) {
    return !text(row.entry(MARK)).isEmpty();
  }

  static String text(Entry entry) {
    return entry instanceof Entry.Words words ? words.text() : "";
  }

  /** Returns the book they were read from. */
  Book book() {
    return book;
  }

  /** Returns what the book held. */
  BookSnapshot now() {
    return now;
  }

  /** Returns their names in the order of their sheet. */
  public List<String> names() {
    return List.copyOf(names);
  }

  /** Returns the name of an alternative however it is written; none where there is none. */
  public Optional<String> named(String written) {
    return Optional.of(known(written.strip())).filter(names::contains);
  }

  /** Returns the one whose values the sheets hold; none where they hold the design itself. */
  public Optional<String> inHand() {
    return inHand;
  }

  /** Returns what the design has instead of the alternative in hand. */
  List<Change> wayBack() {
    return List.copyOf(wayBack);
  }

  /** Returns the changes of those that are not in hand; lists to change as one likes. */
  Map<String, List<Change>> others() {
    Map<String, List<Change>> copy = new LinkedHashMap<>();
    others.forEach((name, changes) -> copy.put(name, new ArrayList<>(changes)));
    return copy;
  }

  /** Returns the design without any alternative. */
  public BookSnapshot design() {
    if (design.isEmpty()) {
      design = Optional.of(wayBack.isEmpty() ? now : made(now, wayBack));
    }
    return design.get();
  }

  /** Returns the sheets as an alternative has them; those of the design for an unknown name. */
  public BookSnapshot of(String name) {
    return inHand.filter(name::equals).isPresent()
        ? now
        : made(design(), others.getOrDefault(name, List.of()));
  }

  private BookSnapshot made(BookSnapshot sheets, List<Change> changes) {
    return changes.isEmpty() ? sheets : AppliedChanges.of(book.schema(), sheets, changes).made();
  }

  /** Returns what an alternative does otherwise than the design. */
  public List<Change> changes(String name) {
    return inHand.filter(name::equals).isPresent()
        ? between(design(), now)
        : List.copyOf(others.getOrDefault(name, List.of()));
  }

  /**
   * Returns what the design has where an alternative differs, by {@link Change#where}: a value,
   * {@code blank}, or whether the row is there.
   */
  public Map<String, String> insteadOf(String name) {
    Map<String, String> there = new LinkedHashMap<>();
    for (Change back : between(of(name), design())) {
      there.put(
          back.where(),
          switch (back.kind()) {
            case TYPED -> back.value();
            case CLEARED -> "blank";
            case ROW_ADDED -> "there";
            case ROW_GONE -> "not there";
          });
    }
    return there;
  }

  List<Change> between(BookSnapshot from, BookSnapshot to) {
    return Differences.between(book.schema(), book.wording(), from, to);
  }

  /**
   * Returns what is wrong with changes: what they mean is not there any more.
   *
   * @return by the row on the sheet of changes, one sentence
   */
  public Map<Integer, String> problems() {
    Map<Integer, String> found = new TreeMap<>();
    problems(now, wayBack, found);
    if (inHand.isEmpty()) {
      wayBack.forEach(change -> found.putIfAbsent(rows.get(change), NO_HAND));
    }
    others.forEach(
        (name, changes) -> {
          problems(design(), changes, found);
          // a blank one is told as any cell that is missing
          if (!names.contains(name) && !name.isEmpty()) {
            changes.forEach(change -> found.put(rows.get(change), NONE_SUCH.formatted(name)));
          }
        });
    return found;
  }

  private void problems(BookSnapshot sheets, List<Change> changes, Map<Integer, String> found) {
    if (!changes.isEmpty()) {
      AppliedChanges.of(book.schema(), sheets, changes)
          .problems()
          .forEach((place, sentence) -> found.put(rows.get(changes.get(place)), sentence));
    }
  }

  /**
   * Returns why no alternative can be called so; empty where one can.
   *
   * @param name as a person wrote it
   */
  public Optional<String> refused(String name) {
    if (name.isBlank()) {
      return Optional.of("An alternative needs a name, such as “Drip in the beds”.");
    }
    if (name.strip().toLowerCase(Locale.ROOT).equals(DESIGN.toLowerCase(Locale.ROOT))) {
      return Optional.of(
          "“%s” is what your design is called; choose another name.".formatted(name));
    }
    return named(name)
        .map(
            taken -> "There is an alternative “%s” already; choose another name.".formatted(taken));
  }
}
