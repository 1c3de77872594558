package zonewright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a controller does, worked out by hand: common practice, no source. */
class WateringRuleTest {
  private static DaysOfWeather days(double[] et, double[] rain, double[] lowest) {
    return new DaysOfWeather(LocalDate.of(2023, 5, 1), et, rain, lowest);
  }

  private static double[] all(int count, double value) {
    return Collections.nCopies(count, value).stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static WateringRule rule(
      Optional<WateringRule.RainPause> pause,
      Optional<WateringRule.RainSensor> sensor,
      OptionalDouble coldest) {
    return new WateringRule(new WateringRule.Fixed(1), pause, sensor, coldest, 0, 11);
  }

  @Test
  void aPauseKeepsWaterOffInTheNightsAfterEnoughRain() {
    double[] rain = {0, 5, 0, 0, 12, 0, 0, 0};
    WateringRule rule =
        rule(
            Optional.of(new WateringRule.RainPause(6, 2)),
            Optional.empty(),
            OptionalDouble.empty());
    // The rain of the fifth day comes after that day's night.
    assertThat(rule.percents(days(all(8, 4), rain, all(8, 10))))
        .containsExactly(1, 1, 1, 1, 1, 0, 0, 1);
  }

  /** 4 mm and 4 mm fill a sensor of 6 mm; it sheds 2 mm on each of three dry days. */
  @Test
  void aSensorFillsDayByDayAndDries() {
    double[] rain = {4, 4, 0, 0, 0, 0, 0, 0};
    WateringRule rule =
        rule(
            Optional.empty(),
            Optional.of(new WateringRule.RainSensor(6, 3)),
            OptionalDouble.empty());
    assertThat(rule.percents(days(all(8, 4), rain, all(8, 10))))
        .containsExactly(1, 1, 0, 0, 0, 1, 1, 1);
  }

  @Test
  void coldNightsHaveNoWaterWhereTheyAreKnown() {
    WateringRule rule = rule(Optional.empty(), Optional.empty(), OptionalDouble.of(2));
    double[] lowest = {5, 1.9, 2, Double.NaN};
    assertThat(rule.percents(days(all(4, 4), new double[4], lowest))).containsExactly(1, 0, 1, 1);
  }

  /** 3 and 5 mm are 4 mm on average, of 8 mm a half; steps of 20 % make 0.6 of it, halves go up. */
  @Test
  void thePercentOfADayIsThatOfTheDaysBefore() {
    WateringRule rule = WateringRule.of(new WateringRule.Daily(8, 0.2, 0.1, 0.9, 2));
    double[] et = {3, 5, 8, 8, 8, 0, 0, 0};
    double[] expected = {0.4, 0.4, 0.6, 0.8, 0.9, 0.9, 0.6, 0.1};
    double[] percents = rule.percents(days(et, new double[8], all(8, 10)));
    for (int day = 0; day < expected.length; day++) {
      assertThat(percents[day]).as("day %s", day).isEqualTo(expected[day], within(1e-12));
    }
  }

  @Test
  void aSeasonMayGoOverTheNewYear() {
    WateringRule south =
        new WateringRule(
            new WateringRule.Monthly(Collections.nCopies(12, 0.5)),
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            9,
            2);
    assertThat(List.of(8, 9, 11, 0, 2, 3).stream().map(south::watersIn).toList())
        .containsExactly(false, true, true, true, true, false);
  }

  /** 10 min at 55 % are 5.5, a half goes up to 6; a controller that divides keeps its cycles. */
  @Test
  void runsAreScaledAndRounded() {
    int[] none = {};
    int[] two = {10, 10};
    Baseline baseline = Baseline.weekly(List.of(two, none, none, none, none, none, none), 1);
    DaysOfWeather days = days(all(7, 4), new double[7], all(7, 10));
    assertThat(days.weekday(0)).as("1 May 2023 was a Monday").isZero();
    assertThat(baseline.cycles(days, 0, 0.55)).containsExactly(6, 6);
    assertThat(baseline.cycles(days, 1, 0.55)).isEmpty();
    assertThat(baseline.divided(8).cycles(days, 0, 0.55)).containsExactly(8, 3);
    assertThat(baseline.fromTheEvening().cycles(days, 1, 1)).containsExactly(10, 10);
    assertThat(baseline.onOddDates().cycles(days, 0, 1)).hasSize(2);
    assertThat(baseline.onEvenDates().cycles(days, 0, 1)).isEmpty();
    assertThat(baseline.daily().cycles(days, 3, 1)).containsExactly(3);
  }

  /** 60 mm/h for 12 min are 12 mm; 3 mm soak in, 5 may stand, 4 run off: a third. */
  @Test
  void whatStandsTooHighRunsOff() {
    Application application = new Application(60, 60, 15, 5, 1, 1, 1, 10);
    assertThat(application.depth(12)).isEqualTo(12);
    assertThat(application.runningOff(12)).isEqualTo(4 / 12.0, within(1e-12));
    assertThat(application.runningOff(60 * 5 / 45.0)).isZero();
  }
}
