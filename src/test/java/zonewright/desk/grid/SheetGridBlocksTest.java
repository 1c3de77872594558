package zonewright.desk.grid;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.datatransfer.DataFlavor;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import zonewright.climate.Climate;
import zonewright.design.Demo;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.plants.Plants;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

@CacioTest
@Tag("window")
class SheetGridBlocksTest {
  private GridWindow window;

  @BeforeEach
  void open() {
    window = GridWindow.sheet(Demo.libraryGarden(UnitSystem.US), Sheets.ZONES);
  }

  @AfterEach
  void close() {
    window.close();
  }

  private List<String> names() {
    return window.ask(
        () ->
            IntStream.range(0, window.design.book().rows(Sheets.ZONES))
                .mapToObj(row -> String.valueOf(window.table.getValueAt(row, 0)))
                .toList());
  }

  private void command(int key) {
    window.press(key, KeyEvent.VK_CONTROL);
  }

  @Test
  void aPastedBlockGrowsTheTableAndIsTakenBackAtOnce() {
    int before = window.rows(Sheets.ZONES);
    window.goTo(Facts.ZONE_NAME, before - 1);
    GridWindow.copied("12\tTerrace\tB\t340\n13\tPond edge\tA\t85 m2\n14\tHedge\tA\tlots\n");
    command(KeyEvent.VK_V);
    assertThat(window.rows(Sheets.ZONES)).isEqualTo(before + 2);
    assertThat(window.entry(Facts.ZONE_PLACE, before)).isEqualTo(new Entry.Words("Pond edge"));
    assertThat(window.outcome(Emitters.AREA, before).number()).isBetween(914.0, 916.0);
    assertThat(window.entry(Emitters.AREA, before + 1)).isInstanceOf(Entry.Unreadable.class);
    window.act(window.design.book()::undo);
    assertThat(window.rows(Sheets.ZONES)).isEqualTo(before);
    assertThat(window.entry(Facts.ZONE_PLACE, before - 1))
        .isEqualTo(new Entry.Words("Roof terrace planters"));
  }

  @Test
  void cellsAreCopiedAsTextAndAsATableForOtherPrograms() throws Exception {
    window.goTo(Facts.ZONE_PLACE, 0);
    window.press(KeyEvent.VK_DOWN, KeyEvent.VK_SHIFT);
    window.press(KeyEvent.VK_RIGHT, KeyEvent.VK_SHIFT);
    window.press(KeyEvent.VK_RIGHT, KeyEvent.VK_SHIFT);
    command(KeyEvent.VK_C);
    assertThat(GridWindow.clipboard(DataFlavor.stringFlavor))
        .isEqualTo("Reading lawn, north half\tA\t2250\nReading lawn, south half\tA\t2250\n");
    assertThat(BlockHtml.read(GridWindow.clipboard(DataFlavor.allHtmlFlavor)))
        .contains(List.of("Reading lawn, south half", "A", "2250"));
  }

  @Test
  void aDefaultCopiedWithinTheGridStaysADefault() {
    window.goTo(Plants.PLANT_FACTOR, 0);
    window.type("0.5");
    window.enter();
    command(KeyEvent.VK_C);
    window.press(KeyEvent.VK_UP);
    command(KeyEvent.VK_V);
    assertThat(window.entry(Plants.PLANT_FACTOR, 0)).isEqualTo(Entry.BLANK);
  }

  @Test
  void oneCellPastedFillsAllThatAreSelected() {
    window.goTo(Emitters.AREA, 0);
    window.press(KeyEvent.VK_DOWN, KeyEvent.VK_SHIFT);
    window.press(KeyEvent.VK_DOWN, KeyEvent.VK_SHIFT);
    GridWindow.copied("500");
    command(KeyEvent.VK_V);
    for (int row = 0; row < 3; row++) {
      assertThat(window.entry(Emitters.AREA, row)).isEqualTo(new Entry.Figure(500));
    }
    assertThat(window.entry(Emitters.AREA, 3)).isEqualTo(new Entry.Figure(4100));
  }

  @Test
  void cutEmptiesWhatItCopied() throws Exception {
    window.goTo(Facts.ZONE_PLACE, 0);
    command(KeyEvent.VK_X);
    assertThat(GridWindow.clipboard(DataFlavor.stringFlavor).strip())
        .isEqualTo("Reading lawn, north half");
    assertThat(window.entry(Facts.ZONE_PLACE, 0)).isEqualTo(Entry.BLANK);
  }

  @Test
  void fillDownCopiesTheFirstCellSelected() {
    window.goTo(Emitters.AREA, 2);
    window.press(KeyEvent.VK_DOWN, KeyEvent.VK_SHIFT);
    window.press(KeyEvent.VK_DOWN, KeyEvent.VK_SHIFT);
    command(KeyEvent.VK_D);
    assertThat(window.entry(Emitters.AREA, 3)).isEqualTo(new Entry.Figure(1800));
    assertThat(window.entry(Emitters.AREA, 4)).isEqualTo(new Entry.Figure(1800));
    assertThat(window.entry(Emitters.AREA, 5)).isEqualTo(new Entry.Figure(900));
  }

