package zonewright.desk.part;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Insets;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.SwingConstants;
import javax.swing.UIManager;

/** A cell that another was made from, to go to: its name, and what it holds. */
public final class InputLink extends JButton {
  private final JLabel name = new JLabel();
  private final JLabel value = new JLabel();

  public InputLink(String named, String shown, Runnable go) {
    super(" ");
    setName("input " + named);
    setLayout(new BorderLayout(10, 0));
    name.setText(named);
    value.setText(shown);
    value.setHorizontalAlignment(SwingConstants.TRAILING);
    setBorder(BorderFactory.createEmptyBorder(4, 6, 4, 6));
    setMargin(new Insets(0, 0, 0, 0));
    putClientProperty(
        FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
    add(name, BorderLayout.LINE_START);
    add(value, BorderLayout.CENTER);
    setToolTipText("<html><body style='width:220px'>Go to " + named + ": " + shown);
    getAccessibleContext().setAccessibleName("Go to " + named + ", " + shown);
    addActionListener(event -> go.run());
    colour();
  }

  private void colour() {
    name.setForeground(UIManager.getColor("Zonewright.link"));
    value.setForeground(UIManager.getColor("Label.foreground"));
  }

  @Override
  public Dimension getPreferredSize() {
    Insets insets = getInsets();
    int height = Math.max(name.getPreferredSize().height, value.getPreferredSize().height);
    int width = name.getPreferredSize().width + 10 + value.getPreferredSize().width;
    return new Dimension(width + insets.left + insets.right, height + insets.top + insets.bottom);
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (name != null) {
      colour();
    }
  }
}
