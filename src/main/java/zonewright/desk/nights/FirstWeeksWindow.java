package zonewright.desk.nights;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Window;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.DefaultCellEditor;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.jdesktop.swingx.JXPanel;
import org.jdesktop.swingx.ScrollableSizeHint;
import zonewright.desk.part.BoxBorder;
import zonewright.desk.part.FollowingWindow;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.Prose;
import zonewright.desk.part.SideWindow;
import zonewright.fieldwork.FirstWeeks;
import zonewright.fieldwork.Judgement;
import zonewright.fieldwork.Tuning;
import zonewright.sheet.Book;

/** What to do after the first weeks: what was seen, and the three choices, one of them framed. */
public final class FirstWeeksWindow implements FollowingWindow {
  private final OpenDesign open;
  private final JDialog dialog;
  private final FirstWeeksModel zones;
  private final JXPanel choices = new JXPanel(new MigLayout("insets 6 18 18 18, wrap 1", "[grow]"));
  private FirstWeeks shown;

  /**
   * Makes the window; it is not shown yet.
   *
   * @param printed writes the page to print
   * @param log leads to the sheet of all that was ever seen
   */
  public FirstWeeksWindow(Window owner, OpenDesign open, Runnable printed, Runnable log) {
    this.open = open;
    this.zones = new FirstWeeksModel(open);
    dialog = SideWindow.of(owner, "After the first weeks", "first weeks");
    choices.setScrollableHeightHint(ScrollableSizeHint.NONE);
    JScrollPane scroll = new JScrollPane(choices);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.getVerticalScrollBar().setUnitIncrement(24);
    JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, new JScrollPane(table()), scroll);
    split.setDividerLocation(UIScale.scale(230));
    dialog.add(head(printed, log), BorderLayout.PAGE_START);
    dialog.add(split, BorderLayout.CENTER);
    SideWindow.place(dialog, 760, 720);
  }

  private JPanel head(Runnable printed, Runnable log) {
    JPanel head = new JPanel(new MigLayout("insets 10 18 6 18, gap 8", "[grow][][]"));
    head.add(new Prose(FirstWeeks.BEGIN), "growx, wmin 200");
    head.add(
        SideWindow.button(
            "All verdicts",
            "The sheet Verdicts: everything that was seen, with notes and percents",
            () -> {
              dialog.setVisible(false);
              log.run();
            }));
    head.add(SideWindow.button("Save to print …", "This page as PDF, with boxes to tick", printed));
    return head;
  }

  private JTable table() {
    JTable table = new JTable(zones);
    table.setName("first weeks zones");
    table.getAccessibleContext().setAccessibleName("What was seen of each zone");
    table.setFillsViewportHeight(true);
    table.setRowHeight(UIScale.scale(24));
    int[] widths = {50, 220, 80, 110, 110, 130};
    for (int column = 0; column < widths.length; column++) {
      table.getColumnModel().getColumn(column).setPreferredWidth(widths[column]);
    }
    table.putClientProperty("terminateEditOnFocusLost", true);
    JComboBox<String> words = new JComboBox<>();
    words.addItem("");
    Judgement.words().forEach(words::addItem);
    table
        .getColumnModel()
        .getColumn(FirstWeeksModel.TODAY)
        .setCellEditor(new DefaultCellEditor(words));
    return table;
  }

  /** Shows the window. */
  public void open() {
    refresh();
    dialog.setVisible(true);
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

  /** Shows the design as it is now, where the window is seen. */
  @Override
  public void planned() {
    if (dialog.isShowing()) {
      refresh();
    }
  }

  private void refresh() {
    FirstWeeks now = FirstWeeks.of(open.book());
    if (now.equals(shown)) {
      return;
    }
    shown = now;
    zones.show(now.zones());
    choices.removeAll();
    boolean none = now.choices().stream().noneMatch(FirstWeeks.Choice::chosen);
    if (none) {
      now.now().forEach(words -> choices.add(new Prose(words), "growx, wmin 200"));
    }
    int number = 1;
    for (FirstWeeks.Choice choice : now.choices()) {
      choices.add(choice(number++, choice, now), "growx, wmin 200, gaptop 6");
    }
    choices.revalidate();
    choices.repaint();
  }

  private JPanel choice(int number, FirstWeeks.Choice choice, FirstWeeks now) {
    JPanel box = new JPanel(new MigLayout("insets 8 12 8 12, wrap 1", "[grow]"));
    JLabel head = new JLabel(number + "   " + choice.when());
    head.putClientProperty("FlatLaf.styleClass", "h3");
    box.add(head, "wmin 100");
    box.add(new Prose(choice.then()), "growx, wmin 180");
    if (choice.chosen()) {
      box.setBorder(new BoxBorder(2));
      box.add(new Prose("This is where things stand").styled("h4"), "growx, wmin 180");
      List<String> sentences = now.now();
      sentences.forEach(words -> box.add(new Prose(words), "growx, wmin 180"));
      if (now.advice().changes()) {
        box.add(
            SideWindow.button("Set it so", "Takes the advice; undo takes it back", this::take),
            "gaptop 4");
      }
    }
    return box;
  }

  private void take() {
    Book book = open.book();
    Tuning.applied(book, shown.advice(), LocalDate.now(ZoneId.systemDefault()))
        .ifPresent(book::perform);
  }
}
