package zonewright.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import zonewright.climate.Climate;
import zonewright.design.Finding;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sketch.Sketch;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** The fewest zones whose change is enough, and by how much. */
class LeastCutTest {
  private static Sketch site(double[] areas, double[] factors) {
    Sketch sketch = Sketch.in(UnitSystem.US).type(Climate.PLACE, "Vacaville");
    sketch
        .design()
        .book()
        .perform(sketch.design().edits().inserted(Sheets.ZONES, 1, areas.length - 1));
    for (int row = 0; row < areas.length; row++) {
      sketch.type(Emitters.AREA, row, Double.toString(areas[row]));
      sketch.type(Plants.PLANT_FACTOR, row, String.format(Locale.ROOT, "%.3f", factors[row]));
      sketch.type(Emitters.IRRIGATION_EFFICIENCY, row, "80 %");
    }
    return sketch.type(Ordinance.APPLIES, Ordinance.YES);
  }

  private static double cut(Sketch sketch, int row) {
    return sketch.read(Ordinance.LEAST_CUT, row, Units.GALLON);
  }

  private static double excess(Sketch sketch) {
    return -sketch.read(Ordinance.LEFT_OVER, Units.GALLON);
  }

  /**
   * Factors over efficiency are 1, 0.75, 0.625 and 0.25 against 0.55 allowed: above their shares by
   * 450, 200, 75 and -300 ft² of reference grass, so 425 too many; the first zone alone can give
   * them (derived).
   */
  @Test
  void oneZoneIsEnoughWhereItStandsFarAbove() {
    Sketch sketch = site(new double[] {1000, 1000, 1000, 1000}, new double[] {0.8, 0.6, 0.5, 0.2});
    double each = 52.3 * 0.62;
    assertThat(excess(sketch)).isCloseTo(425 * each, within(1e-6));
    assertThat(cut(sketch, 0)).isCloseTo(425 * each, within(1e-6));
    assertThat(cut(sketch, 1)).isZero();
    assertThat(cut(sketch, 3)).isZero();
    assertThat(sketch.read(Ordinance.FACTOR_WANTED, 0, Units.ONE)).isCloseTo(0.575, within(1e-9));
    List<String> told =
        sketch.design().findings().stream()
            .map(Finding::line)
            .filter(line -> line.contains("one of the fewest zones whose change meets the yearly"))
            .toList();
    assertThat(told).hasSize(1);
    assertThat(told.get(0)).startsWith("zone 1:").contains("from 1 to 0.575");
    sketch.type(Plants.PLANT_FACTOR, 0, "0.46");
    assertThat(excess(sketch)).isLessThanOrEqualTo(1e-6);
    assertThat(sketch.design().findings())
        .noneMatch(finding -> finding.line().contains("one of the fewest zones"));
  }

  /** What the zones give together is just the excess, and no smaller number of zones could. */
  @Property(tries = 30)
  void theCutsAddUpToTheExcessOverTheFewestZones(@ForAll long seed) {
    Random random = new Random(seed);
    int zones = 2 + random.nextInt(6);
    double[] areas = random.doubles(zones, 100, 5000).map(Math::rint).toArray();
    double[] factors = random.doubles(zones, 0.1, 1).toArray();
    Sketch sketch = site(areas, factors);
    double excess = excess(sketch);
    double total = 0;
    int changed = 0;
    double[] above = new double[zones];
    for (int row = 0; row < zones; row++) {
      above[row] = sketch.read(Ordinance.ABOVE_SHARE, row, Units.GALLON);
      double cut = cut(sketch, row);
      if (excess > 1e-6) {
        total += cut;
        changed += cut > 1e-9 ? 1 : 0;
        assertThat(cut).isLessThanOrEqualTo(Math.max(0, above[row]) + 1e-9);
      } else {
        assertThat(cut).isNaN();
      }
    }
    if (excess > 1e-6) {
      assertThat(total).isCloseTo(excess, within(1e-6));
      java.util.Arrays.sort(above);
      double most = 0;
      for (int i = 0; i < changed - 1; i++) {
        most += above[zones - 1 - i];
      }
      assertThat(most).as("one zone fewer is not enough").isLessThan(excess);
    }
  }

  @Test
  void aLocalLimitAndThePeakMonthNameTheirZonesToo() {
    Sketch sketch = site(new double[] {1000, 1000}, new double[] {1.0, 0.2});
    for (int month = 0; month < 12; month++) {
      sketch.type(zonewright.climate.Rain.MONTH_RAIN, month, "0");
    }
    sketch.type(Emitters.DISTRIBUTION_UNIFORMITY, 0, "50 %");
    sketch.type(Emitters.DISTRIBUTION_UNIFORMITY, 1, "80 %");
    sketch.type(WaterSense.APPLIES, Ordinance.YES);
    double peak = sketch.read(WaterSense.LEAST_CUT, 0, Units.GALLON);
    assertThat(peak)
        .isCloseTo(-sketch.read(WaterSense.LEFT_OVER, Units.GALLON), within(1e-6))
        .isPositive();
    assertThat(sketch.read(WaterSense.LEAST_CUT, 1, Units.GALLON)).isZero();
  }
}
