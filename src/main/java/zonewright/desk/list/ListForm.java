package zonewright.desk.list;

import java.awt.Dimension;
import java.awt.Window;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import net.miginfocom.swing.MigLayout;
import zonewright.desk.part.DialogSize;
import zonewright.desk.part.Prose;
import zonewright.exchange.ListMatch;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entries;
import zonewright.sheet.Entry;
import zonewright.trade.Sheets;
import zonewright.units.DecimalSign;

/**
 * Shows where each column of somebody's list goes, what comes of its first rows and what is left
 * out, before anything is taken. What goes where is decided by {@link ListMatch}; this only shows
 * it and lets a person change it.
 */
public final class ListForm {
  private static final String NOWHERE = "left out";
  private static final int ROWS_SHOWN = 5;
  private static final int CHANGES_SHOWN = 500;
  private static final int CHANGES_WIDE = 880;
  private static final int VALUES_SHOWN = 3;
  private static final int LONGEST_VALUES = 44;

  /**
   * What the form is about.
   *
   * @param title the title, such as {@code Add zones from a list}
   * @param first what stands over the first rows
   * @param one the button with one row, such as {@code Add 1 zone}
   * @param many the same with several, their number as {@code %s}
   */
  record Words(String title, String first, String one, String many) {
    static final Words ZONES =
        new Words(
            "Add zones from a list",
            "The first zones as they will stand",
            "Add 1 zone",
            "Add %s zones");
    static final Words FOUND =
        new Words(
            "Add zones as found from a list",
            "The first zones as they will stand",
            "Add 1 zone",
            "Add %s zones");
    static final Words PRICES =
        new Words(
            "Read a price book", "What changes and what is new", "Take 1 item", "Take %s items");

    static Words of(String table) {
      return table.equals(Sheets.PARTS) ? PRICES : table.equals(Sheets.FOUND) ? FOUND : ZONES;
    }
  }

  private final Words words;
  private final ListMatch match;
  private final Set<Integer> guessed;
  private final Book book;
  private final Consumer<ListMatch.Taken> taken;
  private final JDialog dialog;
  private final Map<Integer, JComboBox<String>> choices = new HashMap<>();
  private final Map<Integer, JLabel> remarks = new HashMap<>();
  private final JTable preview = new JTable();
  private final Prose outcome = new Prose("");
  private final JButton add = new JButton();
  private boolean settling;

  private ListForm(
      Window owner, String name, Book book, ListMatch match, Consumer<ListMatch.Taken> taken) {
    this.words = Words.of(match.table().id());
    this.match = match;
    this.book = book;
    this.taken = taken;
    this.guessed = match.guess();
    dialog = new JDialog(owner, words.title(), JDialog.ModalityType.DOCUMENT_MODAL);
    dialog.setName("list form");
    dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
    JPanel page = new JPanel(new MigLayout("insets 18 22 16 22, fill, wrap 1", "[grow]", ""));
    page.add(new Prose(words.title()).styled("h2"), "growx");
    page.add(new Prose(about(name)).coloured("Zonewright.muted"), "growx, wmin 300");
    page.add(heading("Where each column goes"), "gaptop 8");
    page.add(columns(), "grow, push, hmin 120lp");
    page.add(decimals(), "gaptop 4");
    page.add(heading(words.first()), "gaptop 8");
    page.add(first(), "growx, h 150lp!");
    outcome.setName("list outcome");
    page.add(outcome, "growx, wmin 300");
    page.add(buttons(), "growx, gaptop 8");
    dialog.add(page);
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> dialog.dispose(),
            KeyStroke.getKeyStroke("ESCAPE"),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> add(),
            KeyStroke.getKeyStroke("ctrl ENTER"),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    settle();
    DialogSize.set(dialog, 980, 720);
    dialog.setLocationRelativeTo(owner);
  }

  private String about(String name) {
    int rows = match.list().rows().size();
    return "%s has %s %s and %s %s. Choose for each column which of ours it goes into; one that is left out is not read. A plain number has the unit its heading names, else that of our column."
        .formatted(
            name,
            rows,
            rows == 1 ? "row" : "rows",
            match.list().headings().size(),
            match.list().headings().size() == 1 ? "column" : "columns");
  }

  private static JLabel heading(String words) {
    JLabel label = new JLabel(words);
    label.putClientProperty("FlatLaf.styleClass", "h4");
    return label;
  }

