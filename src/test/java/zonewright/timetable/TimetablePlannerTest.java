package zonewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Whole weeks on invented sites, worked by hand. */
class TimetablePlannerTest {
  private static final LocalDate FIRST_DAY = LocalDate.of(2024, 7, 1);

  @Test
  void everyNightKeepsItsRulesAndEveryZoneItsDays() {
    List<WateredZone> zones = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      int needed = 1 + i % 4;
      zones.add(
          Sites.zone(
              "zone " + i,
              1 + i % 3,
              5 + i % 7,
              15 + i,
              4 + i % 9,
              new WateringDays.ChooseWeekdays(needed, (6 + needed) / needed, Sites.ALL_DAYS)));
    }
    NightRules rules = Sites.rules(2, 18, 1, Sites.window(1320, 360));
    Timetable table = TimetablePlanner.plan(zones, rules, FIRST_DAY);
    assertThat(table.fits()).isTrue();
    assertThat(table.findings()).isEmpty();
    assertThat(table.nights()).hasSize(7);
    for (NightPlan night : table.nights()) {
      List<WateredZone> here =
          table.zones().stream()
              .filter(each -> each.nights().contains(night.night()))
              .map(ZoneNights::zone)
              .toList();
      assertThat(NightChecker.broken(night, here, rules)).isEmpty();
    }
    for (ZoneNights each : table.zones()) {
      int needed = ((WateringDays.ChooseWeekdays) each.zone().days()).daysNeeded();
      assertThat(each.nights()).hasSize(needed);
    }
    assertThat(TimetablePlanner.plan(zones, rules, FIRST_DAY)).isEqualTo(table);
  }

  @Test
  void aZoneRestsAlsoFromOneNightToTheNextAndOverTheWeeksEnd() {
    // Windows that touch all week long, and a zone that waters late in one and early in the next.
    NightRules rules = Sites.rules(1, 50, 5, Sites.window(0, 1440));
    WateringDays twoDays = Sites.on(DayOfWeek.SUNDAY, DayOfWeek.MONDAY);
    List<WateredZone> zones =
        List.of(
            Sites.zone("long", 2, 500, 250, 5, twoDays),
            Sites.zone("short", 1, 5, 0, 5, new WateringDays.OnWeekdays(Sites.ALL_DAYS)));
    Timetable table = TimetablePlanner.plan(zones, rules, FIRST_DAY);
    // By hand: Sunday's last cycle ends at 1250 or later, so Monday's first starts at 60 or later.
    assertThat(table.findings()).isEmpty();
    assertThat(table.fits()).isTrue();
    Map<String, Integer> lastEnd = new HashMap<>();
    for (int week = 0; week < 2; week++) {
      for (int day = 0; day < 7; day++) {
        int midnight = (week * 7 + day) * 1440;
        for (ValveRun run : table.nights().get(day).runs()) {
          Integer before = lastEnd.put(run.zone().name(), midnight + run.endMinute());
          if (before != null) {
            assertThat(midnight + run.startMinute() - before)
                .isGreaterThanOrEqualTo(run.zone().soakMinutes());
          }
        }
      }
    }
  }

  @Test
  void aZoneThatCannotRestBetweenNightsMakesThemTooShort() {
    NightRules rules = Sites.rules(1, 50, 0, Sites.window(0, 1440));
    WateringDays daily = new WateringDays.OnWeekdays(Sites.ALL_DAYS);
    Timetable table =
        TimetablePlanner.plan(List.of(Sites.zone("long", 2, 600, 200, 5, daily)), rules, FIRST_DAY);
    // By hand: 1400 min and 200 of soak need 1600 of the day's 1440.
    assertThat(table.nights()).hasSize(7).allMatch(night -> night.overrunMinutes() == 160);
  }

  @Test
  void impossibleZonesAreNamed() {
    NightRules rules =
        new NightRules(
            Map.of(
                DayOfWeek.MONDAY,
                List.of(Sites.window(0, 120)),
                DayOfWeek.TUESDAY,
                List.of(Sites.window(0, 120))),
            1,
            20,
            0,
            4,
            EnumSet.of(DayOfWeek.TUESDAY));
    List<WateredZone> zones =
        List.of(
            Sites.zone("thirsty", 1, 5, 0, 21),
            Sites.zone("tuesdays", 1, 5, 0, 5, Sites.on(DayOfWeek.TUESDAY)),
            Sites.zone("both", 1, 5, 0, 5, Sites.on(DayOfWeek.MONDAY, DayOfWeek.TUESDAY)),
            Sites.zone("clay", 3, 5, 60, 5),
            Sites.zone("endless", 1, 150, 0, 5),
            Sites.zone("steep", 5, 1, 0, 5));
    Timetable table = TimetablePlanner.plan(zones, rules, FIRST_DAY);
    assertThat(table.findings())
        .extracting(finding -> finding.zone().orElse("site") + " " + finding.kind())
        .containsExactlyInAnyOrder(
            "thirsty OVER_AVAILABLE_FLOW",
            "tuesdays NO_NIGHT",
            "both DAY_WITHOUT_WATER",
            "clay SOAK_OVER_WINDOW",
            "endless CYCLE_OVER_WINDOW",
            "steep TOO_MANY_STARTS",
            "site NIGHT_TOO_SHORT");
    assertThat(table.zones()).hasSize(6);
    assertThat(table.zones().get(0).nights()).isEmpty();
    assertThat(table.findings())
        .extracting(Finding::sentence)
        .contains(
            "clay needs 135 min for its cycles and soaks alone, and Monday gives 120. Widen the window, water it on more days, or give it emitters with a lower rate.");
  }

  @Test
  void noZonesAndNoWindowsAreAnsweredToo() {
    NightRules closed = new NightRules(Map.of(), 1, 20, 0, 4, Set.of());
    assertThat(TimetablePlanner.plan(List.of(), closed, FIRST_DAY).nights()).isEmpty();
    Timetable table =
        TimetablePlanner.plan(
            List.of(
                Sites.zone("lawn", 1, 5, 0, 5),
                Sites.zone("bed", 1, 5, 0, 5, new WateringDays.EveryFewDays(3))),
            closed,
            FIRST_DAY);
    assertThat(table.findings())
        .extracting(Finding::kind)
        .containsOnly(Finding.Kind.NO_NIGHT)
        .hasSize(2);
  }

  @Test
  void datesGiveEightWeeksWithOddEvenAndIntervalZonesOnTheirDays() {
    NightRules rules = Sites.rules(1, 20, 0, Sites.window(0, 300));
    List<WateredZone> zones =
        List.of(
            Sites.zone("odd", 1, 30, 0, 5, new WateringDays.OddDates()),
            Sites.zone("even", 1, 30, 0, 5, new WateringDays.EvenDates()),
            Sites.zone("third day", 1, 30, 0, 5, new WateringDays.EveryFewDays(3)),
            Sites.zone("other third day", 1, 30, 0, 5, new WateringDays.EveryFewDays(3)),
            Sites.zone("mondays", 1, 30, 0, 5));
    Timetable table = TimetablePlanner.plan(zones, rules, FIRST_DAY);
    assertThat(table.nights()).hasSize(56);
    assertThat(dates(table, 0)).allMatch(date -> date.getDayOfMonth() % 2 == 1).hasSize(29);
    assertThat(dates(table, 1)).allMatch(date -> date.getDayOfMonth() % 2 == 0).hasSize(27);
    List<LocalDate> third = dates(table, 2);
    for (int i = 1; i < third.size(); i++) {
      assertThat(third.get(i)).isEqualTo(third.get(i - 1).plusDays(3));
    }
    assertThat(dates(table, 3))
        .as("two zones every third day share no night")
        .doesNotContainAnyElementsOf(third);
    assertThat(dates(table, 4))
        .hasSize(8)
        .allMatch(date -> date.getDayOfWeek() == DayOfWeek.MONDAY);
    assertThat(table.fits()).isTrue();
  }

  @Test
  void anIntervalThatMeetsADayWithoutWaterSaysHowManyWateringsAreLost() {
    NightRules open = Sites.rules(1, 20, 0, Sites.window(0, 300));
    NightRules rules = new NightRules(open.windows(), 1, 20, 0, 4, EnumSet.of(DayOfWeek.WEDNESDAY));
    Timetable table =
        TimetablePlanner.plan(
            List.of(Sites.zone("bed", 1, 5, 0, 5, new WateringDays.EveryFewDays(2))),
            rules,
            FIRST_DAY);
    assertThat(table.findings())
        .extracting(Finding::sentence)
        .containsExactly(
            "bed loses 4 of 28 waterings to days without a window. Open those days or water it by weekdays.");
  }

  @Test
  void aNightThatIsTooShortOffersCuresSmallestChangeFirst() {
    List<WateredZone> zones = new ArrayList<>();
    for (int i = 1; i <= 5; i++) {
      zones.add(Sites.zone("zone " + i, 2, 10, 5, 5));
    }
    // By hand: 5 × 20 = 100 min on Monday, window 90 min; every other night is empty.
    NightRules rules = Sites.rules(1, 20, 0, Sites.window(300, 390));
    Timetable table = TimetablePlanner.plan(zones, rules, FIRST_DAY);
    assertThat(table.fits()).isFalse();
    assertThat(table.findings())
        .extracting(Finding::sentence)
        .singleElement()
        .asString()
        .startsWith("Monday needs 10 min more than its windows give. No room for:");
    assertThat(table.cures())
        .extracting(cure -> cure.kind() + " " + cure.minutesStillMissing())
        .containsExactly("ANOTHER_NIGHT 0", "ONE_MORE_VALVE 0", "WIDER_WINDOW 0", "SPLIT_DAYS 0");
    assertThat(table.cures())
        .extracting(Cure::sentence)
        .contains(
            "Let 2 valves run at once. Then everything fits.",
            "Let the window of Monday close 10 min later, at 06:40. Then everything fits.");
  }

  @Test
  void aZoneWithoutSoakCuresANightThatOnlySoakMakesLong() {
    List<WateredZone> zones =
        List.of(Sites.zone("clay", 4, 10, 30, 5), Sites.zone("sand", 1, 10, 0, 5));
    NightRules rules =
        new NightRules(
            Map.of(DayOfWeek.MONDAY, List.of(Sites.window(0, 100))), 1, 20, 0, 16, Set.of());
    Timetable table = TimetablePlanner.plan(zones, rules, FIRST_DAY);
    // By hand: 4 × 10 + 3 × 30 = 130 against 100; without soak 50. Another valve does not help.
    assertThat(table.cures())
        .extracting(Cure::kind)
        .containsExactly(Cure.Kind.WIDER_WINDOW, Cure.Kind.NO_SOAK);
    assertThat(table.cures()).allMatch(cure -> cure.minutesStillMissing() == 0);
  }

  @Test
  void anEarlierTimetableIsNeverLostWhenARuleIsLoosened() {
    List<WateredZone> zones = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      zones.add(Sites.zone("zone " + i, 1 + i % 4, 3 + i % 11, i % 37, 4 + (i * 7 % 13)));
    }
    Timetable before =
        TimetablePlanner.plan(zones, Sites.rules(3, 20, 1, Sites.window(0, 300)), FIRST_DAY);
    for (int extra = 1; extra < 10; extra++) {
      NightRules more = Sites.rules(3, 20 + extra, 1, Sites.window(0, 300));
      Timetable after = TimetablePlanner.plan(zones, more, FIRST_DAY, Optional.of(before));
      assertThat(after.nights().get(0).finishMinute())
          .isLessThanOrEqualTo(before.nights().get(0).finishMinute());
    }
  }

  private static List<LocalDate> dates(Timetable table, int zone) {
    return table.zones().get(zone).nights().stream()
        .map(night -> night.date().orElseThrow())
        .toList();
  }
}
