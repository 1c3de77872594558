package zonewright.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import zonewright.units.Dimension;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** Formulas that would add unlike things are refused when they are declared, and say why. */
class DimensionsTest {
  private static final Formula DEPTH = cell("Depth", QuantityKind.DEPTH);
  private static final Formula RATE = cell("Rate", QuantityKind.RATE);
  private static final Formula FLOW = cell("Flow", QuantityKind.FLOW);
  private static final Formula FACTOR = cell("Factor", QuantityKind.FACTOR);
  private static final Formula NOTHING = Formula.doesNotApply("none", "It does not arise.");

  private static Formula cell(String name, QuantityKind kind) {
    return new Formula.Cell(new Reference("test", name, name, kind));
  }

  private static void refused(Formula formula, String message) {
    assertThatThrownBy(formula::dimension)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }

  @Test
  void depthOverRateIsATime() {
    assertThat(DEPTH.over(RATE).dimension()).isEqualTo(Dimension.TIME);
  }

  @Test
  void depthAndRateCannotBeAddedOrSubtractedOrCompared() {
    refused(DEPTH.plus(RATE), "cannot add length and length/time");
    refused(DEPTH.minus(RATE), "cannot subtract length and length/time");
    refused(Formula.larger(DEPTH, RATE), "cannot compare length and length/time");
    refused(
        Formula.when(DEPTH.above(RATE)).then(DEPTH).otherwise(DEPTH),
        "cannot compare length and length/time");
    refused(
        Formula.when(FACTOR.above(Formula.number(1))).then(DEPTH).otherwise(RATE),
        "cannot choose between length and length/time");
  }

  @Test
  void conditionsInsideConditionsAreChecked() {
    Condition odd = FLOW.atMost(DEPTH);
    refused(
        Formula.when(FACTOR.above(Formula.number(1)).and(odd.negated()))
            .then(DEPTH)
            .otherwise(DEPTH),
        "cannot compare length³/time and length");
    assertThatThrownBy(() -> Expressed.in(odd, UnitSystem.US)).hasMessageContaining("length³/time");
  }

  @Test
  void powersFunctionsAndPositionsTakePureNumbers() {
    refused(DEPTH.power(Formula.number(2)), "a power takes a pure number, not length");
    refused(FACTOR.power(DEPTH), "a power takes a pure number, not length");
    refused(RATE.apply(FunctionKind.SQUARE_ROOT), "√ takes a pure number, not length/time");
    Reference column = new Reference("other", "v", "V", QuantityKind.FACTOR);
    refused(new Formula.Pick(column, DEPTH), "a position takes a pure number, not length");
  }

  @Test
  void roundingAndMeasuringNeedAUnitOfTheSameKind() {
    refused(FLOW.roundedUpTo(Units.MINUTE), "cannot round length³/time to whole min");
    refused(FLOW.measuredIn(Units.FOOT), "cannot measure length³/time in ft");
    assertThat(FLOW.measuredIn(Units.LITRE_PER_HOUR).dimension()).isEqualTo(Dimension.NONE);
  }

  @Test
  void aBranchWithoutANumberGoesWithAnyDimension() {
    Condition condition = FACTOR.above(Formula.number(1));
    assertThat(Formula.when(condition).then(NOTHING).otherwise(RATE).dimension())
        .isEqualTo(QuantityKind.RATE.dimension());
    assertThat(Formula.when(condition).then(RATE).otherwise(NOTHING).dimension())
        .isEqualTo(QuantityKind.RATE.dimension());
  }

  @Test
  void aBranchWithoutANumberInsideAnotherChoiceGoesWithAnyDimension() {
    Condition condition = FACTOR.above(Formula.number(1));
    Formula none = Formula.when(condition).then(NOTHING).otherwise(NOTHING);
    assertThat(Formula.when(condition).then(none).otherwise(RATE).dimension())
        .isEqualTo(QuantityKind.RATE.dimension());
    assertThat(
            Expressed.in(
                Formula.when(condition).then(none).otherwise(RATE),
                UnitSystem.SI,
                Units.MILLIMETRE_PER_HOUR))
        .isEqualTo(Formula.when(condition).then(none).otherwise(RATE));
  }
}
