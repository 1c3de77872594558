package zonewright.desk;

import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JRadioButtonMenuItem;
import zonewright.desk.part.Appearance;
import zonewright.desk.part.UserAction;

/** The menu of what the window looks like and which of its parts are shown. */
final class ViewMenu {
  private final Appearance look;
  private final Runnable restyled;
  private final Panels panels;

  /** Makes what fills it; {@code restyled} is told of another look. */
  ViewMenu(Appearance look, Runnable restyled, Panels panels) {
    this.look = look;
    this.restyled = restyled;
    this.panels = panels;
  }

  /** Fills it. */
  void fill(JMenu menu, UserAction nextPicture, UserAction nextPart) {
    ButtonGroup looks = new ButtonGroup();
    for (Appearance.Choice choice : Appearance.Choice.values()) {
      JRadioButtonMenuItem item =
          new JRadioButtonMenuItem(new UserAction(choice.words(), () -> dress(choice)));
      item.setSelected(look.choice() == choice);
      looks.add(item);
      menu.add(item);
    }
    menu.addSeparator();
    menu.add(new UserAction("Larger text", () -> resize(1)).keys("ctrl PERIOD").item());
    menu.add(new UserAction("Smaller text", () -> resize(-1)).keys("ctrl COMMA").item());
    menu.add(new UserAction("Usual text", () -> resize(0)).keys("ctrl 0").item());
    menu.addSeparator();
    menu.add(shown("Working", panels::showWorking));
    menu.add(shown("Findings", panels::showFindings));
    menu.add(nextPicture.item());
    menu.add(nextPart.item());
  }

  private void dress(Appearance.Choice choice) {
    look.choose(choice);
    restyled.run();
  }

  private void resize(int step) {
    look.resize(step);
    restyled.run();
  }

  private static JCheckBoxMenuItem shown(String name, Consumer<Boolean> show) {
    JCheckBoxMenuItem item = new JCheckBoxMenuItem("Show " + name.toLowerCase(Locale.ROOT), true);
    item.addItemListener(event -> show.accept(item.isSelected()));
    return item;
  }
}
