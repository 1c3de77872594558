package zonewright.desk.findings;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Cursor;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import zonewright.design.Finding;
import zonewright.desk.part.Appearance;
import zonewright.desk.part.SeverityMark;
import zonewright.sheet.Place;
import zonewright.sheet.Severity;

/** What there is to say about the design, the worst first; a click leads to the cell. */
public final class FindingsPane extends JPanel {
  private final FindingsModel model = new FindingsModel();
  private final JTable list = new JTable(model);
  private final JLabel title = new JLabel("Findings");
  private final Map<Severity, JToggleButton> filters = new EnumMap<>(Severity.class);
  private boolean looking;
  private final Consumer<Place> follow;
  private final Consumer<Finding> mend;

  /**
   * Makes the pane.
   *
   * @param follow goes to a cell
   * @param mend carries the remedy of a finding out
   * @param about says what a finding is about
   */
  public FindingsPane(
      Consumer<Place> follow, Consumer<Finding> mend, Function<Finding, String> about) {
    super(new BorderLayout());
    model.about(about);
    this.follow = follow;
    this.mend = mend;
    setName("findings");
    JPanel head = new JPanel(new MigLayout("insets 2 14 2 8, gap 4", "[grow]" + "[]".repeat(4)));
    head.setOpaque(false);
    head.add(title);
    for (Severity severity : Severity.values()) {
      JToggleButton filter = filter(severity);
      filters.put(severity, filter);
      head.add(filter, "wmin 36");
    }
    setUpList();
    JScrollPane scroll = new JScrollPane(list);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    add(head, BorderLayout.PAGE_START);
    add(scroll, BorderLayout.CENTER);
  }

