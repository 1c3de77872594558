package zonewright.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** What is tried in a cell: all that its column allows, in the units of the design. */
class TriedRangeTest {
  private static TriedRange range(Bounds bounds, double held) {
    Column column = Column.input("zones", "any", "Any", QuantityKind.LENGTH).within(bounds).build();
    return new TriedRange(column, UnitSystem.SI, held);
  }

  @Test
  void theEndsOfTheColumnAreTriedWhereTheyAreAllowed() {
    double[] points = range(Bounds.from(0, 100, Units.FOOT), 3).points();

    assertThat(points).startsWith(0).contains(3).isSorted();
    assertThat(points[points.length - 1]).isEqualTo(100 * 0.3048);
    assertThat(range(Bounds.above(0, 100, Units.FOOT), 3).points()[0]).isPositive();
  }

  @Test
  void withoutAnEndItGoesFarFromWhatTheCellHolds() {
    TriedRange open = range(Bounds.atLeast(0, Units.FOOT), 5);

    assertThat(open.points()).startsWith(0).endsWith(50_000);
    assertThat(open.inWords()).isEqualTo("0 to 50,000 m, as far as was looked");
    assertThat(range(Bounds.atLeast(0, Units.FOOT), Double.NaN).points()).endsWith(10_000);
  }

  @Test
  void whatCountsIsTriedInWholeNumbers() {
    TriedRange whole = range(Bounds.from(1, 40, Units.METRE).wholeNumbers(), 7);

    assertThat(whole.points()).startsWith(1, 2, 3).hasSize(40).endsWith(40);
  }
}
