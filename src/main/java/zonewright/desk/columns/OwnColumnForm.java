package zonewright.desk.columns;

import java.awt.KeyboardFocusManager;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import zonewright.design.OwnColumnDraft;
import zonewright.desk.part.TextListener;

/** What is written down of a column of one's own. */
final class OwnColumnForm {
  /** In place of a number of decimals. */
  private static final String USUAL = "usual";

  private final JTextField name = new JTextField(24);
  private final JComboBox<String> sheet = box(OwnColumnDraft.sheets());
  private final JComboBox<String> kind = box(OwnColumnDraft.kinds());
  private final JTextArea equation = new JTextArea(3, 40);
  private final JComboBox<String> decimals = box(List.of(USUAL, "0", "1", "2", "3", "4", "5", "6"));
  private final JTextField least = new JTextField(12);
  private final JTextField most = new JTextField(12);
  private final JTextField note = new JTextField(24);
  private final Runnable changed;
  private boolean filling;

  /** Prepares; {@code changed} hears when something else is written. */
  OwnColumnForm(Runnable changed) {
    this.changed = changed;
    equation.setLineWrap(true);
    equation.setWrapStyleWord(true);
    // Tab leads on to the next field, as everywhere in a form
    equation.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
    equation.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
    equation.getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "none");
    named(name, "own name", "Name of the column");
    named(sheet, "own sheet", "Sheet it stands on");
    named(kind, "own kind", "Kind of its numbers");
    named(equation, "own equation", "Equation");
    named(decimals, "own decimals", "Decimals it shows");
    named(least, "own least", "At least");
    named(most, "own most", "At most");
    named(note, "own note", "What to do where a limit is broken");
    for (JTextField field : List.of(name, least, most, note)) {
      field.getDocument().addDocumentListener(new TextListener(this::told));
    }
    equation.getDocument().addDocumentListener(new TextListener(this::told));
    List.of(sheet, kind, decimals).forEach(each -> each.addActionListener(event -> told()));
  }

  private static JComboBox<String> box(List<String> words) {
    return new JComboBox<>(words.toArray(String[]::new));
  }

  private static void named(JComponent field, String name, String words) {
    field.setName(name);
    field.getAccessibleContext().setAccessibleName(words);
  }

  private void told() {
    if (!filling) {
      changed.run();
    }
  }

  /** Returns the fields above the equation. */
  JPanel head() {
    JPanel panel =
        new JPanel(new MigLayout("insets 0, fillx, wrap 4", "[][grow,fill]14[][]", "[]6[]"));
    row(panel, "Name", name);
    row(panel, "On sheet", sheet);
    row(panel, "Kind", kind);
    row(panel, "Decimals", decimals);
    return panel;
  }

  /** Returns the equation. */
  JComponent equation() {
    equation.setBorder(BorderFactory.createEmptyBorder(4, 6, 4, 6));
    return new JScrollPane(equation);
  }

  /** Returns the fields of its limits. */
  JPanel limits() {
    JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 4", "[][]14[][grow]", "[]6[]"));
    row(panel, "At least", least);
    row(panel, "At most", most);
    panel.add(label("What to do", note));
    panel.add(note, "growx, span 3");
    note.putClientProperty("JTextField.placeholderText", "Said where a limit is broken");
    return panel;
  }

  private static void row(JPanel panel, String words, JComponent field) {
    panel.add(label(words, field));
    panel.add(field);
  }

  private static JLabel label(String words, JComponent field) {
    JLabel label = new JLabel(words);
    label.setLabelFor(field);
    return label;
  }

  /** Returns what is written. */
  OwnColumnDraft draft() {
    String digits = (String) decimals.getSelectedItem();
    return new OwnColumnDraft(
        name.getText(),
        (String) sheet.getSelectedItem(),
        (String) kind.getSelectedItem(),
        equation.getText(),
        USUAL.equals(digits) ? "" : digits,
        least.getText(),
        most.getText(),
        note.getText());
  }

  /** Writes a draft in. */
  void fill(OwnColumnDraft draft) {
    filling = true;
    name.setText(draft.name());
    sheet.setSelectedItem(draft.sheet());
    kind.setSelectedItem(draft.kind());
    equation.setText(draft.equation());
    decimals.setSelectedItem(draft.decimals().isEmpty() ? USUAL : draft.decimals());
    least.setText(draft.least());
    most.setText(draft.most());
    note.setText(draft.note());
    filling = false;
  }

  JTextField name() {
    return name;
  }

  /** Puts words in the place of others in the equation, with the keyboard behind them. */
  void replace(int from, int to, String words) {
    int length = equation.getDocument().getLength();
    equation.replaceRange(words, Math.min(from, length), Math.min(to, length));
    equation.requestFocusInWindow();
  }

  /** Puts words where the keyboard is in the equation, a blank before them where one is needed. */
  void insert(String words) {
    int from = equation.getSelectionStart();
    String before = equation.getText().substring(0, from);
    boolean apart = !before.isEmpty() && Character.isLetterOrDigit(before.charAt(from - 1));
    replace(from, equation.getSelectionEnd(), (apart ? " " : "") + words);
  }
}
