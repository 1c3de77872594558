package zonewright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import zonewright.formula.Reference;

/**
 * Rows by the words they hold, and in the order of a number, found once until the next edit:
 * whoever explains each of many rows would else look through all the others for each of them.
 */
final class RowsByWords {
  private record Columns(
      String table, List<Reference> words, Optional<Reference> order, boolean rising) {}

  /**
   * Rows in the order of a number.
   *
   * @param numbers the numbers, beside the rows
   * @param broken whether one has no number, so that nothing can be said; the rows then stand as
   *     they do in their table
   */
  record Sorted(List<Integer> rows, List<Double> numbers, boolean broken) {
    /** Returns the rows whose number keeps to a limit: the first so many. */
    List<Integer> within(zonewright.formula.Comparator comparator, double than) {
      int inside = 0;
      int outside = rows.size();
      while (inside < outside) {
        int middle = (inside + outside) >>> 1;
        if (comparator.holds(numbers.get(middle), than)) {
          inside = middle + 1;
        } else {
          outside = middle;
        }
      }
      return rows.subList(0, inside);
    }
  }

  private final Book book;
  private final Map<Columns, Map<List<Double>, List<Integer>>> known = new HashMap<>();
  private final Map<Columns, Map<List<Double>, Sorted>> ordered = new HashMap<>();

  RowsByWords(Book book) {
    this.book = book;
  }

  /** Returns the rows that count and hold words of these places in the lists. */
  List<Integer> of(String table, List<Reference> words, List<Double> keys) {
    return known
        .computeIfAbsent(new Columns(table, words, Optional.empty(), true), this::found)
        .getOrDefault(keys, List.of());
  }

  private Map<List<Double>, List<Integer>> found(Columns columns) {
    Map<List<Double>, List<Integer>> rows = new HashMap<>();
    for (int row = 0; row < book.rows(columns.table()); row++) {
      if (book.counts(columns.table(), row)) {
        List<Double> key = new ArrayList<>();
        for (Reference word : columns.words()) {
          key.add(book.number(word, row));
        }
        rows.computeIfAbsent(key, any -> new ArrayList<>()).add(row);
      }
    }
    return rows;
  }

  /** Returns the same rows so that those that keep to a limit of this kind come first. */
  Sorted sorted(
      String table,
      List<Reference> words,
      List<Double> keys,
      Reference order,
      zonewright.formula.Comparator comparator) {
    boolean rising = comparator.holds(0, 1);
    return ordered
        .computeIfAbsent(
            new Columns(table, words, Optional.of(order), rising), any -> new HashMap<>())
        .computeIfAbsent(keys, any -> sorted(of(table, words, keys), order, rising));
  }

  private Sorted sorted(List<Integer> rows, Reference order, boolean rising) {
    List<Integer> sorted = new ArrayList<>(rows);
    boolean broken = rows.stream().anyMatch(row -> Double.isNaN(book.number(order, row)));
    if (!broken) {
      Comparator<Integer> byNumber = Comparator.comparingDouble(row -> book.number(order, row));
      sorted.sort(rising ? byNumber : byNumber.reversed());
    }
    List<Double> numbers = sorted.stream().map(row -> book.number(order, row)).toList();
    return new Sorted(sorted, numbers, broken);
  }

  /** Forgets all, for something changed. */
  void clear() {
    known.clear();
    ordered.clear();
  }
}
