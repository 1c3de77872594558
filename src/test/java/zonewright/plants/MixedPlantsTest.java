package zonewright.plants;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import zonewright.sketch.Sketch;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** A valve with two kinds of plants. */
class MixedPlantsTest {
  private final Sketch sketch = Sketch.in(UnitSystem.US);

  @BeforeEach
  void shrubsWithFlowers() {
    sketch.type(Plants.PLANT, "shrubs (dry climate)").type(Plants.SECOND_PLANT, "annual flowers");
  }

  /**
   * SLIDE (Kjelgren and others 2016, abstract verified): the thirstiest plant sets the demand of
   * the valve.
   */
  @Test
  void theThirstiestSetsTheDemand() {
    assertThat(sketch.read(Plants.PLANT_FACTOR, Units.ONE)).isEqualTo(0.8);
  }

  /** 0.5 on three quarters and 0.8 on one quarter is 0.575 (derived). */
  @Test
  void byAreaTheMeanCounts() {
    sketch.type(Plants.MIXED, Plants.BY_AREA).type(Plants.SECOND_SHARE, "25 %");
    assertThat(sketch.read(Plants.PLANT_FACTOR, Units.ONE)).isCloseTo(0.575, within(1e-12));
  }

  @Test
  void byAreaTheShareMustBeKnown() {
    sketch.type(Plants.MIXED, Plants.BY_AREA);
    assertThat(sketch.outcome(Plants.PLANT_FACTOR).sentence()).contains("Share of second");
  }
}
