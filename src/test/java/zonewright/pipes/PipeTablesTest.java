package zonewright.pipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import zonewright.formula.ReferenceTable;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;

/** The arranged tables against the standards and against their own laws. */
class PipeTablesTest {
  // ASTM D1785 (Schedule 40), D2241 as printed in a University of Maryland course table (Class
  // 160),
  // ASTM B88 (copper): outside diameter less twice the wall.
  @ParameterizedTest
  @CsvSource({
    "PVC Schedule 40,1/2 in,0.622",
    "PVC Schedule 40,1 in,1.049",
    "PVC Schedule 40,2 in,2.067",
    "PVC Schedule 80,1 in,0.957",
    "PVC Class 160,1 in,1.195",
    "PVC Class 160,2 in,2.193",
    "PVC Class 160,4 in,4.154",
    "copper type K,1 in,0.995",
    "copper type L,1 in,1.025",
    "copper type L,3/4 in,0.785",
    "polyethylene,3/4 in,0.824"
  })
  void insideDiametersAreThoseOfTheStandards(String kind, String size, double inches) {
    assertThat(inside(kind, size)).isEqualTo(inches);
  }

  // ISO 4427-2 and DIN 8062 as given in public tables: outside diameter less twice the least wall.
  @ParameterizedTest
  @CsvSource({
    "polyethylene PE 100 SDR 11,20 mm,16.0",
    "polyethylene PE 100 SDR 11,32 mm,26.0",
    "polyethylene PE 100 SDR 11,63 mm,51.4",
    "polyethylene PE 100 SDR 17,63 mm,55.4",
    "polyethylene PE 100 SDR 17,110 mm,96.8",
    "PVC-U SDR 13.6,50 mm,42.6",
    "PVC-U SDR 21,63 mm,57.0"
  })
  void insideDiametersInMillimetresAreThoseOfTheStandards(
      String kind, String size, double millimetres) {
    assertThat(inside(kind, size) * 25.4).isCloseTo(millimetres, within(0.0001));
  }

  // ISO 4065: wall = outside diameter ÷ standard dimension ratio; walls are printed to 0.1 mm,
  // never
  // thinner than that by more than the rounding, and PE pipe not under 2.0 mm.
  @Test
  void wallsOfMetricPipesAreThoseOfTheirSeries() {
    int looked = 0;
    for (int row = 0; row < PipeTables.EVERY_PIPE.size(); row++) {
      String size = PipeTables.EVERY_PIPE.text(row, "Nominal size");
      if (size.endsWith(" mm")) {
        looked++;
        double outside = Double.parseDouble(size.replace(" mm", ""));
        double ratio =
            Double.parseDouble(PipeTables.EVERY_PIPE.text(row, "Class").replaceAll(".*SDR ", ""));
        double wall = Double.parseDouble(PipeTables.EVERY_PIPE.text(row, "Least wall (in)")) * 25.4;
        double series = outside / ratio;
        assertThat(wall)
            .as(PipeTables.EVERY_PIPE.keys().get(row))
            .isBetween(series - 0.05, Math.max(2.001, series + 0.15));
      }
    }
    assertThat(looked).isEqualTo(31);
  }

