package zonewright.desk.sure;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Window;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import net.miginfocom.swing.MigLayout;
import zonewright.desk.part.FollowingWindow;
import zonewright.desk.part.Inquiry;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.Prose;
import zonewright.desk.part.SideWindow;
import zonewright.desk.part.TwoLineHeader;
import zonewright.sheet.BookSnapshot;
import zonewright.uncertainty.HowSure;
import zonewright.uncertainty.SureWords;

/**
 * How sure the design is: what each answer lies between, zone by zone, and what to measure first.
 * Designs are tried away from the window's thread; an edit begins anew.
 */
public final class SureWindow implements FollowingWindow {
  private static final int PAUSE_MILLIS = 300;
  private static final int PARTS = 1000;

  /** What a letter and a cell's edges take of a column's width, beside other columns. */
  private static final int LETTER = 7;

  private static final int MARGIN = 14;

  private final OpenDesign open;
  private final JDialog dialog;
  private final DefaultTableModel zoneRows = new Lines();
  private final DefaultTableModel measureRows = new Lines();
  private final JTable zones =
      table(zoneRows, "sure zones", "What the answers of each zone lie between");
  private final JTable measures = table(measureRows, "measurements", "What to measure first");
  private final JTextArea words = new JTextArea();
  private final JProgressBar progress = new JProgressBar(0, PARTS);
  private final JButton stop;
  private final JButton print;
  private final Prose site = new Prose(" ");
  private final Inquiry trials = new Inquiry("how sure", PAUSE_MILLIS, this::begin, this::lasts);
  private Optional<HowSure> found = Optional.empty();

  /** Rows of words nobody types into. */
  private static final class Lines extends DefaultTableModel {
    private static final long serialVersionUID = 1L;

    @Override
    public boolean isCellEditable(int row, int column) {
      return false;
    }
  }

