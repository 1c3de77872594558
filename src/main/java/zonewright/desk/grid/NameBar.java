package zonewright.desk.grid;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JTextField;

/** Asks for a name. */
final class NameBar extends GridBar {
  private final JLabel question = new JLabel();
  private final JTextField field = new JTextField(20);
  private Consumer<String> then = name -> {};

  NameBar(EntryTable table) {
    super(table);
    field.setName("name");
    question.setLabelFor(field);
    field.getAccessibleContext().setAccessibleName("Name");
    add(question);
    add(field);
    add(button("Keep", this::take));
    add(button("Cancel", this::close));
    key("ENTER", this::take);
  }

  /** Asks, and hands over what was typed unless it is blank or the person thinks better of it. */
  void ask(String words, String suggestion, Consumer<String> taken) {
    question.setText(words);
    field.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, suggestion);
    field.setText("");
    then = taken;
    open(field);
  }

  private void take() {
    String name = field.getText().strip();
    close();
    if (!name.isEmpty()) {
      then.accept(name);
    }
  }
}