  @Test
  void everyKindGrowsWithItsSizesWhichFollowEachOther() {
    for (int row = 0; row < PipeTables.KINDS.size(); row++) {
      String kind = PipeTables.KINDS.keys().get(row);
      int least = Integer.parseInt(PipeTables.KINDS.text(row, "Least step"));
      int greatest = Integer.parseInt(PipeTables.KINDS.text(row, "Greatest step"));
      int first = Integer.parseInt(PipeTables.KINDS.text(row, "First row"));
      double before = 0;
      for (int step = least; step <= greatest; step++) {
        String size = PipeTables.SIZES.keys().get(step - 1);
        assertThat(PipeTables.EVERY_PIPE.keys().get(first + step - least))
            .isEqualTo(kind + " " + size);
        double inside = PipeTables.DIAMETERS.get(step - least).value(row, UnitSystem.US);
        assertThat(inside).as(kind + " " + size).isGreaterThan(before);
        assertThat(inside(kind, size)).isEqualTo(inside);
        before = inside;
      }
      for (int at = greatest - least; at < PipeTables.DIAMETERS.size(); at++) {
        assertThat(PipeTables.DIAMETERS.get(at).value(row, UnitSystem.US)).isEqualTo(before);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"1/2 in", "3/4 in", "1 in", "2 in", "4 in"})
  void thickerWallsLeaveLessInside(String size) {
    assertThat(inside("PVC Schedule 80", size)).isLessThan(inside("PVC Schedule 40", size));
    assertThat(inside("copper type K", size)).isLessThan(inside("copper type L", size));
  }

  @ParameterizedTest
  @ValueSource(strings = {"40 mm", "63 mm", "110 mm"})
  void thickerMetricWallsLeaveLessInside(String size) {
    assertThat(inside("polyethylene PE 100 SDR 11", size))
        .isLessThan(inside("polyethylene PE 100 SDR 17", size));
    assertThat(inside("PVC-U SDR 13.6", size)).isLessThan(inside("PVC-U SDR 21", size));
  }

  private static double inside(String kind, String size) {
    int row = PipeTables.EVERY_PIPE.position(kind + " " + size).orElseThrow();
    return PipeTables.EVERY_PIPE
        .numbers("Least-wall inside diameter (in)", QuantityKind.DIAMETER)
        .value(row, UnitSystem.US);
  }

  // Resistivity of annealed copper 1/58 ohm·mm²/m at 20 °C (IEC 60028), 0.00393 per kelvin, and the
  // diameters of the American wire gauge, 0.005 in × 92^((36 − n) ÷ 39) (ASTM B258); both from
  // memory. The table of NFPA 70 holds within half a percent of it at 75 °C.
  @ParameterizedTest
  @ValueSource(ints = {18, 16, 14, 12, 10})
  void wiresResistAsTheirGaugeSays(int gauge) {
    double millimetres = 0.127 * Math.pow(92, (36 - gauge) / 39.0);
    double ohmsPerMetre = 1 / 58.0 / (Math.PI / 4 * millimetres * millimetres) * (1 + 0.00393 * 55);
    ReferenceTable.Numbers resistances =
        PipeTables.WIRES.numbers("Resistance (ohm/1000 ft)", QuantityKind.RESISTANCE);
    int row = PipeTables.WIRES.position(gauge + " AWG").orElseThrow();
    double derived = ohmsPerMetre * 304.8;
    assertThat(resistances.value(row, UnitSystem.US)).isCloseTo(derived, within(0.005 * derived));
    assertThat(resistances.value(row, UnitSystem.SI))
        .isCloseTo(ohmsPerMetre * 1000, within(0.005 * ohmsPerMetre * 1000));
  }

  @Test
  void valvesOfANewDesignLoseMoreAtMoreFlow() {
    for (int row = 0; row < PipeTables.VALVES.size(); row++) {
      double flow = 0;
      double loss = 0;
      for (String which : new String[] {"First", "Second", "Third"}) {
        double nextFlow = number(which + " flow (gpm)", QuantityKind.FLOW, row);
        double nextLoss =
            number("Loss at " + lower(which) + " flow (psi)", QuantityKind.PRESSURE, row);
        assertThat(nextFlow).isGreaterThan(flow);
        assertThat(nextLoss).isGreaterThan(loss);
        flow = nextFlow;
        loss = nextLoss;
      }
    }
  }

  private static String lower(String word) {
    return Character.toLowerCase(word.charAt(0)) + word.substring(1);
  }

  private static double number(String heading, QuantityKind kind, int row) {
    return PipeTables.VALVES.numbers(heading, kind).value(row, UnitSystem.US);
  }
}