  /**
   * Makes the window; it is not shown yet.
   *
   * @param printed is given the pages to print
   */
  public SureWindow(Window owner, OpenDesign open, Consumer<HowSure> printed) {
    this.open = open;
    dialog = SideWindow.of(owner, "How sure", "how sure");
    stop = SideWindow.button("Stop", "Leaves it at what stands here", this::stop);
    stop.setName("stop trying");
    print =
        SideWindow.button(
            "Save to print …",
            "What to measure first, and what each zone's answers lie between, as PDF",
            () -> found.ifPresent(printed));
    print.setEnabled(false);
    lasts(false);
    words.setName("sure words");
    words.getAccessibleContext().setAccessibleName("What is said of the zone, or how to measure");
    words.setEditable(false);
    words.setLineWrap(true);
    words.setWrapStyleWord(true);
    words.setBorder(BorderFactory.createEmptyBorder(10, 12, 10, 12));
    zones.getSelectionModel().addListSelectionListener(event -> tellZone());
    measures.getSelectionModel().addListSelectionListener(event -> tellMeasurement());
    JSplitPane tables =
        new JSplitPane(
            JSplitPane.VERTICAL_SPLIT,
            headed("Over all ranges, zone by zone", zones),
            headed("What to measure first", measures));
    tables.setResizeWeight(0.65);
    tables.setDividerLocation(UIScale.scale(330));
    JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, tables, new JScrollPane(words));
    split.setResizeWeight(0.7);
    split.setDividerLocation(UIScale.scale(780));
    dialog.add(head(), BorderLayout.PAGE_START);
    dialog.add(split, BorderLayout.CENTER);
    SideWindow.place(dialog, 1160, 700);
  }

  private JPanel head() {
    JPanel head = new JPanel(new MigLayout("insets 10 14 6 14, gap 8, hidemode 3", "[grow][][][]"));
    site.setName("sure site");
    head.add(site, "growx, wmin 200");
    progress.getAccessibleContext().setAccessibleName("How much is tried");
    head.add(progress, "w 120!");
    head.add(stop);
    head.add(print);
    return head;
  }

  private static JPanel headed(String words, JTable table) {
    JPanel panel = new JPanel(new BorderLayout());
    JLabel head = new JLabel(words);
    head.setLabelFor(table);
    head.putClientProperty(FlatClientProperties.STYLE_CLASS, "h4");
    head.setBorder(BorderFactory.createEmptyBorder(6, 10, 4, 8));
    panel.add(head, BorderLayout.PAGE_START);
    panel.add(new JScrollPane(table), BorderLayout.CENTER);
    return panel;
  }

  private static JTable table(DefaultTableModel model, String name, String accessible) {
    JTable table = new JTable(model);
    table.setName(name);
    table.getAccessibleContext().setAccessibleName(accessible);
    table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    table.setFillsViewportHeight(true);
    table.setTableHeader(new TwoLineHeader(table.getColumnModel()));
    DefaultTableCellRenderer numbers = new DefaultTableCellRenderer();
    numbers.setHorizontalAlignment(SwingConstants.TRAILING);
    table.setDefaultRenderer(Object.class, numbers);
    return table;
  }

  /** Shows the window. */
  public void open() {
    dialog.setVisible(true);
    begin();
    zones.requestFocusInWindow();
  }

  /** Tries anew a moment later, where the window is seen: the design has changed. */
  @Override
  public void edited() {
    if (dialog.isShowing()) {
      trials.soon();
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
    trials.close();
    dialog.dispose();
  }

  private void stop() {
    trials.drop();
    print.setEnabled(found.isPresent());
  }

  private void lasts(boolean yes) {
    progress.setVisible(yes);
    stop.setVisible(yes);
  }

  private void begin() {
    if (!dialog.isShowing()) {
      return;
    }
    BookSnapshot snapshot = open.book().snapshot();
    progress.setValue(0);
    print.setEnabled(false);
    trials.ask(
        mine -> {
          HowSure sure =
              HowSure.of(
                  snapshot,
                  Set.of(),
                  mine::dropped,
                  done -> mine.tell(() -> progress.setValue((int) (PARTS * done))));
          mine.tell(() -> show(sure));
        });
  }

  private void show(HowSure sure) {
    found = Optional.of(sure);
    print.setEnabled(true);
    SureWords said = new SureWords(sure);
    site.setText(String.join(" ", said.site()));
    fill(zones, zoneRows, said.headings(), sure.zones().stream().map(said::row).toList());
    fill(
        measures,
        measureRows,
        SureWords.measurementHeadings(),
        sure.measurements().stream().map(said::row).toList());
    if (zones.getSelectedRow() < 0 && measures.getSelectedRow() < 0) {
      say(String.join("\n\n", List.of(said.mark(), SureWords.ranking(), said.takenAsSure())));
    } else {
      tellZone();
      tellMeasurement();
    }
  }

  private static void fill(
      JTable table, DefaultTableModel model, List<String> headings, List<List<String>> rows) {
    int selected = table.getSelectedRow();
    model.setDataVector(
        rows.stream().map(List::toArray).toArray(Object[][]::new),
        headings.stream().map(TwoLineHeader::inTwoLines).toArray());
    DefaultTableCellRenderer names = new DefaultTableCellRenderer();
    table.getColumnModel().getColumn(0).setCellRenderer(names);
    for (int column = 0; column < headings.size(); column++) {
      int at = column;
      int widest = rows.stream().mapToInt(row -> row.get(at).length()).max().orElse(0);
      int wanted = Math.max(widest, headings.get(column).length() / 2);
      table.getColumnModel().getColumn(column).setPreferredWidth(wanted * LETTER + MARGIN);
    }
    if (selected >= 0 && selected < rows.size()) {
      table.setRowSelectionInterval(selected, selected);
    }
  }

  private void tellZone() {
    int row = zones.getSelectedRow();
    if (found.isPresent() && row >= 0 && row < found.get().zones().size()) {
      measures.clearSelection();
      int zone = found.get().zones().get(row);
      say(
          "Zone %s\n\n%s"
              .formatted(
                  found.get().name(zone),
                  String.join("\n", new SureWords(found.get()).zone(zone))));
    }
  }

  private void tellMeasurement() {
    int row = measures.getSelectedRow();
    if (found.isPresent() && row >= 0 && row < found.get().measurements().size()) {
      zones.clearSelection();
      var measurement = found.get().measurements().get(row).measurement();
      say(
          "%s\n\n%s\n\nNeeds: %s."
              .formatted(measurement.name(), measurement.how(), measurement.needs()));
    }
  }

  private void say(String text) {
    words.setText(text);
    words.setCaretPosition(0);
  }
}
