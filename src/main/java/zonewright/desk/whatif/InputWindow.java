package zonewright.desk.whatif;

import java.awt.Window;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import zonewright.desk.part.DialogSize;
import zonewright.desk.part.FollowingWindow;
import zonewright.desk.part.Inquiry;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.Prose;
import zonewright.desk.part.TextListener;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Column;
import zonewright.sheet.NumberSearch;
import zonewright.sheet.Place;
import zonewright.units.QuantityText;
import zonewright.whatif.InputAnswer;
import zonewright.whatif.InputFinder;
import zonewright.whatif.InputQuestion;

/**
 * Finds what to type into a cell, so that an answer is as wanted: what comes of it is shown while
 * the question is put, and typed into the design only when asked for.
 */
public final class InputWindow implements FollowingWindow {
  private static final int PAUSE_MILLIS = 250;

  private final OpenDesign open;
  private final JDialog dialog;
  private final Prose input = new Prose(" ").styled("h3");
  private final AnswerList answers = new AnswerList(this::asked);
  private final JComboBox<Wanted> goal = new JComboBox<>(Wanted.values());
  private final JTextField number = new JTextField(12);
  private final JLabel unit = new JLabel(" ");
  private final JTextArea result = new JTextArea();
  private final JButton set = new JButton("Set it");
  private final Inquiry search = new Inquiry("search for an input", PAUSE_MILLIS, this::look);
  private Optional<Place> cell = Optional.empty();
  private Optional<InputAnswer.Reached> found = Optional.empty();

  /** What may be wanted of an answer, in words. */
  private enum Wanted {
    AT_MOST("is at most", NumberSearch.Goal.AT_MOST),
    AT_LEAST("is at least", NumberSearch.Goal.AT_LEAST),
    EQUAL("is", NumberSearch.Goal.EQUAL);

    private final String words;
    private final NumberSearch.Goal goal;

    Wanted(String words, NumberSearch.Goal goal) {
      this.words = words;
      this.goal = goal;
    }

    @Override
    public String toString() {
      return words;
    }
  }

