package zonewright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.formula.Outcome;
import zonewright.sketch.Sketch;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** Effective rain against values derived from the published equations; see each test. */
class RainTest {
  private final Sketch sketch = Sketch.in(UnitSystem.US);

  private double effective(String method, String rain) {
    sketch.type(Rain.METHOD, method).type(Rain.MONTH_RAIN, rain);
    return sketch.read(Rain.EFFECTIVE, Units.MILLIMETRE);
  }

  /**
   * NEH part 623 chapter 2, equations 2-84 and 2-85 (verified secondary; results derived), inches,
   * tolerance 0.005.
   */
  @ParameterizedTest
  @CsvSource({"1, 4, 3, 0.743", "2, 5, 3, 1.508", "4, 7, 1, 2.409"})
  void soilConservationServiceWithStorage(
      String rain, String use, String storage, double expected) {
    sketch.type(Climate.REFERENCE_ET, use + " in").type(Rain.USABLE_STORAGE, storage + " in");
    double inches = effective(Rain.SCS, rain + " in") / 25.4;
    assertThat(inches).isCloseTo(expected, within(0.005));
  }

  /** Never more than falls, nor more than the plants use: limits of the same equations. */
  @Test
  void soilConservationServiceKeepsItsLimits() {
    sketch.type(Climate.REFERENCE_ET, "0.5 in").type(Rain.USABLE_STORAGE, "3 in");
    assertThat(effective(Rain.SCS, "6 in") / 25.4).isCloseTo(0.5, within(1e-12));
    assertThat(effective(Rain.SCS, "0.05 in")).isZero();
  }

  /** Simplified USDA-SCS, both branches meet at 250 mm (verified secondary; results derived). */
  @ParameterizedTest
  @CsvSource({"50, 46.0", "100, 84.0", "250, 150.0", "300, 155.0"})
  void soilConservationServiceSimplified(String rain, double expected) {
    assertThat(effective(Rain.SCS_SIMPLE, rain + " mm")).isCloseTo(expected, within(0.05));
  }

  /** FAO dependable rain (AGLW), branches meet at 70 mm (verified secondary; results derived). */
  @ParameterizedTest
  @CsvSource({"10, 0", "70, 32.0", "100, 56.0"})
  void dependableRain(String rain, double expected) {
    assertThat(effective(Rain.DEPENDABLE, rain + " mm")).isCloseTo(expected, within(0.05));
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
