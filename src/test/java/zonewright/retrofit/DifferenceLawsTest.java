package zonewright.retrofit;

import static org.assertj.core.api.Assertions.assertThat;
import static zonewright.trade.Sheets.COUNTS;
import static zonewright.trade.Sheets.FOUND;
import static zonewright.trade.Sheets.ZONES;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;
import zonewright.budget.MonthlyVolume;
import zonewright.climate.Climate;
import zonewright.design.Design;
import zonewright.design.Sample;
import zonewright.emitters.Emitters;
import zonewright.estimate.Counted;
import zonewright.estimate.Counts;
import zonewright.formula.Outcome;
import zonewright.savings.Savings;
import zonewright.savings.Use;
import zonewright.savings.Worth;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.units.UnitSystem;

/** Laws of a retrofit. */
class DifferenceLawsTest {
  private static final List<Column> NEW =
      List.of(
          Difference.HEADS_NEW,
          Difference.DRIP_NEW,
          Difference.LOW_FLOW_NEW,
          Difference.VALVES_NEW,
          Difference.BOXES_NEW,
          PipeTakeoff.LENGTH_NEW,
          PipeTakeoff.FITTINGS_NEW,
          PipeTakeoff.MAIN_NEW,
          PipeTakeoff.MAIN_FITTINGS_NEW,
          PipeTakeoff.WIRE_NEW);

  private static final List<Column> TOTALS =
      List.of(Counts.NUMBER_NEW, Counts.NUMBER_REMOVED, Counts.LENGTH_NEW, Counts.LENGTH_REMOVED);

  @Property(tries = 40)
  void theDifferenceOfADesignWithItselfIsEmpty(@ForAll long seed) {
    Design design = RandomZones.of(seed);
    Book book = design.book();
    book.perform(new ZoneCopy(book).proposedToFound());
    for (int row = 0; row < book.rows(ZONES); row++) {
      for (Column column : NEW) {
        assertThat(book.number(column.reference(), row)).as("%s", column).isZero();
      }
      assertThat(book.outcome(Difference.STATE.reference(), row))
          .isEqualTo(new Outcome.Words(Difference.UNCHANGED));
      assertThat(book.outcome(Beside.CHANGE.reference(), row))
          .isEqualTo(new Outcome.Words("nothing"));
    }
    for (int row = 0; row < book.rows(COUNTS); row++) {
      for (Column column : TOTALS) {
        double number = book.number(column.reference(), row);
        assertThat(Double.isNaN(number) || number == 0)
            .as("%s of %s is %s", column, Counted.WORDS.get(row), number)
            .isTrue();
      }
    }
    assertThat(book.number(Savings.SAVED_VOLUME.reference(), 0)).isZero();
    assertThat(book.number(Savings.WATER_SAVING.reference(), 0)).isZero();
  }

  /**
   * Whatever method the site and the zones go by: rain, peak, evapotranspiration, plant factors,
   * gross depth, depletion, rate, day pattern, coefficients by month, catch-can tests.
   */
  @Property(tries = 20)
  void twoEqualSetsOfZonesSaveNothingUnderEveryChoiceOfMethod(@ForAll long seed) {
    Design design = RandomZones.ofAnyMethod(seed);
    Book book = design.book();
    book.perform(new ZoneCopy(book).proposedToFound());
    for (int month = 0; month < Climate.MONTH_NAMES.size(); month++) {
      assertThat(book.number(Use.BEFORE.reference(), month))
          .as("%s", Climate.MONTH_NAMES.get(month))
          .isEqualTo(Double.valueOf(book.number(Use.AFTER.reference(), month)));
    }
    double before = book.number(Savings.YEAR_BEFORE.reference(), 0);
    Statistics.label("water of the year")
        .collect(Double.isNaN(before) ? "none" : "known")
        .coverage(coverage -> coverage.check("known").percentage(share -> share > 20));
    if (!Double.isNaN(before)) {
      assertThat(before).isPositive();
      assertThat(book.number(Savings.SAVED_VOLUME.reference(), 0)).isZero();
      assertThat(book.number(Savings.WATER_SAVING.reference(), 0)).isZero();
      assertThat(book.number(Worth.FIRST_YEAR.reference(), 1)).isZero();
    }
  }

