package zonewright.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import zonewright.climate.Climate;
import zonewright.design.Facts;
import zonewright.design.Finding;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sketch.Sketch;
import zonewright.soil.SoilLayers;
import zonewright.soil.Soils;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** What a run puts on at once: more than the root zone holds, or more than the strip takes in. */
class AppliedAtOnceTest {
  private final Sketch sketch = Sketch.in(UnitSystem.US);

  /** A zone that uses 0.1 in a day and is watered with 1 in/h; its root zone holds 0.8 in. */
  @BeforeEach
  void aZone() {
    for (int month = 0; month < 12; month++) {
      sketch.type(Climate.REFERENCE_ET, month, month == 6 ? "3.1" : "1");
    }
    sketch.type(Facts.ZONE_NAME, "1").type(Plants.PLANT_FACTOR, "1");
    sketch.type(Soils.AVAILABLE_WATER, "1.2 in/ft").type(Plants.ROOT_DEPTH, "8 in");
    sketch.type(Plants.ALLOWED_DEPLETION, "50").type(Emitters.AREA, "962.5");
    sketch.type(Emitters.ZONE_FLOW, "10 gpm").type(Emitters.DISTRIBUTION_UNIFORMITY, "100 %");
    sketch.type(Soils.INTAKE_RATE, "2 in/h").type(Soils.SURFACE_STORAGE, "0.3 in");
  }

  private boolean drains() {
    return sketch.design().findings().stream()
        .map(Finding::line)
        .anyMatch(line -> line.contains("the rest drains away"));
  }

  /** Derived: 1.2 ÷ 12 × 8 = 0.8 in, which a tenth of an inch a day uses up in 8 days. */
  @Test
  void waterBeyondWhatTheRootZoneHoldsIsAFinding() {
    assertThat(sketch.read(SoilLayers.WATER_HELD, Units.INCH)).isCloseTo(0.8, within(1e-9));
    assertThat(drains()).isFalse();
    sketch.type(WateringPattern.PATTERN, WateringPattern.INTERVAL).type(WateringPattern.EVERY, "8");
    assertThat(sketch.read(CycleAndSoak.APPLIED, Units.INCH)).isCloseTo(0.8, within(1e-9));
    assertThat(drains()).isFalse();
    sketch.type(WateringPattern.EVERY, "10");
    assertThat(sketch.read(CycleAndSoak.APPLIED, Units.INCH)).isCloseTo(1, within(1e-9));
    assertThat(drains()).isTrue();
  }

  @Test
  void aRateThatCansCaughtIsNotDividedByAnEfficiencyAgain() {
    sketch.type(SiteRules.GROSS_METHOD, SiteRules.BY_EFFICIENCY);
    sketch.type(Emitters.IRRIGATION_EFFICIENCY, "80 %");
    assertThat(sketch.read(Demand.GROSS_DEMAND, Units.INCH_PER_DAY)).isCloseTo(0.125, within(1e-9));
    sketch.type(Emitters.RATE_METHOD, Emitters.BY_TEST);
    assertThat(sketch.read(Demand.GROSS_DEMAND, Units.INCH_PER_DAY)).isCloseTo(0.1, within(1e-9));
    sketch.type(Emitters.DISTRIBUTION_UNIFORMITY, "50 %");
    assertThat(sketch.read(Demand.GROSS_DEMAND, Units.INCH_PER_DAY))
        .as("longer for the unevenness the cans show, 1 ÷ 0.7")
        .isCloseTo(0.1 / 0.7, within(1e-9));
  }

  /**
   * Derived: lines 18 in apart that wet strips of 12 in lay down 1.5 times the mean, 1.5 in/h where
   * the soil takes in 1.1: 0.3 ÷ 0.4 h = 45 min, though the mean over the bed is below the intake
   * rate.
   */
  @Test
  void runoffOfDripLinesIsJudgedOnTheWettedStrip() {
    sketch.type(Soils.INTAKE_RATE, "1.1 in/h");
    assertThat(sketch.read(Demand.RUN_TIME_PER_WEEK, Units.MINUTE)).isCloseTo(42, within(1e-9));
    assertThat(sketch.read(CycleAndSoak.LONGEST_CYCLE, Units.MINUTE)).as("no drip").isNaN();
    sketch.type(Emitters.EMITTER, "drip line").type(Emitters.DISTRIBUTION_UNIFORMITY, "100 %");
    sketch.type(Emitters.ROW_SPACING, "18 in").type(Emitters.WETTED_WIDTH, "12 in");
    assertThat(sketch.read(Emitters.WETTED_RATE, Units.INCH_PER_HOUR)).isCloseTo(1.5, within(1e-9));
    assertThat(sketch.read(CycleAndSoak.LONGEST_CYCLE, Units.MINUTE)).isEqualTo(45);
    assertThat(sketch.read(Demand.RUN_TIME_PER_WEEK, Units.MINUTE))
        .as("roots drink from the whole bed")
        .isCloseTo(42, within(1e-9));
    sketch.type(Emitters.WETTED_WIDTH, "24 in");
    assertThat(sketch.read(Emitters.WETTED_RATE, Units.INCH_PER_HOUR))
        .as("strips that meet wet the whole bed")
        .isCloseTo(1, within(1e-9));
    sketch.type(Emitters.ROW_SPACING, "").type(Emitters.WETTED_WIDTH, "12 in");
    sketch.type(Emitters.EMITTER_FLOW, "1 gph");
    assertThat(sketch.read(Emitters.WETTED_RATE, Units.INCH_PER_HOUR))
        .as("a gallon is 231 in³, on a round of 12 in across 2.04 in/h")
        .isCloseTo(231 / (Math.PI * 36), within(1e-9));
  }
}
