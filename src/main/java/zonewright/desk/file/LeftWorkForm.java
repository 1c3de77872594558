package zonewright.desk.file;

import java.awt.Window;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.table.AbstractTableModel;
import net.miginfocom.swing.MigLayout;
import zonewright.desk.part.DialogSize;
import zonewright.desk.part.Prose;
import zonewright.recovery.LeftWork;

/** Shows what a crash left, cell by cell, to take or leave. */
public final class LeftWorkForm {
  private static final List<String> HEADINGS =
      List.of("Take", "Sheet", "Row", "Cell", "In the design", "Not saved");

  private final JDialog dialog;
  private final Set<Integer> chosen = new HashSet<>();

  private LeftWorkForm(
      Window owner, String name, String when, LeftWork work, Consumer<Set<Integer>> taken) {
    dialog = new JDialog(owner, "Changes that were not saved", JDialog.ModalityType.DOCUMENT_MODAL);
    dialog.setName("left work form");
    dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
    for (int i = 0; i < work.items().size(); i++) {
      if (!work.items().get(i).clashes()) {
        chosen.add(i);
      }
    }
    JPanel page = new JPanel(new MigLayout("insets 18 22 16 22, fill, wrap 1", "[grow]", ""));
    page.add(new Prose("Changes that were not saved").styled("h2"), "growx");
    page.add(
        new Prose(
                "These changes to “%s” were typed until %s. Tick what to take; what was changed in the design since is not ticked. Undo takes all of it out again."
                    .formatted(name, when))
            .coloured("Zonewright.muted"),
        "growx, wmin 300");
    JTable table = new JTable(new Model(work.items()));
    table.setName("left work");
    table.getAccessibleContext().setAccessibleName("Changes that were not saved");
    table.getColumnModel().getColumn(0).setMaxWidth(60);
    page.add(new JScrollPane(table), "grow, push, hmin 160lp");
    JButton take = new JButton("Take the ticked, let the others go");
    take.setName("take left work");
    take.addActionListener(
        event -> {
          dialog.dispose();
          taken.accept(Set.copyOf(chosen));
        });
    JButton later = new JButton("Decide later");
    later.setName("left work later");
    later.addActionListener(event -> dialog.dispose());
    page.add(take, "split 2, tag ok");
    page.add(later, "tag cancel");
    dialog.add(page);
    dialog.getRootPane().setDefaultButton(take);
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> dialog.dispose(),
            KeyStroke.getKeyStroke("ESCAPE"),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    DialogSize.set(dialog, 860, 520);
    dialog.setLocationRelativeTo(owner);
  }

  /**
   * Shows the form.
   *
   * @param when until when they were typed, in words
   * @param taken is given the numbers of the items to take; not called where a person decides later
   */
  static void open(
      Window owner, String name, String when, LeftWork work, Consumer<Set<Integer>> taken) {
    new LeftWorkForm(owner, name, when, work, taken).dialog.setVisible(true);
  }

  private final class Model extends AbstractTableModel {
    private final transient List<LeftWork.Item> items;

    Model(List<LeftWork.Item> items) {
      this.items = items;
    }

    @Override
    public int getRowCount() {
      return items.size();
    }

    @Override
    public int getColumnCount() {
      return HEADINGS.size();
    }

    @Override
    public String getColumnName(int column) {
      return HEADINGS.get(column);
    }

    @Override
    public Class<?> getColumnClass(int column) {
      return column == 0 ? Boolean.class : String.class;
    }

    @Override
    public boolean isCellEditable(int row, int column) {
      return column == 0;
    }

    @Override
    public Object getValueAt(int row, int column) {
      LeftWork.Item item = items.get(row);
      return switch (column) {
        case 0 -> chosen.contains(row);
        case 1 -> item.sheet();
        case 2 -> item.row();
        case 3 -> item.column();
        case 4 -> item.now();
        default -> item.left();
      };
    }

    @Override
    public void setValueAt(Object ticked, int row, int column) {
      if (Boolean.TRUE.equals(ticked)) {
        chosen.add(row);
      } else {
        chosen.remove(row);
      }
    }
  }
}
