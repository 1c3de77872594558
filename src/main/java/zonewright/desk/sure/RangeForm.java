package zonewright.desk.sure;

import java.awt.Dialog;
import java.awt.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import zonewright.desk.part.DialogSize;
import zonewright.desk.part.Prose;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.sheet.Place;
import zonewright.uncertainty.TypedRange;

/** Asks what the input in a cell lies between. */
public final class RangeForm {
  private final Book book;
  private final TypedRange range;
  private final List<TypedRange> all;
  private final JDialog dialog;
  private final JTextField field = new JTextField(24);
  private final Prose problem = new Prose(" ").coloured("Zonewright.limit");

  private RangeForm(Window owner, Book book, List<TypedRange> all) {
    this.book = book;
    this.all = all;
    this.range = all.get(0);
    dialog = new JDialog(owner, "Range", Dialog.ModalityType.DOCUMENT_MODAL);
    dialog.setName("range");
    field.setName("range typed");
    field.setText(range.typed());
    field.getAccessibleContext().setAccessibleName("Range of " + range.name());
    problem.setName("range problem");
    dialog.add(page());
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> dialog.dispose(),
            KeyStroke.getKeyStroke("ESCAPE"),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    DialogSize.set(dialog, 520, 300);
    dialog.setLocationRelativeTo(owner);
  }

  private JPanel page() {
    String more = all.size() == 1 ? "" : ", and %s more alike".formatted(all.size() - 1);
    JLabel label = new JLabel("It lies between");
    label.setLabelFor(field);
    JPanel page = new JPanel(new MigLayout("insets 14, fillx, wrap 2, gap 8 10", "[][grow]"));
    told(page, new Prose(range.name() + ": " + range.held() + more).styled("h3"));
    told(page, new Prose("The number stays the best guess the design rests on. " + range.form()));
    range
        .published()
        .ifPresent(
            words ->
                told(
                    page,
                    new Prose(
                        "Published, and counted while nothing is typed here: " + words + ".")));
    page.add(label);
    page.add(field, "growx");
    told(page, problem);
    page.add(buttons(), "span 2, growx, pushy, aligny bottom");
    return page;
  }

  private static void told(JPanel page, Prose words) {
    page.add(words, "span 2, growx, wmin 100");
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
    List<Edit> edits = new ArrayList<>();
    for (TypedRange each : all) {
      TypedRange.Reading read = each.read(text);
      if (read instanceof TypedRange.Refused refused) {
        problem.setText(refused.sentence());
        field.requestFocusInWindow();
        return;
      }
      edits.add(((TypedRange.Made) read).edit());
    }
    dialog.dispose();
    book.perform(
        edits.size() == 1
            ? edits.get(0)
            : new Edit.Several("ranges of %s inputs".formatted(edits.size()), edits));
  }

  /**
   * Asks for the range of cells, one for all of them.
   *
   * @param at the cell a person is at
   * @param selected all cells selected; those of other columns do not count
   * @return why the cell can have none; empty where it was asked for
   */
  public static Optional<String> open(Window owner, Book book, Place at, List<Place> selected) {
    List<TypedRange> ranges =
        Stream.concat(Stream.of(at), selected.stream())
            .filter(place -> place.column().equals(at.column()))
            .distinct()
            .flatMap(place -> TypedRange.at(book, place).stream())
            .toList();
    if (ranges.isEmpty()) {
      return Optional.of(TypedRange.refused(book, at));
    }
    new RangeForm(owner, book, ranges).dialog.setVisible(true);
    return Optional.empty();
  }
}
