package zonewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Zones that share a program share its cycles, and rounding adds as little as it can. */
class FewerProgramsTest {
  private static WateredZone zone(long number, int cycles, int minutes) {
    return new WateredZone(
        number,
        1,
        OptionalInt.empty(),
        cycles,
        minutes,
        cycles > 1 ? 30 : 0,
        1,
        new WateringDays.ChooseWeekdays(2, 4, EnumSet.allOf(DayOfWeek.class)),
        OptionalInt.empty());
  }

  private static NightRules rules(int starts) {
    Map<DayOfWeek, List<WateringWindow>> windows =
        EnumSet.allOf(DayOfWeek.class).stream()
            .collect(Collectors.toMap(day -> day, day -> List.of(new WateringWindow(1200, 360))));
    return new NightRules(windows, 1, Double.POSITIVE_INFINITY, 0, starts, 1);
  }

  private static List<WateredZone> together(List<WateredZone> zones, int starts) {
    return FewerPrograms.of(
        zones,
        rules(starts),
        StartRuns.EVERY_STATION,
        new FewerPrograms.Aim(1, 0),
        new ArrayList<>());
  }

  /** 18 and 9 minutes: in two cycles 9 and 5 each, a minute too many; in three 6 and 3, none. */
  @Test
  void oneCycleMoreIsTakenWhereRoundingThenAddsLess() {
    List<WateredZone> zones = List.of(zone(1, 2, 9), zone(2, 1, 9));
    assertThat(together(zones, 4))
        .extracting(zone -> zone.cycles() + " of " + zone.minutesPerCycle())
        .containsExactly("3 of 6", "3 of 3");
    assertThat(together(zones, 2))
        .as("where the program has no start more")
        .extracting(zone -> zone.cycles() + " of " + zone.minutesPerCycle())
        .containsExactly("2 of 9", "2 of 5");
  }

  /** 16 and 10 minutes: in two cycles 8 and 5, nothing too many, so no more cycles than needed. */
  @Test
  void theFewestCyclesAreKeptWhereMoreWouldGainNothing() {
    assertThat(together(List.of(zone(1, 2, 8), zone(2, 1, 10)), 4))
        .extracting(WateredZone::cycles)
        .containsExactly(2, 2);
  }

  /**
   * Never less than a zone asks for, never longer cycles, never more than the fewest would give.
   */
  @Property(tries = 200)
  void roundingNeverTakesAwayAndNeverAddsMoreThanTheFewestCycles(@ForAll long seed) {
    Random random = new Random(seed);
    int starts = 1 + random.nextInt(8);
    List<WateredZone> zones =
        IntStream.range(0, 2 + random.nextInt(4))
            .mapToObj(number -> zone(number, 1 + random.nextInt(starts), 1 + random.nextInt(25)))
            .toList();
    int fewest = zones.stream().mapToInt(WateredZone::cycles).max().orElseThrow();
    List<WateredZone> then = together(zones, starts);
    int given = 0;
    int withFewest = 0;
    for (int i = 0; i < zones.size(); i++) {
      int asked = zones.get(i).minutesPerNight();
      given += then.get(i).minutesPerNight();
      withFewest += fewest * -Math.floorDiv(-asked, fewest);
      assertThat(then.get(i).minutesPerNight()).isGreaterThanOrEqualTo(asked);
      assertThat(then.get(i).minutesPerCycle()).isLessThanOrEqualTo(zones.get(i).minutesPerCycle());
      assertThat(then.get(i).cycles()).isLessThanOrEqualTo(Math.max(fewest, starts));
    }
    assertThat(given).isLessThanOrEqualTo(withFewest);
  }
}
