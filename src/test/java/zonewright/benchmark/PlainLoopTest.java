package zonewright.benchmark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import zonewright.climate.Rain;
import zonewright.design.Design;
import zonewright.emitters.FieldTested;
import zonewright.emitters.Spacings;
import zonewright.sheet.Column;
import zonewright.soil.Salinity;
import zonewright.soil.SoilLayers;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.water.CycleAndSoak;
import zonewright.water.Demand;
import zonewright.water.SiteRules;
import zonewright.water.TuningPercents;

/** The loop written by hand is a fair measure only while it gives the same numbers. */
class PlainLoopTest {
  private static final int COUNT = 3000;

  @Test
  void theLoopWrittenByHandGivesEveryNumberThatFollowsFromOthersInTheZones() {
    Design design = ManyZones.design(COUNT);
    assertSameNumbers(design);
  }

  @Test
  void theLoopWrittenByHandFollowsTheChoicesOfTheSite() {
    Design design = ManyZones.design(COUNT);
    type(design, SiteRules.GROSS_METHOD, SiteRules.BY_EFFICIENCY);
    type(design, SiteRules.DEPLETION_METHOD, SiteRules.BY_DEMAND);
    type(design, SiteRules.WEEKDAYS, "Mon Wed Fri");
    type(design, Rain.METHOD, Rain.SHARE);
    assertSameNumbers(design);
  }

  /**
   * The zones of the loop were never tested or tuned; soils and water are plain, throws unknown.
   */
  private static final List<Column> ASIDE =
      List.of(
          Soils.AVAILABLE_BY_REPORT,
          SoilLayers.SECOND_AVAILABLE,
          SoilLayers.ROOTED_ABOVE,
          Salinity.OF_THE_DRAINAGE,
          Salinity.LEACHING_REQUIREMENT,
          FieldTested.TESTS_IN_USE,
          FieldTested.RATE_BY_TEST,
          FieldTested.TESTED_UNIFORMITY,
          TuningPercents.ZONE_TUNING,
          Spacings.SHARE,
          Spacings.LARGEST_SPACING,
          Spacings.LARGEST_ROWS);

  private static void type(Design design, Column column, String text) {
    design.book().perform(design.edits().typed(column.reference(), 0, text));
  }

  /** The last bits of a difference are those of what it is made of. */
  private static double scale(Design design, Column column, int row, double number) {
    return column.equals(CycleAndSoak.EXCESS_OF_ROUNDING)
        ? design.book().number(Demand.RUN_TIME_PER_WEEK.reference(), row)
        : number;
  }

  private static void assertSameNumbers(Design design) {
    PlainLoop loop = new PlainLoop(design);
    loop.run();
    assertThat(loop.results.keySet())
        .as("columns of the loop written by hand: one for each column with a formula")
        .containsExactlyInAnyOrderElementsOf(
            Stream.of(Sheets.ZONES, Sheets.MONTHLY)
                .flatMap(table -> design.book().schema().table(table).columns().stream())
                .filter(column -> column.formula().isPresent() && !ASIDE.contains(column))
                .toList());
    for (Column column : loop.results.keySet()) {
      double[] numbers = loop.results.get(column);
      int known = 0;
      for (int row = 0; row < COUNT; row++) {
        double number = design.book().number(column.reference(), row);
        if (Double.isNaN(number)) {
          assertThat(numbers[row]).as("%s in row %d", column, row).isNaN();
        } else {
          known++;
          assertThat(numbers[row])
              .as("%s in row %d", column, row)
              .isCloseTo(number, offset(1e-12 * Math.abs(scale(design, column, row, number))));
        }
      }
      assertThat(known).as("numbers in %s", column).isPositive();
    }
  }
}
