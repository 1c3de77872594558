package zonewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** A week for a plain controller: what is keyed in works on every night. */
class PlainWeekPlannerTest {
  private static final LocalDate MONDAY = LocalDate.of(2026, 6, 1);
  private static final WateringWindow NIGHT = Sites.window(1320, 360);

  private static WateredZone zone(
      String name, String program, int cycles, int minutes, int soak, int days) {
    return new WateredZone(
        name,
        program,
        OptionalInt.empty(),
        cycles,
        minutes,
        soak,
        1,
        new WateringDays.ChooseWeekdays(days, 7, EnumSet.allOf(DayOfWeek.class)));
  }

  private static PlainTimetable plan(NightRules rules, StartRuns runs, WateredZone... zones) {
    return PlainWeekPlanner.plan(List.of(zones), rules, MONDAY, runs);
  }

  @Test
  void programsOfTheSameNightFollowEachOther() {
    PlainTimetable plan =
        plan(
            Sites.rules(1, 100, 0, NIGHT),
            StartRuns.EVERY_STATION,
            zone("1", "A", 1, 60, 0, 7),
            zone("2", "B", 1, 30, 0, 7));
    assertThat(plan.timetable().findings()).isEmpty();
    assertThat(plan.programs())
        .extracting(p -> p.card().startMinutes().get(0))
        .doesNotHaveDuplicates();
    assertThat(plan.timetable().nights()).hasSize(7).allMatch(night -> night.lengthMinutes() == 90);
  }

  @Test
  void programsThatNeverMeetMayStartAtTheSameTime() {
    PlainTimetable plan =
        PlainWeekPlanner.plan(
            List.of(
                Sites.zone("1", 1, 60, 0, 1, Sites.on(DayOfWeek.MONDAY)).inProgram("A"),
                Sites.zone("2", 1, 60, 0, 1, Sites.on(DayOfWeek.TUESDAY)).inProgram("B")),
            Sites.rules(1, 100, 0, NIGHT),
            MONDAY,
            StartRuns.EVERY_STATION);
    assertThat(plan.programs()).extracting(p -> p.card().startMinutes().get(0)).containsOnly(1320);
  }

  @Test
  void zonesThatDoNotGoTogetherAreKeyedInAsTwoPrograms() {
    PlainTimetable plan =
        plan(
            Sites.rules(1, 100, 0, NIGHT),
            StartRuns.EVERY_STATION,
            zone("1", "A", 2, 10, 30, 3),
            zone("2", "A", 1, 30, 0, 3));
    assertThat(plan.programs()).extracting(p -> p.card().program()).containsOnly("A", "A (2)");
    assertThat(plan.timetable().findings())
        .anyMatch(
            finding ->
                finding.kind() == Finding.Kind.PROGRAM_SPLIT
                    && finding.sentence().contains("Key it in as 2 programs"));
  }

  @Test
  void aControllerThatSkipsFinishedStationsNeedsNoSplit() {
    PlainTimetable plan =
        plan(
            Sites.rules(1, 100, 0, NIGHT),
            StartRuns.STATIONS_STILL_DUE,
            zone("1", "A", 2, 10, 30, 3),
            zone("2", "A", 1, 30, 0, 3));
    assertThat(plan.programs()).hasSize(1);
    assertThat(plan.programs().get(0).card().startMinutes()).containsExactly(1320, 1360);
  }

  @Test
  void nightsWithoutCommonHoursAreNamed() {
    NightRules rules =
        new NightRules(
            Map.of(
                DayOfWeek.MONDAY,
                List.of(Sites.window(60, 120)),
                DayOfWeek.THURSDAY,
                List.of(Sites.window(1320, 1400))),
            1,
            100,
            0,
            16,
            Set.of());
    PlainTimetable plan = plan(rules, StartRuns.EVERY_STATION, zone("1", "A", 1, 20, 0, 2));
    assertThat(plan.timetable().findings())
        .anyMatch(finding -> finding.kind() == Finding.Kind.NO_COMMON_HOURS);
  }

  @Test
  void whatDoesNotFitComesWithWiderHours() {
    PlainTimetable plan =
        plan(
            Sites.rules(1, 100, 0, Sites.window(1320, 1380)),
            StartRuns.EVERY_STATION,
            zone("1", "A", 1, 40, 0, 7),
            zone("2", "B", 1, 40, 0, 7));
    assertThat(plan.timetable().fits()).isFalse();
    Cure cure = plan.timetable().cures().get(0);
    assertThat(cure.sentence())
        .isEqualTo("Let every night close 20 min later. Then everything fits.");
    NightRules wider = ((Cure.Change.Rules) cure.change()).rules();
    assertThat(
            PlainWeekPlanner.plan(
                    List.of(zone("1", "A", 1, 40, 0, 7), zone("2", "B", 1, 40, 0, 7)),
                    wider,
                    MONDAY,
                    StartRuns.EVERY_STATION)
                .timetable()
                .fits())
        .isTrue();
  }

  @Property(tries = 150)
  void noNightBreaksARule(
      @ForAll @IntRange(min = 0, max = 1_000_000) int seed,
      @ForAll @IntRange(min = 1, max = 10) int count,
      @ForAll @IntRange(min = 0, max = 4) int gap,
      @ForAll StartRuns startRuns) {
    Random random = new Random(seed);
    List<WateredZone> zones = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      zones.add(
          zone(
              "z" + i,
              String.valueOf((char) ('A' + random.nextInt(3))),
              1 + random.nextInt(3),
              1 + random.nextInt(25),
              random.nextInt(40),
              1 + random.nextInt(4)));
    }
    NightRules rules = Sites.rules(1, 1000, gap, NIGHT);
    PlainTimetable plan = PlainWeekPlanner.plan(zones, rules, MONDAY, startRuns);
    Map<String, List<Integer>> starts = new HashMap<>();
    for (NightPlan night : plan.timetable().nights()) {
      List<WateredZone> here = night.runs().stream().map(ValveRun::zone).distinct().toList();
      assertThat(NightChecker.broken(night, here, rules)).isEmpty();
      assertThat(night.boundMinute()).isLessThanOrEqualTo(night.finishMinute());
      for (WateredZone zone : here) {
        List<Integer> own =
            night.runs().stream()
                .filter(run -> run.zone().equals(zone))
                .map(ValveRun::startMinute)
                .toList();
        // The same start times on every night: that is what can be keyed in.
        assertThat(starts.computeIfAbsent(zone.name(), any -> own)).isEqualTo(own);
      }
    }
    for (WateredZone zone : zones) {
      int days = ((WateringDays.ChooseWeekdays) zone.days()).daysNeeded();
      assertThat(
              plan.timetable().nights().stream()
                  .filter(
                      night ->
                          night.runs().stream()
                              .anyMatch(run -> run.zone().name().equals(zone.name()))))
          .hasSize(days);
    }
    assertThat(PlainWeekPlanner.plan(zones, rules, MONDAY, startRuns)).isEqualTo(plan);
  }
}
