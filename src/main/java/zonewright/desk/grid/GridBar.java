package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.LayoutManager;
import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import zonewright.desk.part.Palette;

/** A line at the foot of a grid that asks something there, where a dialog would be in the way. */
abstract class GridBar extends JPanel {
  private final EntryTable table;

  /** Makes a bar whose parts stand as its layout says. */
  GridBar(EntryTable table) {
    this(table, new MigLayout("insets 4 8 4 8, gap 6 4, hidemode 3", "", "[]"));
  }

  GridBar(EntryTable table, LayoutManager layout) {
    super(layout);
    this.table = table;
    setVisible(false);
    setBorder(BorderFactory.createEmptyBorder(UIScale.scale(1), 0, 0, 0));
    key("ESCAPE", this::close);
  }

  EntryTable table() {
    return table;
  }

  /** Binds a key for all that stands in the bar. */
  final void key(String stroke, Runnable does) {
    getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(stroke), stroke);
    getActionMap()
        .put(
            stroke,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                does.run();
              }
            });
  }

  static JButton button(String label, Runnable does) {
    JButton button = new JButton(label);
    button.setName("grid bar " + label);
    button.addActionListener(event -> does.run());
    return button;
  }

  /** Returns parts that stay together, the first saying what the others are. */
  static JPanel together(JComponent... parts) {
    JPanel panel = new JPanel(new MigLayout("insets 0, gap 6"));
    panel.setOpaque(false);
    for (JComponent part : parts) {
      panel.add(part, part instanceof JComboBox ? "wmax 220" : "");
    }
    return panel;
  }

  /** A bar that came to another width may need more lines, or fewer. */
  @Override
  public void setBounds(int x, int y, int width, int height) {
    boolean other = width != getWidth();
    super.setBounds(x, y, width, height);
    if (other) {
      SwingUtilities.invokeLater(this::revalidate);
    }
  }

  /** Shows the bar with the keyboard in one of its parts. */
  final void open(JComponent first) {
    table.commit();
    for (java.awt.Component other : getParent().getComponents()) {
      other.setVisible(other == this);
    }
    revalidate();
    first.requestFocusInWindow();
  }

  /** Hides the bar and gives the keyboard back to the grid. */
  void close() {
    setVisible(false);
    table.requestFocusInWindow();
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(0, getPreferredSize().height);
  }

  @Override
  protected void paintComponent(Graphics g) {
    g.setColor(Palette.current().headingGround());
    g.fillRect(0, 0, getWidth(), getHeight());
    g.setColor(Palette.current().strongLine());
    g.fillRect(0, 0, getWidth(), 1);
  }
}
