package zonewright.desk.grid;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractCellEditor;
import javax.swing.BorderFactory;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.SwingConstants;
import javax.swing.table.TableCellEditor;
import zonewright.desk.part.Palette;
import zonewright.sheet.Column;

/** The field one types into, in the place of a cell; completes words that come from a list. */
final class EntryEditor extends AbstractCellEditor implements TableCellEditor {
  /** The table of the cell. */
  interface Host {
    /** Returns the column of the book that a cell shows. */
    Optional<Column> declared(int row, int column);

    /** Returns what a person would type to get what stands in a cell. */
    String typed(Column column, int row);

    /** Returns the words a cell can hold. */
    List<String> choices(Column column);

    /** Takes over what was typed and goes to another cell, where there is one. */
    void leave(int down, int right);
  }

  /** How editing begins. */
  record Beginning(String text, boolean replaces, boolean listOpen) {
    static Beginning typing(char sign) {
      return new Beginning(String.valueOf(sign), true, false);
    }

    static Beginning inPlace() {
      return new Beginning("", false, false);
    }

    static Beginning fromList() {
      return new Beginning("", false, true);
    }
  }

  private final JTextField field = new JTextField();
  private final transient Host table;
  private final int padding;

  /** Made when something is first edited: every start would wait. */
  private transient Completion completion;

  private transient Beginning beginning = Beginning.inPlace();
  private String original = "";
  private String result = "";
  private boolean arrowsMove;

  EntryEditor(Host table, int padding) {
    this.table = table;
    this.padding = padding;
    field.setName("cell editor");
    field.setFocusTraversalKeysEnabled(false);
    field.addKeyListener(
        new KeyAdapter() {
          @Override
          public void keyPressed(KeyEvent event) {
            pressed(event);
          }
        });
    dress();
  }

  private Completion completion() {
    if (completion == null) {
      completion = new Completion(field, this::stopCellEditing);
    }
    return completion;
  }

  private void dress() {
    int line = UIScale.scale(2);
    field.setBorder(
        BorderFactory.createCompoundBorder(
            BorderFactory.createLineBorder(Palette.current().strongAccent(), line),
            BorderFactory.createEmptyBorder(0, padding - line, 0, padding - line)));
  }

  void updateUI() {
    field.updateUI();
    if (completion != null) {
      completion.updateUI();
    }
    dress();
  }

  /** Says how the next editing begins. */
  void prepare(Beginning how) {
    beginning = how;
  }

  @Override
  public Component getTableCellEditorComponent(
      JTable any, Object value, boolean selected, int row, int at) {
    Optional<Column> column = table.declared(row, at);
    original = column.map(found -> table.typed(found, row)).orElse("");
    field.setFont(any.getFont());
    boolean number = column.filter(found -> found.content() == Column.Content.NUMBER).isPresent();
    field.setHorizontalAlignment(number ? SwingConstants.RIGHT : SwingConstants.LEFT);
    field
        .getAccessibleContext()
        .setAccessibleName(column.map(Column::name).orElse("cell") + ", editing");
    List<String> words =
        column
            .filter(found -> found.content() == Column.Content.CHOICE)
            .map(found -> table.choices(found))
            .orElse(List.of());
    completion().rest();
    field.setText(beginning.replaces() ? "" : original);
    completion().offer(words);
    arrowsMove = beginning.replaces();
    return field;
  }

  /** Takes the focus and what was typed first. */
  void begin() {
    field.requestFocusInWindow();
    if (beginning.replaces()) {
      field.replaceSelection(beginning.text());
    } else {
      field.setCaretPosition(field.getText().length());
    }
    if (beginning.listOpen()) {
      field.selectAll();
      completion().openAll();
    }
    beginning = Beginning.inPlace();
  }

  /** Takes a sign that was typed before the focus had come over. */
  void append(char sign) {
    field.replaceSelection(String.valueOf(sign));
  }

  @Override
  public Object getCellEditorValue() {
    return result;
  }

  @Override
  public boolean stopCellEditing() {
    result = completion().result();
    completion().rest();
    if (result.equals(original)) {
      fireEditingCanceled();
    } else {
      fireEditingStopped();
    }
    return true;
  }

  @Override
  public void cancelCellEditing() {
    completion().rest();
    super.cancelCellEditing();
  }

  private void pressed(KeyEvent event) {
    if (completion().pressed(event)) {
      event.consume();
      return;
    }
    boolean plain = event.getModifiersEx() == 0;
    switch (event.getKeyCode()) {
      case KeyEvent.VK_UP, KeyEvent.VK_DOWN, KeyEvent.VK_LEFT, KeyEvent.VK_RIGHT -> {
        boolean upOrDown =
            event.getKeyCode() == KeyEvent.VK_UP || event.getKeyCode() == KeyEvent.VK_DOWN;
        if (plain && (arrowsMove || upOrDown)) {
          leave(event.getKeyCode());
          event.consume();
        }
      }
      case KeyEvent.VK_F2 -> {
        arrowsMove = !arrowsMove;
        event.consume();
      }
      default -> {}
    }
  }

  private void leave(int key) {
    switch (key) {
      case KeyEvent.VK_UP -> table.leave(-1, 0);
      case KeyEvent.VK_DOWN -> table.leave(1, 0);
      case KeyEvent.VK_LEFT -> table.leave(0, -1);
      default -> table.leave(0, 1);
    }
  }
}
