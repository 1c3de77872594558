package zonewright.desk.grid;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Container;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Entry;
import zonewright.sheet.Severity;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;
import zonewright.water.Demand;

@CacioTest
@Tag("window")
class RowsAndColumnsTest {
  private GridWindow window;

  @BeforeEach
  void open() {
    window = GridWindow.sheet(Demo.libraryGarden(UnitSystem.US), Sheets.ZONES);
  }

  @AfterEach
  void close() {
    window.close();
  }

  private List<String> shown() {
    return window.ask(
        () ->
            IntStream.range(0, window.table.getRowCount())
                .mapToObj(row -> String.valueOf(window.table.getValueAt(row, 0)))
                .filter(name -> !name.isEmpty())
                .toList());
  }

  private java.awt.Component named(String name) {
    return window.ask(() -> find(window.grid, name));
  }

  private static java.awt.Component find(Container container, String name) {
    for (java.awt.Component each : container.getComponents()) {
      if (name.equals(each.getName())) {
        return each;
      }
      java.awt.Component inner = each instanceof Container box ? find(box, name) : null;
      if (inner != null) {
        return inner;
      }
    }
    return null;
  }

  private void choose(String combo, Object item) {
    window.act(() -> ((JComboBox<?>) find(window.grid, combo)).setSelectedItem(item));
  }

  private void write(String field, String text) {
    window.act(() -> ((JTextComponent) find(window.grid, field)).setText(text));
    window.press(KeyEvent.VK_ENTER);
  }

  private void filter(Object column, RowCriterion.Relation relation, String text) {
    window.does(GridAction.FILTER);
    choose("filter column", column);
    choose("filter relation", relation);
    write("filter text", text);
  }

  @Test
  void onlyRowsThatHoldTheWordsAreShownAndTheRestIsStillThere() {
    window.goTo(Plants.PLANT, 0);
    filter("Plant type", RowCriterion.Relation.HOLDS, "turf");
    assertThat(shown()).containsExactly("1", "2", "3", "4");
    assertThat(window.rows(Sheets.ZONES)).isEqualTo(12);
    window.does(GridAction.SHOW_ALL_ROWS);
    assertThat(shown()).hasSize(12);
  }

  @Test
  void numbersAreComparedInWhateverUnitTheyAreTyped() {
    window.goTo(Emitters.AREA, 0);
    filter("Area", RowCriterion.Relation.AT_LEAST, "200 m2");
    assertThat(shown()).containsExactly("1", "2", "4");
    filter("Area", RowCriterion.Relation.AT_MOST, "620");
    assertThat(shown()).containsExactly("5", "12");
  }

  @Test
  void rowsWithFindingsCanBePickedOut() {
    window.act(
        () ->
            window
                .sheetGrid()
                .setFlags(
                    place ->
                        place.row() == 4
                            ? java.util.Optional.of(Severity.CHECK)
                            : java.util.Optional.empty()));
    window.does(GridAction.FILTER);
    window.act(() -> ((javax.swing.JCheckBox) find(window.grid, "filter findings")).doClick());
    assertThat(shown()).containsExactly("5");
  }