  /** Makes the window; it is not shown yet. */
  public InputWindow(Window owner, OpenDesign open) {
    this.open = open;
    dialog = new JDialog(owner, "Find the input");
    dialog.setName("find the input");
    dialog.setDefaultCloseOperation(JDialog.HIDE_ON_CLOSE);
    input.setName("input to find");
    goal.setName("goal");
    goal.getAccessibleContext().setAccessibleName("What is wanted of the answer");
    goal.addActionListener(event -> asked());
    number.setName("wanted");
    number.getAccessibleContext().setAccessibleName("The number wanted, with its unit");
    number.getDocument().addDocumentListener(new TextListener(this::asked));
    result.setName("input found");
    result.getAccessibleContext().setAccessibleName("What was found");
    result.setEditable(false);
    result.setLineWrap(true);
    result.setWrapStyleWord(true);
    result.setBorder(BorderFactory.createEmptyBorder(8, 10, 8, 10));
    dialog.add(page());
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> hide(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
    dialog.getRootPane().setDefaultButton(set);
    DialogSize.set(dialog, 720, 640);
    dialog.setLocationRelativeTo(owner);
  }

  private JPanel page() {
    JPanel page =
        new JPanel(
            new MigLayout(
                "insets 14, fill, wrap 4", "[][][][grow]", "[]10[][][][]10[grow,push]10[]"));
    page.add(input, "growx, wmin 100, span 4");
    page.add(named("So that", answers.field()));
    page.add(answers.field(), "growx, span 3");
    page.add(answers.list(), "skip 1, growx, span 3");
    page.add(named("of", answers.rows()));
    page.add(answers.rows(), "growx, span 3");
    page.add(goal, "skip 1");
    page.add(number);
    page.add(unit, "growx");
    page.add(new JScrollPane(result), "grow, span 4, hmin 100");
    page.add(buttons(), "growx, span 4");
    return page;
  }

  private static JLabel named(String name, JComponent field) {
    JLabel label = new JLabel(name);
    label.setLabelFor(field);
    return label;
  }

  private JPanel buttons() {
    JPanel panel = new JPanel(new MigLayout("insets 0, gap 8", "push[][]"));
    JButton close = new JButton("Close");
    close.addActionListener(event -> hide());
    set.setName("set the input");
    set.addActionListener(event -> set());
    panel.add(close);
    panel.add(set);
    return panel;
  }

  /**
   * Shows the window for a cell.
   *
   * @return why nothing can be found for it; empty where the window is shown
   */
  public Optional<String> open(Place at) {
    Optional<String> refused = InputQuestion.refusedInput(open.book(), at);
    if (refused.isEmpty()) {
      cell = Optional.of(at);
      number.setText("");
      answers.fill(open.book(), at);
      dialog.setVisible(true);
      answers.field().requestFocusInWindow();
    }
    return refused;
  }

  /** Asks anew a moment later, where the window is seen: the design has changed. */
  @Override
  public void edited() {
    if (dialog.isShowing()) {
      answers.fillRows();
      asked();
    }
  }

  /** Leaves the cell it was about: another design lies on the desk. */
  @Override
  public void replaced() {
    cell = Optional.empty();
    hide();
  }

  /** Takes the look over after it changed. */
  @Override
  public void restyle() {
    SwingUtilities.updateComponentTreeUI(dialog);
  }

  /** Closes the window for good. */
  @Override
  public void close() {
    search.close();
    dialog.dispose();
  }

  private void hide() {
    search.drop();
    dialog.setVisible(false);
  }

  /** Something else is asked: what was found before is so no more. */
  private void asked() {
    found = Optional.empty();
    set.setEnabled(false);
    search.soon();
  }

  private void look() {
    if (cell.filter(open::holds).isEmpty()) {
      hide();
      return;
    }
    Book book = open.book();
    Place from = cell.orElseThrow();
    input.setText("%s: %s".formatted(name(book, from), shown(book, from)));
    Optional<Place> answer = answers.answer().filter(open::holds);
    if (answer.isEmpty()) {
      say(List.of("No answer that follows from it is called so."));
      return;
    }
    Place of = answer.get();
    Column column = book.schema().column(of.column());
    unit.setText("now %s".formatted(shown(book, of)));
    if (number.getText().isBlank()) {
      say(List.of("Type what %s is to be.".formatted(column.name())));
      return;
    }
    QuantityText.Reading read = InputQuestion.wanted(book, of, number.getText());
    if (read instanceof QuantityText.Unreadable not) {
      say(List.of(not.sentence()));
      return;
    }
    double wanted = ((QuantityText.Read) read).value();
    Wanted how = (Wanted) goal.getSelectedItem();
    find(book.snapshot(), new InputQuestion(from, of, how.goal, wanted));
  }

  private static String name(Book book, Place place) {
    return book.cellName(place.column(), place.row()).inWords();
  }

  private static String shown(Book book, Place place) {
    return book.shown(place.column(), book.outcome(place.column(), place.row()));
  }

  private void find(BookSnapshot snapshot, InputQuestion asked) {
    say(List.of("Looking …"));
    search.ask(
        mine -> {
          InputAnswer answer = InputFinder.answer(snapshot, asked, mine::dropped);
          mine.tell(() -> show(answer));
        });
  }

  private void show(InputAnswer answer) {
    say(answer.lines());
    found =
        answer instanceof InputAnswer.Reached reached && !reached.already()
            ? Optional.of(reached)
            : Optional.empty();
    set.setEnabled(found.isPresent());
  }

  private void say(List<String> lines) {
    result.setText(String.join("\n", lines));
    result.setCaretPosition(0);
  }

  private void set() {
    found.ifPresent(reached -> open.book().perform(reached.edit(open.book())));
  }
}
