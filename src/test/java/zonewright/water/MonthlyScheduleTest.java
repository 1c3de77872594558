package zonewright.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import zonewright.budget.MonthlyVolume;
import zonewright.budget.SiteBudget;
import zonewright.budget.ZoneBudget;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.climate.Rain;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.formula.Outcome;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/**
 * Each zone month by month: nothing runs off, nothing is lost, and the peak month is the baseline.
 */
class MonthlyScheduleTest {
  private final Design garden = Demo.libraryGarden(UnitSystem.US);

  private double number(Column column, int row) {
    return garden.book().number(column.reference(), row);
  }

  private void type(Column column, int row, String text) {
    garden.book().perform(garden.edits().typed(column.reference(), row, text));
  }

  private void show(int month) {
    type(MonthlySchedule.MONTH, 0, Climate.MONTH_NAMES.get(month));
  }

  private int zones() {
    return garden.book().rows(Sheets.ZONES);
  }

  @Test
  void thePeakMonthIsTheBaselineItself() {
    for (int zone = 0; zone < zones(); zone++) {
      assertThat(number(MonthlySchedule.PERCENTS.get(6), zone)).isCloseTo(1, within(1e-12));
      assertThat(number(MonthlySchedule.RUN_TIME, zone)).isEqualTo(number(Demand.RUN_TIME, zone));
      assertThat(number(MonthlySchedule.CYCLES, zone)).isEqualTo(number(CycleAndSoak.CYCLES, zone));
      assertThat(number(MonthlyVolume.OF_THE_MONTH, zone))
          .isEqualTo(number(MonthlyVolume.VOLUMES.get(6), zone));
      assertThat(number(MonthlyVolume.VOLUMES.get(6), zone))
          .isCloseTo(number(ZoneBudget.VOLUME_PEAK_MONTH, zone), within(1e-6));
    }
  }

  /** The rules of cycle and soak hold for each month's own run time. */
  @Test
  void cyclesGiveTheWholeRunOfEachMonthAndNeverRunOff() {
    for (int month = 0; month < 12; month++) {
      show(month);
      for (int zone = 0; zone < zones(); zone++) {
        double longest = number(CycleAndSoak.LONGEST_CYCLE, zone);
        double run = number(MonthlySchedule.RUN_TIME, zone);
        double cycles = number(MonthlySchedule.CYCLES, zone);
        double minutes = number(MonthlySchedule.CYCLE_MINUTES, zone);
        assertThat(cycles * minutes).isGreaterThanOrEqualTo(run);
        assertThat(cycles).isEqualTo(Double.isNaN(longest) ? 1 : Math.ceil(run / longest));
        if (!Double.isNaN(longest)) {
          assertThat(minutes).isLessThanOrEqualTo(longest);
        }
      }
    }
  }

  /** A month with a quarter of the demand has about a quarter of the minutes, not a sixteenth. */
  @Test
  void thePercentIsTakenOnceAndTheWateringDaysStay() {
    for (int month = 0; month < 12; month++) {
      show(month);
      for (int zone = 0; zone < zones(); zone++) {
        double percent = number(MonthlySchedule.PERCENTS.get(month), zone);
        assertThat(number(MonthlySchedule.PERCENT, zone)).isEqualTo(percent);
        double exact =
            number(Demand.RUN_TIME_PER_WEEK, zone)
                * percent
                / number(Demand.WATERINGS_A_WEEK, zone);
        assertThat(number(MonthlySchedule.RUN_TIME, zone)).isBetween(exact - 1e-6, exact + 1);
      }
    }
  }

  /**
   * Where the coefficient is the same all year and no rain counts, every zone's percent is the
   * month's reference ET over the peak's: Washington State University Extension (Grant County),
   * Monthly Sprinkler Runtime Adjustment (verified).
   */
  @Test
  void withoutRainAndWithOneCoefficientTheClimateAloneDecides() {
    for (int month = 0; month < 12; month++) {
      double percent = number(SiteBudget.PERCENT, month);
      assertThat(number(SiteBudget.PERCENT_BY_VOLUME, month)).isCloseTo(percent, within(1e-12));
      for (int zone = 0; zone < zones(); zone++) {
        assertThat(number(MonthlySchedule.PERCENTS.get(month), zone))
            .isCloseTo(percent, within(1e-12));
      }
    }
  }

