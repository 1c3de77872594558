package zonewright.desk;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import zonewright.desk.part.UserAction;

/** The menus, and the few buttons above the sheets: actions of others, in their places. */
final class Menus {
  private final JMenuBar bar = new JMenuBar();
  private final List<Part> parts;

  /** A menu: its name, the letter that opens it, and what fills it. */
  record Part(String name, char key, Consumer<JMenu> filling) {}

  /**
   * A button.
   *
   * @param text its own fixed text; empty for that of the action
   * @param layout where it stands in the row
   */
  record Button(UserAction action, String text, String layout) {}

  Menus(List<Part> parts) {
    this.parts = List.copyOf(parts);
    for (Part part : parts) {
      JMenu menu = new JMenu(part.name());
      menu.setMnemonic(part.key());
      bar.add(menu);
    }
  }

  /** Fills the menus, whose names alone stand in the bar at first; with that their keys work. */
  void fill() {
    for (int i = 0; i < parts.size(); i++) {
      parts.get(i).filling().accept(bar.getMenu(i));
    }
  }

  /** Returns the menu bar. */
  JMenuBar bar() {
    return bar;
  }

  /** Returns the buttons above the sheets. */
  static JComponent buttons(List<Button> buttons) {
    JPanel panel = new JPanel(new MigLayout("insets 6 10 4 10, gap 2", "", "[]"));
    panel.setName("buttons");
    buttons.forEach(each -> panel.add(made(each.action(), each.text()), each.layout()));
    panel.setBorder(BorderFactory.createEmptyBorder());
    return panel;
  }

  private static JButton made(UserAction action, String text) {
    JButton button = new JButton();
    if (!text.isEmpty()) {
      button.setHideActionText(true);
    }
    button.setAction(action);
    if (!text.isEmpty()) {
      button.setText(text);
      button.getAccessibleContext().setAccessibleName(text);
    }
    button.setName("button " + (text.isEmpty() ? action.getValue(Action.NAME) : text));
    button.putClientProperty(
        FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
    button.setFocusable(true);
    return button;
  }
}