  private static JLabel quiet(String words) {
    JLabel label = new JLabel(words);
    label.putClientProperty("FlatLaf.style", "foreground: $Zonewright.muted");
    return label;
  }

  private JComponent columns() {
    JPanel panel =
        new JPanel(
            new MigLayout("insets 6 8 6 8, wrap 4, gapx 14", "[][240lp!][120lp::][grow]", ""));
    for (String title : List.of("In the list", "Goes into", "", "Its first values")) {
      panel.add(quiet(title));
    }
    List<String> names = new ArrayList<>(List.of(NOWHERE));
    match.choices().forEach(column -> names.add(column.heading(book.system())));
    for (int position = 0; position < match.list().headings().size(); position++) {
      String theirs = match.list().headings().get(position);
      JComboBox<String> choice =
          new JComboBox<>(new DefaultComboBoxModel<>(names.toArray(String[]::new)));
      choice.setName("goes into " + theirs);
      choice.getAccessibleContext().setAccessibleName("“" + theirs + "” goes into");
      choice.setMaximumRowCount(18);
      int at = position;
      choice.addActionListener(event -> chosen(at, choice.getSelectedIndex()));
      JLabel label = new JLabel(theirs.isBlank() ? "(no heading)" : theirs);
      label.setLabelFor(choice);
      JLabel remark = quiet("");
      choices.put(position, choice);
      remarks.put(position, remark);
      panel.add(label, "wmax 260lp");
      panel.add(choice, "growx");
      panel.add(remark);
      panel.add(quiet(values(position)));
    }
    JScrollPane scroll = new JScrollPane(panel);
    scroll.getVerticalScrollBar().setUnitIncrement(18);
    return scroll;
  }

  private String values(int position) {
    String values =
        String.join(
            " · ",
            match.list().rows().stream()
                .map(row -> row.get(position).strip())
                .filter(text -> !text.isEmpty())
                .limit(VALUES_SHOWN)
                .toList());
    return values.length() > LONGEST_VALUES
        ? values.substring(0, LONGEST_VALUES - 2) + " …"
        : values;
  }

  /** Asks which sign stands before decimals: numbers such as 1,250 do not tell. */
  private JComponent decimals() {
    JComboBox<String> choice =
        new JComboBox<>(new String[] {"as its numbers show", "a comma: 1,5", "a point: 1.5"});
    choice.setName("decimal sign");
    choice.addActionListener(
        event -> {
          match.decimals(
              switch (choice.getSelectedIndex()) {
                case 1 -> Optional.of(DecimalSign.COMMA);
                case 2 -> Optional.of(DecimalSign.POINT);
                default -> Optional.empty();
              });
          settle();
        });
    JLabel label = new JLabel("Before the decimals stands");
    label.setLabelFor(choice);
    JPanel panel = new JPanel(new MigLayout("insets 0, gap 8", "[][]"));
    panel.add(label);
    panel.add(choice);
    return panel;
  }

  private JComponent first() {
    preview.setName("list preview");
    preview.getAccessibleContext().setAccessibleName(words.first());
    preview.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
    preview.setFillsViewportHeight(true);
    JScrollPane scroll = new JScrollPane(preview);
    scroll.setPreferredSize(new Dimension(200, 120));
    return scroll;
  }

  private JComponent buttons() {
    add.setName("add list");
    add.setMnemonic('A');
    add.setToolTipText("Take these rows into the design (Ctrl+Enter)");
    add.addActionListener(event -> add());
    JButton not = new JButton("Not now");
    not.setName("add nothing");
    not.setMnemonic('N');
    not.addActionListener(event -> dialog.dispose());
    JPanel panel = new JPanel(new MigLayout("insets 0, gap 8", "push[][]"));
    panel.add(not);
    panel.add(add);
    dialog.getRootPane().setDefaultButton(add);
    return panel;
  }

  private void chosen(int position, int index) {
    if (settling) {
      return;
    }
    guessed.remove(position);
    if (index <= 0) {
      match.leave(position);
    } else {
      match.set(position, match.choices().get(index - 1));
    }
    settle();
  }

