package zonewright.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import zonewright.budget.SiteBudget;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.formula.Outcome;
import zonewright.nights.NightsPlan;
import zonewright.nights.ScheduleCard;
import zonewright.nights.ScheduleCards;
import zonewright.nights.WaysOut;
import zonewright.plants.Plants;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;

/**
 * Makes the cards of a design's programs: from its timetable, or where there is none from its
 * zones, without start times.
 */
final class Cards {
  private final Book book;

  private Cards(Design design) {
    this.book = design.book();
  }

  /** Returns a card for each program that has zones, then one for zones without a program. */
  static List<Card> of(Design design) {
    Cards cards = new Cards(design);
    Optional<NightsPlan> plan = design.nights().plan();
    return plan.isPresent() ? cards.ofTimetable(plan.get()) : cards.ofZones();
  }

  private List<Card> ofTimetable(NightsPlan plan) {
    List<Card> all = new ArrayList<>();
    List<String> ways = WaysOut.sentences(book, plan);
    for (ScheduleCard card : ScheduleCards.of(plan)) {
      List<String> remarks = new ArrayList<>();
      remarks.add(card.way().sentence());
      if (!card.rounding().isEmpty()) {
        remarks.add(card.rounding());
      }
      all.add(
          new Card(
              card.title(),
              card.starts(),
              card.days(),
              card.lines().stream().map(line -> station(line, card.way())).toList(),
              card.finish(),
              card.way() == ScheduleCard.Way.CYCLE_AND_SOAK,
              card.misfits(),
              card.misfits().isEmpty() ? List.of() : ways,
              remarks));
    }
    return all;
  }

  private Card.Station station(ScheduleCard.Line line, ScheduleCard.Way way) {
    boolean keepsSoaks = way == ScheduleCard.Way.CYCLE_AND_SOAK;
    return new Card.Station(
        line.zone().row(),
        line.zone().name(),
        place(line.zone().row()),
        Integer.toString(line.minutes()),
        Integer.toString(keepsSoaks ? line.longestCycle() : line.cycles()),
        line.soak() > 0 ? line.soak() + " min" : "none",
        line.days(),
        way == ScheduleCard.Way.STATION_STARTS ? String.join(", ", line.starts()) : "",
        line.lacks());
  }

  private List<Card> ofZones() {
    List<Card> all = new ArrayList<>();
    for (int program = 0; program < book.rows(Sheets.PROGRAMS); program++) {
      card(program).ifPresent(all::add);
    }
    card(-1).ifPresent(all::add);
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
        "The design has no timetable yet, so there are no start times here. Cycles of a station are apart by at least its soak.");
    if (!lacking.isEmpty()) {
      remarks.add(
          "Not complete: the design has no minutes yet for zone "
              + String.join(", ", lacking)
              + ". Do not guess them.");
    }
    String title = program < 0 ? "Zones without a program" : "Program " + program(program);
    return Optional.of(
        new Card(title, List.of(), "", stations, "", false, List.of(), List.of(), remarks));
  }

  private String program(int row) {
    return words(SiteBudget.PROGRAM, row);
  }

  private Card.Station station(int zone) {
    String days = number(Demand.WATERING_DAYS, zone);
    return new Card.Station(
        zone,
        words(Facts.ZONE_NAME, zone),
        place(zone),
        number(CycleAndSoak.CYCLE_MINUTES, zone),
        number(CycleAndSoak.CYCLES, zone),
        soak(zone),
        days + " a week",
        "",
        "");
  }

  private String place(int zone) {
    String place = words(Facts.ZONE_PLACE, zone);
    String plant = words(Plants.PLANT, zone);
    return place.isEmpty() ? plant : place;
  }

  private String soak(int zone) {
    Outcome outcome = book.outcome(CycleAndSoak.SOAK.reference(), zone);
    if (outcome instanceof Outcome.NotApplicable not) {
      return not.shown();
    }
    String minutes = number(CycleAndSoak.SOAK, zone);
    return minutes.equals("?") ? minutes : minutes + " min";
  }

  private String number(Column column, int row) {
    double number = book.number(column.reference(), row);
    return Double.isNaN(number) ? "?" : column.shown(number, book.system());
  }

  private String words(Column column, int row) {
    return book.outcome(column.reference(), row).text();
  }
}
