package zonewright.desk.help;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.Window;
import java.awt.print.PrinterException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JList;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import zonewright.design.Synonyms;
import zonewright.desk.handover.PrintPreview;
import zonewright.desk.part.DialogSize;
import zonewright.desk.part.TextListener;
import zonewright.formula.Reference;
import zonewright.help.HelpBook;
import zonewright.sheet.Column;
import zonewright.sheet.ColumnFinder;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.trade.Sheets;

/** The help inside the program: a page for each column, and all other pages, with their links. */
public final class ColumnGuide {
  private static final int NEAREST = 5;

  private final Schema schema;
  private final ColumnFinder finder;
  private final JDialog dialog;
  private final List<Entry> all = new ArrayList<>();
  private final DefaultListModel<Entry> found = new DefaultListModel<>();
  private final JList<Entry> list = new JList<>(found);
  private final JTextField search = new JTextField();
  private final HelpView page = new HelpView(this::follow);
  private final JButton back = new JButton("Back");
  private final Deque<Entry> trail = new ArrayDeque<>();
  private Entry shown;

  /**
   * Something to read about.
   *
   * @param words what stands in the list
   * @param file the page of help
   * @param column the column, where it is about one
   */
  private record Entry(String words, String file, Optional<Column> column) {
    @Override
    public String toString() {
      return words;
    }

    boolean mentions(String sought) {
      String more = column.map(each -> " " + each.band() + " " + each.meaning()).orElse("");
      return (words + more).toLowerCase(Locale.ROOT).contains(sought.toLowerCase(Locale.ROOT));
    }
  }