  /** Shows how things stand now. */
  private void settle() {
    settling = true;
    for (Map.Entry<Integer, JComboBox<String>> each : choices.entrySet()) {
      Optional<Column> target = match.target(each.getKey());
      each.getValue()
          .setSelectedIndex(target.map(column -> match.choices().indexOf(column) + 1).orElse(0));
      remarks.get(each.getKey()).setText(remark(each.getKey(), target));
    }
    settling = false;
    List<Integer> used =
        choices.keySet().stream().filter(at -> match.target(at).isPresent()).sorted().toList();
    ListMatch.Taken now = match.taken();
    if (now.changes().isEmpty()) {
      showFirst(used);
    } else {
      showChanges(now.changes());
    }
    outcome.setText(outcome(now));
    add.setText(now.rows() == 1 ? words.one() : words.many().formatted(now.rows()));
    add.setEnabled(!used.isEmpty() && now.rows() > 0);
  }

  private String remark(int position, Optional<Column> target) {
    String unit = match.unit(position).map(each -> "in " + each.inWords()).orElse("");
    String guess = target.isPresent() && guessed.contains(position) ? "a guess" : "";
    return unit.isEmpty() || guess.isEmpty() ? unit + guess : unit + ", " + guess;
  }

  /** Shows what changes, line by line; how many are summed up below. */
  private void showChanges(List<String> changes) {
    DefaultTableModel model =
        new DefaultTableModel(new Object[] {words.first()}, 0) {
          @Override
          public boolean isCellEditable(int row, int column) {
            return false;
          }
        };
    changes.stream()
        .skip(1)
        .limit(CHANGES_SHOWN)
        .forEach(line -> model.addRow(new Object[] {line}));
    if (changes.size() - 1 > CHANGES_SHOWN) {
      model.addRow(new Object[] {"and %s more".formatted(changes.size() - 1 - CHANGES_SHOWN)});
    }
    preview.setModel(model);
    preview.getColumnModel().getColumn(0).setPreferredWidth(CHANGES_WIDE);
  }

  private void showFirst(List<Integer> used) {
    List<String> headings =
        used.stream().map(at -> match.target(at).orElseThrow().heading(book.system())).toList();
    DefaultTableModel model =
        new DefaultTableModel(headings.toArray(), 0) {
          @Override
          public boolean isCellEditable(int row, int column) {
            return false;
          }
        };
    for (int row = 0; row < Math.min(ROWS_SHOWN, match.list().rows().size()); row++) {
      List<String> cells = new ArrayList<>();
      for (int position : used) {
        cells.add(shown(position, match.entry(position, row)));
      }
      model.addRow(cells.toArray());
    }
    preview.setModel(model);
    for (int i = 0; i < used.size(); i++) {
      boolean number = match.target(used.get(i)).orElseThrow().content() == Column.Content.NUMBER;
      DefaultTableCellRenderer side = new DefaultTableCellRenderer();
      side.setHorizontalAlignment(number ? SwingConstants.TRAILING : SwingConstants.LEADING);
      preview.getColumnModel().getColumn(i).setCellRenderer(side);
      int wide = preview.getFontMetrics(preview.getFont()).stringWidth(headings.get(i) + "mmm");
      preview.getColumnModel().getColumn(i).setPreferredWidth(Math.max(wide, 90));
    }
  }

  private String shown(int position, Entry entry) {
    Column column = match.target(position).orElseThrow();
    return entry instanceof Entry.Figure figure
        ? column.shown(figure.value(), book.system())
        : Entries.typed(column, entry);
  }

  private String outcome(ListMatch.Taken now) {
    List<String> out =
        match.unmatched().stream().map(at -> match.list().headings().get(at)).toList();
    String left = out.isEmpty() ? "Nothing is left out. " : "Left out: " + listed(out) + ". ";
    if (!now.changes().isEmpty()) {
      left = now.changes().get(0) + " " + left;
    }
    return now.notes().isEmpty()
        ? left + "Everything can be read."
        : left
            + (now.notes().size() == 1 ? "" : now.notes().size() + " remarks, first: ")
            + now.notes().get(0);
  }

  private static String listed(List<String> names) {
    return String.join(", ", names.stream().map(name -> "“" + name + "”").toList());
  }

  private void add() {
    if (add.isEnabled()) {
      dialog.dispose();
      taken.accept(match.taken());
    }
  }

  /**
   * Shows the form.
   *
   * @param name what the list is called
   * @param taken is given what comes of the list when the person adds it; else nothing happens
   */
  public static void open(
      Window owner, String name, Book book, ListMatch match, Consumer<ListMatch.Taken> taken) {
    new ListForm(owner, name, book, match, taken).dialog.setVisible(true);
  }
}
