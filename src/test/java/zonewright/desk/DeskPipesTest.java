package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.emitters.Emitters;
import zonewright.pipes.Valves;
import zonewright.sheet.Column;
import zonewright.trade.Sheets;
import zonewright.water.SiteRules;

/**
 * Sizing zones in the window: parting those that draw too much, in one step that undo takes back.
 */
@Tag("window")
@CacioTest
class DeskPipesTest {
  private final DeskDriver desk = new DeskDriver();

  @AfterEach
  void close() {
    desk.close();
  }

  private double number(Column column, int row) {
    return desk.ask(() -> desk.book().number(column.reference(), row));
  }

  private int zones() {
    return desk.ask(() -> desk.book().rows(Sheets.ZONES));
  }

  private double flowOfAll() {
    double sum = 0;
    for (int row = 0; row < zones(); row++) {
      sum += number(Emitters.ZONE_FLOW, row);
    }
    return sum;
  }

  @Test
  void oneZoneIsSplitAndOneUndoMakesItWhole() {
    int before = zones();
    double flow = number(Emitters.ZONE_FLOW, 0);
    desk.goTo(SiteRules.AVAILABLE_FLOW, 0);
    desk.type(Double.toString(Math.floor(flow / 2.5)));
    desk.goTo(Emitters.AREA, 0);
    int valves = (int) number(Valves.VALVES_NEEDED, 0);
    assertThat(valves).isGreaterThan(1);

    desk.choose("Split the zone evenly");
    assertThat(zones()).isEqualTo(before + valves - 1);
    for (int row = 0; row < valves; row++) {
      assertThat(number(Emitters.ZONE_FLOW, row))
          .isLessThanOrEqualTo(number(SiteRules.AVAILABLE_FLOW, 0));
    }
    desk.press("ctrl Z");
    assertThat(zones()).isEqualTo(before);
    assertThat(number(Emitters.ZONE_FLOW, 0)).isEqualTo(flow);
  }

  @Test
  void allZonesAreSplitInOneStepAndWhereNoneNeedsItThatIsTold() {
    int before = zones();
    desk.choose("Split all zones that need it");
    assertThat(zones()).as("the garden's supply feeds each of its zones").isEqualTo(before);

    desk.goTo(SiteRules.AVAILABLE_FLOW, 0);
    desk.type("4");
    double flow = flowOfAll();
    desk.choose("Split all zones that need it");
    assertThat(zones()).isGreaterThan(before + 1);
    assertThat(Math.abs(flowOfAll() - flow)).isLessThan(1e-9 * flow);
    for (int row = 0; row < zones(); row++) {
      assertThat(number(Valves.VALVES_NEEDED, row)).isEqualTo(1);
    }
    desk.press("ctrl Z");
    assertThat(zones()).isEqualTo(before);
  }
}
