package zonewright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rounding and comparing: the two places where a last bit could cost a minute. */
class NumbersTest {
  @ParameterizedTest
  @CsvSource({
    "12, 12",
    "12.0000000001, 12",
    "12.00001, 13",
    "11.9999999999, 12",
    "0, 0",
    "-1, 0",
    "0.2, 1",
    "1e15, 1e15"
  })
  void roundsUpButNotForALastBit(double value, double expected) {
    assertThat(Numbers.roundUp(value)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "12, 12",
    "11.9999999999, 12",
    "11.99999, 11",
    "12.0000000001, 12",
    "0.9, 0",
    "-0.5, -1"
  })
  void roundsDownButNotForALastBit(double value, double expected) {
    assertThat(Numbers.roundDown(value)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "12.4, 12",
    "12.5, 13",
    "12.4999999999, 13",
    "12.49999, 12",
    "0.5, 1",
    "-0.5, 0",
    "-0.6, -1"
  })
  void roundsToTheNearestHalvesUp(double value, double expected) {
    assertThat(Numbers.roundNearest(value)).isEqualTo(expected);
  }

  @Test
  void noNumberStaysNoNumber() {
    assertThat(Numbers.roundUp(Double.NaN)).isNaN();
    assertThat(Numbers.roundDown(Double.NaN)).isNaN();
    assertThat(Numbers.roundNearest(Double.NaN)).isNaN();
    assertThat(Numbers.larger(1, Double.NaN)).isNaN();
    assertThat(Numbers.smaller(Double.NaN, 1)).isNaN();
    assertThat(Numbers.quotient(1, 0)).isNaN();
    assertThat(Numbers.quotient(0, 0)).isNaN();
    assertThat(Numbers.power(-1, 0.5)).isNaN();
    assertThat(Numbers.power(Double.NaN, 0)).isNaN();
    assertThat(Numbers.power(1e300, 2)).isNaN();
    assertThat(FunctionKind.NATURAL_LOGARITHM.of(0)).isNaN();
    assertThat(FunctionKind.SQUARE_ROOT.of(-1)).isNaN();
    assertThat(FunctionKind.ARC_COSINE.of(1.5)).isNaN();
  }

  @Test
  void equalNumbersAreAtMostAndAtLeastButNeitherAboveNorBelow() {
    // 0.1 + 0.2 and 0.3 differ in the last bit only.
    double sum = 0.1 + 0.2;
    assertThat(sum).isNotEqualTo(0.3);
    for (double[] pair : new double[][] {{sum, 0.3}, {0.3, sum}, {5, 5}, {0, 0}, {-0.0, 0}}) {
      assertThat(Comparator.AT_MOST.holds(pair[0], pair[1])).isTrue();
      assertThat(Comparator.AT_LEAST.holds(pair[0], pair[1])).isTrue();
      assertThat(Comparator.ABOVE.holds(pair[0], pair[1])).isFalse();
      assertThat(Comparator.BELOW.holds(pair[0], pair[1])).isFalse();
    }
  }

  @Test
  void aDifferenceAPersonCouldTypeCounts() {
    assertThat(Comparator.ABOVE.holds(0.350000000001, 0.35)).isTrue();
    assertThat(Comparator.BELOW.holds(0.35, 0.350000000001)).isTrue();
    assertThat(Comparator.AT_MOST.holds(0.350000000001, 0.35)).isFalse();
  }

  @Property
  void exactlyOneOfBelowEqualAboveHolds(
      @ForAll @DoubleRange(min = -1e9, max = 1e9) double first,
      @ForAll @DoubleRange(min = -1e9, max = 1e9) double second) {
    assertThat(Comparator.ABOVE.holds(first, second))
        .isEqualTo(!Comparator.AT_MOST.holds(first, second));
    assertThat(Comparator.BELOW.holds(first, second))
        .isEqualTo(!Comparator.AT_LEAST.holds(first, second));
    assertThat(Comparator.ABOVE.holds(first, second) && Comparator.BELOW.holds(first, second))
        .isFalse();
  }

  @Property
  void roundingUpAndDownEncloseTheNumber(@ForAll @DoubleRange(min = 0, max = 1e6) double value) {
    double up = Numbers.roundUp(value);
    double down = Numbers.roundDown(value);
    assertThat(up).isEqualTo(Math.rint(up)).isGreaterThanOrEqualTo(value - Numbers.WHOLE_ENOUGH);
    assertThat(down).isEqualTo(Math.rint(down)).isLessThanOrEqualTo(value + Numbers.WHOLE_ENOUGH);
    assertThat(up - down).isBetween(0.0, 1.0);
  }
}
