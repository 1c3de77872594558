package zonewright.desk.nights;

import java.awt.BorderLayout;
import java.awt.Window;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.BorderFactory;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.jdesktop.swingx.JXPanel;
import org.jdesktop.swingx.ScrollableSizeHint;
import zonewright.climate.Climate;
import zonewright.climate.Peak;
import zonewright.desk.part.BoxBorder;
import zonewright.desk.part.FollowingWindow;
import zonewright.desk.part.Inquiry;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.Prose;
import zonewright.desk.part.SideWindow;
import zonewright.nights.KeySteps;
import zonewright.nights.MonthBook;
import zonewright.nights.NightsPlan;
import zonewright.nights.WaysOut;
import zonewright.sheet.Book;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Edits;
import zonewright.sheet.Entry;
import zonewright.water.MonthlySchedule;

/**
 * What to key into the controller, program by program, each step to be ticked as it is done; the
 * ticks are kept in the design.
 */
public final class KeyInWindow implements FollowingWindow {
  private final OpenDesign open;
  private final JDialog dialog;
  private final JComboBox<String> months = new JComboBox<>();
  private final JLabel progress = new JLabel(" ");
  private final JXPanel pages = new JXPanel(new MigLayout("insets 6 18 18 18, wrap 1", "[grow]"));
  private final Inquiry search = new Inquiry("ways out");
  private Optional<NightsPlan> shown = Optional.empty();
  private List<WaysOut.Told> ways = List.of();
  private final Map<String, JCheckBox> boxes = new LinkedHashMap<>();
  private Optional<MonthBook.Month> month = Optional.empty();
  private boolean filling;

  /**
   * Makes the window; it is not shown yet.
   *
   * @param printed writes the pages to print
   * @param weeks leads to what to do after the first weeks
   */
  public KeyInWindow(Window owner, OpenDesign open, Runnable printed, Runnable weeks) {
    this.open = open;
    dialog = SideWindow.of(owner, "Key this in", "key in");
    months.setName("month shown");
    months.getAccessibleContext().setAccessibleName("Month shown");
    months.addActionListener(event -> chosen());
    pages.setScrollableHeightHint(ScrollableSizeHint.NONE);
    JScrollPane scroll = new JScrollPane(pages);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.getVerticalScrollBar().setUnitIncrement(24);
    dialog.add(head(printed, weeks), BorderLayout.PAGE_START);
    dialog.add(scroll, BorderLayout.CENTER);
    SideWindow.place(dialog, 760, 720);
  }

  private JPanel head(Runnable printed, Runnable weeks) {
    JPanel head = new JPanel(new MigLayout("insets 10 18 6 18, gap 8"));
    JLabel words = new JLabel("Percent of");
    words.setLabelFor(months);
    head.add(words);
    head.add(months);
    head.add(progress, "pushx");
    head.add(SideWindow.button("Save to print …", "One program a page, as PDF", printed));
    head.add(
        SideWindow.button(
            "After the first weeks",
            "What was seen, too dry, right or too wet, and whether the site, a zone or the climate is to be changed (Ctrl+Alt+K)",
            () -> {
              dialog.setVisible(false);
              weeks.run();
            }));
    return head;
  }

  private void chosen() {
    if (filling) {
      return;
    }
    Book book = open.book();
    String month = months.getSelectedIndex() == 0 ? "" : (String) months.getSelectedItem();
    Entry entry = month.isEmpty() ? Entry.BLANK : new Entry.Words(month);
    book.perform(new Edits(book).set(MonthlySchedule.MONTH.reference(), 0, entry));
    refresh();
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
    search.close();
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
    fillMonths();
    Optional<NightsPlan> plan = open.design().nights().known();
    if (!plan.equals(shown)) {
      ways = List.of();
      search.drop();
      plan.filter(made -> !made.complete()).ifPresent(this::seekWays);
    }
    Optional<MonthBook.Month> now = KeySteps.month(open.book());
    boolean same = plan.equals(shown) && now.equals(month) && ticksShown();
    shown = plan;
    month = now;
    if (!same || boxes.isEmpty()) {
      fill();
    }
  }

  /** Says whether the ticks are those of the design: undo takes some back. */
  private boolean ticksShown() {
    Set<String> done = KeySteps.ticked(open.book());
    return boxes.entrySet().stream()
        .allMatch(each -> each.getValue().isSelected() == done.contains(each.getKey()));
  }

