package zonewright.workbook.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import zonewright.budget.SiteBudget;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.nights.NightSheet;
import zonewright.nights.SiteNights;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;
import zonewright.water.SiteRules;
import zonewright.water.WateringPattern;

/**
 * Check numbers of all that a timetable depends on, each as it is now and as a formula that works
 * it out anew, so that a workbook can tell by itself whether its timetable is still right.
 *
 * <p>Each is a sum over the rows of a table, so the order of the rows does not matter; words count
 * by their letters.
 */
final class TimetableDigest {
  private static final int LETTERS = 27;

  private final Book book;
  private final Live live;

  /**
   * A check number.
   *
   * @param what what it stands for
   * @param value its value as things are
   * @param formula the formula that works it out
   */
  record Item(String what, double value, String formula) {}

  TimetableDigest(Book book, Live live) {
    this.book = book;
    this.live = live;
  }

  /** Returns the check numbers. */
  List<Item> items() {
    Sum runs = new Sum();
    runs.product(CycleAndSoak.CYCLES, CycleAndSoak.CYCLE_MINUTES);
    runs.product(CycleAndSoak.SOAK, CycleAndSoak.CYCLE_MINUTES);
    runs.product(CycleAndSoak.SOAK, CycleAndSoak.CYCLES);
    Sum flows = new Sum();
    flows.product(Emitters.ZONE_FLOW, CycleAndSoak.CYCLE_MINUTES);
    flows.product(Emitters.ZONE_FLOW, Emitters.ZONE_FLOW);
    Sum days = new Sum();
    days.product(Demand.LONGEST_INTERVAL, CycleAndSoak.CYCLE_MINUTES);
    days.product(Demand.WATERING_DAYS, CycleAndSoak.CYCLE_MINUTES);
    days.words(WateringPattern.PATTERN, Demand.WATERINGS_A_WEEK);
    days.words(WateringPattern.OWN_DAYS, Demand.WATERINGS_A_WEEK);
    days.product(WateringPattern.EVERY, Demand.WATERINGS_A_WEEK);
    days.product(WateringPattern.ORDER, Demand.WATERINGS_A_WEEK);
    Sum programs = new Sum();
    programs.words(SiteBudget.ZONE_PROGRAM, CycleAndSoak.CYCLE_MINUTES);
    programs.words(SiteBudget.PROGRAM, SiteNights.START_WISH);
    Sum hours = new Sum();
    for (Column column :
        List.of(
            NightSheet.OPENS,
            NightSheet.CLOSES,
            NightSheet.MINUTES_OPEN,
            NightSheet.OPENS_AGAIN,
            NightSheet.CLOSES_AGAIN)) {
      hours.product(column, NightSheet.NUMBER);
    }
    Sum site = new Sum();
    site.single(SiteNights.MOST_VALVES);
    site.single(SiteNights.GAP);
    site.single(SiteRules.MOST_CYCLES);
    site.single(SiteNights.MOST_PROGRAMS);
    site.single(SiteRules.AVAILABLE_FLOW);
    site.single(SiteNights.FIRST_NIGHT);
    site.singleWord(SiteNights.CONTROLLER);
    site.singleWord(SiteNights.START_RUNS);
    return List.of(
        runs.item("Cycles, minutes and soaks of the zones"),
        flows.item("Flows of the zones"),
        days.item("Watering days and patterns"),
        programs.item("Programs and their earliest starts"),
        hours.item("Hours of the nights"),
        site.item("Rules of the site"));
  }

  /** Adds up terms that each weigh differently, so that one cannot hide another. */
  private final class Sum {
    private double value;
    private final List<String> terms = new ArrayList<>();
    private int weight = 1;

    private void add(double term, String formula) {
      value += weight * term;
      terms.add(weight == 1 ? formula : weight + "*" + formula);
      weight += 2;
    }

    void product(Column one, Column other) {
      add(
          total(one, row -> number(one, row) * number(other, row)),
          "SUMPRODUCT(%s,%s)".formatted(live.all(one), live.all(other)));
    }

    void words(Column words, Column by) {
      add(
          total(words, row -> letters(text(words, row)) * number(by, row)),
          "SUMPRODUCT(%s,%s)".formatted(lettersOf(live.all(words)), live.all(by)));
    }

    void single(Column column) {
      add(number(column, 0), "N(" + live.all(column) + ")");
    }

    void singleWord(Column column) {
      add(letters(text(column, 0)), "(" + lettersOf(live.all(column)) + ")");
    }

    Item item(String what) {
      return new Item(what, value, "IFERROR(" + String.join("+", terms) + ",-1)");
    }
  }

  private double total(Column column, IntToDoubleFunction term) {
    double total = 0;
    for (int row = 0; row < book.rows(column.reference().table()); row++) {
      total += term.applyAsDouble(row);
    }
    return total;
  }

  /** What stands in the workbook's cell as a number; 0 where none does, as products count it. */
  private double number(Column column, int row) {
    if (column.takesEntries()
        && book.entry(column.reference(), row) instanceof Entry.Figure figure) {
      return figure.value();
    }
    double number = book.number(column.reference(), row);
    return Double.isNaN(number) ? 0 : number;
  }

  private String text(Column column, int row) {
    if (column.takesEntries() && !(book.entry(column.reference(), row) instanceof Entry.Blank)) {
      return Entries.typed(column, book.entry(column.reference(), row));
    }
    return book.outcome(column.reference(), row) instanceof Outcome.Words words ? words.text() : "";
  }

  private static double letters(String words) {
    String padded = words + "~".repeat(LETTERS);
    double sum = 0;
    for (int at = 0; at < LETTERS; at++) {
      sum += (double) padded.charAt(at) * (at + 1);
    }
    return sum;
  }

  private static String lettersOf(String cells) {
    StringBuilder sum = new StringBuilder();
    for (int at = 1; at <= LETTERS; at++) {
      sum.append(at == 1 ? "" : "+")
          .append("_xlfn.UNICODE(MID(")
          .append(cells)
          .append("&REPT(\"~\",")
          .append(LETTERS)
          .append("),")
          .append(at)
          .append(",1))*")
          .append(at);
    }
    return sum.toString();
  }
}
