package zonewright.uncertainty;

import zonewright.formula.Outcome;
import zonewright.sheet.Book;
import zonewright.sheet.Column;

/** Numbers of columns as people read them. */
final class Words {
  private Words() {}

  /** Returns a number of a column with its unit. */
  static String of(Book book, Column column, double number) {
    return book.shown(column.reference(), new Outcome.Amount(number));
  }
}
