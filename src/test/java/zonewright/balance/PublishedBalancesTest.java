package zonewright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Collections;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The balance against worked examples of others. */
class PublishedBalancesTest {
  private static final double INCH = 25.4;

  private static RootZone soil(double total, double share, double coefficient) {
    return new RootZone(total, share, Collections.nCopies(12, coefficient));
  }

  /** Days on which plants with coefficient 1 need what is given. */
  private static DaysOfWeather days(double[] needs, double[] rain) {
    return new DaysOfWeather(LocalDate.of(2001, 7, 1), needs, rain, new double[needs.length]);
  }

  private static double[] same(int count, double value) {
    double[] all = new double[count];
    java.util.Arrays.fill(all, value);
    return all;
  }

  /**
   * FAO Irrigation and Drainage Paper 56 (1998), example 36, page 166: TAW and RAW of three crops
   * on three soils. Read in a stored full-text copy of the paper.
   */
  @ParameterizedTest
  @CsvSource({
    "0.4, 0.30, 90, 36, 11",
    "0.4, 0.30, 170, 68, 20",
    "0.4, 0.30, 120, 48, 14",
    "0.8, 0.40, 90, 72, 29",
    "0.8, 0.40, 170, 136, 54",
    "0.8, 0.40, 120, 96, 38",
    "1.2, 0.55, 90, 108, 59",
    "1.2, 0.55, 170, 204, 112",
    "1.2, 0.55, 120, 144, 79"
  })
  void availableWaterOfCropsOnSoils(
      double roots, double share, double aMetre, double total, double readily) {
    RootZone soil = soil(roots * aMetre, share, 1);
    assertThat(soil.totalAvailable()).isEqualTo(total, within(1e-9));
    assertThat(soil.readilyAvailable()).isEqualTo(readily, within(0.5));
  }

  /**
   * FAO-56, example 37, page 168: tomato on silt, ten days without rain or irrigation from a
   * depletion of 55 mm. Read in a stored full-text copy; printed to a tenth of a millimetre from
   * rounded steps.
   */
  @Test
  void plantsTakeLessAndLessWithoutWater() {
    DaysOfWeather days = days(same(10, 5), new double[10]);
    RootZone soil = soil(160, 0.40, 1.2);
    SoilDays run = new SoilDays(soil, days, soil.needs(days), new double[10], 55);
    double[] depletion = {61.0, 67.0, 72.8, 78.3, 83.4, 88.2, 92.6, 96.9, 100.8, 104.5};
    double[] taken = {6.0, 6.0, 5.8, 5.4, 5.1, 4.8, 4.5, 4.2, 3.9, 3.7};
    double[] stress = {1.00, 1.00, 0.97, 0.91, 0.85, 0.80, 0.75, 0.70, 0.66, 0.62};
    for (int day = 0; day < 10; day++) {
      assertThat(run.depletion(day)).isEqualTo(depletion[day], within(0.15));
      assertThat(run.taken(day)).isEqualTo(taken[day], within(0.06));
      assertThat(run.taken(day) / 6).isEqualTo(stress[day], within(0.006));
    }
  }

  /**
   * FAO-56, example 38, pages 172 and 173: irrigations early in the day that avoid stress. Crop
   * evapotranspiration as printed in its column 12; the roots are given their depth of the last
   * day, since the soil that they grow into is at field capacity. Read in a stored full-text copy;
   * depletions are printed as whole millimetres.
   */
  @Test
  void irrigationIsPlannedToAvoidStress() {
    double[] needs = {5.5, 6.1, 4.0, 2.9, 2.5, 2.7, 4.7, 2.8, 2.2, 6.3};
    double[] rain = {0, 0, 0, 0, 0, 6, 0, 0, 0, 0};
    double[] irrigation = {40, 0, 0, 0, 0, 0, 0, 0, 0, 27};
    double[] depletion = {5, 12, 16, 18, 21, 18, 22, 25, 27, 6};
    RootZone soil = soil(130 * 0.35, 0.6, 1);
    SoilDays run = new SoilDays(soil, days(needs, rain), needs, irrigation, 23);
    for (int day = 0; day < needs.length; day++) {
      assertThat(run.depletion(day)).as("day %s", day + 1).isEqualTo(depletion[day], within(0.75));
      assertThat(run.taken(day)).as("no stress on day %s", day + 1).isEqualTo(needs[day]);
    }
    assertThat(run.drainedIrrigation(0)).isEqualTo(17, within(0.5));
    assertThat(run.drainedIrrigation(9)).isEqualTo(0, within(0.5));
  }

  /**
   * North Dakota State University Extension, Irrigation Scheduling by the Checkbook Method, AE792
   * (revised February 2019), filled-in sheet for corn: 4.1 in held in the root zone, 50 % of it to
   * be used; water use, rain and irrigation by day, and the deficit of each evening. Read in a
   * stored text copy; 22 June is printed there as 1.20 and followed by 1.35, which is 0.14 more
   * than 1.21.
   */
  @Test
  void checkbookOfAnExtensionService() {
    RootZone soil = soil(4.1 * INCH, 0.5, 1);
    double[] use = {
      0.12, 0.12, 0.15, 0.15, 0.12, 0.14, 0.14, 0.14, 0.14, 0.19, 0.19, 0.14, 0.17, 0.17, 0.22
    };
    double[] rain = new double[15];
    rain[4] = 0.19;
    rain[10] = 0.20;
    rain[12] = 0.35;
    double[] deficit = {
      0.12, 0.24, 0.39, 0.54, 0.47, 0.61, 0.75, 0.89, 1.03, 1.22, 1.21, 1.35, 1.17, 1.34, 1.56
    };
    holds(soil, 0, use, rain, new double[15], deficit);
    double[] julyUse = {
      0.24, 0.24, 0.24, 0.19, 0.19, 0.23, 0.18, 0.23, 0.18, 0.18, 0.18, 0.18, 0.17, 0.22, 0.22,
      0.13, 0.22
    };
    double[] julyRain = new double[17];
    julyRain[2] = 0.52;
    double[] irrigation = new double[17];
    irrigation[7] = 1;
    irrigation[12] = 1;
    double[] julyDeficit = {
      1.18, 1.42, 1.14, 1.33, 1.52, 1.75, 1.93, 1.16, 1.34, 1.52, 1.70, 1.88, 1.05, 1.27, 1.49,
      1.62, 1.84
    };
    holds(soil, 0.94, julyUse, julyRain, irrigation, julyDeficit);
  }

  private static void holds(
      RootZone soil,
      double before,
      double[] use,
      double[] rain,
      double[] irrigation,
      double[] deficit) {
    double[] needs = millimetres(use);
    SoilDays run =
        new SoilDays(
            soil, days(needs, millimetres(rain)), needs, millimetres(irrigation), before * INCH);
    for (int day = 0; day < deficit.length; day++) {
      assertThat(run.depletion(day) / INCH)
          .as("day %s", day)
          .isEqualTo(deficit[day], within(0.005));
    }
  }

  private static double[] millimetres(double[] inches) {
    return java.util.Arrays.stream(inches).map(value -> value * INCH).toArray();
  }
}
