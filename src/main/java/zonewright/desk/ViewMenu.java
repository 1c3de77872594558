package zonewright.desk;

import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JRadioButtonMenuItem;
import zonewright.desk.part.Deed;
import zonewright.desk.part.Look;

/** The menu of what the window looks like and which of its parts are shown. */
final class ViewMenu {
  private final Look look;
  private final Runnable restyled;
  private final Panels panels;

  /** Makes what fills it; {@code restyled} is told of another look. */
  ViewMenu(Look look, Runnable restyled, Panels panels) {
    this.look = look;
    this.restyled = restyled;
    this.panels = panels;
  }

  /** Fills it. */
  void fill(JMenu menu, Deed nextPicture, Deed nextPart) {
    ButtonGroup looks = new ButtonGroup();
    for (Look.Choice choice : Look.Choice.values()) {
      JRadioButtonMenuItem item =
          new JRadioButtonMenuItem(new Deed(choice.words(), () -> dress(choice)));
      item.setSelected(look.choice() == choice);
      looks.add(item);
      menu.add(item);
    }
    menu.addSeparator();
    menu.add(new Deed("Larger text", () -> resize(1)).keys("ctrl PERIOD").item());
    menu.add(new Deed("Smaller text", () -> resize(-1)).keys("ctrl COMMA").item());
    menu.add(new Deed("Usual text", () -> resize(0)).keys("ctrl 0").item());
    menu.addSeparator();
    menu.add(shown("Working", panels::showWorking));
    menu.add(shown("Findings", panels::showFindings));
    menu.add(nextPicture.item());
    menu.add(nextPart.item());
  }

  private void dress(Look.Choice choice) {
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
