package zonewright.fieldwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import zonewright.emitters.Emitters;
import zonewright.sheet.Severity;
import zonewright.sketch.Sketch;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/**
 * Scheduling coefficient and the efficiencies of the low quarter; the published example of Merriam
 * and Keller (1978) stands among the reference checks.
 */
class LowQuarterTest {
  private static Sketch test(List<Integer> millimetres) {
    Sketch sketch = Sketch.in(UnitSystem.SI);
    var design = sketch.design();
    design.book().start(design.edits().inserted(Sheets.TESTS, 0, 1));
    design.book().start(design.edits().inserted(Sheets.CANS, 0, millimetres.size()));
    sketch.type(CatchTests.ZONE, "1").type(CatchTests.MINUTES, "60");
    for (int can = 0; can < millimetres.size(); can++) {
      design.book().start(design.edits().typed(Cans.TEST.reference(), can, "1"));
      String depth = millimetres.get(can) + " mm";
      design.book().start(design.edits().typed(Cans.DEPTH.reference(), can, depth));
    }
    return sketch;
  }

  @Property(tries = 15)
  void theDriestTwentiethIsNoWetterThanTheLowestQuarter(
      @ForAll @Size(min = 2, max = 45) List<@IntRange(min = 1, max = 30) Integer> depths) {
    Sketch sketch = test(depths);
    double coefficient = sketch.read(LowQuarter.SCHEDULING_COEFFICIENT, Units.ONE);
    double uniformity = sketch.read(CatchTests.LOW_QUARTER, Units.ONE);
    assertThat(coefficient).isGreaterThanOrEqualTo(1 / uniformity - 1e-9);
    int count = Math.max(1, (int) Math.round(depths.size() / 20.0));
    double driest =
        depths.stream().sorted().limit(count).mapToInt(each -> each).average().orElseThrow();
    double mean = depths.stream().mapToInt(each -> each).average().orElseThrow();
    assertThat(coefficient).isCloseTo(mean / driest, within(1e-9));
  }

  @Property(tries = 15)
  void noIrrigationDoesBetterThanItsPotential(
      @ForAll @Size(min = 4, max = 12) List<@IntRange(min = 1, max = 30) Integer> depths,
      @ForAll @IntRange(min = 1, max = 600) int minutes,
      @ForAll @IntRange(min = 1, max = 60) int deficit) {
    Sketch sketch =
        test(depths)
            .type(LowQuarter.APPLIED_RATE, "40 mm/h")
            .type(LowQuarter.RUN_TIME, minutes + " min")
            .type(LowQuarter.DEFICIT, deficit + " mm");
    double potential = sketch.read(LowQuarter.POTENTIAL, Units.ONE);
    double actual = sketch.read(LowQuarter.ACTUAL, Units.ONE);
    assertThat(actual).isLessThanOrEqualTo(potential + 1e-12);
    double filled = sketch.read(LowQuarter.LOW_QUARTER_RATE, Units.MILLIMETRE_PER_HOUR) * minutes;
    if (filled <= deficit * 60.0) {
      assertThat(actual).as("the run does not overfill it").isCloseTo(potential, within(1e-12));
    }
  }

  @Test
  void theZoneGivesRateAppliedRunTimeAndDeficitUnlessTyped() {
    Sketch sketch =
        test(List.of(10, 12, 14, 16))
            .type(Emitters.AREA, "100 m2")
            .type(Emitters.ZONE_FLOW, "25 L/min");
    assertThat(sketch.read(LowQuarter.APPLIED_RATE, Units.MILLIMETRE_PER_HOUR))
        .isCloseTo(15, within(1e-9));
    assertThat(sketch.outcome(LowQuarter.ACTUAL).sentence()).contains("needs");
  }

  @Test
  void aPlaceThatStaysDryHasNoCoefficient() {
    Sketch sketch = test(List.of(0, 12, 14, 16));
    assertThat(sketch.outcome(LowQuarter.SCHEDULING_COEFFICIENT).sentence())
        .contains("no run time waters them");
  }

  /** 24 to 40 cans: University of California, Davis, landscape irrigation pages (verified). */
  @Test
  void fewerCansThanTheMethodAsksForIsAFinding() {
    for (int count : List.of(1, 23, 24)) {
      List<Integer> depths = IntStream.range(0, count).mapToObj(can -> 10 + can % 3).toList();
      assertThat(
              test(depths).design().findings().stream()
                  .filter(finding -> finding.sentence().contains("wants 24 to 40"))
                  .map(finding -> finding.severity())
                  .toList())
          .as(count + " cans")
          .isEqualTo(count < 24 ? List.of(Severity.CHECK) : Collections.emptyList());
    }
  }
}
