package zonewright.desk.part;

import java.awt.Window;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.KeyStroke;

/** Windows beside the main one: closed by their frame or by Escape they are hidden, not lost. */
public final class SideWindow {
  private SideWindow() {}

  /**
   * Makes a window; it is not shown yet.
   *
   * @param name what tests and screen readers know it by
   */
  public static JDialog of(Window owner, String title, String name) {
    JDialog dialog = new JDialog(owner, title);
    dialog.setName(name);
    dialog.setDefaultCloseOperation(JDialog.HIDE_ON_CLOSE);
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> dialog.setVisible(false),
            KeyStroke.getKeyStroke("ESCAPE"),
            JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
    return dialog;
  }

  /** Gives a window its size, as far as the screen has room for it, over its owner. */
  public static void place(JDialog dialog, int width, int height) {
    DialogSize.set(dialog, width, height);
    dialog.setLocationRelativeTo(dialog.getOwner());
  }

  /** Returns a button of such a window. */
  public static JButton button(String words, String tip, Runnable action) {
    JButton button = new JButton(words);
    button.setToolTipText(tip);
    button.addActionListener(event -> action.run());
    return button;
  }
}