  private JToggleButton filter(Severity severity) {
    JToggleButton filter = new JToggleButton(severity.word(), new SeverityMark(severity), true);
    filter.setName("filter " + severity.word());
    filter.putClientProperty(
        FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
    filter.addItemListener(
        event -> {
          model.want(severity, filter.isSelected());
          heights();
          count();
        });
    return filter;
  }

  private void setUpList() {
    list.setName("findings list");
    list.getAccessibleContext().setAccessibleName("Findings, the worst first");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setDefaultRenderer(Object.class, new FindingCell(model));
    list.setFillsViewportHeight(true);
    list.setTableHeader(null);
    list.setFocusTraversalKeysEnabled(true);
    widths();
    list.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            widths();
            heights();
          }
        });
    list.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseReleased(MouseEvent event) {
            int row = list.rowAtPoint(event.getPoint());
            if (row < 0 || row != list.getSelectedRow()) {
              return;
            }
            if (onRemedy(event.getPoint())) {
              model.finding(row).ifPresent(mend);
            } else {
              go(row);
            }
          }
        });
    list.addMouseMotionListener(
        new MouseAdapter() {
          @Override
          public void mouseMoved(MouseEvent event) {
            int shape = onRemedy(event.getPoint()) ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR;
            list.setCursor(Cursor.getPredefinedCursor(shape));
          }
        });
    on("ENTER", "go", () -> go(list.getSelectedRow()));
    on("SPACE", "go", () -> go(list.getSelectedRow()));
    list.setFocusTraversalKeys(
        java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS,
        java.util.Set.of(java.awt.AWTKeyStroke.getAWTKeyStroke("TAB")));
    list.setFocusTraversalKeys(
        java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS,
        java.util.Set.of(java.awt.AWTKeyStroke.getAWTKeyStroke("shift TAB")));
    for (String taken : List.of("F2", "F8", "F6", "F9")) {
      list.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
          .put(KeyStroke.getKeyStroke(taken), "none");
    }
  }

  private boolean onRemedy(Point point) {
    int row = list.rowAtPoint(point);
    if (row < 0 || list.columnAtPoint(point) != 2) {
      return false;
    }
    Rectangle cell = list.getCellRect(row, 2, true);
    Point inside = new Point(point.x - cell.x, point.y - cell.y);
    return model
        .finding(row)
        .filter(finding -> FindingCell.onRemedy(list, finding, inside))
        .isPresent();
  }

  /** Returns the finding selected in the list, or else the first of a cell, if it has a remedy. */
  public Optional<Finding> curable(Optional<Place> cell) {
    int row = list.getSelectedRow();
    Optional<Finding> selected = list.isFocusOwner() ? model.finding(row) : Optional.empty();
    return selected
        .or(() -> cell.flatMap(model::curableAt))
        .filter(found -> found.remedy().isPresent());
  }

  private void on(String key, String name, Runnable action) {
    list.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key), name);
    list.getActionMap()
        .put(
            name,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                action.run();
              }
            });
  }

  private void widths() {
    boolean narrow = list.getWidth() > 0 && list.getWidth() < UIScale.scale(560);
    int[] widths = narrow ? new int[] {34, 84} : new int[] {110, 150};
    for (int at = 0; at < widths.length; at++) {
      int width = UIScale.scale(widths[at]);
      list.getColumnModel().getColumn(at).setMinWidth(0);
      list.getColumnModel().getColumn(at).setMaxWidth(width);
      list.getColumnModel().getColumn(at).setMinWidth(width);
    }
  }

  private void heights() {
    for (int row = 0; row < model.getRowCount(); row++) {
      int height = FindingCell.height(list, model, row);
      if (list.getRowHeight(row) != height) {
        list.setRowHeight(row, height);
      }
    }
  }

  /** Shows no findings: they are being looked for. */
  public void looking() {
    looking = true;
    fill(List.of());
  }

  /** Shows other findings; the one selected stays selected where it is still there. */
  public void show(List<Finding> findings) {
    looking = false;
    fill(findings);
  }

  private void fill(List<Finding> findings) {
    Optional<Finding> before = model.finding(list.getSelectedRow());
    model.set(findings);
    heights();
    for (int row = 0; before.isPresent() && row < model.getRowCount(); row++) {
      if (model.finding(row).filter(finding -> alike(finding, before.get())).isPresent()) {
        list.setRowSelectionInterval(row, row);
        break;
      }
    }
    count();
  }

  private static boolean alike(Finding one, Finding other) {
    return one.column().equals(other.column())
        && one.row() == other.row()
        && one.severity() == other.severity();
  }

  private void count() {
    Appearance.title(title);
    Map<Severity, Integer> counts = model.counts();
    int all = counts.values().stream().mapToInt(Integer::intValue).sum();
    String rest = model.left() == 0 ? "" : ", the gravest " + model.listed() + " listed";
    String none = looking ? "Looking for findings …" : "Nothing found that wants attention";
    title.setText(all == 0 ? none : "Findings: " + all + rest);
    filters.forEach(
        (severity, filter) -> {
          int count = counts.get(severity);
          String counted = looking ? severity.word() + ": looking …" : words(severity, count);
          filter.setText(counted + (filter.isSelected() ? "" : ", hidden"));
          filter.setToolTipText("Show or hide the findings marked “" + severity.word() + "”");
        });
  }

  private static String words(Severity severity, int count) {
    return switch (severity) {
      case WRONG, MISSING -> count + " " + severity.word();
      case CHECK -> count + " to check";
      case NOTE -> count == 1 ? "1 note" : count + " notes";
    };
  }

  private void go(int row) {
    model
        .finding(row)
        .ifPresent(finding -> follow.accept(new Place(finding.column(), finding.row())));
  }

  /** Goes to the finding after the selected one, or the first. */
  public void next() {
    if (model.getRowCount() == 0) {
      return;
    }
    int row = (list.getSelectedRow() + 1) % model.getRowCount();
    if (model.finding(row).isEmpty()) {
      row++;
    }
    list.setRowSelectionInterval(row, row);
    list.scrollRectToVisible(list.getCellRect(row, 0, true));
    go(row);
  }

  /** Returns what takes the keyboard here. */
  public Component focusTarget() {
    if (list.getSelectedRow() < 0 && list.getRowCount() > 1) {
      list.setRowSelectionInterval(1, 1);
    }
    return list;
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (list != null) {
      widths();
      heights();
    }
  }
}
