package zonewright.desk.grid;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Window;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import zonewright.desk.part.TextListener;
import zonewright.sheet.Column;

/** One list of all columns of a sheet, with a tick at each that is shown; several at once. */
final class ColumnChooser {
  private final SheetTable table;
  private final ColumnArranger arranger;
  private final JDialog dialog;
  private final JTextField search = new JTextField();
  private final DefaultListModel<Line> lines = new DefaultListModel<>();
  private final JList<Line> list = new JList<>(lines);

  /** A group, or a column of one. */
  private record Line(String band, List<Column> columns, boolean group) {}

  ColumnChooser(SheetTable table, ColumnArranger arranger) {
    this.table = table;
    this.arranger = arranger;
    Window owner = SwingUtilities.getWindowAncestor(table);
    dialog = new JDialog(owner, "Columns of " + table.sheet().table().title());
    dialog.setName("column chooser");
    search.setName("find columns");
    search.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, "Find columns");
    search.putClientProperty(FlatClientProperties.TEXT_FIELD_SHOW_CLEAR_BUTTON, true);
    search.getAccessibleContext().setAccessibleName("Find columns");
    list.setName("columns to show");
    list.getAccessibleContext()
        .setAccessibleName("Columns; the space bar shows or hides those selected");
    list.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
    list.setCellRenderer(new Ticks());
    JPanel page = new JPanel(new MigLayout("insets 12, fill, wrap 1", "[grow]", "[][grow][]"));
    page.add(search, "growx");
    page.add(new JScrollPane(list), "grow");
    page.add(buttons(), "growx");
    dialog.add(page);
    listen();
    fill();
    dialog.setSize(UIScale.scale(new Dimension(380, 560)));
    dialog.setLocationRelativeTo(owner);
  }

  private JPanel buttons() {
    JPanel panel = new JPanel(new MigLayout("insets 0, gap 6", "[][]push[]"));
    panel.add(button("Show all listed", () -> show(all(), true)));
    panel.add(button("Hide all listed", () -> show(all(), false)));
    panel.add(button("Close", () -> dialog.setVisible(false)));
    return panel;
  }

  private static JButton button(String label, Runnable does) {
    JButton button = new JButton(label);
    button.setName("column chooser " + label);
    button.addActionListener(event -> does.run());
    return button;
  }

  private void listen() {
    search.getDocument().addDocumentListener(new TextListener(this::fill));
    list.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent event) {
            boolean selects = event.isShiftDown() || event.isControlDown();
            int at = list.locationToIndex(event.getPoint());
            if (at >= 0 && !selects) {
              toggle(List.of(lines.get(at)));
            }
          }
        });
    list.registerKeyboardAction(
        event -> toggle(list.getSelectedValuesList()),
        KeyStroke.getKeyStroke("SPACE"),
        JComponent.WHEN_FOCUSED);
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> dialog.setVisible(false),
            KeyStroke.getKeyStroke("ESCAPE"),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
  }

  /** Lists the columns there are now, as far as they hold what is sought. */
  void fill() {
    String sought = search.getText().strip().toLowerCase(Locale.ROOT);
    lines.clear();
    for (String band : ((SheetHeader) table.getTableHeader()).bands()) {
      List<Column> columns = new ArrayList<>();
      for (Column column : table.sheet().table().columns()) {
        boolean fits = (column.name() + " " + band).toLowerCase(Locale.ROOT).contains(sought);
        if (column.band().equals(band) && fits) {
          columns.add(column);
        }
      }
      if (!columns.isEmpty()) {
        lines.addElement(new Line(band, List.copyOf(columns), true));
        columns.forEach(column -> lines.addElement(new Line(band, List.of(column), false)));
      }
    }
  }

  private List<Column> all() {
    List<Column> all = new ArrayList<>();
    for (int at = 0; at < lines.size(); at++) {
      if (!lines.get(at).group()) {
        all.addAll(lines.get(at).columns());
      }
    }
    return all;
  }

  /** Shows the columns of lines where one of them is hidden, and else hides them. */
  private void toggle(List<Line> chosen) {
    List<Column> columns = chosen.stream().flatMap(line -> line.columns().stream()).toList();
    show(columns, columns.stream().anyMatch(column -> !arranger.isShown(column)));
  }

  private void show(List<Column> columns, boolean shown) {
    arranger.show(columns, shown);
    list.repaint();
  }

  /** A tick box for each line; that of a group is ticked where all its columns are shown. */
  private final class Ticks extends JCheckBox implements ListCellRenderer<Line> {
    @Override
    public Component getListCellRendererComponent(
        JList<? extends Line> of, Line line, int at, boolean selected, boolean focused) {
      setText(line.group() ? line.band() : line.columns().get(0).name());
      setSelected(line.columns().stream().allMatch(arranger::isShown));
      setFont(of.getFont().deriveFont(line.group() ? Font.BOLD : Font.PLAIN));
      int left = line.group() ? 4 : 20;
      setBorder(javax.swing.BorderFactory.createEmptyBorder(2, left, 2, 4));
      setBackground(selected ? of.getSelectionBackground() : of.getBackground());
      setForeground(selected ? of.getSelectionForeground() : of.getForeground());
      return this;
    }
  }

  /** Shows the list. */
  void open() {
    dialog.setVisible(true);
    search.requestFocusInWindow();
  }
}
