package zonewright.desk;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import zonewright.formula.PrintedText;
import zonewright.formula.Reference;
import zonewright.sheet.Blueprint;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.units.UnitSystem;

/** A page for each column: what it means, its equation, what may be typed, and its source. */
final class ColumnGuide {
  private final Blueprint blueprint;
  private final JDialog dialog;
  private final DefaultListModel<Entry> found = new DefaultListModel<>();
  private final JList<Entry> list = new JList<>(found);
  private final JTextField search = new JTextField();
  private final StackPanel page = new StackPanel();
  private UnitSystem system;

  /** A column in the list, with the sheet it stands in. */
  private record Entry(TableDefinition table, Column column) {
    @Override
    public String toString() {
      return table.title() + "  ·  " + column.name();
    }

    boolean mentions(String words) {
      String text =
          table.title() + " " + column.name() + " " + column.band() + " " + column.meaning();
      return text.toLowerCase(Locale.ROOT).contains(words.toLowerCase(Locale.ROOT));
    }
  }

  ColumnGuide(Window owner, Blueprint blueprint, UnitSystem system) {
    this.blueprint = blueprint;
    this.system = system;
    dialog = new JDialog(owner, "What the columns mean");
    dialog.setName("column guide");
    dialog.setDefaultCloseOperation(JDialog.HIDE_ON_CLOSE);
    search.putClientProperty("JTextField.placeholderText", "Find a column");
    search.putClientProperty("JTextField.showClearButton", true);
    search.getAccessibleContext().setAccessibleName("Find a column");
    search
        .getDocument()
        .addDocumentListener(
            new DocumentListener() {
              @Override
              public void insertUpdate(DocumentEvent event) {
                fill();
              }

              @Override
              public void removeUpdate(DocumentEvent event) {
                fill();
              }

              @Override
              public void changedUpdate(DocumentEvent event) {
                fill();
              }
            });
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setName("columns");
    list.addListSelectionListener(event -> showSelected());
    page.setBorder(BorderFactory.createEmptyBorder(14, 20, 20, 20));
    JPanel left = new JPanel(new BorderLayout(0, 6));
    left.setBorder(BorderFactory.createEmptyBorder(10, 10, 10, 4));
    left.add(search, BorderLayout.PAGE_START);
    left.add(new JScrollPane(list), BorderLayout.CENTER);
    JScrollPane right = new JScrollPane(page);
    right.setBorder(BorderFactory.createEmptyBorder());
    right.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, left, right);
    split.setDividerLocation(com.formdev.flatlaf.util.UIScale.scale(330));
    dialog.add(split);
    dialog
        .getRootPane()
        .registerKeyboardAction(
            event -> dialog.setVisible(false),
            KeyStroke.getKeyStroke("ESCAPE"),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    fill();
    dialog.setSize(com.formdev.flatlaf.util.UIScale.scale(new Dimension(900, 580)));
    dialog.setLocationRelativeTo(owner);
  }

  private void fill() {
    Optional<Entry> before = Optional.ofNullable(list.getSelectedValue());
    found.clear();
    List<Entry> kept = new ArrayList<>();
    for (TableDefinition table : blueprint.tables()) {
      for (Column column : table.columns()) {
        Entry entry = new Entry(table, column);
        if (entry.mentions(search.getText().strip())) {
          kept.add(entry);
        }
      }
    }
    kept.forEach(found::addElement);
    before.filter(kept::contains).ifPresent(entry -> list.setSelectedValue(entry, true));
    if (list.getSelectedIndex() < 0 && !kept.isEmpty()) {
      list.setSelectedIndex(0);
    }
  }

  /** Shows the guide, at the page of a column where one is given. */
  void open(Optional<Reference> column, UnitSystem inSystem) {
    system = inSystem;
    column.ifPresent(
        reference -> {
          search.setText("");
          list.setSelectedValue(
              new Entry(blueprint.table(reference.table()), blueprint.column(reference)), true);
        });
    showSelected();
    dialog.setVisible(true);
    list.requestFocusInWindow();
  }

  /** Takes the look over after it changed. */
  void restyle() {
    javax.swing.SwingUtilities.updateComponentTreeUI(dialog);
  }

  private void showSelected() {
    Entry entry = list.getSelectedValue();
    page.removeAll();
    if (entry != null) {
      describe(entry);
    }
    page.revalidate();
    page.repaint();
  }

  private void describe(Entry entry) {
    Column column = entry.column();
    String band = column.band().isEmpty() ? "" : "  ·  " + column.band();
    page.stack(new Prose(entry.table().title() + band).coloured("Zonewright.muted"), 0);
    page.stack(new Prose(column.heading(system)).styled("h2"), 0);
    page.stack(new Prose(column.meaning()), 10);
    column
        .formula()
        .filter(formula -> column.usualWord().isEmpty())
        .ifPresent(formula -> part("Equation", column.name() + " = " + PrintedText.of(formula)));
    part("What stands in it", holds(column));
    part("Source", column.source());
  }

  private void part(String title, String text) {
    if (!text.isEmpty()) {
      page.stack(new Prose(title).styled("small").coloured("Zonewright.muted"), 16);
      page.stack(new Prose(text), 3);
    }
  }

  private String holds(Column column) {
    String from =
        switch (column.role()) {
          case INPUT -> "Typed";
          case DEFAULTED -> "Follows by itself unless something is typed over it";
          case CALCULATED -> "Calculated; nothing can be typed";
        };
    String what =
        switch (column.content()) {
          case NUMBER -> ". A " + column.kind().words() + ", such as " + column.kind().example();
          case CHOICE -> ". A word from a list";
          case WORDS -> ". Any words";
        };
    String usual = column.usualWord().map(word -> ", usually “" + word + "”").orElse("");
    String range =
        column
            .bounds()
            .filter(bounds -> column.takesEntries())
            .map(bounds -> "; " + bounds.inWords(column.kind(), system))
            .orElse("");
    String blank = column.takesEntries() && column.isOptional() ? ". May stay blank" : "";
    return from + what + usual + range + blank + ".";
  }
}
