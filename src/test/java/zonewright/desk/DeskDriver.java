package zonewright.desk;

import static org.assertj.swing.core.BasicRobot.robotWithCurrentAwtHierarchyWithoutScreenLock;

import java.awt.Component;
import java.awt.Container;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import zonewright.design.Demo;
import zonewright.desk.file.Shelf;
import zonewright.desk.file.WorkbookShelf;
import zonewright.desk.part.Appearance;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.UserPreferences;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Place;
import zonewright.units.UnitSystem;

/**
 * The main window with somebody at mouse and keyboard; painting away from the event thread fails
 * the test.
 */
final class DeskDriver implements AutoCloseable {
  final ScriptedQuestions questions = new ScriptedQuestions();
  private final Path spare;
  private final Shelf shelf;
  private final OpenDesign open;
  private final DeskWindow window;
  private final Robot robot;

  /** Another process that tests windows at the same time has another folder. */
  DeskDriver() {
    this(
        Path.of(
            System.getProperty("java.io.tmpdir"),
            "zonewright-unsaved-" + ProcessHandle.current().pid()));
  }

  /** Opens the window; the record of designs without a file goes into {@code spare}. */
  DeskDriver(Path spare) {
    this(
        spare,
        new WorkbookShelf(),
        new OpenDesign(Demo.libraryGarden(UnitSystem.US), "the demo"),
        DeskWindow::show);
  }

  /**
   * Opens the window on a design.
   *
   * @param shown shows it
   */
  DeskDriver(Path spare, Shelf shelf, OpenDesign open, Consumer<DeskWindow> shown) {
    this.spare = spare;
    this.shelf = shelf;
    this.open = open;
    FailOnThreadViolationRepaintManager.install();
    window = GuiActionRunner.execute(this::made);
    robot = robotWithCurrentAwtHierarchyWithoutScreenLock();
    robot.settings().delayBetweenEvents(10);
    robot.settings().eventPostingDelay(10);
    GuiActionRunner.execute(() -> shown.accept(window));
    robot.waitForIdle();
  }

  private DeskWindow made() {
    UserPreferences memory = new UserPreferences(new ForgottenPreferences());
    memory.keep("look", "LIGHT");
    Appearance look = new Appearance(memory);
    look.install();
    return new DeskWindow(memory, look, open, shelf, java.util.Optional.of(questions), spare);
  }

  DeskWindow window() {
    return window;
  }

  Book book() {
    return ask(() -> window.openDesign().book());
  }

  <T> T ask(Callable<T> question) {
    return GuiActionRunner.execute(question);
  }

  void act(Runnable action) {
    GuiActionRunner.execute(action::run);
    robot.waitForIdle();
  }

  void goTo(Column column, int row) {
    act(() -> window.deck().goTo(new Place(column.reference(), row)));
  }

  /** Types text and Enter, as at the keyboard. */
  void type(String text) {
    robot.enterText(text);
    press("ENTER");
  }

  /** Types text, as at the keyboard. */
  void write(String text) {
    robot.enterText(text);
    robot.waitForIdle();
  }

  /** Presses a key, such as {@code F8} or {@code ctrl Z}. */
  void press(String keys) {
    javax.swing.KeyStroke stroke = javax.swing.KeyStroke.getKeyStroke(keys);
    boolean control = (stroke.getModifiers() & KeyEvent.CTRL_DOWN_MASK) != 0;
    boolean shift = (stroke.getModifiers() & KeyEvent.SHIFT_DOWN_MASK) != 0;
    boolean alt = (stroke.getModifiers() & KeyEvent.ALT_DOWN_MASK) != 0;
    hold(KeyEvent.VK_CONTROL, control, true);
    hold(KeyEvent.VK_ALT, alt, true);
    hold(KeyEvent.VK_SHIFT, shift, true);
    robot.pressAndReleaseKey(stroke.getKeyCode());
    hold(KeyEvent.VK_SHIFT, shift, false);
    hold(KeyEvent.VK_ALT, alt, false);
    hold(KeyEvent.VK_CONTROL, control, false);
    robot.waitForIdle();
  }

  private void hold(int key, boolean wanted, boolean down) {
    if (wanted && down) {
      robot.pressKey(key);
    } else if (wanted) {
      robot.releaseKey(key);
    }
  }

  /** Finds a component that is shown, by its name. */
  Component named(String name) {
    return ask(() -> find(window.frame(), name));
  }

  private static Component find(Container container, String name) {
    for (Component component : container.getComponents()) {
      if (name.equals(component.getName()) && component.isVisible()) {
        return component;
      }
      if (component instanceof Container inner) {
        Component found = find(inner, name);
        if (found != null) {
          return found;
        }
      }
    }
    return null;
  }

  /** Returns a component that is shown; to be asked for where windows are made. */
  Component shown(String name) {
    return find(window.frame(), name);
  }

