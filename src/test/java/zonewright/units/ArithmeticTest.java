package zonewright.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Arithmetic as spreadsheets have it; the results are worked by hand. */
class ArithmeticTest {
  @ParameterizedTest
  @CsvSource({
    "=35*40, 1400",
    "= 35 × 40 + 2, 1402",
    "=(12+18)/2*9, 135",
    "=-2^2, 4",
    "=2^3^2, 64",
    "=10-2-3, 5",
    "=50%*8, 4",
    "'=3,5*2', 7",
  })
  void comesToWhatASpreadsheetMakesOfIt(String typed, double value) {
    assertThat(Arithmetic.value(Arithmetic.plain(typed))).contains(value);
  }

  @ParameterizedTest
  @CsvSource({"=35*", "=A1*2", "=(3", "=3)", "=", "35*40", "=1/0"})
  void whatIsNoneComesToNothing(String typed) {
    assertThat(Arithmetic.value(Arithmetic.plain(typed))).isEmpty();
  }

  @Test
  void decimalsHaveAPointInWorkbooks() {
    assertThat(Arithmetic.plain("= 3,5 · 2")).isEqualTo("=3.5*2");
  }
}
