package zonewright.desk;

import java.util.List;
import java.util.Optional;
import zonewright.design.EvenSplit;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.UserAction;
import zonewright.desk.sheets.SheetDeck;
import zonewright.sheet.Book;
import zonewright.sheet.Place;
import zonewright.trade.Sheets;

/** Splits the zone a person is at into as many as its flow needs, or all such zones. */
final class ZoneSplit {
  private final OpenDesign open;
  private final SheetDeck deck;
  private final MessageBar messages;
  private final UserAction one;
  private final UserAction all;

  ZoneSplit(OpenDesign open, SheetDeck deck, MessageBar messages) {
    this.open = open;
    this.deck = deck;
    this.messages = messages;
    one =
        new UserAction("Split the zone evenly", deck.typed(this::splitOne))
            .tip("Part a zone that draws too much over as many valves as it needs");
    all = new UserAction("Split all zones that need it", deck.typed(this::splitAll));
  }

  /** Returns what splits the zone the person is at; can be undone. */
  UserAction one() {
    return one;
  }

  /** Returns what splits every zone that needs more than one valve, in one step. */
  UserAction all() {
    return all;
  }

  /** Finds out anew whether there is something to split. */
  void refresh() {
    one.setEnabled(row().isPresent());
  }

  /** Returns the row of the zone the person is at, where it needs more than one valve. */
  private Optional<Integer> row() {
    Book book = open.book();
    return deck.current()
        .filter(place -> book.schema().sameRows(place.column().table(), Sheets.ZONES))
        .map(Place::row)
        .filter(row -> row < book.rows(Sheets.ZONES))
        .filter(row -> EvenSplit.helps(book, row));
  }

  private void splitOne() {
    row().flatMap(row -> EvenSplit.edit(open.book(), row)).ifPresent(open.book()::perform);
  }

  private void splitAll() {
    EvenSplit.ofAll(open.book())
        .ifPresentOrElse(
            open.book()::perform,
            () ->
                messages.problem(
                    "No zone is known to need more than one valve; type the available flow on Supply first.",
                    List.of()));
  }
}