  boolean shows(String name) {
    Component found = named(name);
    return found != null && ask(found::isShowing);
  }

  void click(String name) {
    robot.click(named(name));
    robot.waitForIdle();
  }

  /** Presses a button in a window that another may lie over. */
  void pressBehind(String name) {
    act(() -> ((javax.swing.AbstractButton) find(window.frame(), name)).doClick(0));
  }

  /** Returns a table in a dialog, once the dialog is there. */
  JTable dialogTable(String dialog, String table) {
    waitUntil(dialog, () -> dialog(dialog) != null);
    return (JTable) ask(() -> find(dialog(dialog), table));
  }

  /** Clicks something in a dialog that is there. */
  void clickInDialog(String dialog, String name) {
    robot.click(ask(() -> find(dialog(dialog), name)));
    robot.waitForIdle();
  }

  /** Says whether a dialog is there; to be asked for where windows are made. */
  boolean dialogIsOpen(String name) {
    return dialog(name) != null;
  }

  /** Returns something in a dialog that is there; to be asked for where windows are made. */
  Component inDialog(String dialog, String name) {
    return find(dialog(dialog), name);
  }

  /** Returns a field in a dialog that is there; to be asked for where windows are made. */
  JTextComponent dialogField(String dialog, String name) {
    return (JTextComponent) inDialog(dialog, name);
  }

  private static Container dialog(String name) {
    for (java.awt.Window each : java.awt.Window.getWindows()) {
      if (name.equals(each.getName()) && each.isShowing()) {
        return each;
      }
    }
    return null;
  }

  void clickRow(String table, int row) {
    JTable list = (JTable) named(table);
    Rectangle cell = ask(() -> list.getCellRect(row, 2, true));
    robot.click(list, new Point(cell.x + 20, cell.y + cell.height / 2), MouseButton.LEFT_BUTTON, 1);
    robot.waitForIdle();
  }

  /** Clicks once on the remedy of a finding, wherever in its words that stands. */
  void clickRemedy(int row) {
    JTable list = (JTable) named("findings list");
    Rectangle cell = ask(() -> list.getCellRect(row, 2, true));
    Point at =
        ask(
            () -> {
              for (int y = cell.y + 4; y < cell.y + cell.height; y += 6) {
                for (int x = cell.x + 4; x < cell.x + cell.width; x += 6) {
                  Point point = new Point(x, y);
                  list.dispatchEvent(
                      new java.awt.event.MouseEvent(
                          list, java.awt.event.MouseEvent.MOUSE_MOVED, 0, 0, x, y, 0, false));
                  if (list.getCursor().getType() == java.awt.Cursor.HAND_CURSOR) {
                    return point;
                  }
                }
              }
              throw new AssertionError("there is no remedy");
            });
    robot.click(list, at, MouseButton.LEFT_BUTTON, 1);
    robot.waitForIdle();
  }

  /** Returns the text of a component of prose. */
  String text(String name) {
    return ask(() -> ((JTextComponent) find(window.frame(), name)).getText());
  }

  /** Returns the text of an item of a menu. */
  String item(int menu, int item) {
    return ask(() -> menu(menu).getItem(item).getText());
  }

  /** Chooses what a menu, or a menu in it, offers under a name or under words it begins with. */
  void choose(String text) {
    act(() -> item(text).doClick(0));
  }

  /** Returns what a menu offers; to be asked for where windows are made. */
  JMenuItem item(String text) {
    List<JMenuItem> all = new ArrayList<>();
    JMenuBar bar = window.frame().getJMenuBar();
    for (int menu = 0; menu < bar.getMenuCount(); menu++) {
      gather(menu(menu), all);
    }
    return all.stream()
        .filter(item -> item.getText().equals(text))
        .findFirst()
        .or(() -> all.stream().filter(item -> item.getText().startsWith(text)).findFirst())
        .orElseThrow(() -> new AssertionError("no menu has an item " + text));
  }

  private static void gather(JMenu menu, List<JMenuItem> all) {
    for (Component each : menu.getMenuComponents()) {
      if (each instanceof JMenu inner) {
        gather(inner, all);
      } else if (each instanceof JMenuItem item) {
        all.add(item);
      }
    }
  }

  private JMenu menu(int at) {
    return window.frame().getJMenuBar().getMenu(at);
  }

  Place current() {
    return ask(() -> window.deck().current().orElseThrow());
  }

  void waitUntil(String what, Callable<Boolean> holds) {
    Pause.pause(
        new Condition(what) {
          @Override
          public boolean test() {
            return GuiActionRunner.execute(holds);
          }
        },
        20_000);
    robot.waitForIdle();
  }

  @Override
  public void close() {
    GuiActionRunner.execute(() -> window.frame().dispose());
    robot.cleanUp();
  }
}