  @Test
  void whatIsTypedWhileRowsAreHiddenGoesIntoTheRowThatIsSeen() {
    filter("Plant type", RowCriterion.Relation.HOLDS, "shrubs");
    assertThat(shown()).containsExactly("7");
    window.press(KeyEvent.VK_ESCAPE);
    window.goTo(Emitters.AREA, 6);
    window.type("1234");
    window.enter();
    assertThat(window.entry(Emitters.AREA, 6)).isEqualTo(new Entry.Figure(1234));
    window.goTo(Emitters.AREA, 6);
    window.press(KeyEvent.VK_D, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
    assertThat(shown()).containsExactly("7", "7 copy");
    window.does(GridAction.DELETE_ROWS);
    assertThat(window.rows(Sheets.ZONES)).isEqualTo(12);
  }

  @Test
  void goingToAHiddenRowShowsIt() {
    filter("Plant type", RowCriterion.Relation.HOLDS, "turf");
    window.goTo(Emitters.AREA, 8);
    assertThat(window.selectedRow()).isEqualTo(8);
    assertThat(shown()).containsExactly("1", "2", "3", "4", "9");
  }

  @Test
  void rowsAreSortedBySeveralColumnsAndThatIsOneEdit() {
    window.goTo(Soils.SOIL_TYPE, 0);
    window.does(GridAction.SORT);
    choose("sort column 1", "Soil");
    choose("sort column 2", "Area");
    choose("sort way 2", "largest first");
    window.press(KeyEvent.VK_ENTER);
    assertThat(shown())
        .containsExactly("11", "8", "3", "7", "9", "1", "2", "6", "5", "10", "4", "12");
    window.act(() -> window.design.book().undo());
    assertThat(shown()).startsWith("1", "2", "3");
  }

  @Test
  void wordsAreReplacedInWhatWasTypedAndNowhereElse() {
    window.goTo(Facts.ZONE_PLACE, 0);
    window.press(KeyEvent.VK_H, KeyEvent.VK_CONTROL);
    window.act(() -> ((JTextComponent) named("replace with")).setText("meadow"));
    write("find", "lawn");
    window.act(() -> ((javax.swing.JButton) named("grid bar Replace all")).doClick());
    assertThat(window.entry(Facts.ZONE_PLACE, 0))
        .isEqualTo(new Entry.Words("Reading meadow, north half"));
    assertThat(window.entry(Facts.ZONE_PLACE, 3)).isEqualTo(new Entry.Words("Forecourt meadow"));
    assertThat(window.ask(() -> window.design.book().journal().toUndo().orElseThrow().name()))
        .isEqualTo("replacement in 3 cells");
  }

  @Test
  void aSeriesGoesOnDownTheCellsSelected() {
    window.goTo(Emitters.AREA, 0);
    window.type("100");
    window.enter();
    window.type("150");
    window.enter();
    window.goTo(Emitters.AREA, 0);
    for (int i = 0; i < 4; i++) {
      window.press(KeyEvent.VK_DOWN, KeyEvent.VK_SHIFT);
    }
    window.press(KeyEvent.VK_I, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
    assertThat(window.entry(Emitters.AREA, 4)).isEqualTo(new Entry.Figure(300));
  }

  @Test
  void anArrangementShowsItsColumnsInItsOrderAndWidthAndNoOthers() {
    Arrangement wanted =
        new Arrangement(
            List.of(
                new Arrangement.Shown("zone", 0),
                new Arrangement.Shown("run-time", 140),
                new Arrangement.Shown("area", 0)),
            1);
    window.act(() -> window.sheetGrid().columns().apply(wanted));
    Arrangement now = window.ask(() -> window.sheetGrid().columns().arrangement());
    assertThat(now).isEqualTo(wanted);
    window.goTo(Demand.WATERING_DAYS, 3);
    assertThat(window.selectedColumn()).isEqualTo(Demand.WATERING_DAYS.reference());
  }

  @Test
  void columnsMoveAndHideByKeys() {
    window.goTo(Emitters.AREA, 2);
    window.press(KeyEvent.VK_LEFT, KeyEvent.VK_ALT, KeyEvent.VK_SHIFT);
    assertThat(window.ask(() -> window.sheetGrid().columns().arrangement().columns().get(2).id()))
        .isEqualTo("area");
    window.press(KeyEvent.VK_H, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
    assertThat(window.ask(() -> window.sheetGrid().columns().isShown(Emitters.AREA))).isFalse();
    window.act(() -> window.sheetGrid().columns().show(List.of(Emitters.AREA), true));
    assertThat(window.ask(() -> window.sheetGrid().columns().isShown(Emitters.AREA))).isTrue();
  }
}
