package zonewright.exchange;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import zonewright.estimate.Money;
import zonewright.estimate.Parts;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.sheet.ListText;
import zonewright.trade.Sheets;

/**
 * The currencies in which a list names its prices: an item priced in another one than the job says
 * so, and the sheet of currencies has a row for it.
 */
final class ListCurrencies {
  private final Book book;
  private final Optional<String> ofJob;
  private final Set<String> fresh = new LinkedHashSet<>();
  private final Set<String> unsure = new LinkedHashSet<>();

  ListCurrencies(Book book) {
    this.book = book;
    this.ofJob = Money.currency(book).map(ListCurrencies::folded);
  }

  private static String folded(String code) {
    return code.strip().toUpperCase(Locale.ROOT);
  }

  /**
   * Has an item say in what its price is.
   *
   * @param price its price as the list has it
   */
  void put(Map<Column, Entry> item, String price) {
    Optional<String> code =
        Money.words(item.getOrDefault(Parts.PRICE_IN, Entry.BLANK))
            .or(() -> ListText.currency(price))
            .map(ListCurrencies::folded);
    if (code.isEmpty()) {
      return;
    }
    if (ofJob.isEmpty()) {
      unsure.add(code.get());
    }
    if (ofJob.isEmpty() || code.equals(ofJob)) {
      item.put(Parts.PRICE_IN, Entry.BLANK);
      return;
    }
    item.put(Parts.PRICE_IN, Entry.words(code.get()));
    if (book.choices(Parts.PRICE_IN).stream().noneMatch(code.get()::equalsIgnoreCase)) {
      fresh.add(code.get());
    }
  }

  /** Tells which currencies are met, and what is to be typed for them. */
  void tell(List<String> notes) {
    unsure.forEach(
        code ->
            notes.add(
                "Prices are in %s, and no currency is named on the sheet Estimate: they are taken as money of the job."
                    .formatted(code)));
    fresh.forEach(
        code ->
            notes.add(
                "Prices are in %s: type on the sheet Currencies what one %s is worth in %s."
                    .formatted(code, code, ofJob.orElseThrow())));
  }

  /** Returns an edit that takes items over, with rows for the currencies they name. */
  Edit with(Edit items) {
    List<List<Entry>> rows = fresh.stream().map(code -> List.of(Entry.words(code))).toList();
    return rows.isEmpty()
        ? items
        : new Edit.Several(
            items.name(), List.of(new Edits(book).appended(Sheets.CURRENCIES, rows), items));
  }
}
