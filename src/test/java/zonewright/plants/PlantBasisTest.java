package zonewright.plants;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.sketch.Sketch;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** One choice of the site says whose plant factors count; a plant keeps its type. */
class PlantBasisTest {
  private final Sketch sketch = Sketch.in(UnitSystem.US);

  /**
   * ASABE S623.1 and WaterSense (0.8, 0.6 in the EPA Water Budget Tool 2.0), FAO-56 Table 12 (0.95,
   * 0.85), WUCOLS moderate 0.5 (middle of 40 to 60 % in its user manual), MWELO (from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "each plant's own, cool-season turf, 0.8",
    "FAO-56 Kc, cool-season turf, 0.95",
    "FAO-56 Kc, warm-season turf, 0.85",
    "ASABE S623, cool-season turf (crop coefficient), 0.8",
    "WUCOLS, moderate water use, 0.5",
    "MWELO, moderate water use, 0.6",
    "WaterSense, shrubs (humid climate), 0.5",
    "FAO-56 Kc, desert plants, 0.3"
  })
  void theFactorFollowsTheBasisAndElseThePlantsOwn(String basis, String plant, double factor) {
    sketch.type(Plants.BASIS, basis).type(Plants.PLANT, plant);
    assertThat(sketch.read(Plants.PLANT_FACTOR, Units.ONE)).isEqualTo(factor);
  }

  @Test
  void aFactorTypedStandsWhateverTheBasis() {
    sketch.type(Plants.PLANT, "cool-season turf").type(Plants.PLANT_FACTOR, "0.7");
    sketch.type(Plants.BASIS, "FAO-56 Kc");
    assertThat(sketch.read(Plants.PLANT_FACTOR, Units.ONE)).isEqualTo(0.7);
  }
}
