package zonewright.desk.grid;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.datatransfer.DataFlavor;
import java.awt.event.KeyEvent;
import java.time.LocalDate;
import java.util.List;
import javax.swing.table.JTableHeader;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.design.Demo;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

/** Manners of a spreadsheet's grid. */
@CacioTest
@Tag("window")
class GridMannersTest {
  private GridWindow window;
  private SheetTable table;

  @BeforeEach
  void open() {
    window = GridWindow.sheet(Demo.libraryGarden(UnitSystem.US), Sheets.ZONES);
    table = (SheetTable) window.table;
  }

  @AfterEach
  void close() {
    window.close();
  }

  private void select(Column from, Column to, int first, int last) {
    window.act(
        () -> {
          int left =
              table.convertColumnIndexToView(window.design.book().position(from.reference()));
          int right = table.convertColumnIndexToView(window.design.book().position(to.reference()));
          table.changeSelection(first, left, false, false);
          table.changeSelection(last, right, false, true);
        });
  }

  @Test
  void arithmeticIsKeptAsTypedAndShownAsItsValue() {
    window.goTo(Emitters.AREA, 2);
    window.type("=35*40");
    window.enter();
    assertThat(window.entry(Emitters.AREA, 2)).isEqualTo(new Entry.Figure(1400, "=35*40"));
    assertThat(window.ask(() -> table.looks().look(Emitters.AREA, 2).text())).isEqualTo("1,400");
    window.goTo(Emitters.AREA, 2);
    window.press(KeyEvent.VK_F2);
    window.type("/2");
    window.enter();
    assertThat(window.outcome(Emitters.AREA, 2).number()).isEqualTo(700);
  }

  @Test
  void arithmeticThatComesToNothingIsKeptAndSaid() {
    window.goTo(Emitters.AREA, 2);
    window.type("=35*");
    window.enter();
    assertThat(window.entry(Emitters.AREA, 2)).isInstanceOf(Entry.Unreadable.class);
    assertThat(window.outcome(Emitters.AREA, 2).sentence()).contains("=35*40");
  }

  @Test
  void wholeColumnsAndRowsAreSelectedByKeys() {
    select(Plants.PLANT, Plants.PLANT, 2, 2);
    window.press(KeyEvent.VK_SPACE, KeyEvent.VK_CONTROL);
    assertThat(window.ask(table::getSelectedRowCount)).isEqualTo(window.ask(table::getRowCount));
    assertThat(window.ask(table::getSelectedColumnCount)).isEqualTo(1);
    select(Plants.PLANT, Plants.PLANT, 2, 3);
    window.press(KeyEvent.VK_SPACE, KeyEvent.VK_SHIFT);
    assertThat(window.ask(table::getSelectedColumnCount))
        .isEqualTo(window.ask(table::getColumnCount));
    assertThat(window.ask(table::getSelectedRowCount)).isEqualTo(2);
    assertThat(window.ask(table::isEditing)).isFalse();
  }

  @Test
  void minusHidesWholeColumnsAndTheMarkShowsThemAgain() {
    select(Plants.PLANT, Plants.PLANT, 2, 2);
    window.press(KeyEvent.VK_SPACE, KeyEvent.VK_CONTROL);
    int rows = window.rows(Sheets.ZONES);
    window.does(GridAction.DELETE_ROWS);
    assertThat(window.ask(() -> window.sheetGrid().columns().isShown(Plants.PLANT))).isFalse();
    assertThat(window.rows(Sheets.ZONES)).isEqualTo(rows);
    JTableHeader header = window.ask(table::getTableHeader);
    int before =
        window.ask(
            () ->
                table.convertColumnIndexToView(
                    window.design.book().position(Plants.PLANT.reference()) - 1));
    Rectangle heading = window.ask(() -> header.getHeaderRect(before));
    window.act(() -> table.showCell(0, before));
    Rectangle seen = window.ask(() -> header.getHeaderRect(before));
    window.click(header, new Point(seen.x + seen.width - 8, 6), 1);
    assertThat(heading.width).isPositive();
    assertThat(window.ask(() -> window.sheetGrid().columns().isShown(Plants.PLANT))).isTrue();
  }

  @Test
  void copyWithHeadingsAndAsShown() throws Exception {
    window.goTo(Emitters.AREA, 2);
    window.type("95.25");
    window.enter();
    select(Emitters.AREA, Emitters.AREA, 2, 2);
    window.does(GridAction.COPY_WITH_HEADINGS);
    assertThat(GridWindow.clipboard(DataFlavor.stringFlavor)).isEqualTo("Area (ft²)\n95.25\n");
    window.does(GridAction.COPY_AS_SHOWN);
    assertThat(GridWindow.clipboard(DataFlavor.stringFlavor)).isEqualTo("95\n");
  }

  @Test
  void valuesOfDefaultsArePastedWherePasteAloneKeepsTheDefault() {
    select(Plants.PLANT_FACTOR, Plants.PLANT_FACTOR, 0, 0);
    double factor = window.outcome(Plants.PLANT_FACTOR, 0).number();
    window.does(GridAction.COPY);
    select(Plants.PLANT_FACTOR, Plants.PLANT_FACTOR, 5, 5);
    window.does(GridAction.PASTE);
    assertThat(window.entry(Plants.PLANT_FACTOR, 5)).isEqualTo(Entry.BLANK);
    window.does(GridAction.PASTE_VALUES);
    assertThat(window.entry(Plants.PLANT_FACTOR, 5)).isEqualTo(new Entry.Figure(factor));
  }

  @Test
  void aLineIsPastedDownTheRows() {
    GridWindow.copied("100\t200\t300\n");
    select(Emitters.AREA, Emitters.AREA, 1, 1);
    window.does(GridAction.PASTE_TRANSPOSED);
    for (int i = 0; i < 3; i++) {
      assertThat(window.entry(Emitters.AREA, 1 + i)).isEqualTo(new Entry.Figure(100 * (i + 1)));
    }
  }

  @Test
  void theFillHandleCarriesOnWhatIsSelected() {
    GridWindow.copied("10\n20\n");
    select(Emitters.AREA, Emitters.AREA, 0, 0);
    window.does(GridAction.PASTE);
    drawHandle(2);
    assertThat(List.of(0, 1, 2, 3).stream().map(row -> window.entry(Emitters.AREA, row)).toList())
        .extracting(entry -> ((Entry.Figure) entry).value())
        .containsExactly(10.0, 20.0, 30.0, 40.0);
    select(Soils.SOIL_TYPE, Soils.SOIL_TYPE, 0, 0);
    drawHandle(3);
    assertThat(window.entry(Soils.SOIL_TYPE, 3)).isEqualTo(window.entry(Soils.SOIL_TYPE, 0));
    assertThat(window.ask(table::getSelectedRowCount)).isEqualTo(4);
  }

  private void drawHandle(int rows) {
    Rectangle square = window.ask(() -> new FillHandle(table).place().orElseThrow());
    Point from = new Point(square.x + 3, square.y + 3);
    window.drag(table, from, new Point(from.x, from.y + rows * window.ask(table::getRowHeight)));
  }

  @Test
  void todaysDateIsTypedByItsKey() {
    window.goTo(Facts.ZONE_NOTE, 0);
    window.does(GridAction.TODAY);
    assertThat(window.entry(Facts.ZONE_NOTE, 0))
        .isEqualTo(new Entry.Words(LocalDate.now(java.time.ZoneId.systemDefault()).toString()));
  }
}
