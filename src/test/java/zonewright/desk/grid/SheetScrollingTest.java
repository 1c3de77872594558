package zonewright.desk.grid;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import javax.swing.table.JTableHeader;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** What is seen of a sheet while a person moves through it. */
@CacioTest
@Tag("window")
class SheetScrollingTest {
  private GridWindow window;
  private SheetTable table;

  @BeforeEach
  void open() {
    window = GridWindow.sheet(Demo.libraryGarden(UnitSystem.US), Sheets.ZONES);
    table = (SheetTable) window.table;
    window.act(() -> table.freeze(2));
  }

  @AfterEach
  void close() {
    window.close();
  }

  private Rectangle lead() {
    return window.ask(() -> table.getCellRect(table.leadRow(), table.leadColumn(), false));
  }

  private Rectangle clear() {
    return window.ask(
        () -> {
          Rectangle seen = table.getVisibleRect();
          int left = table.frozenWidth();
          return new Rectangle(seen.x + left, seen.y, seen.width - left, seen.height);
        });
  }

  @Test
  void theCellSelectedNeverLiesBeneathTheColumnsThatStay() {
    int last = window.ask(table::getColumnCount) - 1;
    window.act(() -> table.changeSelection(1, last, false, false));
    assertThat(clear().contains(lead())).isTrue();
    for (int column = last; column > 2; column--) {
      window.press(KeyEvent.VK_LEFT);
      assertThat(clear().contains(lead())).as("column %s", column - 1).isTrue();
      if (column < last - 30) {
        break;
      }
    }
  }

  @Test
  void theFieldOpensOverTheCellSelected() {
    int last = window.ask(table::getColumnCount) - 1;
    window.act(() -> table.changeSelection(1, last, false, false));
    window.goTo(Emitters.AREA, 1);
    window.press(KeyEvent.VK_F2);
    assertThat(window.ask(() -> table.getEditorComponent().getBounds())).isEqualTo(lead());
    assertThat(clear().contains(lead())).isTrue();
  }

  @Test
  void theColumnBesideThoseThatStayStartsWhole() {
    window.act(
        () ->
            ((JScrollPane) SwingUtilities.getAncestorOfClass(JScrollPane.class, table))
                .getHorizontalScrollBar()
                .setValue(777));
    Rectangle clear = clear();
    int first = window.ask(() -> table.columnAtPoint(new Point(clear.x, 5)));
    assertThat(window.ask(() -> table.getCellRect(0, first, false).x)).isEqualTo(clear.x);
    int bar = window.ask(() -> table.getWidth());
    window.act(
        () ->
            ((JScrollPane) SwingUtilities.getAncestorOfClass(JScrollPane.class, table))
                .getHorizontalScrollBar()
                .setValue(bar));
    Rectangle atTheEnd = clear();
    int begins = window.ask(() -> table.columnAtPoint(new Point(atTheEnd.x, 5)));
    assertThat(window.ask(() -> table.getCellRect(0, begins, false).x)).isEqualTo(atTheEnd.x);
  }

  @Test
  void homeAndControlHomeScrollToTheFirstColumn() {
    int last = window.ask(table::getColumnCount) - 1;
    window.act(() -> table.changeSelection(3, last, false, false));
    window.press(KeyEvent.VK_HOME, KeyEvent.VK_CONTROL);
    assertThat(window.ask(() -> table.getVisibleRect().getLocation())).isEqualTo(new Point(0, 0));
    assertThat(window.selectedColumn()).isEqualTo(Facts.ZONE_NAME.reference());
    assertThat(window.selectedRow()).isZero();
    window.act(() -> table.changeSelection(3, last, false, false));
    window.press(KeyEvent.VK_HOME);
    assertThat(window.ask(() -> table.getVisibleRect().x)).isZero();
    assertThat(window.selectedRow()).isEqualTo(3);
  }

  @Test
  void aDoubleClickEditsTheCellClickedThoughItScrolled() {
    Rectangle seen = window.ask(() -> table.getVisibleRect());
    int cut = window.ask(() -> table.columnAtPoint(new Point(seen.width - 2, 5)));
    Rectangle cell = window.ask(() -> table.getCellRect(2, cut, false));
    window.click(table, new Point(seen.width - 2, cell.y + 5), 2);
    assertThat(window.ask(table::leadColumn)).isEqualTo(cut);
  }

  @Test
  void aDoubleClickOnTheEdgeOfAHeadingFitsTheWidestText() {
    String words = "A very long place behind the old orangery and the long wall of the garden";
    window.act(
        () ->
            window
                .design
                .book()
                .perform(
                    window
                        .design
                        .edits()
                        .set(Facts.ZONE_PLACE.reference(), 3, new Entry.Words(words))));
    JTableHeader header = window.ask(table::getTableHeader);
    Rectangle place = window.ask(() -> header.getHeaderRect(1));
    window.click(header, new Point(place.x + place.width - 1, place.height - 5), 2);
    int needed = window.ask(() -> table.getFontMetrics(table.getFont()).stringWidth(words));
    assertThat(window.columnWidth(Facts.ZONE_PLACE)).isGreaterThan(needed);
  }

  @Test
  void wordsAreSortedFromAToZ() {
    window.goTo(Plants.PLANT, 0);
    window.does(GridAction.SORT);
    assertThat(way()).isEqualTo("A to Z");
    window.goTo(Emitters.AREA, 0);
    window.does(GridAction.SORT);
    assertThat(way()).isEqualTo("smallest first");
  }

  private Object way() {
    return window.ask(
        () -> ((javax.swing.JComboBox<?>) named(window.grid, "sort way 1")).getItemAt(0));
  }

  private static java.awt.Component named(java.awt.Container in, String name) {
    for (java.awt.Component each : in.getComponents()) {
      if (name.equals(each.getName())) {
        return each;
      }
      if (each instanceof java.awt.Container inner && named(inner, name) != null) {
        return named(inner, name);
      }
    }
    return null;
  }

  @Test
  void findLooksAtHeadingsToo() {
    window.goTo(Facts.ZONE_NAME, 2);
    window.does(GridAction.FIND);
    window.act(() -> ((JTextField) named(window.grid, "find")).setText("Precipitation ra"));
    assertThat(window.selectedColumn()).isEqualTo(Emitters.PRECIPITATION_RATE.reference());
    assertThat(window.selectedRow()).isEqualTo(2);
  }
}
