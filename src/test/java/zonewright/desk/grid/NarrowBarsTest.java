package zonewright.desk.grid;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import zonewright.design.Demo;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** In a narrow window the bars go on in another line, so that all of them can be reached. */
@CacioTest
@Tag("window")
class NarrowBarsTest {
  private GridWindow window;

  @BeforeEach
  void open() {
    window = GridWindow.sheet(Demo.libraryGarden(UnitSystem.US), Sheets.ZONES);
  }

  @AfterEach
  void close() {
    window.close();
  }

  @ParameterizedTest
  @EnumSource(
      value = GridAction.class,
      names = {"SORT", "FILTER"})
  void everyPartOfABarStaysInsideTheWindow(GridAction action) {
    window.does(action);
    int wide = height();
    window.widen(420);
    assertThat(height()).isGreaterThan(wide);
    List<Rectangle> parts = window.ask(() -> parts(bar()));
    Rectangle room = window.ask(() -> new Rectangle(bar().getSize()));
    assertThat(parts).hasSizeGreaterThan(3).allMatch(room::contains);
    window.widen(1100);
    assertThat(height()).isEqualTo(wide);
  }

  @ParameterizedTest
  @EnumSource(
      value = GridAction.class,
      names = {"SORT", "FILTER", "FIND"})
  void anOpenBarIsLaidOutOnceAndThenRests(GridAction action) {
    window.does(action);
    window.widen(420);
    for (int i = 0; i < 20; i++) {
      assertThat(window.ask(() -> bar().isValid())).as("round " + i).isTrue();
    }
  }

  private int height() {
    return window.ask(() -> bar().getHeight());
  }

  private GridBar bar() {
    return (GridBar) shown(window.grid);
  }

  private static Component shown(Container container) {
    for (Component each : container.getComponents()) {
      if (each instanceof GridBar && each.isVisible()) {
        return each;
      }
      Component inner = each instanceof Container box ? shown(box) : null;
      if (inner != null) {
        return inner;
      }
    }
    return null;
  }

  /** Returns where the parts stand that one types into or clicks. */
  private static List<Rectangle> parts(GridBar bar) {
    List<Rectangle> found = new ArrayList<>();
    gather(bar, bar, found);
    return found;
  }

  private static void gather(GridBar bar, Container box, List<Rectangle> found) {
    for (Component each : box.getComponents()) {
      boolean part =
          each instanceof AbstractButton
              || each instanceof JComboBox
              || each instanceof JTextComponent;
      if (part && each.isVisible()) {
        found.add(SwingUtilities.convertRectangle(box, each.getBounds(), bar));
      } else if (each instanceof Container inner) {
        gather(bar, inner, found);
      }
    }
  }
}
