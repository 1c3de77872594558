package zonewright.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which rows of a table count for this row, and what is made of them.
 *
 * <p>{@code Matching.rows(TEST_OF_CAN, TEST).with(CATCH, Comparator.BELOW, X).count()} is the
 * number of cans of this test that caught less than X. Rows without a name never count.
 *
 * @param pairs words that must be the same
 * @param limit a number that must keep to a limit, if there is one
 */
public record Matching(List<Pair> pairs, Optional<Limit> limit) {
  public Matching {
    pairs = List.copyOf(pairs);
  }

  /**
   * Two words that must be the same.
   *
   * @param word a column of words, or of names, of the table looked at
   * @param key the word or the name of this row
   */
  public record Pair(Reference word, Reference key) {
    /** Written out: what a record makes by itself is slow at its first use, which is each start. */
    @Override
    public boolean equals(Object other) {
      return other instanceof Pair that && word.equals(that.word) && key.equals(that.key);
    }

    @Override
    public int hashCode() {
      return 31 * word.hashCode() + key.hashCode();
    }
  }

  /**
   * A number of the rows looked at, held against a number of this row.
   *
   * @param column a column of numbers of the table looked at
   * @param comparator how it is held against the other
   * @param than a number of this row
   */
  public record Limit(Reference column, Comparator comparator, Formula than) {
    /** Says whether rows with small numbers count, not those with great ones. */
    boolean fromBelow() {
      return comparator == Comparator.AT_MOST || comparator == Comparator.BELOW;
    }
  }

  /** Returns: rows whose {@code word} is the {@code key} of this row. */
  public static Matching rows(Cells word, Cells key) {
    return new Matching(List.of(new Pair(word.reference(), key.reference())), Optional.empty());
  }

  /** Returns: all rows whose number keeps to a limit. */
  public static Matching rowsWith(Cells column, Comparator comparator, Term than) {
    return new Matching(List.of(), Optional.empty()).with(column, comparator, than);
  }

  /** Returns: of these the rows with a second word the same. */
  public Matching and(Cells word, Cells key) {
    List<Pair> more = new ArrayList<>(pairs);
    more.add(new Pair(word.reference(), key.reference()));
    return new Matching(more, limit);
  }

  /** Returns: of these the rows whose number keeps to a limit. */
  public Matching with(Cells column, Comparator comparator, Term than) {
    Limit limited = new Limit(column.reference(), comparator, than.asFormula());
    return new Matching(pairs, Optional.of(limited));
  }

  /** Returns the sum; 0 where no row matches. */
  public Formula sum(Cells column) {
    return new Formula.Where(WhereKind.SUM, column.reference(), this);
  }

  /** Returns the largest; does not arise where no row matches. */
  public Formula largest(Cells column) {
    return new Formula.Where(WhereKind.LARGEST, column.reference(), this);
  }

  /** Returns the smallest; does not arise where no row matches. */
  public Formula smallest(Cells column) {
    return new Formula.Where(WhereKind.SMALLEST, column.reference(), this);
  }

  /** Returns how many rows match; 0 where none does. */
  public Formula count() {
    Reference looked = pairs.isEmpty() ? limit.orElseThrow().column() : pairs.get(0).word();
    return new Formula.Where(WhereKind.COUNT, looked, this);
  }
}