  private void fillMonths() {
    Book book = open.book();
    filling = true;
    months.removeAllItems();
    String peak = book.outcome(Peak.MONTH.reference(), 0).text();
    months.addItem("the peak month" + (peak.isEmpty() ? "" : ", " + peak));
    Climate.MONTH_NAMES.forEach(months::addItem);
    String chosen = book.outcome(MonthlySchedule.MONTH.reference(), 0).text();
    months.setSelectedIndex(chosen.isEmpty() ? 0 : 1 + Climate.MONTH_NAMES.indexOf(chosen));
    filling = false;
  }

  private void seekWays(NightsPlan plan) {
    Book book = open.book();
    BookSnapshot snapshot = book.snapshot();
    search.ask(
        mine -> {
          List<WaysOut.Told> found = WaysOut.of(book.another(snapshot), plan);
          mine.tell(
              () -> {
                ways = found;
                fill();
              });
        });
  }

  private void fill() {
    pages.removeAll();
    boxes.clear();
    List<KeySteps.Page> all = shown.map(plan -> KeySteps.of(plan, open.book())).orElse(List.of());
    all.forEach(page -> fill(page, all));
    if (all.isEmpty()) {
      pages.add(
          new Prose("There is nothing to key in: no zone has its cycles, minutes and flow yet."),
          "growx, wmin 200");
    }
    List<String> percents =
        MonthBook.toKeyIn(open.book()).stream().map(MonthBook.Month::percent).toList();
    if (!all.isEmpty() && !percents.isEmpty()) {
      pages.add(heading("Percent of the months"), "gaptop 18");
      pages.add(new Prose(String.join("   ", percents)).styled("large"), "growx, wmin 200");
    }
    count();
    pages.revalidate();
    pages.repaint();
  }

  private static JLabel heading(String words) {
    JLabel label = new JLabel(words);
    label.putClientProperty("FlatLaf.styleClass", "h2");
    return label;
  }

  private void fill(KeySteps.Page page, List<KeySteps.Page> all) {
    pages.add(heading(page.card().title()), "gaptop 14");
    if (!page.card().misfits().isEmpty()) {
      pages.add(misfits(page), "growx, wmin 200");
    }
    Set<String> done = KeySteps.ticked(open.book());
    for (KeySteps.Step step : page.steps()) {
      JCheckBox box = new JCheckBox(step.words(), done.contains(step.key()));
      box.putClientProperty("FlatLaf.styleClass", "h3.regular");
      box.addActionListener(
          event -> {
            Book book = open.book();
            book.perform(KeySteps.tick(book, all, step, box.isSelected()));
            count();
          });
      boxes.put(step.key(), box);
      pages.add(box, "gapleft 8");
    }
    String total =
        page.card().finish().isEmpty()
            ? ""
            : "%s min of watering, done at %s. "
                .formatted(page.card().minutes(), page.card().finish());
    if (!page.steps().isEmpty()) {
      pages.add(
          new Prose(total + page.card().way().sentence() + " " + page.card().rounding())
              .coloured("Zonewright.muted"),
          "growx, wmin 200, gapleft 8");
    }
  }

  /** What does not fit, by how much, and the ways out, before anything to key in. */
  private JPanel misfits(KeySteps.Page page) {
    JPanel box = new JPanel(new MigLayout("insets 8 12 8 12, wrap 1", "[grow]"));
    box.setBorder(new BoxBorder(1));
    box.add(new Prose("This does not fit").styled("h4"), "growx, wmin 180");
    page.card().misfits().forEach(words -> box.add(new Prose(words), "growx, wmin 180"));
    if (!ways.isEmpty()) {
      box.add(new Prose("Ways out, the cheapest first").styled("h4"), "growx, wmin 180");
      ways.forEach(way -> box.add(way(way), "growx, wmin 180"));
    }
    return box;
  }

  /** A way out, with a button where settings alone do it; undo takes it back. */
  private JPanel way(WaysOut.Told way) {
    JPanel line = new JPanel(new MigLayout("insets 0, gap 10", "[grow][]"));
    line.add(new Prose(way.sentence()), "growx, wmin 120");
    way.edit()
        .ifPresent(
            edit ->
                line.add(
                    SideWindow.button(
                        "Set it so",
                        "Types these settings into the design; undo takes them back",
                        () -> open.book().perform(edit.apply(open.book())))));
    return line;
  }

  private void count() {
    long done = boxes.values().stream().filter(JCheckBox::isSelected).count();
    progress.setText("%s of %s keyed in".formatted(done, boxes.size()));
  }
}
