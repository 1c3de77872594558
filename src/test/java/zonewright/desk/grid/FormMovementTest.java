package zonewright.desk.grid;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Moving through a form by pages. */
@CacioTest
@Tag("window")
class FormMovementTest {
  private GridWindow window;

  @BeforeEach
  void open() {
    window = GridWindow.record(Demo.libraryGarden(UnitSystem.US), Sheets.SITE);
  }

  @AfterEach
  void close() {
    window.close();
  }

  private Optional<CellPlace> place() {
    return window.ask(() -> ((RecordGrid) window.grid).place());
  }

  @Test
  void pagesLeadDownAndBackToTheFirstLine() {
    Optional<CellPlace> first = place();
    window.press(KeyEvent.VK_PAGE_DOWN);
    assertThat(place()).isNotEqualTo(first);
    window.press(KeyEvent.VK_PAGE_DOWN);
    window.press(KeyEvent.VK_PAGE_UP);
    window.press(KeyEvent.VK_PAGE_UP);
    window.press(KeyEvent.VK_PAGE_UP);
    assertThat(place()).isEqualTo(first);
  }

  @Test
  void controlHomeLeadsToTheFirstValue() {
    Optional<CellPlace> first = place();
    window.press(KeyEvent.VK_END, KeyEvent.VK_CONTROL);
    assertThat(place()).isNotEqualTo(first);
    window.press(KeyEvent.VK_HOME, KeyEvent.VK_CONTROL);
    assertThat(place()).isEqualTo(first);
  }
}
