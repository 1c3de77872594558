package zonewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

class BoundsTest {
  @Test
  void aRangeSaysNoDigitsThatOnlyComeFromAnotherUnit() {
    // An acre is 4046.8564224 square metres: NIST Handbook 44, appendix C.
    Bounds acres = Bounds.above(0, 1, Units.ACRE);
    assertThat(acres.inWords(QuantityKind.AREA, UnitSystem.SI))
        .isEqualTo("above 0 m² and at most 4046.86 m²");
    assertThat(acres.problem(4046.8564, QuantityKind.AREA, UnitSystem.SI)).isEmpty();
  }

  @Test
  void aShortEndOfTheRangeKeepsAllItsDigits() {
    Bounds inches = Bounds.from(0.01, 12, Units.INCH);
    assertThat(inches.inWords(QuantityKind.DEPTH, UnitSystem.SI))
        .isEqualTo("from 0.254 mm to 304.8 mm");
  }
}