  @Test
  void rowsAreInsertedDuplicatedMovedAndDeletedByKey() {
    window.goTo(Facts.ZONE_PLACE, 1);
    window.does(GridAction.MOVE_ROWS_UP);
    assertThat(names()).startsWith("2", "1", "3");
    window.does(GridAction.MOVE_ROWS_DOWN);
    assertThat(names()).startsWith("1", "2", "3");
    window.press(KeyEvent.VK_D, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
    assertThat(names()).startsWith("1", "2", "2 copy", "3");
    command(KeyEvent.VK_MINUS);
    assertThat(names()).startsWith("1", "2", "3");
    window.does(GridAction.INSERT_ROWS);
    assertThat(names()).startsWith("1", "2", "13", "3");
  }

  @Test
  void undoAndRedoActionsTakeBackAndDoAgain() {
    window.goTo(Emitters.AREA, 0);
    window.press(KeyEvent.VK_DELETE);
    command(KeyEvent.VK_Z);
    assertThat(window.entry(Emitters.AREA, 0)).isEqualTo(new Entry.Figure(2250));
    command(KeyEvent.VK_Y);
    assertThat(window.entry(Emitters.AREA, 0)).isEqualTo(Entry.BLANK);
    assertThat(window.selectedColumn()).isEqualTo(Emitters.AREA.reference());
  }

  @Test
  void arrowsWithControlGoToTheEdgeOfTheData() {
    window.goTo(Emitters.AREA, 3);
    window.press(KeyEvent.VK_DOWN, KeyEvent.VK_CONTROL);
    assertThat(window.selectedRow()).isEqualTo(11);
    window.press(KeyEvent.VK_UP, KeyEvent.VK_CONTROL);
    assertThat(window.selectedRow()).isZero();
    window.press(KeyEvent.VK_HOME);
    assertThat(window.selectedColumn()).isEqualTo(Facts.ZONE_NAME.reference());
  }

  @Test
  void aPressOnARowNumberOrAHeadingSelectsTheRowOrTheColumn() {
    JScrollPane pane =
        window.ask(
            () -> (JScrollPane) SwingUtilities.getAncestorOfClass(JScrollPane.class, window.table));
    int high = window.ask(() -> window.table.getRowHeight());
    window.click(pane.getRowHeader().getView(), new Point(8, 3 * high + high / 2), 1);
    assertThat(window.ask(() -> window.table.getSelectedRows())).containsExactly(3);
    assertThat(window.ask(() -> window.table.getSelectedColumnCount()))
        .isEqualTo(window.ask(() -> window.table.getColumnCount()));
    Rectangle heading = window.ask(() -> window.table.getTableHeader().getHeaderRect(3));
    window.click(
        window.ask(() -> window.table.getTableHeader()),
        new Point(heading.x + heading.width / 2, heading.height - 8),
        1);
    assertThat(window.ask(() -> window.table.getSelectedColumns())).containsExactly(3);
    assertThat(window.ask(() -> window.table.getSelectedRowCount()))
        .isEqualTo(window.ask(() -> window.table.getRowCount()));
  }

  @Test
  void theFirstColumnsStayInViewWhileTheOthersScroll() {
    int last = window.ask(() -> window.table.getColumnCount()) - 1;
    window.act(() -> window.table.changeSelection(4, last, false, false));
    JViewport view =
        window.ask(
            () -> (JViewport) SwingUtilities.getAncestorOfClass(JViewport.class, window.table));
    int scrolled = window.ask(() -> view.getViewPosition().x);
    assertThat(scrolled).isPositive();
    Rectangle name = window.ask(() -> window.table.getCellRect(2, 0, true));
    assertThat(name.x).isEqualTo(scrolled);
    window.clickCell(2, 1, 1);
    assertThat(window.selectedColumn()).isEqualTo(Facts.ZONE_PLACE.reference());
    assertThat(window.selectedRow()).isEqualTo(2);
    assertThat(window.ask(() -> view.getViewPosition().x)).isEqualTo(scrolled);
  }

  @Test
  void findingGoesToTheNextCellThatHoldsTheWords() {
    command(KeyEvent.VK_F);
    window.type("clay");
    int first = window.selectedRow();
    assertThat(String.valueOf(window.ask(() -> window.table.getValueAt(first, lead()))))
        .contains("clay");
    window.enter();
    assertThat(window.selectedRow()).isGreaterThan(first);
  }

  private int lead() {
    return window.table.getColumnModel().getSelectionModel().getLeadSelectionIndex();
  }

  @Test
  void whoListensHearsOfCellsThatExist() {
    List<CellPlace> heard = new ArrayList<>();
    window.act(() -> window.sheetGrid().onSelection(heard::add));
    window.goTo(Emitters.AREA, 11);
    window.press(KeyEvent.VK_DOWN);
    assertThat(heard).last().isEqualTo(new CellPlace(Emitters.AREA.reference(), 11));
    assertThat(window.ask(() -> window.sheetGrid().place())).isEmpty();
  }

  @Test
  void aChangeFromAnotherThreadIsShownOnTheEventThread() {
    window.goTo(Emitters.AREA, 3);
    window.design.book().perform(window.design.edits().inserted(Sheets.ZONES, 0, 2));
    window.waitUntil("the rows are there", () -> window.table.getRowCount() == 12 + 2 + 1);
    assertThat(window.selectedRow()).isEqualTo(3);
  }

  @Test
  void namesOfGivenRowsCannotBeTyped() {
    window.close();
    window = GridWindow.sheet(Demo.libraryGarden(UnitSystem.US), Sheets.MONTHS);
    window.goTo(Climate.MONTH, 0);
    window.type("x");
    assertThat(window.ask(() -> window.table.isEditing())).isFalse();
    GridWindow.copied("Nivose\t1");
    command(KeyEvent.VK_V);
    assertThat(window.entry(Climate.MONTH, 0)).isEqualTo(new Entry.Words("January"));
    window.press(KeyEvent.VK_DELETE);
    assertThat(window.entry(Climate.MONTH, 0)).isEqualTo(new Entry.Words("January"));
  }
}
