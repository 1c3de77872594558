package zonewright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** What every balance keeps to, whatever soil, weather and schedule. */
class BalanceLawsTest {
  private static final int DAYS = 800;

  private static DaysOfWeather weather(long seed) {
    Random random = new Random(seed);
    double[] et = random.doubles(DAYS, 0, 9).toArray();
    double[] rain = new double[DAYS];
    double[] lowest = random.doubles(DAYS, -5, 20).toArray();
    for (int day = 0; day < DAYS; day++) {
      rain[day] = random.nextInt(5) == 0 ? random.nextDouble() * 40 : 0;
    }
    return new DaysOfWeather(LocalDate.of(2000, 1, 1), et, rain, lowest);
  }

  private static RootZone soil(double total, double share, double coefficient) {
    return new RootZone(total, share, Collections.nCopies(12, coefficient));
  }

  private static Application application(double quarter, double intake) {
    return new Application(40, 40, intake, 5, 1, quarter, 0.4 + 0.6 * quarter, 60);
  }

  private static Baseline baseline(long seed) {
    Random random = new Random(seed);
    List<int[]> week = new ArrayList<>();
    for (int day = 0; day < 7; day++) {
      week.add(random.ints(random.nextInt(3), 1, 30).toArray());
    }
    return Baseline.weekly(week, 1);
  }

  /**
   * All water that came is taken, drained, run off or still there, to a billionth of a millimetre.
   */
  @Property(tries = 200)
  void waterIsConserved(
      @ForAll long seed,
      @ForAll @DoubleRange(min = 5, max = 300) double total,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double share,
      @ForAll @DoubleRange(min = 0.1, max = 1.3) double coefficient,
      @ForAll @DoubleRange(min = 0.2, max = 1) double quarter,
      @ForAll @DoubleRange(min = 2, max = 60) double intake,
      @ForAll @DoubleRange(min = 0, max = 2) double percent) {
    DaysOfWeather days = weather(seed);
    RootZone soil = soil(total, share, coefficient);
    double[] percents = new double[DAYS];
    java.util.Arrays.fill(percents, percent);
    Application application = application(quarter, intake);
    WaterGiven given = new WaterGiven(application, baseline(seed), days, percents, 1);
    SoilDays run =
        new SoilDays(soil, days, soil.needs(days), given.soakingIn(quarter), total * share / 2);
    double came = 0;
    double went = 0;
    double minutes = 0;
    double reaching = 0;
    for (int day = 0; day < DAYS; day++) {
      minutes += given.minutes(day);
      reaching += given.reaching(day);
      came += given.reaching(day) * quarter + run.rain(day);
      went +=
          given.runOff(day) * quarter
              + run.taken(day)
              + run.drainedIrrigation(day)
              + run.drainedRain(day);
      assertThat(run.depletion(day)).isBetween(-1e-9, total + 1e-9);
      assertThat(run.taken(day)).isBetween(0.0, run.need(day) + 1e-12);
    }
    assertThat(reaching).isEqualTo(minutes * 40 / 60, within(1e-6));
    assertThat(came - went).isEqualTo(run.before() - run.after(), within(1e-9 * DAYS));
    for (int day = 0; day < DAYS; day++) {
      double start = day == 0 ? run.before() : run.depletion(day - 1);
      double balance =
          start
              - run.irrigation(day)
              - run.rain(day)
              + run.taken(day)
              + run.drainedIrrigation(day)
              + run.drainedRain(day);
      assertThat(balance).isEqualTo(run.depletion(day), within(1e-9));
    }
  }

  /** Ground that gets more is never drier and never takes less. */
  @Property(tries = 200)
  void moreUniformNeverNeedsMore(
      @ForAll long seed,
      @ForAll @DoubleRange(min = 5, max = 300) double total,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double share,
      @ForAll @DoubleRange(min = 0.2, max = 1) double one,
      @ForAll @DoubleRange(min = 0.2, max = 1) double other,
      @ForAll @DoubleRange(min = 0, max = 2) double percent) {
    DaysOfWeather days = weather(seed);
    RootZone soil = soil(total, share, 0.9);
    double[] percents = new double[DAYS];
    java.util.Arrays.fill(percents, percent);
    WaterGiven given = new WaterGiven(application(one, 60), baseline(seed), days, percents, 1);
    double[] needs = soil.needs(days);
    SoilDays less =
        new SoilDays(soil, days, needs, given.soakingIn(Math.min(one, other)), total * share);
    SoilDays more =
        new SoilDays(soil, days, needs, given.soakingIn(Math.max(one, other)), total * share);
    for (int day = 0; day < DAYS; day++) {
      assertThat(more.depletion(day)).isLessThanOrEqualTo(less.depletion(day) + 1e-9);
      assertThat(more.taken(day)).isGreaterThanOrEqualTo(less.taken(day) - 1e-9);
    }
  }

  /** The percent the controller sets keeps to its steps and limits. */
  @Property(tries = 100)
  void aDailyPercentKeepsToStepsAndLimits(
      @ForAll long seed, @ForAll @DoubleRange(min = 2, max = 10) double reference) {
    WateringRule rule = WateringRule.of(new WateringRule.Daily(reference, 0.05, 0.2, 1.5, 3));
    for (double percent : rule.percents(weather(seed))) {
      assertThat(percent).isBetween(0.2, 1.5);
      assertThat(percent / 0.05).isEqualTo(Math.rint(percent / 0.05), within(1e-6));
    }
  }
}
