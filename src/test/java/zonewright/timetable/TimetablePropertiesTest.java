package zonewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * Laws every timetable obeys, on sites of every kind, crowded ones among them. Derived; no outside
 * source.
 */
class TimetablePropertiesTest {
  private static final LocalDate FIRST_DAY = LocalDate.of(2023, 12, 30);

  @Property(tries = 80)
  void everyNightKeepsItsRulesWhateverTheSite(@ForAll long seed) {
    Random random = new Random(seed);
    NightRules rules = rules(random);
    List<WateredZone> zones = zones(random);
    Timetable table = TimetablePlanner.plan(zones, rules, FIRST_DAY);
    for (NightPlan night : table.nights()) {
      List<WateredZone> here =
          table.zones().stream()
              .filter(each -> each.nights().contains(night.night()))
              .map(ZoneNights::zone)
              .toList();
      assertThat(NightChecker.broken(night, here, rules)).isEmpty();
      assertThat(rules.noWaterDays()).doesNotContain(night.night().weekday());
    }
    assertThat(table.zones()).extracting(ZoneNights::zone).isEqualTo(zones);
    for (ZoneNights each : table.zones()) {
      boolean named =
          table.findings().stream()
              .anyMatch(finding -> finding.zone().equals(Optional.of(each.zone().name())));
      assertThat(!each.nights().isEmpty() || named).as("%s is never lost", each.zone()).isTrue();
    }
  }

  @Property(tries = 40)
  void curesAreOfferedOnlyWhereNeededAndAlwaysHelp(@ForAll long seed) {
    Random random = new Random(seed);
    NightRules rules = rules(random);
    Timetable table = TimetablePlanner.plan(zones(random), rules, FIRST_DAY);
    assertThat(table.findings().stream().anyMatch(f -> f.kind() == Finding.Kind.NIGHT_TOO_SHORT))
        .isEqualTo(!table.fits());
    if (table.fits()) {
      assertThat(table.cures()).isEmpty();
    }
    assertThat(table.cures())
        .isSortedAccordingTo(Comparator.comparingInt(Cure::minutesStillMissing))
        .allMatch(cure -> cure.changes() > 0 && cure.minutesStillMissing() >= 0);
  }

  private static NightRules rules(Random random) {
    Map<DayOfWeek, List<WateringWindow>> windows = new EnumMap<>(DayOfWeek.class);
    Set<DayOfWeek> barred = EnumSet.noneOf(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      int opens = 300 + random.nextInt(300);
      int closes = opens + 30 + random.nextInt(200);
      int again = closes + random.nextInt(200);
      int kind = random.nextInt(8);
      if (kind == 0) {
        windows.put(
            day, List.of(new WateringWindow(opens, closes), new WateringWindow(again, again + 60)));
      } else if (kind == 1) {
        windows.put(day, List.of(new WateringWindow(300, 1740)));
      } else if (kind > 2) {
        windows.put(day, List.of(new WateringWindow(opens, closes)));
      }
      if (random.nextInt(9) == 0) {
        barred.add(day);
      }
    }
    return new NightRules(
        windows, 1 + random.nextInt(3), 8 + random.nextInt(30), random.nextInt(3), 4, barred);
  }

  private static List<WateredZone> zones(Random random) {
    List<WateredZone> zones = new ArrayList<>();
    boolean byDates = random.nextInt(4) == 0;
    int count = random.nextInt(14);
    for (int i = 0; i < count; i++) {
      zones.add(
          Sites.zone(
              "zone " + i,
              1 + random.nextInt(5),
              1 + random.nextInt(15),
              random.nextInt(40),
              random.nextInt(24) / 2.0,
              days(random, byDates)));
    }
    return zones;
  }

  private static WateringDays days(Random random, boolean byDates) {
    Set<DayOfWeek> some = EnumSet.of(DayOfWeek.of(1 + random.nextInt(7)));
    some.add(DayOfWeek.of(1 + random.nextInt(7)));
    return switch (random.nextInt(byDates ? 5 : 2)) {
      case 0 -> new WateringDays.OnWeekdays(some);
      case 1 ->
          new WateringDays.ChooseWeekdays(
              1 + random.nextInt(4),
              1 + random.nextInt(7),
              random.nextBoolean() ? Sites.ALL_DAYS : some);
      case 2 -> new WateringDays.EveryFewDays(1 + random.nextInt(9));
      case 3 -> new WateringDays.OddDates();
      default -> new WateringDays.EvenDates();
    };
  }
}
