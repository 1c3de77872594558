package zonewright.desk;

import java.awt.Window;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import zonewright.desk.grid.CellSearch;
import zonewright.desk.part.DialogSize;
import zonewright.desk.part.OpenDesign;
import zonewright.desk.part.TextListener;
import zonewright.sheet.Book;
import zonewright.sheet.Edit;
import zonewright.sheet.Place;

/** A window beside the main one that finds what was typed on any sheet, and replaces it. */
final class FindEverywhere {
  private static final int PAUSE_MILLIS = 200;
  private static final int MOST = 2000;

  private final OpenDesign open;
  private final Consumer<Place> go;
  private final JDialog dialog;
  private final JTextField sought = new JTextField(24);
  private final JTextField other = new JTextField(24);
  private final DefaultListModel<Line> lines = new DefaultListModel<>();
  private final JList<Line> list = new JList<>(lines);
  private final JLabel result = new JLabel(" ");
  private final Timer soon = new Timer(PAUSE_MILLIS, event -> look());
  private List<CellSearch.Hit> hits = List.of();

  /** A cell that was found, in words. */
  private record Line(CellSearch.Hit hit, String words) {
    @Override
    public String toString() {
      return words;
    }
  }

  /** Makes the window; {@code go} leads to a cell. */
  FindEverywhere(Window owner, OpenDesign open, Consumer<Place> go) {
    this.open = open;
    this.go = go;
    dialog = new JDialog(owner, "Find on all sheets");
    dialog.setName("find everywhere");
    sought.setName("find on all sheets");
    other.setName("replace on all sheets");
    list.setName("found on all sheets");
    result.setName("found on all sheets, in words");
    sought.getAccessibleContext().setAccessibleName("Find on all sheets");
    other.getAccessibleContext().setAccessibleName("Replace with");
    list.getAccessibleContext().setAccessibleName("Cells found");
    soon.setRepeats(false);
    dialog.add(page());
    listen();
    DialogSize.set(dialog, 640, 480);
    dialog.setLocationRelativeTo(owner);
  }

  private JPanel page() {
    JPanel page =
        new JPanel(new MigLayout("insets 14, fill, wrap 3", "[][grow][]", "[][][grow][]"));
    JButton replace = new JButton("Replace all");
    replace.setName("replace all on all sheets");
    replace.addActionListener(event -> replace());
    page.add(new JLabel("Find"));
    page.add(sought, "growx, span 2");
    page.add(new JLabel("Replace with"));
    page.add(other, "growx");
    page.add(replace);
    page.add(new JScrollPane(list), "grow, span 3");
    page.add(result, "growx, span 3");
    return page;
  }

  private void listen() {
    sought.getDocument().addDocumentListener(new TextListener(soon::restart));
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.addListSelectionListener(
        event -> {
          Line chosen = list.getSelectedValue();
          if (chosen != null && open.holds(chosen.hit().place())) {
            go.accept(chosen.hit().place());
          }
        });
    key("ESCAPE", () -> dialog.setVisible(false));
    key("ENTER", this::look);
  }

  private void key(String keys, Runnable does) {
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> does.run(), KeyStroke.getKeyStroke(keys), JComponent.WHEN_IN_FOCUSED_WINDOW);
  }

  private void look() {
    Book book = open.book();
    hits = new CellSearch(book).find(sought.getText());
    lines.clear();
    for (CellSearch.Hit hit : hits.subList(0, Math.min(MOST, hits.size()))) {
      String sheet = book.schema().table(hit.place().column().table()).title();
      String cell = book.cellName(hit.place().column(), hit.place().row()).inWords();
      lines.addElement(new Line(hit, sheet + "  ·  " + cell + ":  " + hit.text()));
    }
    boolean nothing = hits.isEmpty() && !sought.getText().isBlank();
    result.setText(
        nothing
            ? "Nothing typed on any sheet holds “" + sought.getText().strip() + "”"
            : hits.isEmpty() ? " " : "Found in " + CellSearch.cells(hits.size()));
  }

  private void replace() {
    look();
    Edit edit = new CellSearch(open.book()).replaced(hits, sought.getText(), other.getText());
    if (hits.isEmpty() || edit.changesNothing()) {
      return;
    }
    open.book().perform(edit);
    String name = edit.name();
    look();
    result.setText("Done: " + name + "; Undo takes it back");
  }

  /** Shows the window with the keyboard in its first field. */
  void begin() {
    sought.selectAll();
    look();
    dialog.setVisible(true);
    sought.requestFocusInWindow();
  }

  /** Takes the look over after it changed. */
  void restyle() {
    javax.swing.SwingUtilities.updateComponentTreeUI(dialog);
  }
}
