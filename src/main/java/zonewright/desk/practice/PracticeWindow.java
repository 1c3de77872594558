package zonewright.desk.practice;

import java.awt.BorderLayout;
import java.awt.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSeparator;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import zonewright.desk.part.FollowingWindow;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.Prose;
import zonewright.desk.part.SideWindow;
import zonewright.desk.part.StackPanel;
import zonewright.paper.PaperSize;
import zonewright.practice.Exercise;
import zonewright.practice.ExerciseSheets;
import zonewright.practice.Marking;
import zonewright.practice.Topic;
import zonewright.units.UnitSystem;

/** An exercise to work out, with a field for the answer and what it is worth; sets for a class. */
public final class PracticeWindow implements FollowingWindow {
  private static final int MOST_SEEDS = 9999;
  private static final int LARGEST_SET = 200;
  private static final int USUAL_SET = 20;

  private final OpenDesign open;
  private final BiConsumer<String, Supplier<byte[]>> pages;
  private final JDialog dialog;
  private final JComboBox<String> topics = new JComboBox<>();
  private final JSpinner seed = new JSpinner(new SpinnerNumberModel(1, 1, MOST_SEEDS, 1));
  private final JSpinner count = new JSpinner(new SpinnerNumberModel(USUAL_SET, 1, LARGEST_SET, 1));
  private final JTextField answer = new JTextField(16);
  private final JLabel unit = new JLabel();
  private final StackPanel task = new StackPanel();
  private final StackPanel marks = new StackPanel();
  private int number = 1;
  private Exercise exercise;

  /**
   * Makes the window; it is not shown yet.
   *
   * @param pages is given what pages are called, and makes them where a person wants them saved
   */
  public PracticeWindow(Window owner, OpenDesign open, BiConsumer<String, Supplier<byte[]>> pages) {
    this.open = open;
    this.pages = pages;
    dialog = SideWindow.of(owner, "Practice", "practice");
    topics.addItem("One topic after the other");
    Topic.all().forEach(topic -> topics.addItem(topic.title()));
    topics.setName("practice topic");
    answer.setName("practice answer");
    seed.setEditor(new JSpinner.NumberEditor(seed, "#"));
    topics.addActionListener(event -> begin());
    seed.addChangeListener(event -> begin());
    answer.addActionListener(event -> mark());
    dialog.add(head(), BorderLayout.PAGE_START);
    dialog.add(body(), BorderLayout.CENTER);
    dialog.add(foot(), BorderLayout.PAGE_END);
    SideWindow.place(dialog, 700, 640);
  }

  private JPanel head() {
    JPanel head = new JPanel(new MigLayout("insets 12 18 6 18, gap 8", "[][grow][][][]"));
    labelled(head, "Topic", 'T', topics, "growx, wmin 160");
    labelled(head, "Seed", 'S', seed, "wmin 70");
    seed.setToolTipText("The same seed sets the same exercises");
    head.add(button("Next", 'N', "Sets the next exercise", this::next));
    return head;
  }

  private JComponent body() {
    JPanel body = new JPanel(new MigLayout("insets 0 18 12 18, wrap 1, fillx", "[grow]"));
    body.add(task, "growx, wmin 200");
    JPanel field = new JPanel(new MigLayout("insets 8 0 4 0, gap 8", "[][grow, 120:200:][][]"));
    labelled(field, "Your answer", 'A', answer, "growx");
    field.add(unit);
    field.add(button("Mark", 'M', "Says what the answer is worth (Enter)", this::mark), "split 2");
    field.add(button("Show the solution", 'O', "Shows every step", this::solve));
    body.add(field, "growx");
    body.add(marks, "growx, wmin 200");
    JScrollPane scroll = new JScrollPane(body);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.getVerticalScrollBar().setUnitIncrement(24);
    return scroll;
  }

  private JPanel foot() {
    JPanel foot = new JPanel(new MigLayout("insets 6 18 12 18, gap 8", "[][][grow][][]"));
    foot.add(new JSeparator(), "span, growx, wrap");
    labelled(foot, "For a class, exercises", 'C', count, "wmin 70");
    foot.add(
        button("Sheet to hand out …", 'H', "As PDF, without answers", () -> write(false)),
        "skip 1");
    foot.add(button("Solutions …", 'L', "As PDF, with every step", () -> write(true)));
    return foot;
  }

  private static void labelled(
      JPanel panel, String words, char key, JComponent field, String constraints) {
    JLabel label = new JLabel(words);
    label.setDisplayedMnemonic(key);
    label.setLabelFor(field);
    panel.add(label);
    panel.add(field, constraints);
  }

  private static JButton button(String name, char key, String tip, Runnable action) {
    JButton button = SideWindow.button(name, tip, action);
    button.setName(name);
    button.setMnemonic(key);
    return button;
  }

  /** Shows the window. */
  public void open() {
    if (exercise == null || exercise.system() != system()) {
      set();
    }
    dialog.setVisible(true);
    answer.requestFocusInWindow();
  }

  /** Takes the look over after it changed. */
  @Override
  public void restyle() {
    SwingUtilities.updateComponentTreeUI(dialog);
  }

  /** Closes the window for good. */
  @Override
  public void close() {
    dialog.dispose();
  }

  private UnitSystem system() {
    return open.book().system();
  }

  private Optional<Topic> topic() {
    int at = topics.getSelectedIndex();
    return at > 0 ? Optional.of(Topic.all().get(at - 1)) : Optional.empty();
  }

  private int seedSet() {
    return (Integer) seed.getValue();
  }

  private void begin() {
    number = 1;
    set();
  }

  private void next() {
    number++;
    set();
    answer.requestFocusInWindow();
  }

  private void set() {
    exercise = Exercise.of(seedSet(), number, topic(), system());
    task.removeAll();
    task.stack(new Prose("Exercise " + number + ": " + exercise.topic().title()).styled("h3"), 8);
    task.stack(new Prose("All figures are invented.").coloured("Zonewright.muted"), 2);
    exercise.task().forEach(line -> task.stack(new Prose(line), 6));
    unit.setText("with its unit, " + exercise.unit());
    unit.setVisible(!exercise.unit().isEmpty());
    answer.setText("");
    say(List.of());
  }

  private void mark() {
    if (answer.getText().isBlank()) {
      say(List.of(new Prose("Write an answer first.")));
      return;
    }
    Marking marking = new Marking(exercise, answer.getText());
    List<String> lines = marking.lines();
    say(
        lines.stream()
            .map(line -> new Prose(line).styled(line.equals(lines.get(0)) ? "h4" : "regular"))
            .toList());
    answer.selectAll();
    answer.requestFocusInWindow();
  }

  private void solve() {
    List<Prose> lines = new ArrayList<>();
    lines.add(new Prose("Answer: " + exercise.answer()).styled("h4"));
    exercise.working().forEach(line -> lines.add(new Prose(line)));
    say(lines);
  }

  private void say(List<Prose> lines) {
    marks.removeAll();
    marks.setName("practice marks");
    marks
        .getAccessibleContext()
        .setAccessibleDescription(String.join("\n", lines.stream().map(Prose::getText).toList()));
    lines.forEach(line -> marks.stack(line, 4));
    dialog.revalidate();
    dialog.repaint();
  }

  private void write(boolean solutions) {
    ExerciseSheets sheets =
        new ExerciseSheets(seedSet(), (Integer) count.getValue(), topic(), system());
    PaperSize size = PaperSize.of(system());
    pages.accept(solutions ? "solutions" : "exercises", () -> sheets.pages(solutions, size));
  }
}
