package zonewright.desk.grid;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.design.Facts;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.SiteRules;

@CacioTest
@Tag("window")
class RecordGridTest {
  private GridWindow window;

  @BeforeEach
  void open() {
    window = GridWindow.record(Demo.libraryGarden(UnitSystem.US), Sheets.SITE);
  }

  @AfterEach
  void close() {
    window.close();
  }

  private RecordGrid grid() {
    return (RecordGrid) window.grid;
  }

  private void goTo(Column column) {
    window.act(() -> grid().goTo(column.reference(), 0));
  }

  @Test
  void typingReplacesAValueAndEnterGoesToTheNextOnePastTheNameOfAGroup() {
    goTo(Facts.PREPARED_BY);
    window.type("Ada");
    window.enter();
    assertThat(window.entry(Facts.PREPARED_BY, 0)).isEqualTo(new Entry.Words("Ada"));
    CellPlace next = window.ask(() -> grid().place().orElseThrow());
    assertThat(next.column()).isNotEqualTo(Facts.PREPARED_BY.reference());
    window.press(KeyEvent.VK_UP);
    assertThat(window.ask(() -> grid().place().orElseThrow().column()))
        .isEqualTo(Facts.PREPARED_BY.reference());
  }

  @Test
  void deleteBringsADefaultBackAndUndoTheValueTyped() {
    goTo(SiteRules.DAYS_ALLOWED);
    window.press(KeyEvent.VK_DELETE);
    assertThat(window.entry(SiteRules.DAYS_ALLOWED, 0)).isEqualTo(Entry.BLANK);
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    assertThat(window.entry(SiteRules.DAYS_ALLOWED, 0)).isEqualTo(new Entry.Figure(5));
  }

  @Test
  void linesOfTextArePastedIntoValuesOneBelowTheOther() {
    goTo(Facts.LOCATION);
    GridWindow.copied("By the river\nEva\n");
    window.press(KeyEvent.VK_V, KeyEvent.VK_CONTROL);
    assertThat(window.entry(Facts.LOCATION, 0)).isEqualTo(new Entry.Words("By the river"));
    assertThat(window.entry(Facts.PREPARED_BY, 0)).isEqualTo(new Entry.Words("Eva"));
  }

  @Test
  void whoListensHearsWhichValueHasTheFocus() {
    List<CellPlace> heard = new ArrayList<>();
    window.act(() -> grid().onSelection(heard::add));
    goTo(SiteRules.AVAILABLE_FLOW);
    assertThat(heard).last().isEqualTo(new CellPlace(SiteRules.AVAILABLE_FLOW.reference(), 0));
  }
}
