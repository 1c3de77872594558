package zonewright.timetable;

import static org.assertj.core.api.Assertions.assertThat;
import static zonewright.timetable.Sites.MONDAY;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Laws every placed night obeys. Derived from the rules of the site; no outside source. */
class NightPropertiesTest {

  /** A site small or large, with flows that do or do not bind. */
  record Site(List<WateredZone> zones, NightRules rules) {}

  @Property(tries = 400)
  void noRuleIsEverBrokenAndEveryMinuteIsWatered(@ForAll("sites") Site site) {
    NightPlan plan = NightPlacer.place(MONDAY, site.zones(), site.rules(), List.of());
    assertThat(NightChecker.broken(plan, site.zones(), site.rules())).isEmpty();
    assertThat(plan.boundMinute()).isLessThanOrEqualTo(plan.finishMinute());
  }

  @Property(tries = 100)
  void theSameSiteGivesTheSameNight(@ForAll("sites") Site site) {
    NightPlan once = NightPlacer.place(MONDAY, site.zones(), site.rules(), List.of());
    assertThat(NightPlacer.place(MONDAY, List.copyOf(site.zones()), site.rules(), List.of()))
        .isEqualTo(once);
  }

  @Property(tries = 150)
  void oneMoreValveNeverMakesANightLonger(@ForAll("sites") Site site) {
    NightRules more = site.rules().withMostValves(site.rules().mostValvesAtOnce() + 1);
    assertThat(NightPlacer.place(MONDAY, site.zones(), more, List.of()).finishMinute())
        .isLessThanOrEqualTo(
            NightPlacer.place(MONDAY, site.zones(), site.rules(), List.of()).finishMinute());
  }

  @Property(tries = 150)
  void moreFlowNeverMakesAKnownNightLonger(
      @ForAll("sites") Site site, @ForAll @IntRange(min = 1, max = 40) int extra) {
    NightPlan before = NightPlacer.place(MONDAY, site.zones(), site.rules(), List.of());
    NightRules more = withFlow(site.rules(), site.rules().availableFlow() + extra / 4.0);
    NightPlan after = NightPlacer.place(MONDAY, site.zones(), more, List.of(before));
    assertThat(after.finishMinute()).isLessThanOrEqualTo(before.finishMinute());
  }

  @Property(tries = 150)
  void aWiderWindowNeverMakesANightLonger(
      @ForAll("sites") Site site,
      @ForAll @IntRange(max = 50) int earlier,
      @ForAll @IntRange(max = 120) int later) {
    NightPlan before = NightPlacer.place(MONDAY, site.zones(), site.rules(), List.of());
    List<WateringWindow> windows = site.rules().windowsOn(MONDAY.weekday());
    List<WateringWindow> wider = new ArrayList<>(windows);
    int last = wider.size() - 1;
    wider.set(
        last,
        new WateringWindow(wider.get(last).startMinute(), wider.get(last).endMinute() + later));
    wider.set(
        0, new WateringWindow(wider.get(0).startMinute() - earlier, wider.get(0).endMinute()));
    NightRules rules =
        Sites.rules(
            site.rules().mostValvesAtOnce(),
            site.rules().availableFlow(),
            site.rules().gapMinutes(),
            wider.toArray(new WateringWindow[0]));
    NightPlan after = NightPlacer.place(MONDAY, site.zones(), rules, List.of(before));
    assertThat(after.finishMinute()).isLessThanOrEqualTo(before.finishMinute());
    assertThat(after.overrunMinutes()).isLessThanOrEqualTo(before.overrunMinutes());
  }

  @Property(tries = 100)
  void aShorterGapNeverMakesAKnownNightLonger(@ForAll("sites") Site site) {
    NightPlan before = NightPlacer.place(MONDAY, site.zones(), site.rules(), List.of());
    NightRules none =
        Sites.rules(
            site.rules().mostValvesAtOnce(),
            site.rules().availableFlow(),
            0,
            site.rules().windowsOn(MONDAY.weekday()).toArray(new WateringWindow[0]));
    NightPlan after = NightPlacer.place(MONDAY, site.zones(), none, List.of(before));
    assertThat(after.finishMinute()).isLessThanOrEqualTo(before.finishMinute());
  }

  @Property(tries = 100)
  void nothingIsLeftUndoneWhereTheNightIsLongEnoughAndItsStartsSuffice(@ForAll("sites") Site site) {
    NightPlan plan = NightPlacer.place(MONDAY, site.zones(), site.rules(), List.of());
    assertThat(plan.undone().isEmpty()).isEqualTo(plan.overrunMinutes() == 0);
  }

  private static NightRules withFlow(NightRules rules, double flow) {
    return new NightRules(
        rules.windows(),
        rules.mostValvesAtOnce(),
        flow,
        rules.gapMinutes(),
        rules.mostStarts(),
        rules.mostPrograms());
  }

  @Provide
  Arbitrary<Site> sites() {
    Arbitrary<Integer> cycles = Arbitraries.integers().between(1, 5);
    Arbitrary<Integer> minutes = Arbitraries.integers().between(1, 20);
    Arbitrary<Integer> soak = Arbitraries.integers().between(0, 60);
    // Quarters of a unit, and thirds that no decimal holds exactly.
    Arbitrary<Double> flow =
        Arbitraries.oneOf(
            Arbitraries.integers().between(0, 120).map(quarter -> quarter / 4.0),
            Arbitraries.integers().between(1, 90).map(third -> third / 3.0));
    Arbitrary<List<WateredZone>> zones =
        Combinators.combine(cycles, minutes, soak, flow)
            .as((c, m, s, f) -> Sites.zone(1, c, m, s, f))
            .list()
            .ofMinSize(1)
            .ofMaxSize(30)
            .map(NightPropertiesTest::numbered);
    Arbitrary<NightRules> rules =
        Combinators.combine(
                Arbitraries.integers().between(1, 4),
                Arbitraries.integers().between(30, 90),
                Arbitraries.integers().between(0, 4),
                Arbitraries.integers().between(60, 500),
                Arbitraries.integers().between(0, 100))
            .as(
                (valves, available, gap, length, pause) ->
                    pause == 0
                        ? Sites.rules(valves, available, gap, Sites.window(60, 60 + length))
                        : Sites.rules(
                            valves,
                            available,
                            gap,
                            Sites.window(60, 60 + length / 2),
                            Sites.window(60 + length / 2 + pause, 60 + length + pause)));
    return Combinators.combine(zones, rules).as(Site::new);
  }

  private static List<WateredZone> numbered(List<WateredZone> zones) {
    List<WateredZone> result = new ArrayList<>();
    for (WateredZone zone : zones) {
      result.add(
          Sites.zone(
              result.size() + 1,
              zone.cycles(),
              zone.minutesPerCycle(),
              zone.soakMinutes(),
              zone.flow()));
    }
    return result;
  }
}
