package zonewright.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import zonewright.climate.Climate;
import zonewright.climate.Rain;
import zonewright.design.Design;
import zonewright.design.Facts;
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
  void withoutAChosenLawNoAllowanceIsAFinding() {
    Sketch sketch = Sketch.in(UnitSystem.US);
    year(sketch, 60);
    for (int month = 0; month < 12; month++) {
      sketch.type(Rain.MONTH_RAIN, month, "0");
    }
    zone(sketch, 0, "600", "1", "50");
    sketch.type(Facts.ZONE_NAME, "1").type(Emitters.DISTRIBUTION_UNIFORMITY, "50");
    assertThat(gallons(sketch, WaterSense.LEFT_OVER)).isNegative();
    assertThat(gallons(sketch, Ordinance.LEFT_OVER)).isNegative();
    assertThat(sketch.design().findings()).noneMatch(found -> found.line().contains("allow"));
    sketch.type(WaterSense.APPLIES, Ordinance.YES);
    assertThat(sketch.design().findings())
        .anyMatch(found -> found.line().contains("the WaterSense allowance is"));
  }

  /**
   * City of Vacaville code (2022), Table 14.27.030.A (verified): 52.3 in a year; the months come to
   * an inch more with 1.7 in for January typed over 0.7 in.
   */
  @Test
  void theYearlyAllowanceSaysWhichAnnualValueItUses() {
    double sum = 53.3;
    double printed = 52.3;
    Sketch sketch = Sketch.in(UnitSystem.US);
    sketch.type(Climate.PLACE, "Vacaville").type(Ordinance.APPLIES, Ordinance.YES);
    sketch.type(Climate.REFERENCE_ET, 0, "1.7 in");
    zone(sketch, 0, "1000", "0.5", "75");
    double bySum = gallons(sketch, Ordinance.MAXIMUM);
    assertThat(sketch.outcome(Ordinance.ANNUAL_USED))
        .isEqualTo(new Outcome.Words(Ordinance.SUM_OF_MONTHS));
    assertThat(sketch.read(Ordinance.ANNUAL_ET, Units.INCH)).isCloseTo(sum, within(1e-9));
    assertThat(sketch.design().findings())
        .anyMatch(
            found -> found.line().contains("has a yearly allowance by the sum of the months"));
    assertThat(sketch.design().book().working(Ordinance.MAXIMUM.reference(), 0).asText())
        .contains("Annual value used: the sum of the months");
    sketch.type(Ordinance.ANNUAL_CHOICE, Ordinance.AS_PRINTED);
    assertThat(sketch.read(Ordinance.ANNUAL_ET, Units.INCH)).isCloseTo(printed, within(1e-9));
    assertThat(gallons(sketch, Ordinance.MAXIMUM)).isCloseTo(bySum * printed / sum, within(1e-6));
    assertThat(gallons(sketch, Ordinance.ESTIMATED_USE))
        .isCloseTo(printed * 0.62 * 1000 * 0.5 / 0.75, within(1e-6));
    sketch.type(Climate.PLACE, "");
    year(sketch, 50);
    assertThat(sketch.outcome(Ordinance.ANNUAL_USED))
        .as("there is no printed value without a place")
        .isEqualTo(new Outcome.Words(Ordinance.SUM_OF_MONTHS));
    assertThat(sketch.read(Ordinance.ANNUAL_ET, Units.INCH)).isCloseTo(50, within(1e-9));
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
