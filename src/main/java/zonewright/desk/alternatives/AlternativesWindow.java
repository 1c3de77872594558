package zonewright.desk.alternatives;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Font;
import java.awt.Window;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableModel;
import net.miginfocom.swing.MigLayout;
import zonewright.alternatives.AlternativeEdits;
import zonewright.alternatives.AlternativeSheets;
import zonewright.alternatives.Alternatives;
import zonewright.alternatives.Change;
import zonewright.design.Design;
import zonewright.desk.part.FollowingWindow;
import zonewright.desk.part.Inquiry;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.Prose;
import zonewright.desk.part.SideWindow;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Edit;
import zonewright.whatif.SideBySide;

/**
 * The design and its alternatives side by side: to copy one, work in one, take one. Each is an edit
 * that undo takes back.
 */
public final class AlternativesWindow implements FollowingWindow {
  private static final int PAUSE_MILLIS = 150;
  private static final String WHAT =
      "What you type into the design holds for all alternatives, but where they differ; what you"
          + " type while an alternative stands on the sheets is its own. An asterisk marks what differs from"
          + " the design.";

  private static final String NONE_YET =
      "There is no alternative yet: name one, copy the sheets, and change what you like.";
  private static final String NOTHING_YET =
      "“%s” is as the design: what you change while it stands on the sheets will be its own";
  private static final String OTHERWISE = "What “%s” does otherwise than the design";

  private final OpenDesign open;
  private final JDialog dialog;
  private final JComboBox<String> which = new JComboBox<>();
  private final JButton work;
  private final JButton take;
  private final JButton remove;
  private final FigureModel figures = new FigureModel();
  private final ChangeModel changes = new ChangeModel();
  private final JTextField name = new JTextField(20);
  private final JTextField compared = new JTextField(30);
  private final Prose message = new Prose(" ");
  private final JLabel working = new JLabel(" ");
  private final JLabel otherwise = new JLabel(" ");
  private final Inquiry comparison =
      new Inquiry("alternatives", PAUSE_MILLIS, this::look, this::lasts);
  private boolean filling;

