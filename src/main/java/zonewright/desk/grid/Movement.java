package zonewright.desk.grid;

import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.function.IntPredicate;
import java.util.function.IntUnaryOperator;
import javax.swing.AbstractAction;
import javax.swing.ActionMap;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Moves through a grid by keys as in a spreadsheet: what is being typed is kept first. */
final class Movement {
  private final EntryTable table;

  /** The column where a run of Tab began, to which Enter returns; -1 outside such a run. */
  private int tabStart = -1;

  private boolean tabbing;

  private Movement(EntryTable table) {
    this.table = table;
  }

  /** Gives a grid its keys. */
  static void install(EntryTable table) {
    new Movement(table).bind();
  }

  private void bind() {
    table
        .getColumnModel()
        .getSelectionModel()
        .addListSelectionListener(
            event -> {
              if (!tabbing) {
                tabStart = -1;
              }
            });
    arrow(KeyEvent.VK_UP, -1, 0);
    arrow(KeyEvent.VK_DOWN, 1, 0);
    arrow(KeyEvent.VK_LEFT, 0, -1);
    arrow(KeyEvent.VK_RIGHT, 0, 1);
    both(KeyEvent.VK_END, 0, row -> row, column -> lastColumn());
    start(0, row -> row);
    start(GridAction.Key.command(), row -> 0);
    both(KeyEvent.VK_END, GridAction.Key.command(), row -> lastRow(), column -> lastColumn());
    page(KeyEvent.VK_PAGE_UP, -1);
    page(KeyEvent.VK_PAGE_DOWN, 1);
    key(KeyEvent.VK_ENTER, 0, () -> enter(1));
    key(KeyEvent.VK_ENTER, InputEvent.SHIFT_DOWN_MASK, () -> enter(-1));
    key(KeyEvent.VK_TAB, 0, () -> tab(1));
    key(KeyEvent.VK_TAB, InputEvent.SHIFT_DOWN_MASK, () -> tab(-1));
    key(KeyEvent.VK_ESCAPE, 0, this::escape);
  }

  /** Binds Home: to the first column, and with it in view. */
  private void start(int modifiers, IntUnaryOperator row) {
    for (int shift : new int[] {0, InputEvent.SHIFT_DOWN_MASK}) {
      key(
          KeyEvent.VK_HOME,
          modifiers | shift,
          () -> {
            go(row, column -> 0, shift != 0);
            table.showFirstColumn();
          });
    }
  }

  /** Binds a key to a page up or down: what is seen moves as far as what is selected. */
  private void page(int code, int direction) {
    for (int shift : new int[] {0, InputEvent.SHIFT_DOWN_MASK}) {
      key(
          code,
          shift,
          () -> {
            table.scrollRows(direction * page());
            go(row -> row + direction * page(), column -> column, shift != 0);
          });
    }
    key(code, InputEvent.ALT_DOWN_MASK, () -> across(direction));
  }

  /** Goes on by as many columns as are seen. */
  private void across(int direction) {
    int room = table.getVisibleRect().width - table.stayingWidth();
    go(
        row -> row,
        column -> {
          int to = column;
          int width = 0;
          while (to + direction >= 0 && to + direction <= lastColumn() && width < room) {
            width += table.getColumnModel().getColumn(to).getWidth();
            to += direction;
          }
          return to;
        },
        false);
  }

  private void arrow(int code, int down, int right) {
    both(code, 0, row -> row + down, column -> column + right);
    both(
        code,
        GridAction.Key.command(),
        row -> edgeRow(row, table.leadColumn(), down),
        column -> edgeColumn(table.leadRow(), column, right));
  }

  /** Binds a key to a move, and with Shift to the same move that extends what is selected. */
  private void both(int code, int modifiers, IntUnaryOperator row, IntUnaryOperator column) {
    key(code, modifiers, () -> go(row, column, false));
    key(code, modifiers | InputEvent.SHIFT_DOWN_MASK, () -> go(row, column, true));
  }

  private void key(int code, int modifiers, Runnable does) {
    KeyStroke stroke = KeyStroke.getKeyStroke(code, modifiers);
    String name = "move " + stroke;
    InputMap keys = table.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
    ActionMap actions = table.getActionMap();
    keys.put(stroke, name);
    actions.put(
        name,
        new AbstractAction() {
          @Override
          public void actionPerformed(ActionEvent event) {
            does.run();
          }
        });
  }

  private void go(IntUnaryOperator row, IntUnaryOperator column, boolean extend) {
    table.commit();
    if (table.getRowCount() == 0 || table.getColumnCount() == 0) {
      return;
    }
    int toRow = within(row.applyAsInt(Math.max(0, table.leadRow())), lastRow());
    int toColumn = within(column.applyAsInt(Math.max(0, table.leadColumn())), lastColumn());
    table.requestFocusInWindow();
    table.changeSelection(toRow, toColumn, false, extend);
  }

  private void enter(int step) {
    int back = tabStart;
    go(row -> row + step, column -> back >= 0 ? back : column, false);
    tabStart = -1;
  }

  private void tab(int step) {
    int start = tabStart >= 0 ? tabStart : table.leadColumn();
    tabbing = true;
    int column = table.leadColumn() + step;
    boolean wraps = column < 0 || column > lastColumn();
    if (wraps && table.wrapsTab()) {
      go(row -> row + step, any -> step > 0 ? 0 : lastColumn(), false);
    } else {
      go(row -> row, any -> column, false);
    }
    tabbing = false;
    tabStart = start;
  }

  private void escape() {
    if (table.isEditing()) {
      table.getCellEditor().cancelCellEditing();
      table.requestFocusInWindow();
    } else if (table.leadRow() >= 0 && table.leadColumn() >= 0) {
      table.changeSelection(table.leadRow(), table.leadColumn(), false, false);
    }
  }

  private int lastRow() {
    return table.getRowCount() - 1;
  }

  private int lastColumn() {
    return table.getColumnCount() - 1;
  }

  private int page() {
    return Math.max(1, table.getVisibleRect().height / table.getRowHeight() - 1);
  }

  private static int within(int wanted, int last) {
    return Math.max(0, Math.min(last, wanted));
  }

  private int edgeRow(int row, int column, int down) {
    return down == 0 ? row : run(row, down, lastRow(), at -> filled(at, column));
  }

  private int edgeColumn(int row, int column, int right) {
    return right == 0 ? column : run(column, right, lastColumn(), at -> filled(row, at));
  }

  private boolean filled(int row, int column) {
    return !String.valueOf(table.getValueAt(row, column)).isEmpty();
  }

  /** Returns where a run of filled cells ends, or the next one begins. */
  private static int run(int from, int step, int last, IntPredicate filled) {
    int at = from + step;
    if (at < 0 || at > last) {
      return from;
    }
    boolean inRun = filled.test(from) && filled.test(at);
    while (at + step >= 0 && at + step <= last) {
      if (inRun ? !filled.test(at + step) : filled.test(at)) {
        return at;
      }
      at += step;
    }
    return at;
  }
}
