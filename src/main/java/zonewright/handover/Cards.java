package zonewright.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import zonewright.budget.SiteBudget;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.formula.Outcome;
import zonewright.plants.Plants;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.QuantityText;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;

/** Makes the cards of a design's programs. */
final class Cards {
  private final Book book;

  private Cards(Design design) {
    this.book = design.book();
  }

  /** Returns a card for each program that has zones, then one for zones without a program. */
  static List<Card> of(Design design) {
    Cards cards = new Cards(design);
    List<Card> all = new ArrayList<>();
    for (int program = 0; program < cards.book.rows(Sheets.PROGRAMS); program++) {
      cards.card(program).ifPresent(all::add);
    }
    cards.card(-1).ifPresent(all::add);
    return all;
  }

  /** The card of a program; of -1, of the zones that have none. */
  private Optional<Card> card(int program) {
    List<Card.Station> stations = new ArrayList<>();
    List<String> lacking = new ArrayList<>();
    for (int zone = 0; zone < book.rows(Sheets.ZONES); zone++) {
      double its = book.number(SiteBudget.ZONE_PROGRAM.reference(), zone);
      boolean belongs = program < 0 ? Double.isNaN(its) : its == program;
      if (belongs && book.counts(Sheets.ZONES, zone)) {
        stations.add(station(zone));
        if (Double.isNaN(book.number(CycleAndSoak.CYCLE_MINUTES.reference(), zone))) {
          lacking.add(words(Facts.ZONE_NAME, zone));
        }
      }
    }
    if (stations.isEmpty()) {
      return Optional.empty();
    }
    List<String> remarks = new ArrayList<>();
    remarks.add(
        "Cycles of a station are apart by at least its soak; other stations can run meanwhile.");
    if (!lacking.isEmpty()) {
      remarks.add(
          "Not complete: the design has no minutes yet for "
              + String.join(", ", lacking)
              + ". Do not guess them.");
    }
    String name = program < 0 ? "not named yet" : words(SiteBudget.PROGRAM, program);
    return Optional.of(new Card(name, List.of(), "", stations, remarks));
  }

  private Card.Station station(int zone) {
    String place = words(Facts.ZONE_PLACE, zone);
    String plant = words(Plants.PLANT, zone);
    return new Card.Station(
        words(Facts.ZONE_NAME, zone),
        place.isEmpty() || plant.isEmpty() ? place + plant : place + " (" + plant + ")",
        number(CycleAndSoak.CYCLE_MINUTES, zone),
        number(CycleAndSoak.CYCLES, zone),
        soak(zone),
        number(Demand.WATERING_DAYS, zone));
  }

  private String soak(int zone) {
    Outcome outcome = book.outcome(CycleAndSoak.SOAK.reference(), zone);
    return outcome instanceof Outcome.NotApplicable not
        ? not.shown()
        : book.number(CycleAndSoak.SOAK.reference(), zone) >= 0
            ? number(CycleAndSoak.SOAK, zone) + " min"
            : "?";
  }

  private String number(Column column, int row) {
    double number = book.number(column.reference(), row);
    return Double.isNaN(number)
        ? "?"
        : QuantityText.shown(number, column.kind(), column.decimals(book.system()));
  }

  private String words(Column column, int row) {
    return book.outcome(column.reference(), row) instanceof Outcome.Words words ? words.text() : "";
  }
}
