package zonewright.desk.grid;

import static org.assertj.swing.core.BasicRobot.robotWithCurrentAwtHierarchyWithoutScreenLock;

import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.event.KeyEvent;
import java.util.concurrent.Callable;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.JTable;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import zonewright.design.Design;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;

/** A grid in a window of its own, with somebody at the keyboard. */
final class GridWindow implements AutoCloseable {
  final Design design;
  final JPanel grid;
  final JTable table;
  private final Robot robot;
  private final JFrame frame;

  private GridWindow(Design design, JPanel grid, JTable table) {
    this.design = design;
    this.grid = grid;
    this.table = table;
    this.frame = GuiActionRunner.execute(() -> framed(grid));
    this.robot = robotWithCurrentAwtHierarchyWithoutScreenLock();
    robot.settings().delayBetweenEvents(10);
    robot.settings().eventPostingDelay(10);
    robot.showWindow(frame, new Dimension(1100, 600), false);
    robot.focusAndWaitForFocusGain(table);
  }

  private static JFrame framed(JPanel grid) {
    JFrame frame = new JFrame("grid");
    frame.add(grid);
    return frame;
  }

  static GridWindow sheet(Design design, String tableId) {
    prepare();
    SheetGrid grid = GuiActionRunner.execute(() -> new SheetGrid(design.book(), tableId));
    return new GridWindow(design, grid, grid.table());
  }

  static GridWindow record(Design design, String tableId) {
    prepare();
    RecordGrid grid = GuiActionRunner.execute(() -> new RecordGrid(design.book(), tableId));
    return new GridWindow(design, grid, grid.table());
  }

  private static void prepare() {
    FailOnThreadViolationRepaintManager.install();
    GuiActionRunner.execute(() -> FlatLightLaf.setup());
  }

  <T> T ask(Callable<T> question) {
    return GuiActionRunner.execute(question);
  }

  void act(Runnable what) {
    GuiActionRunner.execute(what::run);
    robot.waitForIdle();
  }

  /** Drags the window to another width. */
  void widen(int width) {
    act(
        () -> {
          frame.setSize(width, frame.getHeight());
          frame.validate();
        });
    act(() -> {});
  }

  SheetGrid sheetGrid() {
    return (SheetGrid) grid;
  }

  void goTo(Column column, int row) {
    act(() -> sheetGrid().goTo(column.reference(), row));
  }

  void type(String text) {
    robot.enterText(text);
    robot.waitForIdle();
  }

  /** Presses a key while others, given by their codes, are held down. */
  void press(int key, int... held) {
    for (int code : held) {
      robot.pressKey(code);
    }
    robot.pressAndReleaseKey(key);
    for (int code : held) {
      robot.releaseKey(code);
    }
    robot.waitForIdle();
  }

  /** Does what a menu would do; for keys that the test's own toolkit does not know. */
  void does(GridAction which) {
    act(() -> sheetGrid().action(which).actionPerformed(null));
  }

  void enter() {
    press(KeyEvent.VK_ENTER);
  }

  void click(Component component, Point at, int times) {
    robot.click(component, at, MouseButton.LEFT_BUTTON, times);
    robot.waitForIdle();
  }

  /** Presses the left button at one point and lets it go at another. */
  void drag(Component component, Point from, Point to) {
    robot.pressMouse(component, from, MouseButton.LEFT_BUTTON);
    robot.moveMouse(component, new Point(from.x, (from.y + to.y) / 2));
    robot.moveMouse(component, to);
    robot.releaseMouseButtons();
    robot.waitForIdle();
  }

  void clickCell(int row, int column, int times) {
    Rectangle cell = ask(() -> table.getCellRect(row, column, true));
    click(table, new Point(cell.x + cell.width / 2, cell.y + cell.height / 2), times);
  }

  Reference selectedColumn() {
    return ask(() -> sheetGrid().place().orElseThrow().column());
  }

  int columnWidth(Column column) {
    return ask(() -> sheetGrid().table().getColumn(column.reference().key()).getWidth());
  }

  int selectedRow() {
    return ask(() -> sheetGrid().place().orElseThrow().row());
  }

  Entry entry(Column column, int row) {
    return ask(() -> design.book().entry(column.reference(), row));
  }

  Outcome outcome(Column column, int row) {
    return ask(() -> design.book().outcome(column.reference(), row));
  }

  int rows(String tableId) {
    return ask(() -> design.book().rows(tableId));
  }

  static void copied(String text) {
    Toolkit.getDefaultToolkit()
        .getSystemClipboard()
        .setContents(new StringSelection(text), (clipboard, contents) -> {});
  }

  static String clipboard(DataFlavor flavor) throws Exception {
    return (String) Toolkit.getDefaultToolkit().getSystemClipboard().getData(flavor);
  }

  void waitUntil(String what, Callable<Boolean> holds) {
    Pause.pause(
        new Condition(what) {
          @Override
          public boolean test() {
            return ask(holds);
          }
        });
  }

  @Override
  public void close() {
    robot.cleanUp();
  }
}
