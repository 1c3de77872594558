package zonewright.estimate;

import java.util.Currency;
import java.util.Locale;
import java.util.Optional;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;

/** Amounts of money in the currency of the job. */
public final class Money {
  /** Decimals of most currencies, and of those no one named. */
  public static final int USUAL_DECIMALS = 2;

  private Money() {}

  /** Returns the currency of the job as it is typed; none where it is left blank. */
  public static Optional<String> currency(Book book) {
    return words(book.entry(JobFacts.CURRENCY.reference(), 0));
  }

  /** Returns the words of a cell that names a currency; none where there are none. */
  public static Optional<String> words(Entry entry) {
    return entry instanceof Entry.Words words
        ? Optional.of(words.text().strip())
        : Optional.empty();
  }

  /**
   * Returns how many decimals the smallest amount of a currency has: 0 for the yen, 3 for the dinar
   * of Kuwait. Two for a name that is no code of ISO 4217, and for metals and the like, which have
   * none.
   *
   * @param currency as a person typed it; capitals do not matter
   */
  public static int decimals(String currency) {
    String code = currency.strip().toUpperCase(Locale.ROOT);
    return Currency.getAvailableCurrencies().stream()
        .filter(each -> each.getCurrencyCode().equals(code))
        .mapToInt(Currency::getDefaultFractionDigits)
        .filter(digits -> digits >= 0)
        .findFirst()
        .orElse(USUAL_DECIMALS);
  }

  /** Returns a cell of a money column with the currency, such as {@code 1,250.00 EUR}. */
  public static String text(Book book, Column column, int row) {
    double amount = book.number(column.reference(), row);
    if (Double.isNaN(amount)) {
      return "not known yet";
    }
    String number = book.schema().column(column.reference()).shown(amount, book.system());
    return currency(book).map(code -> number + " " + code).orElse(number);
  }
}
