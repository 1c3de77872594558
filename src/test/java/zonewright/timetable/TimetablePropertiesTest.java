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
    Timetable table = TimetablePlanner.plan(zones, rules, FIRST_DAY, Optional.empty());
    for (NightPlan night : table.nights()) {
      List<WateredZone> here =
          table.zones().stream()
              .filter(each -> each.nights().contains(night.night()))
              .map(ZoneWater::zone)
              .toList();
      assertThat(NightChecker.broken(night, here, rules)).isEmpty();
    }
    assertThat(table.zones()).extracting(ZoneWater::zone).isEqualTo(zones);
  }

  /**
   * What is placed and what is left undone are together what was asked for, counted three ways:
   * from the nights, from the zones and from what each zone asks for in the days of the plan.
   */
  @Property(tries = 150)
  void noZoneAndNoMinuteDisappears(@ForAll long seed, @ForAll Way way) {
    Random random = new Random(seed);
    List<WateredZone> zones = zones(random);
    Timetable table = way.plan(zones, rules(random));
    assertThat(table.zones())
        .extracting(each -> each.zone().number())
        .isEqualTo(zones.stream().map(WateredZone::number).toList());
    for (int i = 0; i < zones.size(); i++) {
      asksForNoLess(table.zones().get(i).zone(), zones.get(i), way);
    }
    for (ZoneWater each : table.zones()) {
      WateredZone zone = each.zone();
      int placed =
          table.nights().stream()
              .flatMap(night -> night.runs().stream())
              .filter(run -> run.zone().number() == zone.number())
              .mapToInt(run -> run.endMinute() - run.startMinute())
              .sum();
      assertThat(each.minutesPlaced()).isEqualTo(placed);
      assertThat(placed + each.minutesUndone())
          .as("%s", each)
          .isEqualTo(each.waterings() * zone.minutesPerNight());
      assertThat(each.undone().values()).allMatch(minutes -> minutes > 0);
      if (zone.days() instanceof WateringDays.OnWeekdays fixed) {
        assertThat(each.waterings() % fixed.weekdays().size()).isZero();
      } else if (zone.days() instanceof WateringDays.ChooseWeekdays free) {
        assertThat(each.waterings() % free.daysNeeded()).isZero();
      }
      assertThat(each.waterings()).isPositive();
    }
    assertThat(table.fits())
        .isEqualTo(table.zones().stream().allMatch(each -> each.minutesUndone() == 0));
  }

  /**
   * Zones that share a program for want of programs take its days and cycles, and never less water
   * for it; where zones start by themselves none is changed.
   */
  private static void asksForNoLess(WateredZone planned, WateredZone asked, Way way) {
    if (way == Way.EACH_ZONE_BY_ITSELF) {
      assertThat(planned).isEqualTo(asked);
    } else {
      assertThat(minutesAWeek(planned))
          .as("%s for %s", planned, asked)
          .isGreaterThanOrEqualTo(minutesAWeek(asked));
    }
  }

  private static double minutesAWeek(WateredZone zone) {
    double days =
        zone.days() instanceof WateringDays.OnWeekdays fixed
            ? fixed.weekdays().size()
            : zone.days() instanceof WateringDays.ChooseWeekdays free
                ? free.daysNeeded()
                : zone.days() instanceof WateringDays.EveryFewDays every ? 7.0 / every.days() : 3.5;
    return days * zone.minutesPerNight();
  }

  /** The ways to make a timetable. */
  enum Way {
    EACH_ZONE_BY_ITSELF,
    EVERY_STATION,
    STATIONS_STILL_DUE;

    Timetable plan(List<WateredZone> zones, NightRules rules) {
      return this == EACH_ZONE_BY_ITSELF
          ? TimetablePlanner.plan(zones, rules, FIRST_DAY, Optional.empty())
          : PlainWeekPlanner.plan(zones, rules, FIRST_DAY, StartRuns.valueOf(name())).timetable();
    }
  }

  /**
   * Nothing in the result depends on what a zone's number is; two zones that are alike in all else
   * keep their own runs.
   */
  @Property(tries = 40)
  void otherNumbersGiveTheSameNights(@ForAll long seed, @ForAll Way way) {
    Random random = new Random(seed);
    List<WateredZone> zones = zones(random);
    NightRules rules = rules(random);
    List<WateredZone> others =
        zones.stream()
            .map(
                zone ->
                    new WateredZone(
                        1000 - zone.number(),
                        zone.program(),
                        zone.orderWish(),
                        zone.cycles(),
                        zone.minutesPerCycle(),
                        zone.soakMinutes(),
                        zone.flow(),
                        zone.days(),
                        zone.notBefore()))
            .toList();
    List<NightPlan> nights = way.plan(zones, rules).nights();
    List<NightPlan> same = way.plan(others, rules).nights();
    for (int i = 0; i < nights.size(); i++) {
      assertThat(same.get(i).runs())
          .extracting(run -> 1000 - run.zone().number() + " " + run.startMinute())
          .containsExactlyElementsOf(
              nights.get(i).runs().stream()
                  .map(run -> run.zone().number() + " " + run.startMinute())
                  .toList());
    }
  }

  @Property(tries = 40)
  void curesAreOfferedOnlyWhereNeededAndAlwaysHelp(@ForAll long seed) {
    Random random = new Random(seed);
    NightRules rules = rules(random);
    Timetable table = TimetablePlanner.plan(zones(random), rules, FIRST_DAY, Optional.empty());
    assertThat(table.overfullNights().isEmpty()).isEqualTo(table.overrunMinutes() == 0);
    if (table.overrunMinutes() == 0) {
      assertThat(table.cures()).isEmpty();
    }
    assertThat(table.cures())
        .isSortedAccordingTo(Comparator.comparingInt(Cure::minutesStillMissing))
        .allMatch(cure -> cure.changes() > 0 && cure.minutesStillMissing() >= 0);
  }

  private static NightRules rules(Random random) {
    Map<DayOfWeek, List<WateringWindow>> windows = new EnumMap<>(DayOfWeek.class);
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
        windows.remove(day);
      }
    }
    return new NightRules(
        windows,
        1 + random.nextInt(3),
        8 + random.nextInt(30),
        random.nextInt(3),
        4,
        1 + random.nextInt(4));
  }

  private static List<WateredZone> zones(Random random) {
    List<WateredZone> zones = new ArrayList<>();
    boolean byDates = random.nextInt(4) == 0;
    int count = random.nextInt(14);
    for (int i = 0; i < count; i++) {
      zones.add(
          Sites.zone(
              i + 1,
              random.nextInt(5),
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
