package zonewright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import zonewright.formula.Outcome;
import zonewright.sketch.Sketch;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** Limits and blanks of effective rain; its values stand among the reference checks. */
class RainTest {
  private final Sketch sketch = Sketch.in(UnitSystem.US);

  private double effective(String method, String rain) {
    sketch.type(Rain.METHOD, method).type(Rain.MONTH_RAIN, rain);
    return sketch.read(Rain.EFFECTIVE, Units.MILLIMETRE);
  }

  /** Never more than falls, nor more than the plants use: limits of the same equations. */
  @Test
  void soilConservationServiceKeepsItsLimits() {
    sketch.type(Climate.REFERENCE_ET, "0.5 in").type(Rain.USABLE_STORAGE, "3 in");
    assertThat(effective(Rain.SCS, "6 in") / 25.4).isCloseTo(0.5, within(1e-12));
    assertThat(effective(Rain.SCS, "0.05 in")).isZero();
  }

  @Test
  void aFixedShareCountsAQuarterUnlessTyped() {
    assertThat(effective(Rain.SHARE, "100 mm")).isCloseTo(25, within(1e-9));
    sketch.type(Rain.COUNTED_SHARE, "50");
    assertThat(effective(Rain.SHARE, "100 mm")).isCloseTo(50, within(1e-9));
  }

  @Test
  void noneIsTheSafeDefaultAndNeedsNoRain() {
    assertThat(sketch.read(Rain.EFFECTIVE, Units.MILLIMETRE)).isZero();
  }

  @Test
  void aBlankMonthOfRainIsMissingNotZero() {
    sketch.type(Rain.METHOD, Rain.SHARE);
    assertThat(sketch.outcome(Rain.EFFECTIVE)).isInstanceOf(Outcome.Missing.class);
  }
}
