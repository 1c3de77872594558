package zonewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A week for a plain controller: what is keyed in works on every night. */
class PlainWeekPlannerTest {
  private static final LocalDate MONDAY = LocalDate.of(2026, 6, 1);
  private static final WateringWindow NIGHT = Sites.window(1320, 360);

  private static WateredZone zone(
      long number, long program, int cycles, int minutes, int soak, int days) {
    return Sites.zone(
        number,
        program,
        cycles,
        minutes,
        soak,
        1,
        new WateringDays.ChooseWeekdays(days, 7, Sites.ALL_DAYS));
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
            zone(1, 1, 1, 60, 0, 7),
            zone(2, 2, 1, 30, 0, 7));
    assertThat(plan.timetable().findings()).isEmpty();
    assertThat(plan.programs()).extracting(p -> p.startMinutes().get(0)).doesNotHaveDuplicates();
    assertThat(plan.timetable().nights()).hasSize(7).allMatch(night -> night.lengthMinutes() == 90);
  }

  @Test
  void programsThatNeverMeetMayStartAtTheSameTime() {
    PlainTimetable plan =
        PlainWeekPlanner.plan(
            List.of(
                Sites.zone(1, 1, 1, 60, 0, 1, Sites.on(DayOfWeek.MONDAY)),
                Sites.zone(2, 2, 1, 60, 0, 1, Sites.on(DayOfWeek.TUESDAY))),
            Sites.rules(1, 100, 0, NIGHT),
            MONDAY,
            StartRuns.EVERY_STATION);
    assertThat(plan.programs()).extracting(p -> p.startMinutes().get(0)).containsOnly(1320);
  }

  @Test
  void zonesThatDoNotGoTogetherAreKeyedInAsTwoPrograms() {
    PlainTimetable plan =
        plan(
            Sites.rules(1, 100, 0, NIGHT),
            StartRuns.EVERY_STATION,
            zone(1, 1, 2, 10, 30, 3),
            zone(2, 1, 1, 30, 0, 3));
    assertThat(plan.programs())
        .extracting(PlainProgram::program)
        .containsExactlyInAnyOrder(new ProgramPart(1, 1), new ProgramPart(1, 2));
    assertThat(plan.timetable().findings())
        .containsExactly(
            new TimetableFinding.ProgramSplit(
                1, List.of(zone(1, 1, 2, 10, 30, 3), zone(2, 1, 1, 30, 0, 3))));
  }

  @Test
  void aControllerThatSkipsFinishedStationsNeedsNoSplit() {
    PlainTimetable plan =
        plan(
            Sites.rules(1, 100, 0, NIGHT),
            StartRuns.STATIONS_STILL_DUE,
            zone(1, 1, 2, 10, 30, 3),
            zone(2, 1, 1, 30, 0, 3));
    assertThat(plan.programs()).hasSize(1);
    assertThat(plan.programs().get(0).startMinutes()).containsExactly(1320, 1360);
  }

  /** Two programs of an hour and one of half an hour, by hand; at a limit of 20 for the flow. */
  @ParameterizedTest
  @CsvSource({
    // valves at once, flow of a station, done after
    "1, 10, 150",
    "2, 10, 90",
    "3, 10, 90",
    "2, 11, 150",
  })
  void twoProgramsAtOnceAreDoneSoonerAsFarAsTheFlowFeedsBoth(int valves, double flow, int done) {
    WateringDays monday = Sites.on(DayOfWeek.MONDAY);
    PlainTimetable plan =
        plan(
            Sites.rules(valves, 20, 0, NIGHT),
            StartRuns.EVERY_STATION,
            Sites.zone(1, 1, 1, 60, 0, flow, monday),
            Sites.zone(2, 2, 1, 60, 0, flow, monday),
            Sites.zone(3, 3, 1, 30, 0, flow, monday));
    NightPlan night = plan.timetable().nights().get(0);
    assertThat(night.lengthMinutes()).isEqualTo(done);
    assertThat(night.boundMinutes()).isLessThanOrEqualTo(done);
    assertThat(plan.timetable().zones()).allMatch(zone -> zone.undone().isEmpty());
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
            99);
    PlainTimetable plan = plan(rules, StartRuns.EVERY_STATION, zone(1, 1, 1, 20, 0, 2));
    assertThat(plan.timetable().findings())
        .containsExactly(
            new TimetableFinding.NoCommonHours(
                new ProgramPart(1, 1), DayOfWeek.MONDAY, DayOfWeek.THURSDAY));
    // No start lies outside a window: what Thursday should get is left undone.
    ZoneWater water = plan.timetable().zones().get(0);
    assertThat(water.minutesPlaced()).isEqualTo(20);
    assertThat(water.undone()).containsExactly(Map.entry(Undone.Why.NO_COMMON_HOURS, 20));
  }

  @Test
  void whatDoesNotFitComesWithWiderHours() {
    PlainTimetable plan =
        plan(
            Sites.rules(1, 100, 0, Sites.window(1320, 1380)),
            StartRuns.EVERY_STATION,
            zone(1, 1, 1, 40, 0, 7),
            zone(2, 2, 1, 40, 0, 7));
    assertThat(plan.timetable().fits()).isFalse();
    Cure cure = plan.timetable().cures().get(0);
    assertThat(cure)
        .isInstanceOfSatisfying(
            Cure.LaterClose.class, later -> assertThat(later.minutes()).isEqualTo(20));
    assertThat(cure.minutesStillMissing()).isZero();
    NightRules wider = ((Cure.LaterClose) cure).rules();
    assertThat(
            PlainWeekPlanner.plan(
                    List.of(zone(1, 1, 1, 40, 0, 7), zone(2, 2, 1, 40, 0, 7)),
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
              i + 1,
              1 + random.nextInt(3),
              1 + random.nextInt(3),
              1 + random.nextInt(25),
              random.nextInt(40),
              1 + random.nextInt(4)));
    }
    NightRules rules = Sites.rules(1, 1000, gap, NIGHT);
    PlainTimetable plan = PlainWeekPlanner.plan(zones, rules, MONDAY, startRuns);
    Map<Long, List<Integer>> starts = new HashMap<>();
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
        assertThat(starts.computeIfAbsent(zone.number(), any -> own)).isEqualTo(own);
      }
    }
    for (WateredZone zone : zones) {
      int days = ((WateringDays.ChooseWeekdays) zone.days()).daysNeeded();
      assertThat(
              plan.timetable().nights().stream()
                  .filter(
                      night ->
                          night.runs().stream()
                              .anyMatch(run -> run.zone().number() == zone.number())))
          .hasSize(days);
    }
    assertThat(PlainWeekPlanner.plan(zones, rules, MONDAY, startRuns)).isEqualTo(plan);
  }

  /** By hand: each pass takes 24 min, starts must be 28 min apart (8 + 20, 6 + 22, 10 + 18). */
  @Test
  void soakIsMetByTheStationsThatRunMeanwhile() {
    PlainTimetable plan =
        plan(
            Sites.rules(1, 20, 0, Sites.window(300, 600)),
            StartRuns.EVERY_STATION,
            Sites.zone(1, 3, 8, 20, 5),
            Sites.zone(2, 3, 6, 22, 5),
            Sites.zone(3, 3, 10, 18, 5));
    assertThat(plan.programs()).hasSize(1);
    assertThat(plan.programs().get(0).startMinutes()).containsExactly(300, 328, 356);
    NightPlan night = plan.timetable().nights().get(0);
    assertThat(night.lengthMinutes()).isEqualTo(80).isEqualTo(night.boundMinutes());
    assertThat(plan.timetable().findings()).isEmpty();
  }

  /** What is keyed in, run as the controller would, is what the nights say, whatever is asked. */
  @Property(tries = 150)
  void whatIsKeyedInIsWhatTheNightsSay(
      @ForAll long seed, @ForAll boolean stillDue, @ForAll @IntRange(max = 3) int gap) {
    StartRuns startRuns = stillDue ? StartRuns.STATIONS_STILL_DUE : StartRuns.EVERY_STATION;
    Random random = new Random(seed);
    List<WateredZone> zones = zones(random, 2 + random.nextInt(12), 3);
    int opens = random.nextInt(600);
    NightRules rules =
        new NightRules(
            Sites.rules(1, 40, gap, Sites.window(opens, opens + 60 + random.nextInt(400)))
                .windows(),
            1,
            40,
            gap,
            1 + random.nextInt(4),
            1 + random.nextInt(4));
    PlainTimetable plan = PlainWeekPlanner.plan(zones, rules, MONDAY, startRuns);
    NightPlan night = plan.timetable().nights().get(0);
    assertThat(keyedIn(plan.programs(), startRuns, gap))
        .containsExactlyInAnyOrderElementsOf(night.runs());
    assertThat(plan.programs().stream().filter(program -> !program.startMinutes().isEmpty()))
        .hasSizeLessThanOrEqualTo(rules.mostPrograms());
    for (PlainProgram program : plan.programs()) {
      assertThat(program.startMinutes()).hasSizeLessThanOrEqualTo(rules.mostStarts());
    }
    List<WateredZone> all = plan.timetable().zones().stream().map(ZoneWater::zone).toList();
    assertThat(NightChecker.broken(night, all, rules)).isEmpty();
  }

  /** Runs programs as the controller would: at each start, its stations in order. */
  private static List<ValveRun> keyedIn(List<PlainProgram> programs, StartRuns startRuns, int gap) {
    List<ValveRun> runs = new ArrayList<>();
    Map<Long, Integer> cycles = new HashMap<>();
    for (PlainProgram program : programs) {
      for (int pass = 0; pass < program.startMinutes().size(); pass++) {
        int minute = program.startMinutes().get(pass);
        for (PlainProgram.Station station : program.stations()) {
          if (startRuns == StartRuns.EVERY_STATION || pass < station.cycles()) {
            int end = minute + station.zone().minutesPerCycle();
            int cycle = cycles.merge(station.zone().number(), 1, Integer::sum);
            runs.add(new ValveRun(station.zone(), cycle, minute, end));
            minute = end + gap;
          }
        }
      }
    }
    return runs;
  }

  @Test
  void noStationOrderEndsEarlierInOneProgram() {
    for (int seed = 0; seed < 60; seed++) {
      Random random = new Random(seed);
      List<WateredZone> zones = zones(random, 2 + random.nextInt(4), 1);
      int gap = random.nextInt(3);
      NightRules rules = Sites.rules(1, 40, gap, Sites.window(0, 1400));
      NightPlan night =
          PlainWeekPlanner.plan(zones, rules, MONDAY, StartRuns.STATIONS_STILL_DUE)
              .timetable()
              .nights()
              .get(0);
      int least = leastOverOrders(zones, new ArrayList<>(), gap);
      assertThat(night.lengthMinutes()).as("site %d", seed).isEqualTo(least);
    }
  }

  @Test
  void whatTheStartsOfTheControllerDoNotSufficeForIsLeftUndone() {
    NightRules rules =
        new NightRules(Sites.rules(1, 20, 0, Sites.window(0, 600)).windows(), 1, 20, 0, 2, 1);
    PlainTimetable plan =
        plan(
            rules,
            StartRuns.STATIONS_STILL_DUE,
            Sites.zone(1, 3, 10, 20, 5),
            Sites.zone(2, 1, 5, 0, 25));
    assertThat(plan.programs().get(0).startMinutes()).containsExactly(0, 30);
    assertThat(plan.programs().get(0).asked().starts()).isEqualTo(3);
    assertThat(plan.timetable().zones())
        .extracting(zone -> zone.minutesPlaced() + " of " + zone.minutesAsked() + zone.undone())
        .containsExactly("20 of 30{OVER_STARTS=10}", "0 of 5{OVER_FLOW=5}");
  }

  /** Three starts of a controller with two a program: a second program takes the third. */
  @Test
  void startsThatAProgramHasNoRoomForAreTakenByAnother() {
    NightRules rules =
        new NightRules(Sites.rules(1, 20, 0, Sites.window(0, 600)).windows(), 1, 20, 0, 2, 2);
    PlainTimetable plan = plan(rules, StartRuns.EVERY_STATION, Sites.zone(1, 3, 10, 20, 5));
    assertThat(plan.programs())
        .extracting(program -> program.place() + " " + program.startMinutes())
        .containsExactly("1 [0, 30]", "2 [60]");
    assertThat(plan.timetable().fits()).isTrue();
  }

  /**
   * A start at 00:30 of Monday's night is one of Tuesday's, and of no program with one at 23:30.
   */
  @Test
  void allStartsOfAProgramAreOnOneSideOfMidnight() {
    WateredZone twice = Sites.zone(1, 2, 10, 50, 5);
    NightRules wide =
        new NightRules(Sites.rules(1, 20, 0, Sites.window(1410, 240)).windows(), 1, 20, 0, 4, 1);
    PlainProgram after = plan(wide, StartRuns.EVERY_STATION, twice).programs().get(0);
    assertThat(after.startMinutes()).containsExactly(1440, 1500);
    assertThat(after.startDays()).containsExactly(Night.weekly(DayOfWeek.TUESDAY));
    NightRules narrow =
        new NightRules(Sites.rules(1, 20, 0, Sites.window(1410, 50)).windows(), 1, 20, 0, 4, 2);
    assertThat(plan(narrow, StartRuns.EVERY_STATION, twice).programs())
        .extracting(program -> program.startMinutes() + " " + program.startDays().get(0).weekday())
        .containsExactly("[1410] MONDAY", "[1470] TUESDAY");
  }

  /** By hand: 8, 5, then 3 min to wait for the first station's soak of 8, then 8 again. */
  @Test
  void aControllerThatKeepsSoaksFillsThemWithOtherStations() {
    PlainTimetable plan =
        plan(
            Sites.rules(1, 20, 0, Sites.window(300, 600)),
            StartRuns.CYCLES_AND_SOAKS,
            Sites.zone(1, 2, 8, 8, 5),
            Sites.zone(2, 1, 5, 0, 5));
    assertThat(plan.programs().get(0).startMinutes()).containsExactly(300);
    assertThat(plan.timetable().nights().get(0).runs())
        .extracting(run -> run.zone().number() + " " + run.startMinute() + " " + run.endMinute())
        .containsExactly("1 300 308", "2 308 313", "1 316 324");
  }

  /** Five rhythms and two programs: cycles and days are shared, and no zone gets less. */
  @Test
  void zonesShareDaysAndCyclesWhereProgramsAreFew() {
    NightRules rules =
        new NightRules(Sites.rules(1, 20, 0, Sites.window(0, 600)).windows(), 1, 20, 0, 4, 2);
    WateredZone[] zones = {
      zone(1, 1, 1, 20, 0, 3),
      zone(2, 1, 2, 10, 20, 3),
      zone(3, 1, 3, 6, 15, 3),
      zone(4, 1, 1, 30, 0, 2),
      zone(5, 1, 2, 7, 20, 4)
    };
    PlainTimetable plan = plan(rules, StartRuns.EVERY_STATION, zones);
    assertThat(plan.timetable().fits()).isTrue();
    assertThat(plan.programs()).hasSize(2);
    for (int i = 0; i < zones.length; i++) {
      int days = ((WateringDays.ChooseWeekdays) zones[i].days()).daysNeeded();
      ZoneWater water = plan.timetable().zones().get(i);
      assertThat(water.minutesPlaced()).isGreaterThanOrEqualTo(days * zones[i].minutesPerNight());
      assertThat(water.zone().minutesPerCycle()).isLessThanOrEqualTo(zones[i].minutesPerCycle());
    }
    assertThat(plan.timetable().findings())
        .anyMatch(finding -> finding instanceof TimetableFinding.KeyedTogether);
  }

  @Test
  void aProgramTheControllerLacksIsLeftUndoneAndTakesNoTimeFromTheOthers() {
    NightRules rules =
        new NightRules(Sites.rules(1, 20, 0, Sites.window(0, 60)).windows(), 1, 20, 0, 4, 1);
    PlainTimetable plan =
        plan(rules, StartRuns.EVERY_STATION, zone(1, 1, 1, 60, 0, 7), zone(2, 2, 1, 60, 0, 7));
    assertThat(plan.programs())
        .extracting(program -> program.place() + " " + program.startMinutes())
        .containsExactly("1 [0]", "2 []");
    assertThat(plan.timetable().zones())
        .extracting(zone -> zone.minutesPlaced() + " of " + zone.minutesAsked() + zone.undone())
        .containsExactly("420 of 420{}", "0 of 420{OVER_PROGRAMS=420}");
  }

  /** By hand: 20 + 20 + 20 of 50 min; the last station is left out, the others run whole. */
  @Test
  void theStationsThatFitAreKeyedInWhereNotAllDo() {
    PlainTimetable plan =
        plan(
            Sites.rules(1, 20, 0, Sites.window(0, 50)),
            StartRuns.EVERY_STATION,
            zone(1, 1, 1, 20, 0, 7),
            zone(2, 1, 1, 20, 0, 7),
            zone(3, 1, 1, 20, 0, 7));
    assertThat(plan.programs().get(0).stations())
        .extracting(station -> station.zone().number())
        .containsExactly(1L, 2L);
    assertThat(plan.timetable().zones().get(2).undone())
        .containsExactly(Map.entry(Undone.Why.AFTER_CLOSE, 140));
  }

  private static int leastOverOrders(List<WateredZone> left, List<WateredZone> order, int gap) {
    if (left.isEmpty()) {
      return length(order, gap);
    }
    int least = Integer.MAX_VALUE;
    for (WateredZone next : left) {
      List<WateredZone> rest = new ArrayList<>(left);
      rest.remove(next);
      order.add(next);
      least = Math.min(least, leastOverOrders(rest, order, gap));
      order.remove(order.size() - 1);
    }
    return least;
  }

  /** Each pass as early as the stations' soaks and the end of the pass before allow. */
  private static int length(List<WateredZone> order, int gap) {
    int passes = order.stream().mapToInt(WateredZone::cycles).max().orElse(0);
    int[] ends = new int[order.size()];
    int passEnd = 0;
    for (int pass = 0; pass < passes; pass++) {
      int start = pass == 0 ? 0 : passEnd + gap;
      int offset = 0;
      for (int i = 0; i < order.size(); i++) {
        if (order.get(i).cycles() > pass) {
          if (pass > 0) {
            start = Math.max(start, ends[i] + order.get(i).soakMinutes() - offset);
          }
          offset += order.get(i).minutesPerCycle() + gap;
        }
      }
      int minute = start;
      for (int i = 0; i < order.size(); i++) {
        if (order.get(i).cycles() > pass) {
          ends[i] = minute + order.get(i).minutesPerCycle();
          passEnd = ends[i];
          minute = ends[i] + gap;
        }
      }
    }
    return passEnd;
  }

  private static List<WateredZone> zones(Random random, int count, int programs) {
    List<WateredZone> zones = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      zones.add(
          Sites.zone(
              i + 1,
              1 + random.nextInt(programs),
              1 + random.nextInt(3),
              1 + random.nextInt(12),
              random.nextInt(30),
              5,
              Sites.on(DayOfWeek.MONDAY)));
    }
    return zones;
  }
}
