package zonewright.desk.grid;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.Timer;
import zonewright.desk.part.TextListener;
import zonewright.sheet.Column;

/** Shows only the rows of a grid that hold what is asked for. */
final class FilterBar extends GridBar {
  private static final int PAUSE_MILLIS = 150;
  private static final String ANY = "any column";

  private final SheetTable sheet;
  private final List<Optional<Column>> columns = new ArrayList<>();
  private final JComboBox<String> column = new JComboBox<>();
  private final JComboBox<RowCriterion.Relation> relation = new JComboBox<>();
  private final JTextField text = new JTextField(14);
  private final JCheckBox findings = new JCheckBox("only with findings");
  private final JLabel result = new JLabel(" ");
  private final Timer soon = new Timer(PAUSE_MILLIS, event -> filter());
  private final Runnable changed;

  /** Makes the bar; {@code changed} is told when other rows are shown. */
  FilterBar(SheetTable table, Runnable changed) {
    super(table, new WrappingFlow());
    this.sheet = table;
    this.changed = changed;
    soon.setRepeats(false);
    offerColumns();
    column.setName("filter column");
    column.getAccessibleContext().setAccessibleName("Column to look at");
    column.setMaximumRowCount(16);
    relation.setName("filter relation");
    relation.getAccessibleContext().setAccessibleName("How to compare");
    text.setName("filter text");
    text.getAccessibleContext().setAccessibleName("What with");
    text.putClientProperty(FlatClientProperties.TEXT_FIELD_SHOW_CLEAR_BUTTON, true);
    findings.setName("filter findings");
    findings.setOpaque(false);
    result.setName("filter result");
    JButton all = button("Show all", this::showAll);
    add(together(new JLabel("Show rows where"), column));
    add(together(relation, text));
    add(findings);
    add(together(all, button("Close", this::close)));
    add(result);
    relations();
    column.addActionListener(
        event -> {
          relations();
          filter();
        });
    relation.addActionListener(event -> chosenRelation());
    findings.addActionListener(event -> filter());
    key("ENTER", this::filter);
    text.getDocument().addDocumentListener(new TextListener(soon::restart));
  }

  private void offerColumns() {
    columns.clear();
    columns.add(Optional.empty());
    sheet.sheet().table().columns().forEach(each -> columns.add(Optional.of(each)));
    column.setModel(
        new DefaultComboBoxModel<>(
            columns.stream()
                .map(each -> each.map(Column::name).orElse(ANY))
                .toArray(String[]::new)));
  }

  /** Offers the columns there are now; where the one looked at is gone, any is. */
  void takeColumns() {
    Object before = column.getSelectedItem();
    offerColumns();
    column.setSelectedItem(before);
    relations();
    filter();
  }

  /** Opens the bar at the column the person is at. */
  void begin() {
    sheet.columnUnderLead().ifPresent(each -> column.setSelectedIndex(columns.indexOf(each)));
    text.selectAll();
    open(text);
  }

  private Optional<Column> chosen() {
    return columns.get(Math.max(0, column.getSelectedIndex()));
  }

  private void relations() {
    Object before = relation.getSelectedItem();
    relation.removeAllItems();
    List<RowCriterion.Relation> fitting = RowCriterion.Relation.fitting(chosen());
    fitting.forEach(relation::addItem);
    if (before != null && fitting.contains(before)) {
      relation.setSelectedItem(before);
    }
  }

  private void chosenRelation() {
    RowCriterion.Relation chosen = (RowCriterion.Relation) relation.getSelectedItem();
    if (chosen != null) {
      text.setEnabled(chosen.wantsText());
      filter();
    }
  }

  private void filter() {
    soon.stop();
    RowCriterion.Relation how = (RowCriterion.Relation) relation.getSelectedItem();
    if (how == null || !isVisible()) {
      return;
    }
    RowCriterion criterion = new RowCriterion(chosen(), how, text.getText());
    Optional<String> problem =
        criterion.empty() ? Optional.empty() : criterion.problem(sheet.book());
    text.putClientProperty("JComponent.outline", problem.isPresent() ? "error" : null);
    if (problem.isPresent()) {
      result.setText(problem.get());
      result.setToolTipText(problem.get());
      return;
    }
    IntPredicate holds =
        criterion.test(sheet.book(), sheet.looks(), sheet.sheet().table().columns());
    boolean only = findings.isSelected();
    show(row -> holds.test(row) && (!only || sheet.hasFinding(row)));
  }

  private void show(IntPredicate passes) {
    sheet.filter(passes);
    String word = sheet.sheet().table().rowWord();
    int all = sheet.book().rows(sheet.sheet().table().id());
    result.setText(
        sheet.sheet().shown().filtered()
            ? "%s of %s %ss shown".formatted(sheet.sheet().shown().count(), all, word)
            : "all " + all + " " + word + "s shown");
    changed.run();
  }

  /** Shows all rows and asks for nothing more. */
  void showAll() {
    soon.stop();
    text.setText("");
    findings.setSelected(false);
    column.setSelectedIndex(0);
    show(row -> true);
    soon.stop();
  }
}
