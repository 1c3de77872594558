package zonewright.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import zonewright.budget.LocalRule;
import zonewright.budget.Ordinance;
import zonewright.budget.SiteBudget;
import zonewright.budget.WaterSense;
import zonewright.budget.ZoneBudget;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.savings.Savings;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;

/**
 * An answer of the site whose span is told, and the answer of zones it goes with: where each zone
 * takes most or least of that, the site's answer is at its ends.
 *
 * @param column what is told
 * @param zones the answer of zones
 * @param more whether the one grows with the other
 */
record SureAnswer(Column column, Column zones, boolean more) {
  /** The answers of zones whose spans are told. */
  static final List<Column> OF_ZONES =
      List.of(
          Emitters.PRECIPITATION_RATE,
          Demand.RUN_TIME_PER_WEEK,
          CycleAndSoak.MINUTES_GIVEN,
          CycleAndSoak.CYCLES,
          CycleAndSoak.SOAK,
          ZoneBudget.VOLUME_PER_WEEK,
          ZoneBudget.VOLUME_PER_YEAR);

  /** The answers of the site whose spans are told where a design has them. */
  static final List<Column> OF_SITE =
      List.of(
          SiteBudget.SITE_WEEK,
          SiteBudget.SITE_YEAR,
          Savings.BILL_AFTER,
          Ordinance.LEFT_OVER,
          WaterSense.LEFT_OVER,
          LocalRule.LEFT_OVER);

  private static final Column WATERINGS = Demand.WATERINGS_A_WEEK;

  /** A year goes with the week only as long as it comes to as many weeks: rain changes that. */
  private static final List<Column> OF_A_YEAR =
      List.of(WATERINGS, CycleAndSoak.CYCLES, Emitters.ZONE_FLOW, Drift.WEEKS);

  /**
   * Those that go up and down in whole minutes, cycles and watering days, each with what must stay
   * the same for it to go one way with each input all the same: the week's minutes are shared out
   * over waterings and cycles, and a rate moves both run and longest cycle.
   */
  static final Map<Column, List<Column>> IN_STEPS =
      Map.of(
          CycleAndSoak.CYCLES, List.of(WATERINGS, Emitters.PRECIPITATION_RATE),
          CycleAndSoak.MINUTES_GIVEN, List.of(WATERINGS, CycleAndSoak.CYCLES),
          CycleAndSoak.SOAK, List.of(WATERINGS, CycleAndSoak.CYCLES, Emitters.PRECIPITATION_RATE),
          ZoneBudget.VOLUME_PER_WEEK, List.of(WATERINGS, CycleAndSoak.CYCLES, Emitters.ZONE_FLOW),
          ZoneBudget.VOLUME_PER_YEAR, OF_A_YEAR,
          LocalRule.ABOVE_SHARE, OF_A_YEAR);

  /** Returns the answers of the site that this design has. */
  static List<SureAnswer> ofSite(Book book) {
    List<SureAnswer> answers =
        new ArrayList<>(
            List.of(
                new SureAnswer(SiteBudget.SITE_WEEK, ZoneBudget.VOLUME_PER_WEEK, true),
                new SureAnswer(SiteBudget.SITE_YEAR, ZoneBudget.VOLUME_PER_YEAR, true)));
    if (book.number(Savings.BILL_AFTER.reference(), 0) > 0) {
      answers.add(new SureAnswer(Savings.BILL_AFTER, ZoneBudget.VOLUME_PER_YEAR, true));
    }
    if (says(book, Ordinance.APPLIES, Ordinance.YES)) {
      answers.add(new SureAnswer(Ordinance.LEFT_OVER, Ordinance.ABOVE_SHARE, false));
    }
    if (says(book, WaterSense.APPLIES, Ordinance.YES)) {
      answers.add(new SureAnswer(WaterSense.LEFT_OVER, WaterSense.ABOVE_SHARE, false));
    }
    if (book.outcome(LocalRule.LIMIT.reference(), 0) instanceof Outcome.Amount) {
      boolean volume = !(book.entry(LocalRule.VOLUME.reference(), 0) instanceof Entry.Blank);
      answers.add(
          new SureAnswer(
              LocalRule.LEFT_OVER,
              volume ? ZoneBudget.VOLUME_PER_YEAR : LocalRule.ABOVE_SHARE,
              false));
    }
    return answers;
  }

  private static boolean says(Book book, Column choice, String word) {
    return book.outcome(choice.reference(), 0) instanceof Outcome.Words words
        && words.text().equals(word);
  }
}
