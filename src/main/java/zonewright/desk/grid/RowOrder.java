package zonewright.desk.grid;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;

/** The order of rows by columns; rows without a value come last either way. */
final class RowOrder {
  private static final Pattern PIECES = Pattern.compile("\\d+|\\D+");

  private RowOrder() {}

  /** A column to sort by, and which way. */
  record Key(Column column, boolean upwards) {}

  /** Returns the edit of sorting a table by columns, the first of which counts most. */
  static Edit sorted(Book book, CellLooks looks, List<Key> keys) {
    String table = keys.get(0).column().reference().table();
    List<Integer> order = new ArrayList<>();
    for (int row = 0; row < book.rows(table); row++) {
      order.add(row);
    }
    Comparator<Integer> by = comparator(book, looks, keys.get(0));
    for (Key key : keys.subList(1, keys.size())) {
      by = by.thenComparing(comparator(book, looks, key));
    }
    order.sort(by);
    String names =
        keys.stream().map(key -> key.column().name()).collect(Collectors.joining(", then "));
    return new Edits(book).reordered(table, "sorting by " + names, order);
  }

  private static Comparator<Integer> comparator(Book book, CellLooks looks, Key key) {
    Column column = key.column();
    Comparator<Integer> byValue =
        column.content() == Column.Content.NUMBER
            ? Comparator.comparingDouble(row -> book.number(column.reference(), row))
            : Comparator.comparing(row -> looks.look(column, row).text(), RowOrder::compare);
    Comparator<Integer> directed = key.upwards() ? byValue : byValue.reversed();
    return Comparator.<Integer, Boolean>comparing(row -> empty(book, looks, column, row))
        .thenComparing(directed);
  }

  private static boolean empty(Book book, CellLooks looks, Column column, int row) {
    return column.content() == Column.Content.NUMBER
        ? Double.isNaN(book.number(column.reference(), row))
        : looks.look(column, row).text().isEmpty();
  }

  /** Compares words so that numbers within them count as numbers: zone 2 before zone 10. */
  static int compare(String one, String other) {
    List<String> first = pieces(one);
    List<String> second = pieces(other);
    for (int i = 0; i < Math.min(first.size(), second.size()); i++) {
      int difference = comparePieces(first.get(i), second.get(i));
      if (difference != 0) {
        return difference;
      }
    }
    return Integer.compare(first.size(), second.size());
  }

  private static List<String> pieces(String words) {
    return PIECES
        .matcher(words.toLowerCase(Locale.ROOT))
        .results()
        .map(MatchResult::group)
        .toList();
  }

  private static int comparePieces(String one, String other) {
    boolean numbers = Character.isDigit(one.charAt(0)) && Character.isDigit(other.charAt(0));
    return numbers ? new BigInteger(one).compareTo(new BigInteger(other)) : one.compareTo(other);
  }
}
