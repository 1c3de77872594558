package zonewright.desk;

import java.util.List;
import java.util.Optional;
import zonewright.design.EvenSplit;
import zonewright.sheet.Book;
import zonewright.sheet.Place;
import zonewright.trade.Sheets;

/** Splits the zone a person is at into as many as its flow needs. */
final class ZoneSplit {
  static final String NAME = "Split the zone evenly";

  static final String ALL = "Split all zones that need it";

  private ZoneSplit() {}

  /** Returns the row of the zone the person is at, where it needs more than one valve. */
  private static Optional<Integer> row(DeskWindow window) {
    Book book = window.openDesign().book();
    return window
        .deck()
        .current()
        .filter(place -> book.blueprint().sameRows(place.column().table(), Sheets.ZONES))
        .map(Place::row)
        .filter(row -> row < book.rows(Sheets.ZONES))
        .filter(row -> EvenSplit.helps(book, row));
  }

  /** Says whether there is something to split. */
  static boolean possible(DeskWindow window) {
    return row(window).isPresent();
  }

  /** Splits it; can be undone. */
  static void perform(DeskWindow window) {
    window.front().finishTyping();
    Book book = window.openDesign().book();
    row(window).flatMap(row -> EvenSplit.edit(book, row)).ifPresent(book::perform);
  }

  /** Splits every zone that needs more than one valve, in one step; tells where none does. */
  static void performAll(DeskWindow window, MessageBar messages) {
    window.front().finishTyping();
    Book book = window.openDesign().book();
    EvenSplit.ofAll(book)
        .ifPresentOrElse(
            book::perform,
            () ->
                messages.problem(
                    "No zone is known to need more than one valve; type the available flow on Supply first.",
                    List.of()));
  }
}
