package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dialog;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** Asks for the note on a cell. */
final class NoteForm {
  private final JDialog dialog;
  private final JTextArea area = new JTextArea(6, 40);
  private final Consumer<String> kept;

  /**
   * Prepares.
   *
   * @param over the cells among which it stands
   * @param cell what the cell is called
   * @param before the note there is
   * @param kept is given the note when it is kept, blank when it is removed
   */
  NoteForm(JComponent over, String cell, String before, Consumer<String> kept) {
    this.kept = kept;
    dialog =
        new JDialog(
            SwingUtilities.getWindowAncestor(over), "Note", Dialog.ModalityType.DOCUMENT_MODAL);
    dialog.setName("note");
    area.setName("note words");
    area.setText(before);
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    JLabel label = new JLabel("Note on " + cell);
    label.setLabelFor(area);
    area.getAccessibleContext().setAccessibleName(label.getText());
    JPanel page =
        new JPanel(new MigLayout("insets 12, fill, wrap 1, gap 8", "[grow]", "[][grow][]"));
    page.add(label, "wmin 0, growx");
    page.add(new JScrollPane(area), "grow");
    JPanel buttons = new JPanel(new MigLayout("insets 0, gap 6", "[]push[][]"));
    JButton remove = button("Remove", () -> take(""));
    remove.setEnabled(!before.isEmpty());
    buttons.add(remove);
    JButton keep = button("Keep", this::keep);
    keep.setToolTipText("Ctrl+Enter");
    buttons.add(keep);
    buttons.add(button("Cancel", dialog::dispose));
    page.add(buttons, "growx");
    dialog.add(page);
    key("ctrl ENTER", this::keep);
    key("ESCAPE", dialog::dispose);
    dialog.pack();
    dialog.setMinimumSize(UIScale.scale(new Dimension(320, 220)));
    dialog.setLocationRelativeTo(dialog.getOwner());
  }

  private static JButton button(String name, Runnable does) {
    JButton button = new JButton(name);
    button.setName("note " + name);
    button.addActionListener(event -> does.run());
    return button;
  }

  private void key(String stroke, Runnable does) {
    area.getInputMap().put(KeyStroke.getKeyStroke(stroke), stroke);
    area.getActionMap()
        .put(
            stroke,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                does.run();
              }
            });
  }

  private void keep() {
    take(area.getText());
  }

  private void take(String text) {
    dialog.dispose();
    kept.accept(text);
  }

  /** Asks. */
  void open() {
    dialog.setVisible(true);
  }
}
