package zonewright.desk.grid;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Graphics;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.Locale;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** Finds words or figures in the cells of a grid while they are being typed. */
final class FindBar extends JPanel {
  private final EntryTable table;
  private final JTextField field = new JTextField(24);
  private final JLabel found = new JLabel(" ");

  FindBar(EntryTable table) {
    super(new FlowLayout(FlowLayout.LEADING, UIScale.scale(6), UIScale.scale(5)));
    this.table = table;
    setVisible(false);
    field.setName("find");
    field.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, "Find in the cells");
    field.putClientProperty(FlatClientProperties.TEXT_FIELD_SHOW_CLEAR_BUTTON, true);
    field.getAccessibleContext().setAccessibleName("find in the cells");
    setBorder(BorderFactory.createEmptyBorder(UIScale.scale(1), UIScale.scale(4), 0, 0));
    add(field);
    add(button("Next", () -> find(1)));
    add(button("Previous", () -> find(-1)));
    add(button("Close", this::close));
    add(found);
    field
        .getDocument()
        .addDocumentListener(
            new DocumentListener() {
              @Override
              public void insertUpdate(DocumentEvent event) {
                find(0);
              }

              @Override
              public void removeUpdate(DocumentEvent event) {
                find(0);
              }

              @Override
              public void changedUpdate(DocumentEvent event) {}
            });
    key(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), () -> find(1));
    key(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, InputEvent.SHIFT_DOWN_MASK), () -> find(-1));
    key(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), this::close);
  }

  private static JButton button(String label, Runnable does) {
    JButton button = new JButton(label);
    button.setFocusable(false);
    button.addActionListener(event -> does.run());
    return button;
  }

  private void key(KeyStroke key, Runnable does) {
    field.getInputMap().put(key, key.toString());
    field
        .getActionMap()
        .put(
            key.toString(),
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                does.run();
              }
            });
  }

  /** Gives a grid the actions of finding. */
  void install(GridActions actions) {
    actions.does(GridAction.FIND, this::open);
    actions.does(GridAction.FIND_NEXT, () -> find(1));
    actions.does(GridAction.FIND_PREVIOUS, () -> find(-1));
  }

  private void open() {
    table.commit();
    setVisible(true);
    revalidate();
    field.selectAll();
    field.requestFocusInWindow();
  }

  private void close() {
    setVisible(false);
    table.requestFocusInWindow();
  }

  /** Goes to a cell that holds what is sought: from this one on for 0, else after or before it. */
  private void find(int step) {
    String sought = field.getText().strip().toLowerCase(Locale.ROOT);
    int columns = table.getColumnCount();
    int cells = table.getRowCount() * columns;
    found.setText(" ");
    if (sought.isEmpty() || cells == 0) {
      return;
    }
    int from = Math.max(0, table.leadRow()) * columns + Math.max(0, table.leadColumn());
    int direction = step == 0 ? 1 : step;
    for (int i = 0; i < cells; i++) {
      int at = Math.floorMod(from + step + i * direction, cells);
      if (words(at / columns, at % columns).contains(sought)) {
        table.changeSelection(at / columns, at % columns, false, false);
        return;
      }
    }
    found.setText("“" + field.getText().strip() + "” is in no cell");
  }

  private String words(int row, int column) {
    return table
        .declared(row, column)
        .map(declared -> table.looks().sought(declared, table.bookRow(row)))
        .orElse("")
        .toLowerCase(Locale.ROOT);
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
