package zonewright.desk.grid;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntPredicate;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.units.QuantityText;

/**
 * What a row must hold to be shown.
 *
 * @param column the column looked at; none for any
 * @param relation how it is compared
 * @param text what with, as typed
 */
record RowCriterion(Optional<Column> column, Relation relation, String text) {
  /** How a cell is compared. */
  enum Relation {
    HOLDS("holds"),
    LACKS("does not hold"),
    AT_LEAST("is at least"),
    AT_MOST("is at most"),
    EQUALS("is exactly"),
    BLANK("is blank");

    private final String words;

    Relation(String words) {
      this.words = words;
    }

    /** Says whether it compares with a text. */
    boolean wantsText() {
      return this != BLANK;
    }

    /** Says whether it compares numbers only. */
    boolean ofNumbers() {
      return this == AT_LEAST || this == AT_MOST;
    }

    /** Returns the relations that make sense for a column; for all, those of words. */
    static List<Relation> fitting(Optional<Column> column) {
      if (column.isEmpty()) {
        return List.of(HOLDS, LACKS);
      }
      return column.get().content() == Column.Content.NUMBER
          ? List.of(AT_LEAST, AT_MOST, EQUALS, HOLDS, BLANK)
          : List.of(HOLDS, LACKS, EQUALS, BLANK);
    }

    @Override
    public String toString() {
      return words;
    }
  }

  /** Returns why it cannot be asked; nothing where it can. */
  Optional<String> problem(Book book) {
    if (column.isPresent() && isNumber() && numeric()) {
      return QuantityText.read(text, column.get().kind(), book.system())
              instanceof QuantityText.Unreadable unreadable
          ? Optional.of(unreadable.sentence())
          : Optional.empty();
    }
    return Optional.empty();
  }

  private boolean isNumber() {
    return column.filter(found -> found.content() == Column.Content.NUMBER).isPresent();
  }

  private boolean numeric() {
    return relation.ofNumbers() || relation == Relation.EQUALS;
  }

  /** Says whether it asks nothing. */
  boolean empty() {
    return relation.wantsText() && text.isBlank();
  }

  /** Returns what says of a row of the book whether it passes. */
  IntPredicate test(Book book, CellLooks looks, List<Column> all) {
    if (empty()) {
      return row -> true;
    }
    String low = text.strip().toLowerCase(Locale.ROOT);
    List<Column> asked = column.map(List::of).orElse(all);
    if (isNumber() && numeric()) {
      return numbers(book, asked.get(0).reference());
    }
    return switch (relation) {
      case BLANK -> row -> looks.sought(asked.get(0), row).isEmpty();
      case EQUALS -> row -> looks.sought(asked.get(0), row).equalsIgnoreCase(text.strip());
      case LACKS -> row -> asked.stream().noneMatch(each -> holds(looks, each, row, low));
      default -> row -> asked.stream().anyMatch(each -> holds(looks, each, row, low));
    };
  }

  private static boolean holds(CellLooks looks, Column column, int row, String low) {
    return looks.sought(column, row).toLowerCase(Locale.ROOT).contains(low);
  }

  private IntPredicate numbers(Book book, Reference reference) {
    if (!(QuantityText.read(text, reference.kind(), book.system())
        instanceof QuantityText.Read read)) {
      return row -> true;
    }
    double value = read.value();
    double near = Math.abs(value) * 1e-9;
    return switch (relation) {
      case AT_LEAST -> row -> book.number(reference, row) >= value - near;
      case AT_MOST -> row -> book.number(reference, row) <= value + near;
      default -> row -> Math.abs(book.number(reference, row) - value) <= near;
    };
  }
}
