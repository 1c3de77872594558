package zonewright.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.climate.Rain;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.units.UnitSystem;

/** A month's run is worked out with the same waterings a week as the daily run is. */
class DayPatternLawsTest {
  private static final List<Column> MONTHLY =
      List.of(
          MonthlySchedule.RUN_TIME,
          MonthlySchedule.CYCLES,
          MonthlySchedule.CYCLE_MINUTES,
          MonthlySchedule.SOAK);

  private static final List<Column> DAILY =
      List.of(Demand.RUN_TIME, CycleAndSoak.CYCLES, CycleAndSoak.CYCLE_MINUTES, CycleAndSoak.SOAK);

  private final Design garden = Demo.libraryGarden(UnitSystem.US);
  private final List<Edit> typed = new ArrayList<>();

  private void type(Column column, int row, String text) {
    typed.add(garden.edits().typed(column.reference(), row, text));
  }

  private void enter() {
    garden.book().perform(new Edit.Several("typed", typed));
    typed.clear();
  }

  private double number(Column column, int row) {
    return garden.book().number(column.reference(), row);
  }

  /**
   * Derived: a lawn that needs 317 minutes a week is watered 7/10 times a week when watered every
   * 10 days, so each run is 10/7 of the week; and 186 and 179 of 365 days are odd and even.
   */
  @ParameterizedTest
  @CsvSource({
    "every few days, 3, 2.333333333",
    "every few days, 10, 0.7",
    "every few days, 31, 0.225806452",
    "odd dates, , 3.567123288",
    "even dates, , 3.432876712"
  })
  void julyAtAHundredPercentHasTheDailyRun(String pattern, String every, double aWeek) {
    for (int zone = 0; zone < 12; zone++) {
      type(WateringPattern.PATTERN, zone, pattern);
      type(WateringPattern.EVERY, zone, every == null ? "" : every);
    }
    enter();
    for (int zone = 0; zone < 12; zone++) {
      double run = Math.ceil(number(Demand.RUN_TIME_PER_WEEK, zone) / aWeek - 1e-6);
      assertThat(number(Demand.RUN_TIME, zone)).isEqualTo(run);
      assertThat(number(MonthlySchedule.RUN_TIME, zone)).isEqualTo(run);
    }
  }

  @Property(tries = 60)
  @Label("a month at 100 % of the peak has the daily run of the peak, for every day pattern")
  void aMonthAtAHundredPercentHasTheDailyRunOfThePeak(@ForAll long seed) {
    Random random = new Random(seed);
    randomRain(random);
    for (int zone = 0; zone < 12; zone++) {
      randomDays(random, zone);
    }
    enter();
    boolean[] found = new boolean[12];
    for (int month = 0; month < 12; month++) {
      type(MonthlySchedule.MONTH, 0, Climate.MONTH_NAMES.get(month));
      enter();
      for (int zone = 0; zone < 12; zone++) {
        double percent = number(MonthlySchedule.PERCENTS.get(month), zone);
        double week = number(Demand.RUN_TIME_PER_WEEK, zone) * percent;
        assertThat(number(MonthlySchedule.RUN_TIME, zone))
            .isCloseTo(
                Math.ceil(week / number(Demand.WATERINGS_A_WEEK, zone) - 1e-9), within(1e-9));
        if (percent == 1) {
          found[zone] = true;
          for (int i = 0; i < DAILY.size(); i++) {
            assertThat(number(MONTHLY.get(i), zone))
                .as("%s of zone %d in month %d", DAILY.get(i), zone + 1, month + 1)
                .isEqualTo(Double.valueOf(number(DAILY.get(i), zone)));
          }
        }
      }
    }
    for (int zone = 0; zone < 12; zone++) {
      assertThat(found[zone]).as("a month at 100 %% for zone %d", zone + 1).isTrue();
    }
  }

  /** Rain that leaves every zone some need in some month. */
  private void randomRain(Random random) {
    type(Rain.METHOD, 0, random.nextBoolean() ? Rain.SHARE : Rain.NONE);
    type(Rain.COUNTED_SHARE, 0, Integer.toString(20 + random.nextInt(80)));
    for (int month = 0; month < 12; month++) {
      int dry = random.nextInt(12);
      type(
          Rain.MONTH_RAIN,
          month,
          month == dry || month == 7 ? "0" : random.nextInt(40) / 10.0 + "");
    }
    type(Peak.BASELINE, 0, random.nextBoolean() ? Peak.OF_EACH_ZONE : Peak.OF_THE_SITE);
  }

  private void randomDays(Random random, int zone) {
    List<String> patterns =
        List.of(
            WateringPattern.SITE,
            WateringPattern.OWN,
            WateringPattern.INTERVAL,
            WateringPattern.ODD,
            WateringPattern.EVEN);
    List<String> sets = SiteRules.WEEKDAY_SETS.keys();
    type(WateringPattern.PATTERN, zone, patterns.get(random.nextInt(patterns.size())));
    type(WateringPattern.OWN_DAYS, zone, sets.get(random.nextInt(sets.size())));
    type(WateringPattern.EVERY, zone, Integer.toString(1 + random.nextInt(31)));
    boolean own = random.nextInt(4) == 0;
    type(Demand.WATERING_DAYS, zone, own ? Integer.toString(1 + random.nextInt(7)) : "");
  }
}
