package zonewright.pipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.ObjDoubleConsumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.formula.ReferenceTable;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;

/** What the bundled pipes are rated for, against the equations of their standards. */
class PipeRatingsTest {
  private static final double PSI_OF_A_BAR = 14.503774;
  private static final ReferenceTable PIPES = PipeTables.EVERY_PIPE;

  private static double number(int row, String heading) {
    return Double.parseDouble(PIPES.text(row, heading));
  }

  private static double rated(String pipe) {
    return number(PIPES.position(pipe).orElseThrow(), "Rated pressure (psi)");
  }

  /** Calls with the row of each pipe of a standard and what it is rated for; says how many. */
  private static int each(String standard, ObjDoubleConsumer<Integer> look) {
    int looked = 0;
    for (int row = 0; row < PIPES.size(); row++) {
      if (PIPES.text(row, "Standard").startsWith(standard)) {
        look.accept(row, number(row, "Rated pressure (psi)"));
        looked++;
      }
    }
    return looked;
  }

  // ASTM D1785, Schedule 40, as a public irrigation tutorial lists it (verified, secondary).
  @ParameterizedTest
  @CsvSource({
    "1/2, 600",
    "3/4, 480",
    "1, 450",
    "1-1/4, 370",
    "1-1/2, 330",
    "2, 280",
    "2-1/2, 300",
    "3, 260",
    "4, 220"
  })
  void schedule40IsRatedAsPrinted(String size, double psi) {
    assertThat(rated("PVC Schedule 40 " + size + " in")).isEqualTo(psi);
  }

  // ASTM D1785 and D2241: 2 × 2000 psi × wall ÷ (outside diameter − wall), from memory; it gives
  // the nine printed values above.
  @Test
  void schedulesFollowFromTheirWalls() {
    int looked =
        each(
            "ASTM D1785",
            (row, psi) -> {
              double wall = number(row, "Least wall (in)");
              double exact = 4000 * wall / (number(row, "Outside diameter (in)") - wall);
              assertThat(psi).as(PIPES.keys().get(row)).isCloseTo(exact, within(5.0));
            });
    assertThat(looked).isEqualTo(18);
  }

  @Test
  void classesFollowFromTheirRatio() {
    int looked =
        each(
            "ASTM D2241",
            (row, psi) -> {
              String ratio = PIPES.text(row, "Class").replaceAll("SDR (\\d+).*", "$1");
              assertThat(psi).isEqualTo(4000 / (Double.parseDouble(ratio) - 1));
              assertThat(PIPES.keys().get(row)).contains("Class " + (int) psi + " ");
            });
    assertThat(looked).isEqualTo(15);
  }

  // ISO 4427: PN = 20 × 10 MPa ÷ (1.25 × (SDR − 1)), ISO 1452: 20 × 25 MPa ÷ (2.5 × (SDR − 1)),
  // to the nominal pressure; a public table of PE 100 pipe prints PN 16 and PN 10 (verified).
  @Test
  void nominalPressuresFollowFromTheirRatio() {
    ObjDoubleConsumer<Integer> look =
        (row, psi) -> {
          String ratio = PIPES.text(row, "Class").replaceAll(".*SDR ", "");
          double strength = PIPES.text(row, "Material").equals("polyethylene") ? 8 : 10;
          double bar = 20 * strength / (Double.parseDouble(ratio) - 1);
          assertThat(psi / PSI_OF_A_BAR)
              .as(PIPES.keys().get(row))
              .isCloseTo((double) Math.round(bar), within(0.005));
        };
    assertThat(each("ISO 4427", look) + each("DIN 8062", look)).isEqualTo(31);
  }

  // Thin-walled tube, 2 × 5100 psi × wall ÷ (outside diameter − 0.8 × wall) with the least wall,
  // which ASTM B88 lets be up to an eighth thinner than the nominal one (from memory).
  @Test
  void copperIsRatedBelowItsNominalWall() {
    int looked =
        each(
            "ASTM B88",
            (row, psi) -> {
              double wall = number(row, "Least wall (in)");
              double nominal =
                  2 * 5100 * wall / (number(row, "Outside diameter (in)") - 0.8 * wall);
              assertThat(psi).as(PIPES.keys().get(row)).isBetween(0.85 * nominal, nominal);
            });
    assertThat(looked).isEqualTo(18);
  }

  @Test
  void everyRatingSaysWhereItComesFrom() {
    for (int row = 0; row < PIPES.size(); row++) {
      assertThat(PIPES.text(row, "Source")).contains("; rated pressure: ");
      assertThat(PIPES.text(row, "Status")).contains("; rated pressure: ");
    }
  }

  // Sudden narrowing 0.5 × (1 − a) and widening (1 − a)² of the velocity head in the narrow part,
  // a being the ratio of areas: textbooks of hydraulics (Borda and Carnot), from memory.
  @Test
  void aBoreOfEightTenthsLosesWhatThreeFeetOfOneInchPipeDo() {
    double inside =
        PIPES
                .numbers("Least-wall inside diameter (in)", QuantityKind.DIAMETER)
                .value(PIPES.position("polyethylene 1 in").orElseThrow(), UnitSystem.US)
            / 12;
    double areas = 0.8 * 0.8;
    double ofPipeVelocity = (0.5 * (1 - areas) + (1 - areas) * (1 - areas)) / (areas * areas);
    double frictionFactor = 0.022; // smooth pipe at 5 ft/s, from memory
    assertThat(ofPipeVelocity * inside / frictionFactor).isCloseTo(3, within(0.5));
  }
}
