package zonewright.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.emitters.Emitters;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.units.UnitSystem;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;

/**
 * The zones of the climatologically based controller test protocol (8th draft, 2008). Inputs from
 * memory; the longest cycle and the soak derived: 12.0, 6.6, 17.3, 14.4, 120 and 60 min before
 * rounding down, 42.9, 63.8, 31.2, 36.0, 120 and 45 min of soak after such a cycle.
 */
class ControllerTestZonesTest {
  @ParameterizedTest
  @CsvSource({
    "0, 1.60, 0.85, 12, 43",
    "1, 1.60, 0.55, 6, 64",
    "2, 1.40, 0.90, 17, 32",
    "3, 1.40, 2.00, 14, 36",
    "4, 0.20, 2.25, 120, 120",
    "5, 0.35, 0.55, 60, 45"
  })
  void theZonesComeOutAsDerived(int row, double rate, double storage, double cycle, double soak) {
    Book book = ControllerTestZones.design(UnitSystem.US).book();
    assertThat(number(book, Emitters.PRECIPITATION_RATE.reference(), row))
        .isCloseTo(rate, within(0.00001));
    assertThat(number(book, Demand.DEPLETION_DEPTH.reference(), row))
        .isCloseTo(storage, within(1e-9));
    assertThat(number(book, CycleAndSoak.LONGEST_CYCLE.reference(), row)).isEqualTo(cycle);
    double given = number(book, CycleAndSoak.CYCLE_MINUTES.reference(), row);
    assertThat(given).isLessThanOrEqualTo(cycle);
    // The soak grows with the cycle; after the longest it is the derived one, so for a shorter one
    // at most that.
    assertThat(number(book, CycleAndSoak.SOAK.reference(), row)).isBetween(1.0, soak);
  }

  private static double number(Book book, Reference column, int row) {
    return book.number(column, row);
  }
}
