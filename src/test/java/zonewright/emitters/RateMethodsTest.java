package zonewright.emitters;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import zonewright.formula.Outcome;
import zonewright.sketch.Sketch;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** The ways to a precipitation rate. */
class RateMethodsTest {
  /**
   * Two emitters of 0.48 gph a vine, vines 7 by 11 ft: 0.96 gph a vine (UC ANR, verified), 0.0200
   * in/h (derived).
   */
  @ParameterizedTest
  @EnumSource
  void bySpacingOfVines(UnitSystem system) {
    Sketch sketch = Sketch.in(system);
    sketch.type(Emitters.RATE_METHOD, Emitters.BY_SPACING).type(Emitters.EMITTER_FLOW, "0.96 gph");
    sketch.type(Emitters.HEAD_SPACING, "7 ft").type(Emitters.ROW_SPACING, "11 ft");
    assertThat(sketch.read(Emitters.PRECIPITATION_RATE, Units.INCH_PER_HOUR))
        .isCloseTo(0.0200, within(0.00005));
  }

  /**
   * A canopy of 100 ft² at 0.2 in a day wants 100 × 0.2 × 0.623 = 12.46 gallons a day (UC ANR form,
   * verified; figures ours): at 2 gph that is 6.23 hours, so 0.0321 in/h.
   */
  @ParameterizedTest
  @EnumSource
  void byCanopyOfATree(UnitSystem system) {
    Sketch sketch = Sketch.in(system);
    sketch.type(Emitters.RATE_METHOD, Emitters.BY_CANOPY).type(Emitters.ZONE_FLOW, "2 gph");
    sketch.type(Emitters.PLANT_COUNT, "1").type(Emitters.CANOPY, "11.2838 ft");
    double rate = sketch.read(Emitters.PRECIPITATION_RATE, Units.INCH_PER_HOUR);
    assertThat(0.2 / rate).isCloseTo(12.46 / 2, within(0.01));
  }

  @Test
  void withoutACanopyTheMethodSaysWhatItLacks() {
    Sketch sketch = Sketch.in(UnitSystem.US);
    sketch.type(Emitters.RATE_METHOD, Emitters.BY_CANOPY).type(Emitters.ZONE_FLOW, "2 gph");
    assertThat(sketch.outcome(Emitters.PRECIPITATION_RATE))
        .isInstanceOf(Outcome.NotApplicable.class)
        .extracting(Outcome::sentence)
        .asString()
        .contains("canopy");
  }

  @Test
  void ratesThatDifferByMoreThanATenthAreAFinding() {
    Sketch sketch = Sketch.in(UnitSystem.US);
    sketch.type(Emitters.EMITTER_FLOW, "1.5 gpm").type(Emitters.EMITTER_COUNT, "20");
    sketch.type(Emitters.HEAD_SPACING, "12 ft").type(Emitters.ROW_SPACING, "12 ft");
    sketch.type(Emitters.AREA, "2800 ft2");
    assertThat(sketch.design().findings()).noneMatch(finding -> finding.line().contains("differ"));
    sketch.type(Emitters.AREA, "2000 ft2");
    assertThat(sketch.design().findings()).anyMatch(finding -> finding.line().contains("differ"));
  }
}
