package zonewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
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
              i,
              1 + i % 3,
              5 + i % 7,
              15 + i,
              4 + i % 9,
              new WateringDays.ChooseWeekdays(needed, (6 + needed) / needed, Sites.ALL_DAYS)));
    }
    NightRules rules = Sites.rules(2, 18, 1, Sites.window(1320, 360));
    Timetable table = TimetablePlanner.plan(zones, rules, FIRST_DAY, Optional.empty());
    assertThat(table.fits()).isTrue();
    assertThat(table.findings()).isEmpty();
    assertThat(table.nights()).hasSize(7);
    for (NightPlan night : table.nights()) {
      List<WateredZone> here =
          table.zones().stream()
              .filter(each -> each.nights().contains(night.night()))
              .map(ZoneWater::zone)
              .toList();
      assertThat(NightChecker.broken(night, here, rules)).isEmpty();
    }
    for (ZoneWater each : table.zones()) {
      int needed = ((WateringDays.ChooseWeekdays) each.zone().days()).daysNeeded();
      assertThat(each.nights()).hasSize(needed);
    }
    assertThat(TimetablePlanner.plan(zones, rules, FIRST_DAY, Optional.empty())).isEqualTo(table);
  }

  @Test
  void aZoneRestsAlsoFromOneNightToTheNextAndOverTheWeeksEnd() {
    // Windows that touch all week long, and a zone that waters late in one and early in the next.
    NightRules rules = Sites.rules(1, 50, 5, Sites.window(0, 1440));
    WateringDays twoDays = Sites.on(DayOfWeek.SUNDAY, DayOfWeek.MONDAY);
    List<WateredZone> zones =
        List.of(
            Sites.zone(1, 2, 500, 250, 5, twoDays),
            Sites.zone(2, 1, 5, 0, 5, new WateringDays.OnWeekdays(Sites.ALL_DAYS)));
    Timetable table = TimetablePlanner.plan(zones, rules, FIRST_DAY, Optional.empty());
    // By hand: Sunday's last cycle ends at 1250 or later, so Monday's first starts at 60 or later.
    assertThat(table.findings()).isEmpty();
    assertThat(table.fits()).isTrue();
    Map<Long, Integer> lastEnd = new HashMap<>();
    for (int week = 0; week < 2; week++) {
      for (int day = 0; day < 7; day++) {
        int midnight = (week * 7 + day) * 1440;
        for (ValveRun run : table.nights().get(day).runs()) {
          Integer before = lastEnd.put(run.zone().number(), midnight + run.endMinute());
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
        TimetablePlanner.plan(
            List.of(Sites.zone(1, 2, 600, 200, 5, daily)), rules, FIRST_DAY, Optional.empty());
    // By hand: 1400 min and 200 of soak need 1600 of the day's 1440.
    assertThat(table.nights()).hasSize(7).allMatch(night -> night.overrunMinutes() == 160);
  }

  @Test
  void impossibleZonesAreNamed() {
    NightRules rules =
        new NightRules(Map.of(DayOfWeek.MONDAY, List.of(Sites.window(0, 120))), 1, 20, 0, 4, 99);
    List<WateredZone> zones =
        List.of(
            Sites.zone(1, 1, 5, 0, 21),
            Sites.zone(2, 1, 5, 0, 5, Sites.on(DayOfWeek.TUESDAY)),
            Sites.zone(3, 1, 5, 0, 5, Sites.on(DayOfWeek.MONDAY, DayOfWeek.TUESDAY)),
            Sites.zone(4, 3, 5, 60, 5),
            Sites.zone(5, 1, 150, 0, 5),
            Sites.zone(6, 5, 1, 0, 5));
    Timetable table = TimetablePlanner.plan(zones, rules, FIRST_DAY, Optional.empty());
    // By hand: clay needs 3 × 5 + 2 × 60 = 135 min of 120.
    assertThat(table.findings())
        .containsExactlyInAnyOrder(
            new TimetableFinding.NoOpenDay(zones.get(1), Set.of(DayOfWeek.TUESDAY)),
            new TimetableFinding.ClosedDays(
                zones.get(2), Set.of(DayOfWeek.TUESDAY), Set.of(DayOfWeek.MONDAY)),
            new TimetableFinding.SpanOverWindow(zones.get(3), DayOfWeek.MONDAY, 135, 120),
            new TimetableFinding.CycleOverWindow(zones.get(4), DayOfWeek.MONDAY, 120));
    assertThat(table.zones())
        .extracting(zone -> zone.minutesPlaced() + " of " + zone.minutesAsked() + zone.undone())
        .containsExactly(
            "0 of 5{OVER_FLOW=5}",
            "0 of 5{CLOSED_NIGHTS=5}",
            "5 of 10{CLOSED_NIGHTS=5}",
            "10 of 15{AFTER_CLOSE=5}",
            "0 of 150{AFTER_CLOSE=150}",
            "4 of 5{OVER_STARTS=1}");
    assertThat(table.overfullNights()).hasSize(1);
  }

  @Test
  void noZonesAndNoWindowsAreAnsweredToo() {
    NightRules closed = new NightRules(Map.of(), 1, 20, 0, 4, 99);
    assertThat(TimetablePlanner.plan(List.of(), closed, FIRST_DAY, Optional.empty()).nights())
        .isEmpty();
    Timetable table =
        TimetablePlanner.plan(
            List.of(
                Sites.zone(1, 1, 5, 0, 5),
                Sites.zone(2, 1, 5, 0, 5, new WateringDays.EveryFewDays(3))),
            closed,
            FIRST_DAY,
            Optional.empty());
    assertThat(table.findings())
        .containsExactly(
            new TimetableFinding.NoOpenDay(table.zones().get(0).zone(), Set.of(DayOfWeek.MONDAY)),
            new TimetableFinding.LostDates(table.zones().get(1).zone(), 18, 18));
  }

  @Test
  void datesGiveEightWeeksWithOddEvenAndIntervalZonesOnTheirDays() {
    NightRules rules = Sites.rules(1, 20, 0, Sites.window(0, 300));
    List<WateredZone> zones =
        List.of(
            Sites.zone(1, 1, 30, 0, 5, new WateringDays.OddDates()),
            Sites.zone(2, 1, 30, 0, 5, new WateringDays.EvenDates()),
            Sites.zone(3, 1, 30, 0, 5, new WateringDays.EveryFewDays(3)),
            Sites.zone(4, 1, 30, 0, 5, new WateringDays.EveryFewDays(3)),
            Sites.zone(5, 1, 30, 0, 5));
    Timetable table = TimetablePlanner.plan(zones, rules, FIRST_DAY, Optional.empty());
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
    Map<DayOfWeek, List<WateringWindow>> windows = new HashMap<>(open.windows());
    windows.remove(DayOfWeek.WEDNESDAY);
    NightRules rules = open.withWindows(windows);
    Timetable table =
        TimetablePlanner.plan(
            List.of(Sites.zone(2, 1, 5, 0, 5, new WateringDays.EveryFewDays(2))),
            rules,
            FIRST_DAY,
            Optional.empty());
    assertThat(table.findings())
        .containsExactly(new TimetableFinding.LostDates(table.zones().get(0).zone(), 4, 28));
    // By hand: 28 waterings of 5 min, 4 of them lost.
    assertThat(table.zones().get(0).minutesPlaced()).isEqualTo(120);
    assertThat(table.zones().get(0).undone())
        .containsExactly(Map.entry(Undone.Why.CLOSED_NIGHTS, 20));
  }

  @Test
  void aNightThatIsTooShortOffersCuresSmallestChangeFirst() {
    List<WateredZone> zones = new ArrayList<>();
    for (int i = 1; i <= 5; i++) {
      zones.add(Sites.zone(i, 2, 10, 5, 5));
    }
    // By hand: 5 × 20 = 100 min on Monday, window 90 min; every other night is empty.
    NightRules rules = Sites.rules(1, 20, 0, Sites.window(300, 390));
    Timetable table = TimetablePlanner.plan(zones, rules, FIRST_DAY, Optional.empty());
    assertThat(table.fits()).isFalse();
    assertThat(table.overfullNights()).extracting(NightPlan::overrunMinutes).containsExactly(10);
    assertThat(table.cures())
        .extracting(cure -> cure.getClass().getSimpleName() + " " + cure.minutesStillMissing())
        .containsExactly("OtherNights 0", "OneMoreValve 0", "WiderWindows 0", "SharedOut 0");
    assertThat(((Cure.OneMoreValve) table.cures().get(1)).rules().mostValvesAtOnce()).isEqualTo(2);
    assertThat(((Cure.WiderWindows) table.cures().get(2)).shifts())
        .containsExactly(new Cure.Shift(DayOfWeek.MONDAY, true, 10, 400));
  }

  @Test
  void aZoneWithoutSoakCuresANightThatOnlySoakMakesLong() {
    List<WateredZone> zones = List.of(Sites.zone(1, 4, 10, 30, 5), Sites.zone(2, 1, 10, 0, 5));
    NightRules rules =
        new NightRules(Map.of(DayOfWeek.MONDAY, List.of(Sites.window(0, 100))), 1, 20, 0, 16, 99);
    Timetable table = TimetablePlanner.plan(zones, rules, FIRST_DAY, Optional.empty());
    // By hand: 4 × 10 + 3 × 30 = 130 against 100; without soak 50. Another valve does not help.
    assertThat(table.cures()).hasExactlyElementsOfTypes(Cure.WiderWindows.class, Cure.NoSoak.class);
    assertThat(table.cures()).allMatch(cure -> cure.minutesStillMissing() == 0);
  }

  @Test
  void anEarlierTimetableIsNeverLostWhenARuleIsLoosened() {
    List<WateredZone> zones = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      zones.add(Sites.zone(i, 1 + i % 4, 3 + i % 11, i % 37, 4 + (i * 7 % 13)));
    }
    Timetable before =
        TimetablePlanner.plan(
            zones, Sites.rules(3, 20, 1, Sites.window(0, 300)), FIRST_DAY, Optional.empty());
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
