package zonewright.desk.grid;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.SiteRules;

/** What is typed into cells whose words come from a list. */
@CacioTest
@Tag("window")
class ChoiceTypingTest {
  @Test
  void aWordOfTheListStandsThoughLongerOnesBeginSo() {
    try (GridWindow window = GridWindow.record(Demo.libraryGarden(UnitSystem.US), Sheets.SITE)) {
      assertThat(weekdays(window, "Mon Wed Fri")).isEqualTo(new Entry.Words("Mon Wed Fri"));
      assertThat(weekdays(window, "Mon")).isEqualTo(new Entry.Words("Mon"));
    }
  }

  @Test
  void weekdaysAreTypedInAnyOrderAndWithCommas() {
    try (GridWindow window = GridWindow.record(Demo.libraryGarden(UnitSystem.US), Sheets.SITE)) {
      assertThat(weekdays(window, "fri, mon,wed")).isEqualTo(new Entry.Words("Mon Wed Fri"));
      assertThat(weekdays(window, "Thursday and Tuesday")).isEqualTo(new Entry.Words("Tue Thu"));
    }
  }

  private static Entry weekdays(GridWindow window, String text) {
    Column column = SiteRules.WEEKDAYS;
    window.act(() -> ((RecordGrid) window.grid).goTo(column.reference(), 0));
    window.type(text);
    window.enter();
    return window.entry(column, 0);
  }

  @Test
  void ofSeveralWordsThatFitNoneIsTakenUnasked() {
    try (GridWindow window = GridWindow.sheet(Demo.libraryGarden(UnitSystem.US), Sheets.ZONES)) {
      window.goTo(Plants.PLANT, 3);
      window.type("turf");
      window.enter();
      assertThat(window.entry(Plants.PLANT, 3)).isEqualTo(new Entry.Words("turf"));
      assertThat(window.outcome(Plants.PLANT, 3).sentence()).contains("turf");
      window.goTo(Plants.PLANT, 3);
      window.type("turf");
      window.press(KeyEvent.VK_TAB);
      assertThat(window.entry(Plants.PLANT, 3)).isEqualTo(new Entry.Words("cool-season turf"));
    }
  }

  @Test
  void theOnlyWordThatFitsIsTaken() {
    try (GridWindow window = GridWindow.sheet(Demo.libraryGarden(UnitSystem.US), Sheets.ZONES)) {
      window.goTo(Soils.SOIL_TYPE, 0);
      window.type("silt");
      window.enter();
      assertThat(window.entry(Soils.SOIL_TYPE, 0)).isEqualTo(new Entry.Words("silty clay"));
    }
  }
}
