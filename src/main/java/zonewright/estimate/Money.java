package zonewright.estimate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.units.QuantityKind;
import zonewright.units.QuantityText;

/** Amounts of money as whole cents, for what is printed. */
public final class Money {
  private Money() {}

  /**
   * Returns an amount of a money column that is whole cents, as decimal money with two decimals.
   *
   * @throws IllegalArgumentException when it is not a number
   */
  public static BigDecimal of(double amount) {
    if (Double.isNaN(amount) || Double.isInfinite(amount)) {
      throw new IllegalArgumentException("an amount of money is a number, not " + amount);
    }
    return BigDecimal.valueOf(amount).setScale(2, RoundingMode.HALF_UP);
  }

  /** Returns a cell of a money column with the currency, such as {@code 1,250.00 EUR}. */
  public static String text(Book book, Column column, int row) {
    double amount = book.number(column.reference(), row);
    if (Double.isNaN(amount)) {
      return "not known yet";
    }
    String number = QuantityText.shown(of(amount).doubleValue(), QuantityKind.MONEY, 2);
    return book.entry(JobFacts.CURRENCY.reference(), 0) instanceof Entry.Words currency
        ? number + " " + currency.text()
        : number;
  }
}
