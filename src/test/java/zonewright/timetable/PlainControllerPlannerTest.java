package zonewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;
import static zonewright.timetable.Sites.MONDAY;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Programs with start times on invented sites; the reference is every station order, run as the
 * controller would.
 */
class PlainControllerPlannerTest {

  @Test
  void soakIsMetByTheStationsThatRunMeanwhile() {
    List<WateredZone> zones =
        List.of(
            Sites.zone("lawn", 3, 8, 20, 5),
            Sites.zone("slope", 3, 6, 22, 5),
            Sites.zone("bank", 3, 10, 18, 5));
    ProgramPlan plan =
        PlainControllerPlanner.plan(
            MONDAY, zones, Sites.rules(1, 20, 0, Sites.window(300, 600)), StartRuns.EVERY_STATION);
    // By hand: each pass takes 24 min, starts must be 28 min apart (8 + 20, 6 + 22, 10 + 18).
    assertThat(plan.cards()).hasSize(1);
    assertThat(plan.cards().get(0).startMinutes()).containsExactly(300, 328, 356);
    assertThat(plan.night().lengthMinutes()).isEqualTo(80);
    assertThat(plan.night().ratioToBound()).isEqualTo(1);
    assertThat(plan.findings()).isEmpty();
  }

  @Test
  void runningTheCardsGivesTheNightAndKeepsEveryRule() {
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      List<WateredZone> zones = zones(random, 2 + random.nextInt(12), 3);
      NightRules rules = Sites.rules(1, 40, random.nextInt(3), Sites.window(60, 1400));
      for (StartRuns runs : StartRuns.values()) {
        ProgramPlan plan = PlainControllerPlanner.plan(MONDAY, zones, rules, runs);
        assertThat(NightChecker.broken(plan.night(), zones, rules)).as("site %d", seed).isEmpty();
        assertThat(keyedIn(plan.cards(), rules))
            .as("site %d", seed)
            .containsExactlyInAnyOrderElementsOf(plan.night().runs());
        assertThat(plan.night().boundMinutes()).isLessThanOrEqualTo(plan.night().lengthMinutes());
      }
    }
  }

  @Test
  void noStationOrderEndsEarlierInOneProgram() {
    for (int seed = 0; seed < 60; seed++) {
      Random random = new Random(seed);
      List<WateredZone> zones = zones(random, 2 + random.nextInt(4), 1);
      int gap = random.nextInt(3);
      NightRules rules = Sites.rules(1, 40, gap, Sites.window(0, 1400));
      ProgramPlan plan =
          PlainControllerPlanner.plan(MONDAY, zones, rules, StartRuns.STATIONS_STILL_DUE);
      int least = leastOverOrders(zones, new ArrayList<>(), gap);
      assertThat(plan.night().lengthMinutes()).as("site %d", seed).isEqualTo(least);
    }
  }

  @Test
  void stationsWithDifferentCyclesNeedProgramsOfTheirOwn() {
    List<WateredZone> zones =
        List.of(Sites.zone("lawn", 3, 10, 15, 5), Sites.zone("bed", 1, 15, 0, 5));
    NightRules rules = Sites.rules(1, 20, 0, Sites.window(0, 600));
    ProgramPlan plan = PlainControllerPlanner.plan(MONDAY, zones, rules, StartRuns.EVERY_STATION);
    assertThat(plan.cards()).hasSize(2);
    // By hand: lawn 0, 25, 50; the bed fills one of its soaks.
    assertThat(plan.night().lengthMinutes()).isEqualTo(60);
    assertThat(plan.findings())
        .extracting(Finding::kind)
        .containsExactly(Finding.Kind.PROGRAM_SPLIT);
  }

  @Test
  void tooManyStartsAndTooLittleTimeAreFindings() {
    NightRules wide = Sites.rules(1, 20, 0, Sites.window(0, 60));
    NightRules rules = new NightRules(wide.windows(), 1, 20, 0, 2, java.util.Set.of());
    ProgramPlan plan =
        PlainControllerPlanner.plan(
            MONDAY,
            List.of(Sites.zone("lawn", 3, 10, 20, 5), Sites.zone("jet", 1, 5, 0, 25)),
            rules,
            StartRuns.STATIONS_STILL_DUE);
    assertThat(plan.findings())
        .extracting(Finding::kind)
        .containsExactly(
            Finding.Kind.OVER_AVAILABLE_FLOW,
            Finding.Kind.TOO_MANY_STARTS,
            Finding.Kind.NIGHT_TOO_SHORT);
  }

  /** Runs the cards as the controller would: at each start, its stations in order. */
  private static List<ValveRun> keyedIn(List<ProgramCard> cards, NightRules rules) {
    List<ValveRun> runs = new ArrayList<>();
    for (ProgramCard card : cards) {
      for (int pass = 0; pass < card.startMinutes().size(); pass++) {
        int minute = card.startMinutes().get(pass);
        for (ProgramCard.Station station : card.stations()) {
          if (pass < station.starts()) {
            int end = minute + station.minutes();
            runs.add(new ValveRun(station.zone(), pass + 1, minute, end));
            minute = end + rules.gapMinutes();
          }
        }
      }
    }
    return runs;
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
          new WateredZone(
              "zone " + i,
              String.valueOf((char) ('A' + random.nextInt(programs))),
              OptionalInt.empty(),
              1 + random.nextInt(3),
              1 + random.nextInt(12),
              random.nextInt(30),
              5,
              Sites.on(MONDAY.weekday())));
    }
    return zones;
  }
}
