package zonewright.desk.whatif;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListModel;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import zonewright.design.Synonyms;
import zonewright.desk.part.TextListener;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.ColumnSearch;
import zonewright.sheet.Place;
import zonewright.whatif.FollowsFrom;

/** The answers that follow from an input, found by their names, and the rows of each. */
final class AnswerList {
  private final JTextField sought = new JTextField(20);
  private final DefaultListModel<Line> lines = new DefaultListModel<>();
  private final JList<Line> list = new JList<>(lines);
  private final JComboBox<String> rows = new JComboBox<>();
  private final Runnable chosen;
  private List<Column> answers = List.of();
  private Optional<Book> book = Optional.empty();
  private Optional<Place> input = Optional.empty();
  private String rowsOf = "";
  private boolean filling;

  /** An answer, with its sheet. */
  private record Line(Column column, String sheet) {
    @Override
    public String toString() {
      return column.name() + "  ·  " + sheet;
    }
  }

  /** Prepares; {@code chosen} hears when another answer is chosen. */
  AnswerList(Runnable chosen) {
    this.chosen = chosen;
    sought.setName("answer sought");
    sought.getAccessibleContext().setAccessibleName("Find the answer by its name");
    list.setName("answers");
    list.getAccessibleContext().setAccessibleName("Answers that follow from the input");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setVisibleRowCount(7);
    rows.setName("answer row");
    rows.getAccessibleContext().setAccessibleName("Row of the answer");
    list.addListSelectionListener(
        event -> {
          if (!event.getValueIsAdjusting() && !filling) {
            fillRows();
            chosen.run();
          }
        });
    rows.addActionListener(
        event -> {
          if (!filling) {
            chosen.run();
          }
        });
    sought.getDocument().addDocumentListener(new TextListener(this::look));
    key("DOWN", 1);
    key("UP", -1);
  }

  /** Lets a key go through the list while one types. */
  private void key(String keys, int by) {
    sought.registerKeyboardAction(
        event -> {
          int at = Math.floorMod(list.getSelectedIndex() + by, Math.max(1, lines.size()));
          list.setSelectedIndex(at);
          list.ensureIndexIsVisible(at);
        },
        KeyStroke.getKeyStroke(keys),
        JComponent.WHEN_FOCUSED);
  }

  /** Returns the field to search in. */
  JTextField field() {
    return sought;
  }

  /** Returns the list. */
  JScrollPane list() {
    return new JScrollPane(list);
  }

  /** Returns the rows to choose from. */
  JComboBox<String> rows() {
    return rows;
  }

  /** Offers the answers that follow from an input. */
  void fill(Book of, Place from) {
    book = Optional.of(of);
    input = Optional.of(from);
    rowsOf = "";
    answers = FollowsFrom.answers(of.schema(), of.schema().column(from.column()));
    sought.setText("");
    look();
  }

  private void look() {
    Book of = book.orElseThrow();
    String table = input.orElseThrow().column().table();
    List<Column> found =
        sought.getText().isBlank()
            ? answers
            : new ColumnSearch(answers, table, Synonyms::of)
                .ranked(sought.getText()).stream().map(ColumnSearch.Fit::column).toList();
    Line before = list.getSelectedValue();
    filling = true;
    lines.clear();
    for (Column column : found) {
      lines.addElement(new Line(column, of.schema().table(column.reference().table()).title()));
    }
    int at = before == null || !sought.getText().isBlank() ? -1 : lines.indexOf(before);
    list.setSelectedIndex(Math.max(0, at));
    list.ensureIndexIsVisible(Math.max(0, at));
    filling = false;
    fillRows();
    chosen.run();
  }

  /**
   * Offers the rows of the answer chosen; at first that of the input, where they belong together.
   */
  void fillRows() {
    Line line = list.getSelectedValue();
    filling = true;
    String[] names = {};
    int row = -1;
    if (line != null) {
      Book of = book.orElseThrow();
      Place from = input.orElseThrow();
      String table = line.column().reference().table();
      names =
          IntStream.range(0, of.rows(table))
              .mapToObj(at -> of.cellName(line.column().reference(), at).row())
              .toArray(String[]::new);
      int first = of.schema().sameRows(table, from.column().table()) ? from.row() : 0;
      row = Math.min(table.equals(rowsOf) ? rows.getSelectedIndex() : first, names.length - 1);
      rowsOf = table;
    }
    rows.setModel(new DefaultComboBoxModel<>(names));
    rows.setSelectedIndex(row);
    rows.setEnabled(names.length > 1);
    filling = false;
  }

  /** Returns the cell chosen; none where nothing is found. */
  Optional<Place> answer() {
    Line line = list.getSelectedValue();
    return line == null || rows.getSelectedIndex() < 0
        ? Optional.empty()
        : Optional.of(new Place(line.column().reference(), rows.getSelectedIndex()));
  }
}
