package zonewright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Functions at the edges of what they are defined for; days counted by hand from 1899-12-30. */
class FunctionKindTest {
  @ParameterizedTest
  @CsvSource({"32, 1", "33, 2", "45292, 1", "45657, 12", "2958465.9, 12"})
  void theMonthOfADate(double days, int month) {
    assertThat(FunctionKind.MONTH.of(days)).isEqualTo(month);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, -3, 2_958_466, 1e14, 1e308, Double.POSITIVE_INFINITY, Double.NaN})
  void aNumberThatIsNoDateHasNoMonth(double days) {
    assertThat(FunctionKind.MONTH.of(days)).isNaN();
  }
}
