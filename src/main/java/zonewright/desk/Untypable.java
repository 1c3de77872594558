package zonewright.desk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import zonewright.desk.part.MessageBar;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.sheets.Wayfinder;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Place;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.Working;

/** Says why nothing can be typed into a cell, and leads to what can be typed instead. */
final class Untypable {
  private static final int MOST = 3;
  private static final int DEEPEST = 4;

  private final OpenDesign open;
  private final Wayfinder ways;
  private final MessageBar messages;

  Untypable(OpenDesign open, Wayfinder ways, MessageBar messages) {
    this.open = open;
    this.ways = ways;
    this.messages = messages;
  }

  /** Says it of a cell. */
  void tell(Place place) {
    Book book = open.book();
    Column column = book.schema().column(place.column());
    TableDefinition table = book.schema().table(place.column().table());
    if (column.takesEntries()) {
      String other = table.other().orElse("");
      if (other.isEmpty()) {
        messages.tell("The names of these rows are given.", List.of());
        return;
      }
      TableDefinition leading = book.schema().table(other);
      Place there = new Place(leading.columns().get(0).reference(), place.row());
      messages.offer(
          "Names stand on the sheet %s, and this sheet follows it.".formatted(leading.title()),
          false,
          new MessageBar.Offer("Change it there", () -> ways.goTo(there)));
      return;
    }
    Set<Place> instead = new LinkedHashSet<>();
    gather(book, place, instead);
    List<MessageBar.Offer> offers = new ArrayList<>();
    for (Place each : instead) {
      String name = book.schema().column(each.column()).name();
      offers.add(new MessageBar.Offer(name, () -> ways.goTo(each)));
    }
    String words =
        "“%s” is calculated, so nothing was typed.%s"
            .formatted(column.name(), offers.isEmpty() ? "" : " Change what it comes from:");
    messages.offer(words, false, offers.toArray(MessageBar.Offer[]::new));
  }

  /** Gathers the nearest cells that it comes from and a person types into. */
  private static void gather(Book book, Place place, Set<Place> found) {
    List<Place> level = List.of(place);
    Set<Place> seen = new LinkedHashSet<>(level);
    for (int depth = 0; depth < DEEPEST && found.size() < MOST; depth++) {
      List<Place> next = new ArrayList<>();
      for (Place each : level) {
        for (Working.Input input : book.working(each.column(), each.row()).inputs()) {
          Place cell = new Place(input.column().reference(), Math.max(0, input.row()));
          boolean there = input.row() >= 0 && cell.row() < book.rows(cell.column().table());
          if (!there || !input.used() || !seen.add(cell)) {
            continue;
          }
          if (!input.column().takesEntries()) {
            next.add(cell);
          } else if (found.size() < MOST) {
            found.add(cell);
          }
        }
      }
      level = next;
    }
  }
}
