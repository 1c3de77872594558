package zonewright.desk.sure;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dialog;
import java.awt.Dimension;
import java.awt.Window;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import zonewright.desk.part.Prose;
import zonewright.sheet.Book;
import zonewright.sheet.Place;
import zonewright.uncertainty.TypedRange;

/** Asks what the input in a cell lies between. */
public final class RangeForm {
  private final Book book;
  private final TypedRange range;
  private final JDialog dialog;
  private final JTextField field = new JTextField(24);
  private final Prose problem = new Prose(" ").coloured("Zonewright.limit");

  private RangeForm(Window owner, Book book, TypedRange range) {
    this.book = book;
    this.range = range;
    dialog = new JDialog(owner, "Range", Dialog.ModalityType.DOCUMENT_MODAL);
    dialog.setName("range");
    field.setName("range typed");
    field.setText(range.typed());
    JLabel label = new JLabel("It lies between");
    label.setLabelFor(field);
    field.getAccessibleContext().setAccessibleName("Range of " + range.name());
    problem.setName("range problem");
    JPanel page = new JPanel(new MigLayout("insets 14, fill, wrap 2, gap 8", "[][grow]"));
    page.add(new Prose(range.name() + ": " + range.held()).styled("h3"), "span 2, growx, wmin 100");
    page.add(
        new Prose(
            "The number stays the best guess the design rests on. Write for example 0.2 to 0.5, with the unit if you like, or ± 10 %."),
        "span 2, growx, wmin 100");
    range
        .published()
        .ifPresent(
            words ->
                page.add(
                    new Prose("Published, and counted while nothing is typed here: " + words + "."),
                    "span 2, growx, wmin 100"));
    page.add(label);
    page.add(field, "growx");
    page.add(problem, "span 2, growx, wmin 100");
    page.add(buttons(), "span 2, growx");
    dialog.add(page);
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> dialog.dispose(),
            KeyStroke.getKeyStroke("ESCAPE"),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    dialog.setSize(UIScale.scale(new Dimension(520, 300)));
    dialog.setLocationRelativeTo(owner);
  }

  private JPanel buttons() {
    JPanel buttons = new JPanel(new MigLayout("insets 0, gap 6", "[]push[][]"));
    JButton remove = button("No range", () -> take(""));
    remove.setEnabled(!range.typed().isEmpty());
    JButton keep = button("Keep", () -> take(field.getText()));
    buttons.add(remove);
    buttons.add(keep);
    buttons.add(button("Cancel", dialog::dispose));
    dialog.getRootPane().setDefaultButton(keep);
    return buttons;
  }

  private static JButton button(String name, Runnable does) {
    JButton button = new JButton(name);
    button.setName("range " + name);
    button.addActionListener(event -> does.run());
    return button;
  }

  private void take(String text) {
    TypedRange.Reading read = range.read(text);
    if (read instanceof TypedRange.Refused refused) {
      problem.setText(refused.sentence());
      field.requestFocusInWindow();
    } else {
      dialog.dispose();
      book.perform(((TypedRange.Made) read).edit());
    }
  }

  /**
   * Asks for the range of a cell.
   *
   * @return why the cell can have none; empty where it was asked for
   */
  public static Optional<String> open(Window owner, Book book, Place place) {
    Optional<TypedRange> range = TypedRange.at(book, place);
    range.ifPresent(known -> new RangeForm(owner, book, known).dialog.setVisible(true));
    return range.isPresent() ? Optional.empty() : Optional.of(TypedRange.refused(book, place));
  }
}
