package zonewright.desk.columns;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import zonewright.desk.part.TextListener;
import zonewright.equation.KindWords;
import zonewright.equation.KnownColumns;
import zonewright.sheet.Column;
import zonewright.sheet.WordMatch;

/** The columns an equation can name, found by a part of their name and put into it. */
final class ColumnPick {
  private final JTextField sought = new JTextField(12);
  private final DefaultListModel<Line> lines = new DefaultListModel<>();
  private final JList<Line> list = new JList<>(lines);
  private final Consumer<String> taken;
  private Optional<KnownColumns> known = Optional.empty();

  /** A column as an equation writes it, with what it holds. */
  private record Line(String written, String kind) {
    @Override
    public String toString() {
      return written + "  ·  " + kind;
    }
  }

  /** Prepares; {@code taken} hears the name to put into the equation. */
  ColumnPick(Consumer<String> taken) {
    this.taken = taken;
    sought.setName("column sought");
    sought.putClientProperty("JTextField.placeholderText", "Find a column");
    sought.getAccessibleContext().setAccessibleName("Find a column to insert");
    sought.getDocument().addDocumentListener(new TextListener(this::fill));
    list.setName("columns to insert");
    list.getAccessibleContext().setAccessibleName("Columns to insert, with Enter");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent event) {
            if (event.getClickCount() == 2) {
              take();
            }
          }
        });
    for (JComponent each : List.of(sought, list)) {
      each.registerKeyboardAction(
          event -> take(), KeyStroke.getKeyStroke("ENTER"), JComponent.WHEN_FOCUSED);
    }
    step("DOWN", 1);
    step("UP", -1);
  }

  /** Lets a key go through the list while one types. */
  private void step(String key, int by) {
    sought.registerKeyboardAction(
        event -> {
          if (!lines.isEmpty()) {
            list.setSelectedIndex(Math.floorMod(list.getSelectedIndex() + by, lines.size()));
            list.ensureIndexIsVisible(list.getSelectedIndex());
          }
        },
        KeyStroke.getKeyStroke(key),
        JComponent.WHEN_FOCUSED);
  }

  JTextField field() {
    return sought;
  }

  JComponent list() {
    return new JScrollPane(list);
  }

  /** Offers the columns of another sheet. */
  void offer(KnownColumns columns) {
    known = Optional.of(columns);
    fill();
  }

  private void fill() {
    String part = sought.getText().strip();
    lines.clear();
    for (Column column : known.map(KnownColumns::withinReach).orElse(List.of())) {
      if (column.content() != Column.Content.WORDS && WordMatch.fits(column.name(), part)) {
        String kind =
            column.content() == Column.Content.NUMBER ? KindWords.of(column.kind()) : "words";
        lines.addElement(new Line(known.orElseThrow().written(column), kind));
      }
    }
    if (!lines.isEmpty()) {
      list.setSelectedIndex(0);
      list.ensureIndexIsVisible(0);
    }
  }

  private void take() {
    Optional.ofNullable(list.getSelectedValue()).ifPresent(line -> taken.accept(line.written()));
  }
}
