package zonewright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** Factors worked out from definitions: an inch is 25.4 mm, a gallon 231 cubic inches. */
class FactorWordsTest {
  private static final Formula FLOW = cell("flow", QuantityKind.FLOW);
  private static final Formula AREA = cell("area", QuantityKind.AREA);

  private static Formula cell(String name, QuantityKind kind) {
    return new Formula.Cell(new Reference("test", name, name, kind));
  }

  @ParameterizedTest
  @CsvSource({
    "60 * 231 / 144, 96.25, gallons a minute on a square foot",
    "5280 * 0.3048 / 3600, 0.44704, mile an hour",
    "24 * 60, 1440, minutes in a day",
    "12 * 25.4 / 1000, 0.3048, metres in a foot",
    "1000 * 9.80665 / 1000, 9.80665, metre of water",
    "12 * 60 / 231, 3.116883116883117, foot a second",
  })
  void aFactorSaysWhatItIs(String worked, double factor, String words) {
    double value = 1;
    String operator = "*";
    for (String part : worked.split(" ", -1)) {
      if (part.equals("*") || part.equals("/")) {
        operator = part;
      } else {
        double next = Double.parseDouble(part);
        value = operator.equals("*") ? value * next : value / next;
      }
    }
    assertThat(value).isCloseTo(factor, org.assertj.core.data.Offset.offset(1e-12));
    assertThat(FactorWords.of(factor).orElseThrow()).contains(words);
  }

  @Test
  void onlyWhatUnitsBroughtIsSaid() {
    assertThat(FactorWords.of(Set.of(96.25), FLOW.over(AREA)))
        .singleElement()
        .asString()
        .startsWith("96.25 is 60 × 231 ÷ 144");
    assertThat(FactorWords.of(Set.of(60.0), FLOW.times(60))).isEmpty();
    assertThat(FactorWords.of(Set.of(0.06), FLOW.times(Formula.amount(6, Units.PERCENT))))
        .isEmpty();
  }

  @Test
  void whatPiMakesIsWrittenWithIt() {
    assertThat(PrintedText.number(Math.PI).words()).isEqualTo("π");
    assertThat(PrintedText.number(Math.PI / 4).words()).isEqualTo("π ÷ 4");
    Formula around = FLOW.over(Formula.number(Math.PI / 4).times(AREA));
    assertThat(
            Explainer.explain(
                    Expressed.in(around, UnitSystem.US, Units.FOOT_PER_SECOND),
                    new EveryCellIsOne(),
                    EveryCellIsOne.NAME)
                .numbers())
        .contains("(π ÷ 4 × ");
  }
}
