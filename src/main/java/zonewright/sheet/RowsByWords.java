package zonewright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import zonewright.formula.Matching;
import zonewright.formula.Reference;

/**
 * Rows by the words they hold, found once until the next edit: whoever explains each of many rows
 * would else look through all the others for each of them.
 */
final class RowsByWords {
  private record Columns(String table, List<Reference> words) {}

  private final Book book;
  private final Map<Columns, Map<List<Double>, List<Integer>>> known = new HashMap<>();

  RowsByWords(Book book) {
    this.book = book;
  }

  /** Returns the rows of a table that count and hold the words of a row, whatever their numbers. */
  List<Integer> of(String table, Matching matching, ToDoubleFunction<Reference> row) {
    List<Reference> words = matching.pairs().stream().map(Matching.Pair::word).toList();
    List<Double> keys =
        matching.pairs().stream().map(pair -> row.applyAsDouble(pair.key())).toList();
    return known
        .computeIfAbsent(new Columns(table, words), this::found)
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

  /** Forgets all, for something changed. */
  void clear() {
    known.clear();
  }
}