  /** Derived: 0.3 × 1.24 in of January over 0.6 × 7.44 in of July is 8.33 %. */
  @Test
  void aCoefficientOfTheMonthCountsThatMonthAndForTheSiteByWater() {
    type(MonthlySchedule.COEFFICIENTS.get(0), 3, "0.3");
    assertThat(number(MonthlySchedule.PERCENTS.get(0), 3))
        .isCloseTo(0.3 * 1.24 / (0.6 * 7.44), within(1e-9));
    assertThat(number(SiteBudget.PERCENT_BY_VOLUME, 0)).isLessThan(number(SiteBudget.PERCENT, 0));
    type(MonthlySchedule.COEFFICIENTS.get(0), 3, "");
    assertThat(number(SiteBudget.PERCENT_BY_VOLUME, 0))
        .isCloseTo(number(SiteBudget.PERCENT, 0), within(1e-12));
  }

  @Test
  void zonesAndMonthsAddUpToTheYear() {
    double site = 0;
    for (int zone = 0; zone < zones(); zone++) {
      double year = 0;
      for (Column volume : MonthlyVolume.VOLUMES) {
        year += number(volume, zone);
      }
      assertThat(number(ZoneBudget.VOLUME_PER_YEAR, zone)).isCloseTo(year, within(1e-6 * year));
      site += year;
    }
    assertThat(number(SiteBudget.SITE_YEAR, 0)).isCloseTo(site, within(1e-6 * site));
  }

  /** The chosen month may be wrong for a zone: its water must not vanish with it. */
  @Test
  void whereRainCoversTheChosenMonthTheZoneGoesByItsOwnPeak() {
    type(Rain.METHOD, 0, Rain.SHARE);
    type(Peak.CHOICE, 0, Peak.BY_ET);
    for (int month = 0; month < 12; month++) {
      type(Rain.MONTH_RAIN, month, month == 6 ? "31 in" : "0 in");
    }
    assertThat(garden.book().outcome(Peak.MONTH.reference(), 0))
        .isEqualTo(new Outcome.Words("July"));
    assertThat(garden.book().outcome(MonthlySchedule.OWN_PEAK.reference(), 0))
        .isEqualTo(new Outcome.Words("June"));
    assertThat(number(MonthlySchedule.PERCENTS.get(5), 0)).isEqualTo(1);
    assertThat(number(Demand.RUN_TIME, 0)).isPositive();
    show(6);
    assertThat(number(MonthlySchedule.RUN_TIME, 0)).isZero();
    assertThat(number(MonthlySchedule.CYCLES, 0)).isZero();
  }

  @Test
  void onlyWhereRainCoversEveryMonthIsThereNoWatering() {
    type(Rain.METHOD, 0, Rain.SHARE);
    for (int month = 0; month < 12; month++) {
      type(Rain.MONTH_RAIN, month, "60 in");
    }
    assertThat(number(MonthlySchedule.PERCENTS.get(0), 0)).isZero();
    assertThat(garden.book().outcome(Demand.LONGEST_INTERVAL.reference(), 0))
        .isInstanceOf(Outcome.NotApplicable.class)
        .extracting(Outcome::sentence)
        .asString()
        .contains("in every month");
  }

  @Test
  void aMonthWithoutAValueIsNamed() {
    type(Climate.PLACE, 0, "");
    show(2);
    assertThat(garden.book().outcome(MonthlySchedule.RUN_TIME.reference(), 0).sentence())
        .contains("needs")
        .contains("Climate place");
    assertThat(MonthlySchedule.all()).hasSize(1 + 6 + 3 * 12 + 3);
  }
}