  @Property(tries = 40)
  void zonesAsFoundAreCalculatedAsTheZonesAre(@ForAll long seed) {
    Design design = RandomZones.of(seed);
    Book book = design.book();
    book.perform(new ZoneCopy(book).proposedToFound());
    for (int row = 0; row < book.rows(ZONES); row++) {
      for (Column column : book.schema().table(ZONES).columns()) {
        boolean moved =
            book.schema().table(FOUND).columns().stream()
                .anyMatch(each -> each.reference().equals(AsFound.of(column)));
        if (moved && column.content() == Column.Content.NUMBER) {
          assertThat(book.number(AsFound.of(column), row))
              .as("%s", column)
              .isEqualTo(Double.valueOf(book.number(column.reference(), row)));
        }
      }
    }
    assertThat(book.number(AsFound.of(MonthlyVolume.YEAR), 0)).isPositive();
  }

  @Property(tries = 40)
  void moreUniformEmittersNeverSaveLess(@ForAll long seed) {
    Design design = RandomZones.of(seed);
    Book book = design.book();
    book.perform(new ZoneCopy(book).proposedToFound());
    double saved = book.number(Savings.SAVED_VOLUME.reference(), 0);
    double money = book.number(Savings.WATER_SAVING.reference(), 0);
    for (int percent = 80; percent <= 100; percent += 4) {
      int row = Math.floorMod((int) seed + percent, book.rows(ZONES));
      book.perform(
          design.edits().typed(Emitters.DISTRIBUTION_UNIFORMITY.reference(), row, percent + " %"));
      double more = book.number(Savings.SAVED_VOLUME.reference(), 0);
      double dearer = book.number(Savings.WATER_SAVING.reference(), 0);
      assertThat(more).as("water saved").isGreaterThanOrEqualTo(saved - 1e-6 * Math.abs(saved));
      assertThat(dearer).as("money saved").isGreaterThanOrEqualTo(money - 0.005);
      saved = more;
      money = dearer;
    }
  }

  @Test
  void aCopyIsOneEditThatIsTakenBackExactly() {
    Book book = Sample.CAMPUS_RETROFIT.design(UnitSystem.US).book();
    double volume = book.number(Savings.YEAR_AFTER.reference(), 0);
    book.perform(new ZoneCopy(book).foundToProposed());
    assertThat(book.rows(ZONES)).as("zone 24 of both has one name").isEqualTo(24);
    assertThat(book.number(Difference.HEADS_NEW.reference(), 0)).isZero();
    assertThat(book.number(Savings.YEAR_AFTER.reference(), 0)).isGreaterThan(volume);
    book.undo();
    assertThat(book.number(Savings.YEAR_AFTER.reference(), 0)).isEqualTo(volume);
    assertThat(book.journal().toUndo()).isEmpty();
  }

  @Test
  void theCampusShowsWhatIsKeptWhatIsNewAndWhatGoes() {
    Book book = Sample.CAMPUS_RETROFIT.design(UnitSystem.US).book();
    int emitters = Counted.WORDS.indexOf(Counted.EMITTERS);
    int valves = Counted.WORDS.indexOf(Counted.VALVES);
    assertThat(book.number(Counts.NUMBER_KEPT.reference(), emitters))
        .as("96 rotors, 10 bubblers, 18 micro-sprays")
        .isEqualTo(96 + 10 + 18);
    assertThat(book.number(Counts.NUMBER_NEW.reference(), emitters))
        .as("142 rotating nozzles, 160 drip emitters")
        .isEqualTo(142 + 160);
    assertThat(book.number(Counts.NUMBER_REMOVED.reference(), emitters))
        .as("240 spray heads, 160 drip emitters")
        .isEqualTo(240 + 160);
    assertThat(book.number(Counts.NUMBER_REMOVED.reference(), valves)).isEqualTo(1);
    assertThat(book.number(Counts.NUMBER_NEW.reference(), valves)).isEqualTo(1);
  }
}
