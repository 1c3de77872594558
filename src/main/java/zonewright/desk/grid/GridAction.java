package zonewright.desk.grid;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.KeyStroke;

/** What a person can have a grid do, for menus and keys. */
public enum GridAction {
  UNDO("Undo", Key.command(KeyEvent.VK_Z)),
  REDO("Redo", Key.command(KeyEvent.VK_Y), Key.shifted(KeyEvent.VK_Z)),
  CUT("Cut", Key.command(KeyEvent.VK_X)),
  COPY("Copy", Key.command(KeyEvent.VK_C)),
  PASTE("Paste", Key.command(KeyEvent.VK_V)),
  COPY_WITH_HEADINGS("Copy with headings", Key.shifted(KeyEvent.VK_C)),
  COPY_AS_SHOWN("Copy as shown"),
  PASTE_VALUES(
      "Paste values",
      KeyStroke.getKeyStroke(KeyEvent.VK_V, Key.command() | InputEvent.ALT_DOWN_MASK)),
  PASTE_TRANSPOSED("Paste transposed"),
  CLEAR("Clear", Key.plain(KeyEvent.VK_DELETE), Key.plain(KeyEvent.VK_BACK_SPACE)),
  EDIT("Edit cell", Key.plain(KeyEvent.VK_F2)),
  CHOOSE("Choose from list"),
  NOTE("Note …", KeyStroke.getKeyStroke(KeyEvent.VK_F2, InputEvent.SHIFT_DOWN_MASK)),
  COLOUR("Colour …", Key.shifted(KeyEvent.VK_K)),
  FILL_DOWN("Fill down", Key.command(KeyEvent.VK_D)),
  FILL_SERIES("Fill series", Key.shifted(KeyEvent.VK_I)),
  TODAY("Today's date", Key.command(KeyEvent.VK_SEMICOLON)),
  SELECT_ALL("Select all", Key.command(KeyEvent.VK_A)),
  SELECT_COLUMNS("Select columns", Key.command(KeyEvent.VK_SPACE)),
  SELECT_ROWS("Select rows", KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, InputEvent.SHIFT_DOWN_MASK)),
  INSERT_ROWS(
      "Insert rows above",
      Key.command(KeyEvent.VK_PLUS),
      Key.command(KeyEvent.VK_ADD),
      Key.shifted(KeyEvent.VK_EQUALS),
      Key.command(KeyEvent.VK_EQUALS)),
  DELETE_ROWS("Delete rows", Key.command(KeyEvent.VK_MINUS), Key.command(KeyEvent.VK_SUBTRACT)),
  DUPLICATE_ROWS("Duplicate rows", Key.shifted(KeyEvent.VK_D)),
  MOVE_ROWS_UP("Move rows up", Key.alt(KeyEvent.VK_UP)),
  MOVE_ROWS_DOWN("Move rows down", Key.alt(KeyEvent.VK_DOWN)),
  SORT("Sort rows …", Key.shifted(KeyEvent.VK_O)),
  FILTER("Show only some rows …", Key.shifted(KeyEvent.VK_F)),
  SHOW_ALL_ROWS("Show all rows"),
  COLUMN_LEFT(
      "Move column left",
      KeyStroke.getKeyStroke(
          KeyEvent.VK_LEFT, InputEvent.ALT_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK)),
  COLUMN_RIGHT(
      "Move column right",
      KeyStroke.getKeyStroke(
          KeyEvent.VK_RIGHT, InputEvent.ALT_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK)),
  CHOOSE_COLUMNS("Choose columns …"),
  HIDE_COLUMNS("Hide columns", Key.shifted(KeyEvent.VK_H)),
  SHOW_COLUMNS("Show columns hidden here"),
  FREEZE("Freeze columns up to here"),
  THAW("Freeze no columns"),
  FIT_COLUMNS("Fit columns to what stands in them"),
  OWN_COLUMN("Column of your own …", Key.shifted(KeyEvent.VK_N)),
  FIND("Find …", Key.command(KeyEvent.VK_F)),
  REPLACE("Find and replace …", Key.command(KeyEvent.VK_H)),
  FIND_NEXT("Find next", Key.plain(KeyEvent.VK_F3)),
  FIND_PREVIOUS(
      "Find previous", KeyStroke.getKeyStroke(KeyEvent.VK_F3, InputEvent.SHIFT_DOWN_MASK));

  private final String label;

  @SuppressWarnings("ImmutableEnumChecker") // made by List.of of keys that never change
  private final List<KeyStroke> keys;

  GridAction(String label, KeyStroke... keys) {
    this.label = label;
    this.keys = List.of(keys);
  }

  /** Says whether it is done to cells, rows or columns, rather than asking for something. */
  public boolean ofCells() {
    return switch (this) {
      case SORT,
          FILTER,
          SHOW_ALL_ROWS,
          CHOOSE_COLUMNS,
          OWN_COLUMN,
          FIND,
          REPLACE,
          FIND_NEXT,
          FIND_PREVIOUS ->
          false;
      default -> true;
    };
  }

  /** Returns what a menu calls it. */
  public String label() {
    return label;
  }

  /** Returns the key a menu shows for it. */
  public Optional<KeyStroke> key() {
    return keys.stream().findFirst();
  }

  /** Returns all keys that mean it. */
  public List<KeyStroke> keys() {
    return keys;
  }

  /** Makes keys with the modifier that the desktop uses for commands. */
  static final class Key {
    private Key() {}

    static int command() {
      return GraphicsEnvironment.isHeadless()
          ? InputEvent.CTRL_DOWN_MASK
          : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    }

    static KeyStroke plain(int code) {
      return KeyStroke.getKeyStroke(code, 0);
    }

    static KeyStroke command(int code) {
      return KeyStroke.getKeyStroke(code, command());
    }

    static KeyStroke shifted(int code) {
      return KeyStroke.getKeyStroke(code, command() | InputEvent.SHIFT_DOWN_MASK);
    }

    static KeyStroke alt(int code) {
      return KeyStroke.getKeyStroke(code, InputEvent.ALT_DOWN_MASK);
    }
  }
}