  public ColumnGuide(Window owner, Schema schema) {
    this.schema = schema;
    this.finder = Synonyms.finder(schema, Sheets.ZONES);
    collect();
    dialog = new JDialog(owner, "Help");
    dialog.setName("column guide");
    dialog.setDefaultCloseOperation(JDialog.HIDE_ON_CLOSE);
    JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, finder(), reader());
    split.setDividerLocation(UIScale.scale(330));
    dialog.add(split);
    key("ESCAPE", () -> dialog.setVisible(false));
    key("alt LEFT", this::goBack);
    fill();
    DialogSize.set(dialog, 960, 620);
    dialog.setLocationRelativeTo(owner);
  }

  private void collect() {
    for (TableDefinition table : schema.tables()) {
      for (Column column : table.columns()) {
        String words = table.title() + "  ·  " + column.name();
        all.add(new Entry(words, HelpBook.fileOf(table.id()), Optional.of(column)));
      }
    }
    HelpBook.titles().forEach((file, title) -> all.add(new Entry(title, file, Optional.empty())));
  }

  private void key(String keys, Runnable action) {
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> action.run(), KeyStroke.getKeyStroke(keys), JComponent.WHEN_IN_FOCUSED_WINDOW);
  }

  private JComponent finder() {
    search.putClientProperty("JTextField.placeholderText", "Find a column or a page");
    search.putClientProperty("JTextField.showClearButton", true);
    search.getAccessibleContext().setAccessibleName("Find a column or a page");
    list.getAccessibleContext().setAccessibleName("Columns and pages found");
    page.getAccessibleContext().setAccessibleName("Page of help");
    search.getDocument().addDocumentListener(new TextListener(this::fill));
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setName("columns");
    search.setName("find a column");
    list.addListSelectionListener(
        event -> Optional.ofNullable(list.getSelectedValue()).ifPresent(entry -> go(entry, "")));
    JPanel left = new JPanel(new BorderLayout(0, 6));
    left.setBorder(BorderFactory.createEmptyBorder(10, 10, 10, 4));
    left.add(search, BorderLayout.PAGE_START);
    left.add(new JScrollPane(list), BorderLayout.CENTER);
    return left;
  }

  private JComponent reader() {
    back.setName("back");
    back.setToolTipText("Back to what was read before (Alt+Left)");
    back.addActionListener(event -> goBack());
    JButton contents = new JButton("All pages");
    contents.addActionListener(event -> follow(HelpBook.CONTENTS));
    JPanel top = new JPanel(new FlowLayout(FlowLayout.LEADING, 6, 0));
    top.setBorder(BorderFactory.createEmptyBorder(10, 10, 0, 10));
    top.add(back);
    JButton print = new JButton("Print …");
    print.setName("print page");
    print.addActionListener(event -> print());
    top.add(contents);
    top.add(print);
    JScrollPane scroll = new JScrollPane(page);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    JPanel right = new JPanel(new BorderLayout());
    right.add(top, BorderLayout.PAGE_START);
    right.add(scroll, BorderLayout.CENTER);
    return right;
  }

  /** Returns the entries of the columns that are called so, or nearly so, the likeliest first. */
  private List<Entry> asked(String sought) {
    return sought.isEmpty()
        ? List.of()
        : finder.nearest(sought, NEAREST).stream()
            .flatMap(
                column -> all.stream().filter(entry -> entry.column().equals(Optional.of(column))))
            .toList();
  }

  private void fill() {
    Entry before = shown;
    String sought = search.getText().strip();
    List<Entry> kept =
        Stream.concat(asked(sought).stream(), all.stream().filter(entry -> entry.mentions(sought)))
            .distinct()
            .toList();
    found.clear();
    found.addAll(kept);
    if (before != null && kept.contains(before)) {
      list.setSelectedValue(before, true);
    } else if (!kept.isEmpty()) {
      list.setSelectedIndex(0);
    }
  }

  /** Shows the help, at the page of a column where one is given. */
  public void open(Optional<Reference> column) {
    column.ifPresent(
        reference -> {
          search.setText("");
          choose(schema.column(reference));
        });
    dialog.setVisible(true);
    list.requestFocusInWindow();
  }

  /** Shows the help at a page. */
  public void read(String file) {
    search.setText("");
    dialog.setVisible(true);
    follow(file);
    page.requestFocusInWindow();
  }

  /** Prints the page that is shown. */
  private void print() {
    try {
      page.print();
    } catch (PrinterException | RuntimeException problem) {
      JOptionPane.showMessageDialog(dialog, PrintPreview.problem(problem));
    }
  }

  /** Takes the look over after it changed. */
  public void restyle() {
    SwingUtilities.updateComponentTreeUI(dialog);
    page.dress();
  }

  private void choose(Column column) {
    all.stream()
        .filter(entry -> entry.column().filter(column::equals).isPresent())
        .findFirst()
        .ifPresent(entry -> list.setSelectedValue(entry, true));
  }

  /** Goes where a link of the page leads. */
  private void follow(String link) {
    String whole = link.startsWith("#") && shown != null ? shown.file() + link : link;
    int sign = whole.indexOf('#');
    String file = sign < 0 ? whole : whole.substring(0, sign);
    String part = sign < 0 ? "" : whole.substring(sign + 1);
    Optional<Column> column = HelpBook.linked(whole);
    all.stream()
        .filter(entry -> entry.file().equals(file) && same(entry, column))
        .findFirst()
        .ifPresent(
            entry -> {
              go(entry, part);
              if (found.contains(entry)) {
                list.setSelectedValue(entry, true);
              } else {
                list.clearSelection();
              }
            });
  }

  private static boolean same(Entry entry, Optional<Column> column) {
    return entry.column().map(Column::reference).equals(column.map(Column::reference));
  }

  private void goBack() {
    if (!trail.isEmpty()) {
      Entry entry = trail.pop();
      shown = null;
      go(entry, "");
      if (found.contains(entry)) {
        list.setSelectedValue(entry, true);
      }
    }
  }

  private void go(Entry entry, String part) {
    if (entry.equals(shown)) {
      return;
    }
    if (shown != null) {
      trail.push(shown);
    }
    shown = entry;
    back.setEnabled(!trail.isEmpty());
    page.show(html(entry), entry.column().isPresent() ? "" : part);
  }

  private String html(Entry entry) {
    if (entry.column().isEmpty()) {
      return "<h1>" + entry.words() + "</h1>" + HelpBook.page(entry.file()).orElseThrow().body();
    }
    Column column = entry.column().get();
    String table = schema.table(column.reference().table()).title();
    String band = column.band().isEmpty() ? "" : "  ·  " + column.band();
    return "<p class=\"quiet\"><a href=\""
        + entry.file()
        + "\">"
        + table
        + "</a>"
        + band
        + "</p>"
        + HelpBook.section(column);
  }
}
