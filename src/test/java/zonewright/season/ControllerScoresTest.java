package zonewright.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import zonewright.balance.Application;
import zonewright.balance.Baseline;
import zonewright.balance.DaysOfWeather;
import zonewright.balance.RootZone;
import zonewright.balance.WateringRule;
import zonewright.design.Design;
import zonewright.design.Sample;
import zonewright.units.UnitSystem;

/** Scores worked out by hand: by the definitions, from memory. */
class ControllerScoresTest {
  private static final int[] NONE = {};

  /** A working storage of 20 mm, water of 60 mm an hour, half of it reaching the roots' ground. */
  private static Season season(List<int[]> week, double[] need, double[] rain) {
    SeasonZone zone =
        new SeasonZone(
            0,
            "1",
            "",
            new RootZone(40, 0.5, Collections.nCopies(12, 1.0)),
            new Application(60, 60, 60, 0, 0.5, 1, 1, 10),
            Baseline.weekly(week, 1),
            "");
    SeasonWeather weather =
        new SeasonWeather(
            new DaysOfWeather(LocalDate.of(2023, 5, 1), need, rain, new double[need.length]),
            false,
            "");
    return new Season(
        new SeasonZones(List.of(zone), List.of(), ""),
        weather,
        WateringRule.of(new WateringRule.Fixed(1)),
        1);
  }

  private static double[] each(int days, double value) {
    double[] all = new double[days];
    Arrays.fill(all, value);
    return all;
  }

  /** Half of 20 mm lasts for 6 and 4 mm of five days of 6. */
  @Test
  void withoutWaterTheStorageRunsOut() {
    List<int[]> dry = Collections.nCopies(7, NONE);
    ControllerScores.Score score =
        ControllerScores.of(season(dry, each(5, 6), new double[5])).get(0);
    assertThat(score.adequacy()).isEqualTo(10 / 30.0, within(1e-9));
    assertThat(score.efficiency()).isEqualTo(1);
    assertThat(score.passes()).isFalse();
  }

  /** 28 min are 14 mm in the ground; on Monday there is room for 10, on Thursday all goes in. */
  @Test
  void whatFindsNoRoomIsLost() {
    int[] run = {28};
    List<int[]> week = List.of(run, NONE, NONE, run, NONE, NONE, NONE);
    ControllerScores.Score score =
        ControllerScores.of(season(week, each(5, 5), new double[5])).get(0);
    assertThat(score.adequacy()).isEqualTo(1, within(1e-9));
    assertThat(score.efficiency()).isEqualTo(1 - 4 / 28.0, within(1e-9));
  }

  /** The fixed baseline fails all six zones, and a percent by day is better in each of them. */
  @Test
  void aRuleCanBeTriedOnTheStandardZones() {
    Design design = Sample.named("controller-test-zones").orElseThrow().design(UnitSystem.US);
    SeasonZones zones = SeasonReading.proposed(design.book(), design.nights().plan().orElseThrow());
    assertThat(zones.zones()).hasSize(6);
    SeasonWeather weather = SeasonWeather.of(design.book()).weather().orElseThrow();
    WateringRule daily = WateringRule.of(SeasonRules.DAILY.setting(design.book()).orElseThrow());
    WateringRule fixed = WateringRule.of(new WateringRule.Fixed(1));
    List<ControllerScores.Score> ofDaily =
        ControllerScores.of(new Season(zones, weather, daily, 1));
    List<ControllerScores.Score> ofFixed =
        ControllerScores.of(new Season(zones, weather, fixed, 1));
    assertThat(ofFixed).noneMatch(ControllerScores.Score::passes);
    for (int zone = 0; zone < 6; zone++) {
      assertThat(ofDaily.get(zone).adequacy()).isGreaterThan(0.95);
      assertThat(ofDaily.get(zone).efficiency()).isGreaterThan(ofFixed.get(zone).efficiency());
    }
  }
}
