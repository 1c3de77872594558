package zonewright.workbook.pack;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Working;

/** The steps from what was typed to some results of a row, each after all it is made from. */
final class Derivation {
  private Derivation() {}

  /**
   * A step.
   *
   * @param row the row of its table it is worked out in
   */
  record Step(Working working, int row) {}

  /** Returns the steps, each column once; sums over other rows stand alone. */
  static List<Step> of(Book book, List<Column> results, int row) {
    Map<Column, Step> known = new LinkedHashMap<>();
    results.forEach(column -> follow(book, column, row, known));
    return List.copyOf(known.values());
  }

  private static void follow(Book book, Column column, int row, Map<Column, Step> known) {
    if (known.containsKey(column)) {
      return;
    }
    Working working = book.working(column.reference(), row);
    for (Working.Input input : working.inputs()) {
      if (input.used() && input.row() >= 0 && !input.column().equals(column)) {
        boolean same = input.column().reference().table().equals(column.reference().table());
        if (!same || input.row() == row) {
          follow(book, input.column(), input.row(), known);
        }
      }
    }
    known.putIfAbsent(column, new Step(working, row));
  }
}