  /** Makes the window; it is not shown yet. */
  public AlternativesWindow(Window owner, OpenDesign open) {
    this.open = open;
    dialog = SideWindow.of(owner, "Alternatives", "alternatives");
    work =
        SideWindow.button(
            "Work in it", "Puts it on the sheets; what you type then is its own", this::work);
    take =
        SideWindow.button(
            "Take as the design",
            "Makes it the design; the other alternatives stay what they are",
            this::take);
    remove = SideWindow.button("Remove", "Takes the alternative away", this::remove);
    which.setName("alternative");
    which.addActionListener(
        event -> {
          if (!filling) {
            showChosen();
          }
        });
    compared.setName("figures compared");
    compared.setToolTipText(
        "Names of figures with semicolons between, such as Volume a year; Cycles of 7. Blank: the"
            + " usual ones. Enter compares anew.");
    compared.addActionListener(event -> compareBy());
    JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, figures(), changes());
    split.setResizeWeight(0.6);
    dialog.add(head(), BorderLayout.PAGE_START);
    dialog.add(split, BorderLayout.CENTER);
    SideWindow.place(dialog, 860, 640);
  }

  private JPanel head() {
    JPanel head =
        new JPanel(new MigLayout("insets 12 14 8 14, fillx, wrap 5", "[][grow,200:200:][][][]"));
    head.add(new Prose(WHAT), "span 5, growx, wmin 100, gapbottom 4");
    JButton copy =
        SideWindow.button(
            "Copy the sheets under this name",
            "Copies what stands on the sheets as a new alternative, which you then change",
            this::copy);
    copy.setName("copy as alternative");
    name.setName("name of the alternative");
    name.addActionListener(event -> copy());
    head.add(named("New alternative", name));
    head.add(name, "growx");
    head.add(copy, "span 3, growx");
    work.setName("work in alternative");
    take.setName("take alternative");
    remove.setName("remove alternative");
    head.add(named("Alternative", which));
    head.add(which, "growx");
    head.add(work, "wmin 130, growx");
    head.add(take);
    head.add(remove);
    head.add(named("Compared by", compared));
    head.add(compared, "growx, span 4");
    message.setName("alternatives message");
    message.coloured("Component.error.focusedBorderColor");
    head.add(message, "span 5, growx, wmin 100, hidemode 3");
    message.setVisible(false);
    return head;
  }

  private static JLabel named(String words, JComponent field) {
    JLabel label = new JLabel(words);
    label.setLabelFor(field);
    field.getAccessibleContext().setAccessibleName(words);
    return label;
  }

  private JScrollPane figures() {
    JTable table = table("figures side by side", figures, SwingConstants.TRAILING);
    table.getAccessibleContext().setAccessibleName("Figures of the design and its alternatives");
    table.setDefaultRenderer(Object.class, new Cell());
    return new JScrollPane(table);
  }

  private JPanel changes() {
    JTable table = table("changes of the alternative", changes, SwingConstants.LEADING);
    table.getAccessibleContext().setAccessibleName("What the alternative does otherwise");
    JPanel panel = new JPanel(new BorderLayout());
    JPanel head = new JPanel(new BorderLayout());
    head.setBorder(BorderFactory.createEmptyBorder(8, 14, 4, 14));
    head.add(otherwise, BorderLayout.CENTER);
    head.add(working, BorderLayout.LINE_END);
    panel.add(head, BorderLayout.PAGE_START);
    panel.add(new JScrollPane(table), BorderLayout.CENTER);
    return panel;
  }

  private static JTable table(String name, TableModel model, int headings) {
    JTable table = new JTable(model);
    table.setName(name);
    table.setRowHeight(UIScale.scale(24));
    table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    table.setFillsViewportHeight(true);
    table.getTableHeader().setReorderingAllowed(false);
    if (table.getTableHeader().getDefaultRenderer() instanceof JLabel heading) {
      heading.setHorizontalAlignment(headings);
    }
    return table;
  }

  /** Names at the left, figures at the right; what differs from the design is bold. */
  private final class Cell extends DefaultTableCellRenderer {
    private static final long serialVersionUID = 1L;

    @Override
    public Component getTableCellRendererComponent(
        JTable of, Object value, boolean selected, boolean focus, int row, int column) {
      super.getTableCellRendererComponent(of, value, selected, false, row, column);
      setHorizontalAlignment(column == 0 ? SwingConstants.LEADING : SwingConstants.TRAILING);
      setFont(getFont().deriveFont(figures.differs(row, column) ? Font.BOLD : Font.PLAIN));
      return this;
    }
  }

  /** Shows the window. */
  public void open() {
    look();
    dialog.setVisible(true);
  }

  /** Compares anew a moment later, where the window is seen: the design has changed. */
  @Override
  public void edited() {
    if (dialog.isShowing()) {
      comparison.soon();
    }
  }

  /** Takes the look over after it changed. */
  @Override
  public void restyle() {
    SwingUtilities.updateComponentTreeUI(dialog);
  }

  /** Closes the window for good. */
  @Override
  public void close() {
    comparison.close();
    dialog.dispose();
  }

  private void look() {
    say("");
    Alternatives alternatives = new Alternatives(open.book());
    Optional<String> before = chosen().filter(alternatives.names()::contains);
    filling = true;
    which.removeAllItems();
    alternatives.names().forEach(which::addItem);
    before.or(alternatives::inHand).ifPresent(which::setSelectedItem);
    String words =
        open.book()
            .wording()
            .shown(
                AlternativeSheets.COMPARED.reference(),
                open.book().outcome(AlternativeSheets.COMPARED.reference(), 0));
    compared.setText(words.equals("blank") ? "" : words);
    filling = false;
    showChosen();
    compare();
  }

  private void compare() {
    BookSnapshot snapshot = open.book().snapshot();
    comparison.ask(
        mine -> {
          SideBySide table = SideBySide.of(Design.of(snapshot).book(), mine::dropped);
          mine.tell(() -> show(table));
        });
  }

  private void show(SideBySide table) {
    figures.show(table);
    if (!table.problems().isEmpty()) {
      say(String.join(" ", table.problems()));
    }
  }

  private void lasts(boolean yes) {
    working.setText(yes ? "Comparing …" : " ");
  }

  private void say(String words) {
    message.setText(words);
    message.setVisible(!words.isEmpty());
  }

  private Optional<String> chosen() {
    return Optional.ofNullable((String) which.getSelectedItem());
  }

  private void showChosen() {
    Alternatives alternatives = new Alternatives(open.book());
    Optional<String> name = chosen().filter(alternatives.names()::contains);
    List<Change> own = name.map(alternatives::changes).orElse(List.of());
    changes.show(own, name.map(alternatives::insteadOf).orElse(Map.of()));
    otherwise.setText(
        name.map(own.isEmpty() ? NOTHING_YET::formatted : OTHERWISE::formatted).orElse(NONE_YET));
    boolean held = name.isPresent() && name.equals(alternatives.inHand());
    work.setText(held ? "Back to the design" : "Work in it");
    for (JButton button : List.of(work, take, remove)) {
      button.setEnabled(name.isPresent());
    }
  }

  private void perform(Function<AlternativeEdits, Edit> edit) {
    open.book().perform(edit.apply(new AlternativeEdits(new Alternatives(open.book()))));
    look();
  }

  private void copy() {
    String wanted = name.getText().strip();
    Optional<String> refused = new Alternatives(open.book()).refused(wanted);
    if (refused.isPresent()) {
      say(refused.get());
      return;
    }
    perform(edits -> edits.copied(wanted));
    which.setSelectedItem(wanted);
    name.setText("");
  }

  private void work() {
    Optional<String> held = new Alternatives(open.book()).inHand();
    chosen()
        .ifPresent(
            name ->
                perform(
                    edits ->
                        edits.worked(
                            held.equals(chosen()) ? Optional.empty() : Optional.of(name))));
  }

  private void take() {
    chosen().ifPresent(name -> perform(edits -> edits.taken(name, Optional.empty())));
  }

  private void remove() {
    chosen().ifPresent(name -> perform(edits -> edits.removed(name)));
  }

  private void compareBy() {
    open.book()
        .perform(
            open.design()
                .edits()
                .typed(AlternativeSheets.COMPARED.reference(), 0, compared.getText()));
    look();
  }
}
