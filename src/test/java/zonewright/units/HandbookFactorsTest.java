package zonewright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The factor between two units, as handbooks print it: half a unit of the last digit printed. */
class HandbookFactorsTest {
  @ParameterizedTest(name = "1 {0} is {2} {1}")
  @CsvSource({
    // NIST Special Publication 811 (2008), appendix B.8; from memory.
    "in, mm, 25.4, 0",
    "ft, m, 0.3048, 0",
    "gal, L, 3.785411784, 0",
    "ft2, m2, 0.09290304, 1e-16",
    "psi, kpa, 6.894757, 5e-7",
    "psi, bar, 0.06894757, 5e-9",
    "acre, ha, 0.4046856, 5e-8",
    "gpm, l/s, 0.06309020, 5e-9",
    // US customary definitions; NIST Handbook 44 appendix C, from memory.
    "acre, ft2, 43560, 0",
    "yd2, ft2, 9, 0",
    // One cubic foot a second is 448.83 gallons a minute: common in water supply texts, from
    // memory.
    "cfs, gpm, 448.83, 0.005",
    "ft3, gal, 7.48052, 5e-6",
    // One acre-foot is 325,851 gallons: common in water supply texts, verified.
    "acre-ft, gal, 325851, 0.5",
    // NIST Handbook 44 appendix C, from memory: a fluid ounce is 29.573 53 mL.
    "fl oz, ml, 29.57353, 5e-6",
    "gal, fl oz, 128, 0",
    // Conventional metre of water 9.80665 kPa, foot of water 2.98907 kPa, 2.31 ft a psi: SP 811,
    // appendix B.8, and hydraulics handbooks, from memory.
    "m head, kpa, 9.80665, 0",
    "ft head, kpa, 2.98907, 5e-6",
    "psi, ft head, 2.31, 0.005",
    // Derived from the psi above: 6.894757 ÷ 30.48.
    "psi/100 ft, kpa/m, 0.2262060, 5e-7",
    // 1 mmho/cm = 1 dS/m = 1000 µS/cm: by definition, as water quality guides print it.
    "mmho/cm, ds/m, 1, 0",
    "ds/m, µs/cm, 1000, 1e-12",
    // By definition.
    "per m, per ft, 0.3048, 1e-16",
    "per m³, per 1000 gal, 3.785411784, 1e-14",
    "in2, cm2, 6.4516, 0",
    "gpm, gph, 60, 0",
    "in/h, mm/h, 25.4, 0",
    "in/day, mm/day, 25.4, 0",
    "in/ft, mm/m, 83.33, 0.005",
    "in/in, in/ft, 12, 0",
    "m3/h, l/min, 16.6667, 0.00005",
    "%, '', 0.01, 0"
  })
  void factorsBetweenUnitsAreThoseOfTheHandbooks(
      String from, String to, double factor, double tolerance) {
    Unit one = Units.named(from).orElseThrow();
    Unit other = to.isEmpty() ? Units.ONE : Units.named(to).orElseThrow();
    assertThat(one.in(other)).isCloseTo(factor, offset(tolerance));
  }

  @Test
  void aCubicFootASecondIs448Point8GallonsAMinute() {
    // 448.8 in hydraulics handbooks, from memory; derived: 7.48052 × 60.
    Unit flow = Units.CUBIC_FOOT.per(Units.SECOND, "ft³/s");
    assertThat(flow.in(Units.GALLON_PER_MINUTE)).isCloseTo(448.8, offset(0.05));
  }

  @Test
  void unitsOfDifferentThingsAreRefusedByName() {
    assertThatThrownBy(() -> Units.GALLON_PER_MINUTE.in(Units.SQUARE_FOOT))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("gpm is length³/time and ft² is length²");
  }

  @Test
  void noNumberStaysNoNumberInEveryUnit() {
    for (QuantityKind kind : QuantityKind.values()) {
      double converted = kind.unit(UnitSystem.US).convert(Double.NaN, kind.unit(UnitSystem.SI));
      assertThat(converted).as(kind.words()).isNaN();
    }
  }
}
