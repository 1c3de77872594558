package zonewright.desk.sheets;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** The groups of sheets in a row; one is at the front. */
public final class GroupBar extends JPanel {
  private final Map<SheetGroup, JToggleButton> buttons = new EnumMap<>(SheetGroup.class);

  /** Makes one; {@code chosen} is told which group a person wants. */
  public GroupBar(Consumer<SheetGroup> chosen) {
    super(new MigLayout("insets 0 4 2 4, gap 4"));
    setName("groups of sheets");
    setOpaque(false);
    ButtonGroup one = new ButtonGroup();
    for (SheetGroup group : SheetGroup.values()) {
      JToggleButton button = new JToggleButton(group.words());
      button.setName("group " + group.words());
      button.setToolTipText(group.about() + " (Ctrl+" + group.digit() + ")");
      button.putClientProperty(
          FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
      button.addActionListener(event -> chosen.accept(group));
      one.add(button);
      buttons.put(group, button);
      add(button, "wmin 30");
    }
  }

  /** Shows which groups are in use; the others stand back. */
  void used(Predicate<SheetGroup> used) {
    buttons.forEach(
        (group, button) -> {
          boolean quiet = !used.test(group);
          button.setForeground(quiet ? UIManager.getColor("Zonewright.muted") : null);
          button.setToolTipText(
              "%s (Ctrl+%s)%s"
                  .formatted(group.about(), group.digit(), quiet ? "; not in use yet" : ""));
        });
  }

  /** Shows which group is at the front. */
  public void front(SheetGroup group) {
    buttons.get(group).setSelected(true);
  }
}
