package zonewright.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import zonewright.climate.Climate;
import zonewright.emitters.Emitters;
import zonewright.formula.ReferenceTable;
import zonewright.plants.Plants;
import zonewright.sketch.Sketch;
import zonewright.soil.Soils;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;
import zonewright.units.Units;

/** How often a zone is watered, counted out by hand or by trying every choice of days. */
class WateringDaysTest {
  private static final List<String> NAMES =
      List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");

  private final Sketch sketch = Sketch.in(UnitSystem.US);

  @BeforeEach
  void aZoneThatUsesATenthOfAnInchADay() {
    for (int month = 0; month < 12; month++) {
      sketch.type(Climate.REFERENCE_ET, month, month == 6 ? "3.1" : "1");
    }
    sketch.type(Plants.PLANT_FACTOR, "1").type(Soils.AVAILABLE_WATER, "1.2 in/ft");
    sketch.type(Plants.ALLOWED_DEPLETION, "50").type(Emitters.AREA, "963");
    sketch.type(Emitters.ZONE_FLOW, "10 gpm").type(Emitters.DISTRIBUTION_UNIFORMITY, "100 %");
  }

  /**
   * The soil lasts as many days as the roots are inches deep × 1.2 ÷ 12 × 0.5 ÷ 0.1, that is half
   * the inches.
   */
  private void soilLasts(int days) {
    sketch.type(Plants.ROOT_DEPTH, 2 * days + " in");
  }

  private double days() {
    return sketch.read(Demand.WATERING_DAYS, Units.ONE);
  }

  @ParameterizedTest
  @CsvSource({"1, 7", "2, 4", "3, 3", "4, 2", "5, 2", "6, 2", "7, 1", "9, 1"})
  void evenlySpreadDaysLeaveGapsOfSevenOverDays(int interval, int expected) {
    soilLasts(interval);
    assertThat(days()).isEqualTo(expected);
  }

  /**
   * Mon Wed Fri: all three leave Fri to Mon, 3 days; Mon and Thu would leave 4, but Thursday is not
   * allowed; Wed Fri leave 5.
   */
  @ParameterizedTest
  @CsvSource({"2, 3, 3", "3, 3, 3", "4, 2, 4", "5, 2, 4", "7, 1, 7"})
  void chosenWeekdaysLeaveTheirRealGaps(int interval, int expected, int gap) {
    sketch.type(SiteRules.WEEKDAYS, "Mon Wed Fri");
    soilLasts(interval);
    assertThat(days()).isEqualTo(expected);
    assertThat(sketch.read(Demand.LONGEST_GAP, Units.DAY)).isEqualTo(gap);
  }

  @Test
  void daysThatDoNotSufficeAreAFinding() {
    sketch.type(SiteRules.WEEKDAYS, "Sat Sun");
    soilLasts(3);
    assertThat(days()).isEqualTo(2);
    assertThat(sketch.design().findings())
        .anyMatch(
            finding -> finding.line().contains("goes 6 days without water, its soil lasts 3 days"));
  }

  @Test
  void theWholeWeeksDemandIsCarriedByTheDaysThereAre() {
    sketch.type(SiteRules.WEEKDAYS, "Sat Sun");
    soilLasts(3);
    // 0.7 in a week at 0.9995 in/h is 42.02 minutes; over two days 21.01, so 22 whole minutes.
    assertThat(sketch.read(Demand.RUN_TIME_PER_WEEK, Units.MINUTE)).isCloseTo(42.02, within(0.005));
    assertThat(sketch.read(Demand.RUN_TIME, Units.MINUTE)).isEqualTo(22);
  }

  /** Every set of weekdays against trying all choices of days, the week going round. */
  @Test
  void theTableOfWeekdaysIsCountedRight() {
    ReferenceTable table = SiteRules.WEEKDAY_SETS;
    assertThat(table.size()).isEqualTo(127);
    for (int row = 0; row < table.size(); row++) {
      List<Integer> allowed =
          Arrays.stream(table.keys().get(row).split(" ")).map(NAMES::indexOf).toList();
      assertThat(table.numbers("Days", QuantityKind.COUNT).value(row, UnitSystem.US))
          .isEqualTo(allowed.size());
      for (int days = 1; days <= 7; days++) {
        double gap =
            table
                .numbers("Longest gap with " + days + " (days)", QuantityKind.DAYS)
                .value(row, UnitSystem.US);
        assertThat(gap).as(table.keys().get(row) + " " + days).isEqualTo(best(allowed, days));
      }
    }
  }

  private static int best(List<Integer> allowed, int most) {
    int best = 7;
    for (int choice = 1; choice < 1 << allowed.size(); choice++) {
      if (Integer.bitCount(choice) <= most) {
        List<Integer> chosen = new ArrayList<>();
        for (int i = 0; i < allowed.size(); i++) {
          if ((choice >> i & 1) == 1) {
            chosen.add(allowed.get(i));
          }
        }
        best = Math.min(best, widest(chosen));
      }
    }
    return best;
  }

  private static int widest(List<Integer> days) {
    int widest = 0;
    for (int i = 0; i < days.size(); i++) {
      int next = i + 1 < days.size() ? days.get(i + 1) : days.get(0) + 7;
      widest = Math.max(widest, next - days.get(i));
    }
    return widest;
  }

  /**
   * FAO-56 page 167: 0.40 + 0.04 (5 − 7) = 0.32 for cool-season turf at 7 mm a day (derived check
   * of a verified rule).
   */
  @Test
  void depletionCanBeAdjustedToDemand() {
    sketch.type(Climate.REFERENCE_ET, 6, "217 mm").type(Plants.ALLOWED_DEPLETION, "40");
    sketch.type(SiteRules.DEPLETION_METHOD, SiteRules.BY_DEMAND);
    assertThat(sketch.read(Demand.DEPLETION_USED, Units.ONE)).isCloseTo(0.32, within(0.005));
  }

  /** Never outside 0.1 to 0.8, as the paper says. */
  @Test
  void adjustedDepletionKeepsItsLimits() {
    sketch
        .type(SiteRules.DEPLETION_METHOD, SiteRules.BY_DEMAND)
        .type(Plants.ALLOWED_DEPLETION, "80");
    assertThat(sketch.read(Demand.DEPLETION_USED, Units.ONE)).isEqualTo(0.8);
  }
}
