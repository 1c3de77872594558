package zonewright.desk.sheets;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
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

  /** Shows which group is at the front. */
  public void front(SheetGroup group) {
    buttons.get(group).setSelected(true);
  }
}
