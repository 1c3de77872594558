package zonewright.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import zonewright.climate.Climate;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.formula.Outcome;
import zonewright.plants.Plants;
import zonewright.sheet.Severity;
import zonewright.sketch.Sketch;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** What allowances refuse and tell; their values stand among the reference checks. */
class AllowancesTest {
  private static void year(Sketch sketch, double inches) {
    for (int month = 0; month < 12; month++) {
      sketch.type(Climate.REFERENCE_ET, month, inches / 12 + " in");
    }
  }

  private static double gallons(Sketch sketch, zonewright.sheet.Column column) {
    return sketch.read(column, Units.GALLON);
  }

  private static void zone(Sketch sketch, int row, String area, String factor, String efficiency) {
    sketch.type(Emitters.AREA, row, area).type(Plants.PLANT_FACTOR, row, factor);
    sketch.type(Emitters.IRRIGATION_EFFICIENCY, row, efficiency);
  }

  @Test
  void aFailingSiteIsToldAndByHowMuch() {
    Sketch sketch = Sketch.in(UnitSystem.US);
    sketch.type(Climate.PLACE, "Vacaville");
    zone(sketch, 0, "600", "0.8", "75");
    assertThat(gallons(sketch, Ordinance.LEFT_OVER)).isNegative();
    assertThat(gallons(sketch, Ordinance.ABOVE_SHARE))
        .isCloseTo(-gallons(sketch, Ordinance.LEFT_OVER), within(1e-6));
    assertThat(sketch.design().findings())
        .noneMatch(finding -> finding.line().contains("the model ordinance allows"));
    sketch.type(Ordinance.APPLIES, "yes");
    assertThat(sketch.design().findings())
        .anyMatch(finding -> finding.line().contains("the model ordinance allows"));
  }

  @Test
  void aDesignWithoutZonesHasNothingWrong() {
    assertThat(Design.blank(UnitSystem.SI).findings())
        .noneMatch(finding -> finding.severity() == Severity.WRONG);
  }

  @Test
  void anAdjustmentFactorAboveOneIsRefused() {
    Sketch sketch = Sketch.in(UnitSystem.US);
    year(sketch, 50);
    sketch.type(Emitters.AREA, "1000").type(Ordinance.ADJUSTMENT_FACTOR, "1.2");
    assertThat(sketch.outcome(Ordinance.MAXIMUM)).isInstanceOf(Outcome.Refused.class);
    assertThat(sketch.outcome(Ordinance.MAXIMUM).sentence())
        .contains("ET adjustment factor")
        .contains("at most 1");
  }

  @Test
  void aLocalVolumeGoesBeforeALocalShare() {
    Sketch sketch = Sketch.in(UnitSystem.US);
    year(sketch, 50);
    sketch.type(Emitters.AREA, "1000").type(LocalRule.SHARE, "60");
    // 0.6 × 50 in × 1,000 ft² × 0.62338 gal/(ft² in), the exact factor (derived).
    assertThat(gallons(sketch, LocalRule.LIMIT)).isCloseTo(18_701, within(1.0));
    sketch.type(LocalRule.VOLUME, "12000 gal");
    assertThat(gallons(sketch, LocalRule.LIMIT)).isEqualTo(12_000);
  }

  @Test
  void withoutARuleThereIsNoLimit() {
    assertThat(Sketch.in(UnitSystem.US).outcome(LocalRule.LIMIT))
        .isInstanceOf(Outcome.NotApplicable.class);
  }
}
