package zonewright.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;
import zonewright.units.QuantityKind;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/**
 * The factors formulas really get, held against the rounded constants of handbooks. No factor is
 * typed in the program; each falls out of the units of the cells.
 */
class DerivedFactorsTest {
  private static final Formula FLOW = cell("flow", QuantityKind.FLOW);
  private static final Formula AREA = cell("area", QuantityKind.AREA);
  private static final Formula DEPTH = cell("depth", QuantityKind.DEPTH);
  private static final Formula RATE = cell("rate", QuantityKind.RATE);
  private static final Formula LENGTH = cell("length", QuantityKind.LENGTH);
  private static final Formula TIME = cell("time", QuantityKind.MINUTES);

  private static Formula cell(String name, QuantityKind kind) {
    return new Formula.Cell(new Reference("test", name, name, kind));
  }

  /** What the formula comes to when every cell holds 1: its factor. */
  private static double factor(Formula formula, UnitSystem system, Unit unit) {
    Outcome outcome =
        Explainer.explain(
                Expressed.in(formula, system, unit), new EveryCellIsOne(), EveryCellIsOne.NAME)
            .outcome();
    return outcome.number();
  }

  private static double factor(Formula formula, QuantityKind result, UnitSystem system) {
    return factor(formula, system, result.unit(system));
  }

  @Test
  void flowOverAreaIsWrittenAs96Point25TimesFlowOverArea() {
    // 231 × 60 ÷ 144: Ohio State University Extension, Bulletin 912, step 11 (verified).
    assertThat(Expressed.in(FLOW.over(AREA), UnitSystem.US, Units.INCH_PER_HOUR))
        .isEqualTo(Formula.number(96.25).times(FLOW).over(AREA));
    // 96.3: New Mexico State University, Soils 456, answers (verified), rounded.
    assertThat(factor(FLOW.over(AREA), QuantityKind.RATE, UnitSystem.US))
        .isCloseTo(96.3, offset(0.0501));
  }

  @Test
  void litresAMinuteOverSquareMetresIsWrittenAs60TimesFlowOverArea() {
    // Derived: 1 L on 1 m² is 1 mm.
    assertThat(Expressed.in(FLOW.over(AREA), UnitSystem.SI, Units.MILLIMETRE_PER_HOUR))
        .isEqualTo(Formula.number(60).times(FLOW).over(AREA));
  }

  @Test
  void cubicMetresAnHourOverSquareMetresIs1000() {
    // Derived.
    Formula formula = Formula.amount(1, Units.CUBIC_METRE_PER_HOUR).over(AREA);
    assertThat(factor(formula, QuantityKind.RATE, UnitSystem.SI)).isEqualTo(1000);
  }

  @Test
  void spacingsInFeetGiveTheSame96Point25() {
    // Full-circle flow over head spacing × row spacing: university course slides (verified,
    // secondary).
    Formula formula = FLOW.over(LENGTH.times(LENGTH));
    assertThat(factor(formula, QuantityKind.RATE, UnitSystem.US)).isEqualTo(96.25);
  }

  @Test
  void gallonsAnHourOverAGridInInchesIs231() {
    // 231 cubic inches a gallon, exactly; trade use prints 231.1.
    Formula formula = Formula.amount(1, Units.GALLON_PER_HOUR).over(DEPTH.times(DEPTH));
    double factor = factor(formula, QuantityKind.RATE, UnitSystem.US);
    assertThat(factor).isEqualTo(231);
    assertThat(factor).isCloseTo(231.1, offset(0.101));
  }

  @Test
  void inchesOnSquareFeetAre0Point623Gallons() {
    // 0.623: UC ANR micro-irrigation maintenance pages (verified); 0.62 is prescribed by 23 CCR
    // 492.4.
    double factor = factor(AREA.times(DEPTH), QuantityKind.VOLUME, UnitSystem.US);
    assertThat(factor).isCloseTo(0.623, offset(0.0005)).isEqualTo(144.0 / 231);
    assertThat(factor(AREA.times(DEPTH), QuantityKind.VOLUME, UnitSystem.SI)).isEqualTo(1);
  }

  @Test
  void depthOverRateIs60Minutes() {
    // Minutes = 60 × depth ÷ rate: Bulletin 912, step 11 (verified).
    for (UnitSystem system : UnitSystem.values()) {
      assertThat(Expressed.in(DEPTH.over(RATE), system, Units.MINUTE))
          .isEqualTo(Formula.number(60).times(DEPTH).over(RATE));
    }
  }

  @Test
  void rateTimesMinutesIsOverSixty() {
    assertThat(factor(RATE.times(TIME), QuantityKind.DEPTH, UnitSystem.US)).isEqualTo(1.0 / 60);
  }

  @Test
  void velocityInARoundPipeIs0Point4085TimesFlowOverDiameterSquared() {
    // 0.4085 (verified, secondary; exact 0.408498).
    Formula inside = Formula.number(Math.PI / 4).times(DEPTH).times(DEPTH);
    double factor = factor(FLOW.over(inside), QuantityKind.SPEED, UnitSystem.US);
    assertThat(factor).isCloseTo(0.4085, offset(0.00005)).isCloseTo(0.408498, offset(5e-7));
  }

  @Test
  void millilitresInACanComeToInchesAnHourBy3Point66() {
    // 3.66 × mL ÷ (minutes × square inches): from memory; exact 3.6614.
    Formula formula =
        Formula.amount(1, Units.MILLILITRE).over(TIME.times(Formula.amount(1, Units.SQUARE_INCH)));
    assertThat(factor(formula, QuantityKind.RATE, UnitSystem.US))
        .isCloseTo(3.66, offset(0.005))
        .isCloseTo(3.6614, offset(0.00005));
  }

  @Test
  void flowTimesMinutesNeedsNoFactorInEitherSystem() {
    for (UnitSystem system : UnitSystem.values()) {
      assertThat(Expressed.in(FLOW.times(TIME), system, QuantityKind.VOLUME.unit(system)))
          .isEqualTo(FLOW.times(TIME));
    }
  }

  @Test
  void inchesAFootOnInchesOfRootsAreOverTwelve() {
    // FAO Irrigation and Drainage Paper 56, equation 82, has 1000 for m³/m³ and metres.
    Formula storage = cell("storage", QuantityKind.STORAGE);
    assertThat(factor(storage.times(DEPTH), QuantityKind.DEPTH, UnitSystem.US)).isEqualTo(1.0 / 12);
    assertThat(factor(storage.times(DEPTH), QuantityKind.DEPTH, UnitSystem.SI)).isEqualTo(0.001);
  }

  @Test
  void aConstantOfTheOtherSystemIsBroughtToTheCellBesideIt() {
    Formula formula = RATE.minus(Formula.amount(0.75, Units.INCH_PER_HOUR));
    assertThat(Expressed.in(formula, UnitSystem.SI, Units.MILLIMETRE_PER_HOUR))
        .isEqualTo(RATE.minus(Formula.number(19.05)));
  }
}
