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
    List<WateredZone> zones =
        List.of(Sites.zone("lawn", 2, 10, 15, 8), Sites.zone("slope", 2, 15, 10, 8));
    NightPlan plan =
        NightPlacer.place(MONDAY, zones, Sites.rules(1, 20, 0, Sites.window(1320, 360)));
    // By hand: 10 + 15 + 10 + 15, each filling the other's soak.
    assertThat(plan.lengthMinutes()).isEqualTo(50);
    assertThat(plan.ratioToBound()).isEqualTo(1);
    assertThat(plan.opensMinute()).isEqualTo(22 * 60);
    assertThat(plan.closesMinute()).isEqualTo(30 * 60);
  }

  @Test
  void theGapIsKeptOnEachValvePositionAndCostsNothingAfterTheLast() {
    List<WateredZone> zones =
        List.of(
            Sites.zone("a", 1, 10, 0, 1),
            Sites.zone("b", 1, 10, 0, 1),
            Sites.zone("c", 1, 10, 0, 1),
            Sites.zone("d", 1, 10, 0, 1));
    // By hand: one position 4 × 10 + 3 × 2; two positions 2 × 10 + 2.
    assertThat(length(zones, Sites.rules(1, 9, 2, Sites.window(0, 600)))).isEqualTo(46);
    assertThat(length(zones, Sites.rules(2, 9, 2, Sites.window(0, 600)))).isEqualTo(22);
  }

  @Test
  void flowKeepsLargeZonesApart() {
    List<WateredZone> zones =
        List.of(
            Sites.zone("large", 1, 20, 0, 12),
            Sites.zone("larger", 1, 20, 0, 13),
            Sites.zone("small", 1, 20, 0, 5));
    // By hand: large and larger exceed 20 together; small fits beside either.
    assertThat(length(zones, Sites.rules(3, 20, 0, Sites.window(0, 600)))).isEqualTo(40);
    assertThat(length(zones, Sites.rules(3, 30, 0, Sites.window(0, 600)))).isEqualTo(20);
  }

  @Test
  void tenTenthsOfTheFlowFitTogether() {
    List<WateredZone> zones =
        java.util.stream.IntStream.range(0, 10)
            .mapToObj(i -> Sites.zone("tenth " + i, 1, 10, 0, 0.1))
            .toList();
    assertThat(length(zones, Sites.rules(10, 1.0, 0, Sites.window(0, 600)))).isEqualTo(10);
  }

  @Test
  void noCycleRunsBetweenTwoWindows() {
    List<WateredZone> zones = List.of(Sites.zone("a", 1, 20, 0, 1), Sites.zone("b", 1, 20, 0, 1));
    NightPlan plan =
        NightPlacer.place(
            MONDAY, zones, Sites.rules(1, 9, 0, Sites.window(0, 30), Sites.window(100, 200)));
    assertThat(plan.runs()).extracting(ValveRun::startMinute).containsExactly(0, 100);
    assertThat(plan.ratioToBound()).isEqualTo(1);
  }

  @Test
  void theOrderWishedForIsFollowedWhereItCostsNoTime() {
    List<WateredZone> zones =
        List.of(wished("first given", 2), wished("second given", 3), wished("third given", 1));
    NightPlan plan = NightPlacer.place(MONDAY, zones, Sites.rules(1, 9, 0, Sites.window(0, 600)));
    assertThat(plan.runs())
        .extracting(run -> run.zone().name())
        .containsExactly("third given", "first given", "second given");
  }

  @Test
  void whatDoesNotFitIsNamedWithItsMinutes() {
    List<WateredZone> zones = List.of(Sites.zone("a", 1, 40, 0, 1), Sites.zone("b", 1, 40, 0, 1));
    NightPlan plan = NightPlacer.place(MONDAY, zones, Sites.rules(1, 9, 0, Sites.window(0, 60)));
    assertThat(plan.overrunMinutes()).isEqualTo(20);
    assertThat(plan.shortfalls()).containsExactly(new Shortfall(zones.get(1), 20));
  }

  @Test
  void anEmptyNightHasNoLength() {
    NightPlan plan =
        NightPlacer.place(MONDAY, List.of(), Sites.rules(1, 9, 0, Sites.window(60, 600)));
    assertThat(plan.lengthMinutes()).isZero();
    assertThat(plan.ratioToBound()).isEqualTo(1);
  }

  @Test
  void refusalsAreSentences() {
    assertThatThrownBy(() -> Sites.zone("lawn", 0, 10, 0, 1))
        .hasMessage("Cycles of lawn must be from 1 to 96; it is 0.");
    assertThatThrownBy(() -> Sites.zone("lawn", 1, 10, 0, Double.NaN))
        .hasMessageContaining("flow of lawn must be a number");
    assertThatThrownBy(() -> Sites.rules(1, 0, 0, Sites.window(0, 60)))
        .hasMessageContaining("available flow must be above zero");
    assertThatThrownBy(() -> Sites.rules(1, 9, 0, Sites.window(0, 60), Sites.window(50, 90)))
        .hasMessage("Two windows of Monday overlap.");
    assertThatThrownBy(() -> Sites.rules(1, 9, 0, Sites.window(300, 600), Sites.window(900, 400)))
        .hasMessageContaining("still open when that of Tuesday begins");
  }

  private static WateredZone wished(String name, int place) {
    return new WateredZone(name, "A", OptionalInt.of(place), 1, 10, 0, 1, MONDAY_ONLY);
  }

  private static final WateringDays MONDAY_ONLY = Sites.on(MONDAY.weekday());

  private static int length(List<WateredZone> zones, NightRules rules) {
    NightPlan plan = NightPlacer.place(MONDAY, zones, rules);
    assertThat(NightChecker.broken(plan, zones, rules)).isEmpty();
    return plan.lengthMinutes();
  }
}
