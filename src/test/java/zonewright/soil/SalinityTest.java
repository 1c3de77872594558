package zonewright.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.climate.Climate;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.plants.Plants;
import zonewright.sketch.Sketch;
import zonewright.units.UnitSystem;
import zonewright.units.Units;
import zonewright.water.Demand;
import zonewright.water.SiteRules;

/** Leaching by FAO Irrigation and Drainage Paper 29, equations 7 and 9. */
class SalinityTest {
  private static Sketch orchard() {
    Sketch sketch =
        Sketch.in(UnitSystem.US)
            .type(Plants.PLANT_FACTOR, "1")
            .type(Emitters.DISTRIBUTION_UNIFORMITY, "100 %")
            .type(Emitters.IRRIGATION_EFFICIENCY, "100 %");
    for (int month = 0; month < 12; month++) {
      sketch.type(Climate.REFERENCE_ET, month, month == 6 ? "4 in" : "0");
    }
    return sketch;
  }

  /**
   * A public avocado irrigation page after Rhoades and Oster (verified): water of 0.6 dS/m and a
   * tolerance of 0.4 dS/m ask for 0.6 ÷ (5 × 0.4 − 0.6) = 0.43, and 40 in become 70; a tenth of
   * that here, for no month has 40 in.
   */
  @ParameterizedTest
  @CsvSource({SiteRules.BY_UNIFORMITY, SiteRules.BY_EFFICIENCY})
  void fourInchesOfUseBecomeSeven(String method) {
    Sketch sketch = orchard().type(SiteRules.GROSS_METHOD, method);
    assertThat(sketch.read(Demand.GROSS_DEMAND, Units.INCH_PER_DAY) * 31)
        .as("ordinary water")
        .isCloseTo(4, within(1e-9));
    sketch.type(Salinity.OF_THE_WATER, "600 µS/cm").type(Salinity.TOLERATED, "0.4 dS/m");
    assertThat(sketch.read(Salinity.LEACHING_REQUIREMENT, Units.ONE))
        .isCloseTo(0.43, within(0.005));
    assertThat(sketch.read(Demand.GROSS_DEMAND, Units.INCH_PER_DAY) * 31)
        .isCloseTo(7.0, within(0.05));
    assertThat(sketch.design().findings())
        .anyMatch(finding -> finding.line().contains("hardly practical"));
  }

  @Test
  void aToleranceThatIsNotKnownIsAskedForAndNotTakenForNone() {
    Sketch sketch = orchard().type(Salinity.OF_THE_WATER, "1.2");
    assertThat(sketch.outcome(Demand.GROSS_DEMAND).sentence()).contains("Salinity tolerated");
  }

  @Test
  void waterThatNoLeachingMakesBearableIsRefused() {
    Sketch sketch =
        orchard().type(Salinity.OF_THE_WATER, "5 dS/m").type(Salinity.TOLERATED, "2 dS/m");
    assertThat(sketch.outcome(Salinity.LEACHING_REQUIREMENT))
        .isInstanceOf(Outcome.Refused.class)
        .extracting(Outcome::sentence)
        .asString()
        .contains("no amount of leaching");
  }
}
