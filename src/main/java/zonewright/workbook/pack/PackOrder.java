package zonewright.workbook.pack;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.sheet.Book;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;

/**
 * What is handed over.
 *
 * @param sheets which sheets, in the order of the pack
 * @param client whether it goes to a client: see {@link zonewright.design.ForClient}
 * @param zone the name of the zone whose derivation is shown; the first zone where none is named
 */
public record PackOrder(List<PackSheet> sheets, boolean client, Optional<String> zone) {
  public PackOrder {
    sheets = List.copyOf(sheets);
  }

  /** Returns an order of sheets, with the derivation of the first zone. */
  public static PackOrder of(List<PackSheet> sheets) {
    return new PackOrder(sheets, false, Optional.empty());
  }

  /** Returns the order of a client's copy, with the derivation of the first zone. */
  public static PackOrder forClient() {
    return new PackOrder(PackSheets.forClient(), true, Optional.empty());
  }

  /** Returns the same order, with the derivation of a zone if one is named. */
  public PackOrder deriving(Optional<String> name) {
    return new PackOrder(sheets, client, name);
  }

  /** Returns the same order without the proposal. */
  public PackOrder withoutProposal() {
    return new PackOrder(
        sheets.stream().filter(sheet -> !(sheet instanceof ProposalSheet)).toList(), client, zone);
  }

  /**
   * Returns why nothing is to be written, in sentences: a client would get a proposal, and there is
   * none. Nothing where it can be written.
   */
  public Optional<String> refused(Design design) {
    return sheets.stream()
        .filter(sheet -> client && sheet instanceof ProposalSheet)
        .flatMap(sheet -> sheet.lacks(design).stream())
        .map(why -> "The proposal cannot be made, so nothing was written. " + why)
        .findFirst();
  }

  /** Returns the order that made sheets of these titles, and the sheets that always stand. */
  public static PackOrder again(Design design, Collection<String> titles) {
    Book book = design.book();
    for (int zone = 0; zone < book.rows(Sheets.ZONES); zone++) {
      if (titles.contains(WorkingSheet.titleFor(book, zone))) {
        return of(PackSheets.chosen(PackSheets.ofTitles(titles)))
            .deriving(Optional.of(name(book, zone)));
      }
    }
    return of(PackSheets.chosen(PackSheets.ofTitles(titles)));
  }

  /** Returns the row of the zone, counted from 0; nothing where no zone has that name. */
  public Optional<Integer> zoneIn(Design design) {
    Book book = design.book();
    if (zone.isEmpty()) {
      return Optional.of(0);
    }
    for (int row = 0; row < book.rows(Sheets.ZONES); row++) {
      if (name(book, row).equalsIgnoreCase(zone.get().strip())) {
        return Optional.of(row);
      }
    }
    return Optional.empty();
  }

  private static String name(Book book, int row) {
    return book.entry(Facts.ZONE_NAME.reference(), row) instanceof Entry.Words words
        ? words.text()
        : "";
  }
}
