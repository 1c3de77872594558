package zonewright.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import zonewright.climate.Climate;
import zonewright.formula.Outcome;
import zonewright.plants.Plants;
import zonewright.sketch.Sketch;
import zonewright.units.UnitSystem;
import zonewright.units.Units;
import zonewright.water.Demand;
import zonewright.water.DryingOut;

/** Soil reports, layers and how far a soil dries. */
class SoilWaterTest {
  /** Water held by a clay: 48 − 28 %, 2.40 in/ft; precisionag.org practice, verified. */
  @Test
  void aSoilReportTakesThePlaceOfTheTexture() {
    Sketch sketch = Sketch.in(UnitSystem.US).type(Soils.SOIL_TYPE, "loam");
    assertThat(sketch.read(Soils.AVAILABLE_WATER, Units.INCH_PER_FOOT)).isEqualTo(2.16);
    sketch.type(Soils.FIELD_CAPACITY, "48 %");
    assertThat(sketch.outcome(Soils.AVAILABLE_WATER).sentence()).contains("Wilting point");
    sketch.type(Soils.WILTING_POINT, "28 %");
    assertThat(sketch.read(Soils.AVAILABLE_WATER, Units.INCH_PER_FOOT))
        .isCloseTo(2.40, within(1e-12));
    sketch.type(Soils.AVAILABLE_WATER, "2 in/ft");
    assertThat(sketch.read(Soils.AVAILABLE_WATER, Units.INCH_PER_FOOT)).isEqualTo(2);
  }

  @Test
  void exchangedPointsAreRefusedAndToldOnce() {
    Sketch sketch =
        Sketch.in(UnitSystem.SI).type(Soils.FIELD_CAPACITY, "28").type(Soils.WILTING_POINT, "48");
    assertThat(sketch.outcome(Soils.AVAILABLE_WATER)).isInstanceOf(Outcome.Refused.class);
    assertThat(sketch.design().findings())
        .filteredOn(finding -> finding.sentence().contains("must lie above wilting point"))
        .hasSize(1);
  }

  @Test
  void theSecondSoilCountsOnlyWhereRootsReachIt() {
    Sketch sketch =
        Sketch.in(UnitSystem.US)
            .type(Soils.AVAILABLE_WATER, "0.75 in/ft")
            .type(Plants.ROOT_DEPTH, "36 in")
            .type(SoilLayers.SECOND_AVAILABLE, "1.6 in/ft")
            .type(SoilLayers.UPPER_DEPTH, "12 in");
    // precisionag.org practice: 0.75 in and 3.20 in (verified)
    assertThat(sketch.read(SoilLayers.WATER_HELD, Units.INCH)).isCloseTo(3.95, within(1e-12));
    sketch.type(Plants.ROOT_DEPTH, "6 in");
    assertThat(sketch.read(SoilLayers.WATER_HELD, Units.INCH)).isCloseTo(0.375, within(1e-12));
    sketch.type(SoilLayers.UPPER_DEPTH, "").type(SoilLayers.SECOND_SOIL, "clay");
    assertThat(sketch.outcome(SoilLayers.WATER_HELD).sentence())
        .contains("Depth of the soil on top");
  }

  @Property(tries = 20)
  void twoLayersOfOneSoilHoldWhatOneDoes(
      @ForAll @IntRange(min = 1, max = 60) int upper,
      @ForAll @IntRange(min = 1, max = 60) int roots) {
    Sketch plain =
        Sketch.in(UnitSystem.US)
            .type(Soils.SOIL_TYPE, "loam")
            .type(Plants.ROOT_DEPTH, roots + " in");
    double held = plain.read(SoilLayers.WATER_HELD, Units.INCH);
    plain.type(SoilLayers.SECOND_SOIL, "loam").type(SoilLayers.UPPER_DEPTH, upper + " in");
    assertThat(plain.read(SoilLayers.WATER_HELD, Units.INCH)).isCloseTo(held, within(1e-12));
  }

  /** 5 in held, 0.3 in a day: 3 in or 60 % after 10 days (the figures of precisionag.org). */
  @Test
  void depletionGrowsDayByDayAndEndsWhereNothingIsLeft() {
    Sketch sketch =
        Sketch.in(UnitSystem.US)
            .type(Plants.PLANT_FACTOR, "1")
            .type(Soils.AVAILABLE_WATER, "1.25 in/ft")
            .type(Plants.ROOT_DEPTH, "48 in")
            .type(Plants.ALLOWED_DEPLETION, "60 %");
    for (int month = 0; month < 12; month++) {
      sketch.type(Climate.REFERENCE_ET, month, month == 6 ? "9.3 in" : "0");
    }
    assertThat(sketch.read(Demand.NET_DEMAND, Units.INCH_PER_DAY)).isCloseTo(0.3, within(1e-12));
    assertThat(sketch.read(DryingOut.DAYS, Units.DAY))
        .as("the longest gap, unless typed")
        .isEqualTo(sketch.read(Demand.LONGEST_GAP, Units.DAY));
    sketch.type(DryingOut.DAYS, "10");
    assertThat(sketch.read(DryingOut.DEPTH, Units.INCH)).isCloseTo(3, within(1e-12));
    assertThat(sketch.read(DryingOut.SHARE, Units.ONE)).isCloseTo(0.6, within(1e-12));
    sketch.type(DryingOut.DAYS, "30");
    assertThat(sketch.read(DryingOut.SHARE, Units.ONE)).isEqualTo(1);
  }
}
