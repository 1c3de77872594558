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
    int row = PipeTables.KINDS.position(kind).orElseThrow();
    int step = PipeTables.SIZES.position(size).orElseThrow();
    assertThat(PipeTables.DIAMETERS.get(step).value(row, UnitSystem.US)).isEqualTo(inches);
  }

  @Test
  void everyKindGrowsWithItsSizeAndHasNoHoleBetweenItsFirstAndLast() {
    ReferenceTable.Numbers least = PipeTables.KINDS.numbers("Least step", QuantityKind.COUNT);
    ReferenceTable.Numbers greatest = PipeTables.KINDS.numbers("Greatest step", QuantityKind.COUNT);
    for (int row = 0; row < PipeTables.KINDS.size(); row++) {
      double before = 0;
      for (int step = 1; step <= PipeTables.SIZES.size(); step++) {
        double inside = PipeTables.DIAMETERS.get(step - 1).value(row, UnitSystem.US);
        boolean made =
            step >= least.value(row, UnitSystem.US) && step <= greatest.value(row, UnitSystem.US);
        assertThat(!Double.isNaN(inside)).as(PipeTables.KINDS.keys().get(row)).isEqualTo(made);
        if (made) {
          assertThat(inside).isGreaterThan(before);
          before = inside;
        }
      }
    }
  }

  @Test
  void thickerWallsLeaveLessInside() {
    for (ReferenceTable.Numbers size : PipeTables.DIAMETERS) {
      assertThat(inside(size, "PVC Schedule 80")).isLessThan(inside(size, "PVC Schedule 40"));
      assertThat(inside(size, "copper type K")).isLessThan(inside(size, "copper type L"));
    }
  }

  private static double inside(ReferenceTable.Numbers size, String kind) {
    return size.value(PipeTables.KINDS.position(kind).orElseThrow(), UnitSystem.US);
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
