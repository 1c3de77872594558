package zonewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static zonewright.timetable.Sites.MONDAY;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Nights worked by hand on invented sites. */
class NightPlacerTest {

  @Test
  void aZoneSoaksWhileAnotherRuns() {
    List<WateredZone> zones = List.of(Sites.zone(1, 2, 10, 15, 8), Sites.zone(2, 2, 15, 10, 8));
    NightPlan plan =
        NightPlacer.place(MONDAY, zones, Sites.rules(1, 20, 0, Sites.window(1320, 360)), List.of());
    // By hand: 10 + 15 + 10 + 15, each filling the other's soak.
    assertThat(plan.lengthMinutes()).isEqualTo(50);
    assertThat(plan.lengthMinutes()).isEqualTo(plan.boundMinutes());
    assertThat(plan.opensMinute()).isEqualTo(22 * 60);
    assertThat(plan.closesMinute()).isEqualTo(30 * 60);
  }

  @Test
  void theGapIsKeptOnEachValvePositionAndCostsNothingAfterTheLast() {
    List<WateredZone> zones =
        List.of(
            Sites.zone(1, 1, 10, 0, 1),
            Sites.zone(2, 1, 10, 0, 1),
            Sites.zone(3, 1, 10, 0, 1),
            Sites.zone(4, 1, 10, 0, 1));
    // By hand: one position 4 × 10 + 3 × 2; two positions 2 × 10 + 2.
    assertThat(length(zones, Sites.rules(1, 9, 2, Sites.window(0, 600)))).isEqualTo(46);
    assertThat(length(zones, Sites.rules(2, 9, 2, Sites.window(0, 600)))).isEqualTo(22);
  }

  @Test
  void flowKeepsLargeZonesApart() {
    List<WateredZone> zones =
        List.of(
            Sites.zone(1, 1, 20, 0, 12), Sites.zone(2, 1, 20, 0, 13), Sites.zone(3, 1, 20, 0, 5));
    // By hand: large and larger exceed 20 together; small fits beside either.
    assertThat(length(zones, Sites.rules(3, 20, 0, Sites.window(0, 600)))).isEqualTo(40);
    assertThat(length(zones, Sites.rules(3, 30, 0, Sites.window(0, 600)))).isEqualTo(20);
  }

  @Test
  void tenTenthsOfTheFlowFitTogether() {
    List<WateredZone> zones =
        java.util.stream.IntStream.range(0, 10)
            .mapToObj(i -> Sites.zone(i, 1, 10, 0, 0.1))
            .toList();
    assertThat(length(zones, Sites.rules(10, 1.0, 0, Sites.window(0, 600)))).isEqualTo(10);
  }

  @Test
  void noCycleRunsBetweenTwoWindows() {
    List<WateredZone> zones = List.of(Sites.zone(1, 1, 20, 0, 1), Sites.zone(2, 1, 20, 0, 1));
    NightPlan plan =
        NightPlacer.place(
            MONDAY,
            zones,
            Sites.rules(1, 9, 0, Sites.window(0, 30), Sites.window(100, 200)),
            List.of());
    assertThat(plan.runs()).extracting(ValveRun::startMinute).containsExactly(0, 100);
    assertThat(plan.lengthMinutes()).isEqualTo(plan.boundMinutes());
  }

  @Test
  void theOrderWishedForIsFollowedWhereItCostsNoTime() {
    List<WateredZone> zones = List.of(wished(1, 2), wished(2, 3), wished(3, 1));
    NightPlan plan =
        NightPlacer.place(MONDAY, zones, Sites.rules(1, 9, 0, Sites.window(0, 600)), List.of());
    assertThat(plan.runs()).extracting(run -> run.zone().number()).containsExactly(3L, 1L, 2L);
  }

  /** By hand: the second 40 min would end at 80, and the window at 60: none of it runs. */
  @Test
  void aCycleThatWouldRunPastTheCloseIsLeftUndoneWhole() {
    List<WateredZone> zones = List.of(Sites.zone(1, 1, 40, 0, 1), Sites.zone(2, 1, 40, 0, 1));
    NightPlan plan =
        NightPlacer.place(MONDAY, zones, Sites.rules(1, 9, 0, Sites.window(0, 60)), List.of());
    assertThat(plan.overrunMinutes()).isEqualTo(20);
    assertThat(plan.runs()).extracting(ValveRun::zone).containsExactly(zones.get(0));
    assertThat(plan.undone())
        .containsExactly(new Undone(zones.get(1), 1, Undone.Why.AFTER_CLOSE, OptionalInt.of(40)));
  }

  @Test
  void anEmptyNightHasNoLength() {
    NightPlan plan =
        NightPlacer.place(
            MONDAY, List.of(), Sites.rules(1, 9, 0, Sites.window(60, 600)), List.of());
    assertThat(plan.lengthMinutes()).isZero();
    assertThat(plan.lengthMinutes()).isEqualTo(plan.boundMinutes());
  }

  @Test
  void refusalsAreSentences() {
    assertThatThrownBy(() -> Sites.zone(1, 0, 10, 0, 1))
        .hasMessage("Cycles of zone 1 must be from 1 to 96; it is 0.");
    assertThatThrownBy(() -> Sites.zone(1, 1, 10, 0, Double.NaN))
        .hasMessageContaining("flow of zone 1 must be a number");
    assertThatThrownBy(() -> Sites.rules(1, 0, 0, Sites.window(0, 60)))
        .hasMessageContaining("available flow must be above zero");
    assertThatThrownBy(() -> Sites.rules(1, 9, 0, Sites.window(0, 60), Sites.window(50, 90)))
        .hasMessageContaining("Overlap[day=MONDAY]");
    assertThatThrownBy(() -> Sites.rules(1, 9, 0, Sites.window(300, 600), Sites.window(900, 400)))
        .hasMessageContaining("IntoNextDay[day=MONDAY]");
  }

  private static WateredZone wished(long number, int place) {
    return new WateredZone(
        number, 1, OptionalInt.of(place), 1, 10, 0, 1, MONDAY_ONLY, OptionalInt.empty());
  }

  private static final WateringDays MONDAY_ONLY = Sites.on(MONDAY.weekday());

  private static int length(List<WateredZone> zones, NightRules rules) {
    NightPlan plan = NightPlacer.place(MONDAY, zones, rules, List.of());
    assertThat(NightChecker.broken(plan, zones, rules)).isEmpty();
    return plan.lengthMinutes();
  }
}
