package zonewright.desk.part;

import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;

/** Something a person can do from a menu, a button or the keyboard. */
public final class UserAction extends AbstractAction {
  private final transient Runnable action;

  public UserAction(String name, Runnable action) {
    super(name);
    this.action = action;
  }

  /** Sets the keys that do it; {@code ctrl} stands for whatever the desktop uses for commands. */
  public UserAction keys(String keys) {
    KeyStroke stroke = KeyStroke.getKeyStroke(keys);
    int modifiers = stroke.getModifiers();
    if ((modifiers & InputEvent.CTRL_DOWN_MASK) != 0) {
      int others = InputEvent.SHIFT_DOWN_MASK | InputEvent.ALT_DOWN_MASK;
      int command = Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
      stroke = KeyStroke.getKeyStroke(stroke.getKeyCode(), (modifiers & others) | command);
    }
    putValue(Action.ACCELERATOR_KEY, stroke);
    return this;
  }

  /** Sets what is drawn beside its name. */
  public UserAction drawn(Icon icon) {
    putValue(Action.SMALL_ICON, icon);
    return this;
  }

  /** Sets the longer text a pointer resting on it shows. */
  public UserAction tip(String words) {
    putValue(Action.SHORT_DESCRIPTION, words);
    return this;
  }

  /** Returns it as it stands in a menu. */
  public JMenuItem item() {
    JMenuItem item = new JMenuItem(this);
    item.setIcon(null);
    item.setToolTipText(null);
    return item;
  }

  /** Does what a view offers as if a person had asked for it there. */
  public static void run(Action action, JComponent source) {
    action.actionPerformed(new ActionEvent(source, ActionEvent.ACTION_PERFORMED, ""));
  }

  public void rename(String name) {
    putValue(Action.NAME, name);
  }

  @Override
  public void actionPerformed(ActionEvent event) {
    action.run();
  }
}
