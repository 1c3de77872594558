package zonewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Days chosen on invented sites; the reference is every possible choice, counted out. */
class WeekdayChoiceTest {
  private static final NightRules EVERY_NIGHT = Sites.rules(1, 50, 0, Sites.window(1320, 360));

  @Test
  void sevenEqualZonesOnceAWeekTakeOneNightEach() {
    List<WateredZone> zones = new ArrayList<>();
    for (int i = 1; i <= 7; i++) {
      zones.add(choosing(i, 20, 1, 7, Sites.ALL_DAYS));
    }
    WeekdayChoice.Result result = WeekdayChoice.choose(Waterings.of(zones), EVERY_NIGHT);
    assertThat(result.findings()).isEmpty();
    assertThat(load(zones, result.days()).values()).containsOnly(20).hasSize(7);
  }

  @Test
  void theLongestGapHoldsOverTheWeeksEnd() {
    WateredZone lawn = choosing(1, 20, 3, 3, Sites.ALL_DAYS);
    Set<DayOfWeek> days =
        WeekdayChoice.choose(Waterings.of(List.of(lawn)), EVERY_NIGHT).days().get(0);
    assertThat(days).hasSize(3);
    assertThat(WeekdayChoice.longestGap(days)).isLessThanOrEqualTo(3);
    assertThat(WeekdayChoice.longestGap(EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY)))
        .as("Tuesday to next Monday")
        .isEqualTo(6);
    assertThat(WeekdayChoice.longestGap(EnumSet.of(DayOfWeek.SUNDAY))).isEqualTo(7);
  }

  @Test
  void smallSitesAreAsEvenAsAnyChoiceCouldMakeThem() {
    int met = 0;
    for (int seed = 0; seed < 60; seed++) {
      Random random = new Random(seed);
      List<WateredZone> zones = new ArrayList<>();
      int count = 2 + random.nextInt(3);
      for (int i = 0; i < count; i++) {
        int needed = 1 + random.nextInt(4);
        int gap = (6 + needed) / needed;
        zones.add(choosing(i, 5 + random.nextInt(60), needed, gap, Sites.ALL_DAYS));
      }
      long found =
          uneven(load(zones, WeekdayChoice.choose(Waterings.of(zones), EVERY_NIGHT).days()));
      long least = least(zones, 0, new ArrayList<>());
      assertThat(found).as("site %d", seed).isLessThanOrEqualTo(Math.round(least * 1.02));
      met += found == least ? 1 : 0;
    }
    assertThat(met).as("sites as even as any choice").isGreaterThanOrEqualTo(57);
  }

  @Test
  void fixedDaysAreKeptAndTheOthersGoRoundThem() {
    WateredZone fixed = Sites.zone(1, 1, 60, 0, 5, Sites.on(DayOfWeek.MONDAY));
    WateredZone free = choosing(2, 30, 1, 7, EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.THURSDAY));
    WeekdayChoice.Result result =
        WeekdayChoice.choose(Waterings.of(List.of(fixed, free)), EVERY_NIGHT);
    assertThat(result.days())
        .containsExactly(EnumSet.of(DayOfWeek.MONDAY), EnumSet.of(DayOfWeek.THURSDAY));
  }

  @Test
  void daysWithoutWaterAreNotChosenAndTooFewDaysAreAFinding() {
    Map<DayOfWeek, List<WateringWindow>> two = new EnumMap<>(DayOfWeek.class);
    two.putAll(EVERY_NIGHT.windows());
    two.keySet().retainAll(EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY));
    NightRules barred = EVERY_NIGHT.withWindows(two);
    WateredZone lawn = choosing(1, 20, 3, 3, Sites.ALL_DAYS);
    WeekdayChoice.Result result = WeekdayChoice.choose(Waterings.of(List.of(lawn)), barred);
    assertThat(result.days()).containsExactly(EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY));
    assertThat(result.findings())
        .containsExactly(
            new TimetableFinding.TooFewDays(lawn, 3, 2),
            new TimetableFinding.GapTooLong(lawn, 3, 2, 6, OptionalInt.empty()));
  }

  @Test
  void aGapThatNeedsMoreDaysSaysHowMany() {
    WateredZone lawn = choosing(1, 20, 2, 3, Sites.ALL_DAYS);
    assertThat(WeekdayChoice.choose(Waterings.of(List.of(lawn)), EVERY_NIGHT).findings())
        .containsExactly(new TimetableFinding.GapTooLong(lawn, 3, 2, 4, OptionalInt.of(3)));
  }

  private static WateredZone choosing(
      long number, int minutes, int needed, int gap, Set<DayOfWeek> allowed) {
    return Sites.zone(
        number, 1, minutes, 0, 5, new WateringDays.ChooseWeekdays(needed, gap, allowed));
  }

  private static Map<DayOfWeek, Integer> load(List<WateredZone> zones, List<Set<DayOfWeek>> days) {
    Map<DayOfWeek, Integer> load = new EnumMap<>(DayOfWeek.class);
    for (int i = 0; i < zones.size(); i++) {
      for (DayOfWeek day : days.get(i)) {
        load.merge(day, zones.get(i).minutesPerNight(), Integer::sum);
      }
    }
    return load;
  }

  private static long uneven(Map<DayOfWeek, Integer> load) {
    return load.values().stream().mapToLong(minutes -> (long) minutes * minutes).sum();
  }

  private static long least(List<WateredZone> zones, int next, List<Set<DayOfWeek>> days) {
    if (next == zones.size()) {
      return uneven(load(zones, days));
    }
    WateringDays.ChooseWeekdays rule = (WateringDays.ChooseWeekdays) zones.get(next).days();
    long least = Long.MAX_VALUE;
    for (int mask = 1; mask < 128; mask++) {
      Set<DayOfWeek> set = EnumSet.noneOf(DayOfWeek.class);
      for (DayOfWeek day : DayOfWeek.values()) {
        if ((mask >> (day.getValue() - 1) & 1) != 0) {
          set.add(day);
        }
      }
      if (set.size() == rule.daysNeeded() && gap(set) <= rule.longestGap()) {
        days.add(set);
        least = Math.min(least, least(zones, next + 1, days));
        days.remove(days.size() - 1);
      }
    }
    return least;
  }

  private static int gap(Set<DayOfWeek> days) {
    int longest = 0;
    for (DayOfWeek day : days) {
      int wait = 1;
      while (!days.contains(day.plus(wait))) {
        wait++;
      }
      longest = Math.max(longest, wait);
    }
    return longest;
  }
}
