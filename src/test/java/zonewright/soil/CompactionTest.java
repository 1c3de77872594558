package zonewright.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import zonewright.sketch.Sketch;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** Compaction stands over the texture, and a measurement over both. */
class CompactionTest {
  private final Sketch sketch = Sketch.in(UnitSystem.US).type(Soils.SOIL_TYPE, "loam");

  private double intake() {
    return sketch.read(Soils.INTAKE_RATE, Units.INCH_PER_HOUR);
  }

  /** Half and a fifth: common practice, no source; 0.35 in/h for loam verified (secondary). */
  @Test
  void compactedSoilTakesInLess() {
    assertThat(intake()).isCloseTo(0.35, within(1e-12));
    sketch.type(Soils.COMPACTION, Soils.COMPACTED);
    assertThat(intake()).isCloseTo(0.175, within(1e-12));
    sketch.type(Soils.COMPACTION, Soils.SEVERELY_COMPACTED);
    assertThat(intake()).isCloseTo(0.07, within(1e-12));
  }

  @Test
  void aMeasurementCountsWhateverTheCompaction() {
    sketch.type(Soils.COMPACTION, Soils.SEVERELY_COMPACTED).type(Soils.INTAKE_RATE, "0.2 in/h");
    assertThat(intake()).isEqualTo(0.2);
    sketch.type(Soils.INTAKE_RATE, "");
    assertThat(intake()).isCloseTo(0.07, within(1e-12));
  }
}
