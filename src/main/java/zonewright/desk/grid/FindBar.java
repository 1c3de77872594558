package zonewright.desk.grid;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JTextField;
import zonewright.desk.part.TextListener;
import zonewright.sheet.Column;
import zonewright.sheet.Edit;
import zonewright.sheet.Place;

/** Finds words or figures in the cells of a grid while they are being typed, and replaces them. */
final class FindBar extends GridBar {
  private final JTextField field = new JTextField(20);
  private final JTextField other = new JTextField(16);
  private final JButton one = button("Replace", this::replaceOne);
  private final JButton all = button("Replace all", this::replaceAll);
  private final JLabel found = new JLabel(" ");

  /**
   * The column whose heading was found last, -1 where a cell was; the next search goes on there.
   */
  private int heading = -1;

  FindBar(EntryTable table) {
    super(table);
    field.setName("find");
    field.putClientProperty(
        FlatClientProperties.PLACEHOLDER_TEXT, "Find in cells, names and headings");
    field.putClientProperty(FlatClientProperties.TEXT_FIELD_SHOW_CLEAR_BUTTON, true);
    field.getAccessibleContext().setAccessibleName("Find in the cells");
    other.setName("replace with");
    other.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, "Replace with");
    other.getAccessibleContext().setAccessibleName("Replace with");
    found.setName("find result");
    add(field, "wmin 110lp");
    add(button("Next", () -> find(1)));
    add(button("Previous", () -> find(-1)));
    add(button("Close", this::close));
    add(found, "pushx, wmin 0, wrap");
    add(other, "wmin 110lp");
    add(one, "growx");
    add(all, "growx");
    field.getDocument().addDocumentListener(new TextListener(() -> find(0)));
    key("ENTER", () -> find(1));
    key("shift ENTER", () -> find(-1));
  }

  /** Gives a grid the actions of finding; the bar is asked for when one is wanted. */
  static void install(GridActions actions, Supplier<FindBar> bar) {
    actions.does(GridAction.FIND, () -> bar.get().begin(false));
    actions.does(GridAction.REPLACE, () -> bar.get().begin(true));
    actions.does(GridAction.FIND_NEXT, () -> bar.get().find(1));
    actions.does(GridAction.FIND_PREVIOUS, () -> bar.get().find(-1));
  }

  private void begin(boolean replacing) {
    other.setVisible(replacing);
    one.setVisible(replacing);
    all.setVisible(replacing);
    field.selectAll();
    open(field);
  }

  private String sought() {
    return field.getText().strip().toLowerCase(Locale.ROOT);
  }

  /** Goes to a cell that holds what is sought: from this one on for 0, else after or before it. */
  private void find(int step) {
    String sought = sought();
    EntryTable table = table();
    int columns = table.getColumnCount();
    int places = (table.getRowCount() + 1) * columns;
    found.setText(" ");
    if (sought.isEmpty() || table.getRowCount() == 0 || columns == 0) {
      return;
    }
    int lead = (Math.max(0, table.leadRow()) + 1) * columns + Math.max(0, table.leadColumn());
    // what is typed may well be the name of a column: those come first
    int from = step == 0 ? 0 : heading == table.leadColumn() && heading >= 0 ? heading : lead;
    int direction = step == 0 ? 1 : step;
    if (step == 0 && words(lead / columns - 1, lead % columns).contains(sought) && !named(sought)) {
      return;
    }
    for (int i = 0; i < places; i++) {
      int at = Math.floorMod(from + step + i * direction, places);
      int row = at / columns - 1;
      int column = at % columns;
      if (words(row, column).contains(sought)) {
        heading = row < 0 ? column : -1;
        table.changeSelection(row < 0 ? Math.max(0, table.leadRow()) : row, column, false, false);
        if (row < 0) {
          found.setText("The name of a column; Next goes on in the cells");
        }
        return;
      }
    }
    found.setText("“" + field.getText().strip() + "” is in no cell, name or heading shown");
  }

  /** Says whether the name of a column that is shown holds what is sought. */
  private boolean named(String sought) {
    return IntStream.range(0, table().getColumnCount())
        .anyMatch(column -> words(-1, column).contains(sought));
  }

  /** Returns what is written in a cell and, in a form, beside it; of row -1, in the heading. */
  private String words(int row, int column) {
    String cell =
        row < 0
            ? ""
            : table()
                .declared(row, column)
                .map(declared -> table().looks().sought(declared, table().bookRow(row)))
                .orElse("");
    return (table().label(row, column) + "\n" + cell).toLowerCase(Locale.ROOT);
  }

  /** Returns the edit of replacing in one cell; none where nothing typed there holds it. */
  private Optional<Edit> replaced(int row, int column) {
    if (table().isNew(row) || !table().takesEntries(row, column)) {
      return Optional.empty();
    }
    Column declared = table().declared(row, column).orElseThrow();
    int bookRow = table().bookRow(row);
    String typed = table().looks().entered(declared, bookRow);
    return new CellSearch(table().book())
        .replaced(
            new Place(declared.reference(), bookRow), typed, field.getText(), other.getText());
  }

  private void replaceOne() {
    if (sought().isEmpty()) {
      return;
    }
    replaced(table().leadRow(), table().leadColumn())
        .ifPresent(edit -> table().book().perform(edit));
    find(1);
  }

  /** Replaces in all cells selected, or in all cells shown where but one is. */
  private void replaceAll() {
    if (sought().isEmpty()) {
      return;
    }
    EntryTable table = table();
    boolean range = table.getSelectedRowCount() * table.getSelectedColumnCount() > 1;
    List<Edit> parts = new ArrayList<>();
    for (int row = 0; row < table.getRowCount(); row++) {
      for (int column = 0; column < table.getColumnCount(); column++) {
        if (!range || table.isCellSelected(row, column)) {
          replaced(row, column).ifPresent(parts::add);
        }
      }
    }
    String cells = CellSearch.cells(parts.size());
    if (!parts.isEmpty()) {
      table.book().perform(new Edit.Several("replacement in " + cells, parts));
    }
    found.setText(
        parts.isEmpty()
            ? "Nothing typed holds “" + field.getText().strip() + "”"
            : "Replaced in " + cells);
  }
}
